package yardclock.app.broker;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;

import yardclock.app.json.Json;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Who may connect to the broker: the gateway and each field unit, with its password.
 *
 * <p>The file {@code unit-passwords.json} is made at the first start with random passwords and can
 * be read by its owner only. Units that a later plan adds get one then; nothing is ever changed or
 * removed, since the passwords stand in the units too. Immutable; any thread may use it.
 */
public final class UnitPasswords {
    public static final String FILE = "unit-passwords.json";
    public static final String GATEWAY = "gateway";

    /** Without letters and digits that are taken for one another when typed into a unit. */
    private static final String ALPHABET = "abcdefghjkmnpqrstuvwxyz23456789";

    /** 31 to the 20th: 99 bits. */
    private static final int LENGTH = 20;

    private static final Set<PosixFilePermission> OWNER_ONLY =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    private final Map<String, String> passwords;

    private UnitPasswords(Map<String, String> passwords) {
        this.passwords = Map.copyOf(passwords);
    }

    /**
     * Reads the file under the data folder, and makes or completes it where needed.
     *
     * @throws IOException with a sentence for the operator when the file cannot be trusted
     */
    public static UnitPasswords in(Path folder, Collection<String> units) throws IOException {
        Path file = folder.resolve(FILE);
        Map<String, String> passwords = Files.exists(file) ? read(file) : new TreeMap<>();
        int before = passwords.size();
        SecureRandom random = new SecureRandom();
        passwords.computeIfAbsent(GATEWAY, name -> made(random));
        for (String unit : units) {
            passwords.computeIfAbsent(unit, name -> made(random));
        }
        if (passwords.size() > before) {
            write(file, passwords);
        }
        return new UnitPasswords(passwords);
    }

    /** The password of a unit or of the gateway; null when it has none. */
    public String of(String user) {
        return passwords.get(user);
    }

    boolean matches(String user, String password) {
        String expected = user == null ? null : passwords.get(user);
        return expected != null
                && password != null
                && MessageDigest.isEqual(
                        expected.getBytes(StandardCharsets.UTF_8),
                        password.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, String> read(Path file) throws IOException {
        if (!OWNER_ONLY.containsAll(Files.getPosixFilePermissions(file))) {
            throw new IOException(
                    file + " can be read by others than its owner; run: chmod 600 " + file);
        }
        try {
            Map<String, String> read =
                    Json.mapper().readValue(file.toFile(), new TypeReference<>() {});
            for (Map.Entry<String, String> each : read.entrySet()) {
                if (each.getValue() == null || each.getValue().isBlank()) {
                    throw new IOException(file + " gives " + each.getKey() + " no password");
                }
            }
            return new TreeMap<>(read);
        } catch (JsonProcessingException e) {
            throw new IOException(
                    file
                            + " is not a JSON object of names and passwords: "
                            + e.getOriginalMessage(),
                    e);
        }
    }

    private static void write(Path file, Map<String, String> passwords) throws IOException {
        Path draft = file.resolveSibling(FILE + ".draft");
        Files.deleteIfExists(draft);
        Files.createFile(draft, PosixFilePermissions.asFileAttribute(OWNER_ONLY));
        Files.write(
                draft, Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsBytes(passwords));
        Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private static String made(SecureRandom random) {
        StringBuilder made = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            made.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return made.toString();
    }
}
