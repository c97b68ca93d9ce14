package yardclock.app.stations;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * One vector of the specification, found by walking up from the working folder to {@code
 * station-firmware-spec/}.
 */
record Vector(String name, boolean isValid, JsonNode json) {
    static final Path SPEC = spec();

    /** Every file under vectors/, whatever it is called: what cannot be read is a failure. */
    static List<Vector> all() throws IOException {
        List<Vector> vectors = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SPEC.resolve("vectors"))) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                String folder = file.getParent().getFileName().toString();
                if (file.endsWith("vectors/README.md")) {
                    continue;
                }
                if (!file.toString().endsWith(".json")
                        || !(folder.equals("valid") || folder.equals("invalid"))) {
                    throw new IOException("nobody reads " + file);
                }
                JsonNode json = Json.mapper().readTree(file.toFile());
                vectors.add(
                        new Vector(
                                folder + "/" + file.getFileName(), folder.equals("valid"), json));
            }
        }
        return vectors;
    }

    boolean isForUnit() {
        return json.get("for").textValue().equals("unit");
    }

    String topic() {
        return json.get("topic").textValue();
    }

    String leaf() {
        return topic().substring(topic().lastIndexOf('/') + 1);
    }

    /** The message: an object padded with spaces, a text, or bytes in hex. */
    byte[] bytes() {
        if (json.has("hex")) {
            return HexFormat.of().parseHex(json.get("hex").textValue());
        }
        String text =
                json.has("text") ? json.get("text").textValue() : json.get("payload").toString();
        int missing = json.path("padTo").intValue() - text.length();
        return (text + " ".repeat(Math.max(0, missing))).getBytes(StandardCharsets.UTF_8);
    }

    List<String> refused() {
        List<String> codes = new ArrayList<>();
        json.path("refused").forEach(code -> codes.add(code.textValue()));
        return codes;
    }

    /** The name: what a parameterised test shows. */
    @Override
    public String toString() {
        return name;
    }

    private static Path spec() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path spec = at.resolve("station-firmware-spec");
            if (Files.isDirectory(spec)) {
                return spec;
            }
        }
        throw new UncheckedIOException(
                new IOException("no station-firmware-spec above the working folder"));
    }
}
