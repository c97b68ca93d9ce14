package yardclock.app.access;

import com.fasterxml.jackson.core.type.TypeReference;

import yardclock.app.json.Json;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Role;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The codes a new gateway starts with, in a file that only its owner can read.
 *
 * <p>The file is written before the journal learns of the codes: after a crash in between, the same
 * codes are handed in again, and nobody is locked out. Call from the start-up thread.
 */
public final class FirstCodes {
    private static final String FILE = "first-codes.json";
    private static final TypeReference<TreeMap<String, List<String>>> SHAPE =
            new TypeReference<>() {};

    private final TreeMap<String, List<String>> byRole;

    private FirstCodes(TreeMap<String, List<String>> byRole) {
        this.byRole = byRole;
    }

    /** Reads the file in this folder, or makes codes and writes it. */
    public static FirstCodes in(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        if (Files.exists(file)) {
            return new FirstCodes(Json.mapper().readValue(Files.readAllBytes(file), SHAPE));
        }
        FirstCodes made = make();
        Path draft = folder.resolve(FILE + ".new");
        Files.deleteIfExists(draft);
        Files.createFile(
                draft,
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        Files.write(draft, Json.mapper().writeValueAsBytes(made.byRole));
        Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        return made;
    }

    private static FirstCodes make() {
        Secrets secrets = new Secrets();
        TreeMap<String, List<String>> byRole = new TreeMap<>();
        for (Role role : Role.values()) {
            List<String> codes = new ArrayList<>();
            for (int i = 0; i < howMany(role); i++) {
                codes.add(secrets.code());
            }
            byRole.put(role.word(), codes);
        }
        return new FirstCodes(byRole);
    }

    private static int howMany(Role role) {
        return switch (role) {
            case COORDINATOR, TECHNICIAN, SAFETY -> 1;
            case CREW -> 2;
            case PROCTOR -> 8;
        };
    }

    /** The codes for one role, to print or to show. */
    public List<String> of(Role role) {
        return List.copyOf(byRole.getOrDefault(role.word(), List.of()));
    }

    /** What the journal must learn; handing it in twice does no harm. */
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (Role role : Role.values()) {
            for (String code : of(role)) {
                inputs.add(new Input.CodeIssued(Secrets.sha256(code), role, ""));
            }
        }
        return inputs;
    }
}
