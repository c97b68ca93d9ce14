package yardclock.app.broker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

class UnitPasswordsTest {
    @TempDir Path folder;

    @Test
    void theFirstStartMakesAPasswordForEveryUnitAndTheGateway() throws IOException {
        UnitPasswords made = UnitPasswords.in(folder, List.of("fu-01", "fu-02"));
        assertThat(List.of(made.of("fu-01"), made.of("fu-02"), made.of("gateway")))
                .doesNotHaveDuplicates()
                .allMatch(password -> password.length() == 20);
        assertThat(made.of("fu-03")).isNull();
    }

    @Test
    void onlyTheOwnerCanReadTheFile() throws IOException {
        UnitPasswords.in(folder, List.of("fu-01"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
    }

    @Test
    void aLaterPlanAddsUnitsAndChangesNoPassword() throws IOException {
        UnitPasswords before = UnitPasswords.in(folder, List.of("fu-01"));
        UnitPasswords after = UnitPasswords.in(folder, List.of("fu-02"));
        assertThat(after.of("fu-01")).isEqualTo(before.of("fu-01"));
        assertThat(after.of("gateway")).isEqualTo(before.of("gateway"));
        assertThat(after.of("fu-02")).isNotNull();
    }

    @Test
    void aFileThatOthersCanReadIsRefused() throws IOException {
        UnitPasswords.in(folder, List.of("fu-01"));
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-r--r--"));
        assertThatThrownBy(() -> UnitPasswords.in(folder, List.of("fu-01")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("chmod 600");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{\"fu-01\":", "{\"fu-01\":\"\"}", "{\"fu-01\":null}"})
    void aFileThatCannotBeTrustedMeansRefusingToStart(String text) throws IOException {
        UnitPasswords.in(folder, List.of("fu-01"));
        Files.writeString(file(), text);
        assertThatThrownBy(() -> UnitPasswords.in(folder, List.of("fu-01")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(UnitPasswords.FILE);
    }

    private Path file() {
        return folder.resolve(UnitPasswords.FILE);
    }
}
