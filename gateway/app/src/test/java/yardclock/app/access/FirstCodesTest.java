package yardclock.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.core.ruling.Role;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

class FirstCodesTest {
    @TempDir private Path folder;

    @Test
    void everyRoleHasItsCodesInAFileOnlyTheOwnerReads() throws Exception {
        FirstCodes codes = FirstCodes.in(folder);
        assertThat(codes.of(Role.COORDINATOR)).hasSize(1);
        assertThat(codes.of(Role.CREW)).hasSize(2);
        assertThat(codes.of(Role.PROCTOR)).hasSize(8).doesNotHaveDuplicates();
        assertThat(codes.inputs()).hasSize(13);
        Path file = folder.resolve("first-codes.json");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(Files.readString(file)).contains(codes.of(Role.SAFETY).get(0));
    }

    @Test
    void aStartThatWasCutShortFindsTheSameCodesAgain() throws Exception {
        FirstCodes first = FirstCodes.in(folder);
        assertThat(FirstCodes.in(folder).inputs()).isEqualTo(first.inputs());
    }
}
