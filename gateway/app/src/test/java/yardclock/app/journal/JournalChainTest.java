package yardclock.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;

/** Somebody took the guards away first; the chain still tells. */
class JournalChainTest {
    private static final String BODY = "{\"unit\":\"ñ\"}";
    private static final byte[] FRAMED = framed();

    @TempDir Path directory;

    @BeforeEach
    void fill() throws Exception {
        try (JournalFile journal = JournalFile.open(directory, entry -> {})) {
            journal.append(Samples.edges(1, 9));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE entries SET body = replace(body, '4000', '4001') WHERE entry = 4 | 4",
                "UPDATE entries SET kind = 'health' WHERE entry = 4 | 4",
                "UPDATE entries SET gateway_micros = 41 WHERE entry = 4 | 4",
                "UPDATE entries SET hash = zeroblob(32) WHERE entry = 4 | 4",
                "UPDATE entries SET previous = zeroblob(32) WHERE entry = 4 | 4",
                "DELETE FROM entries WHERE entry = 4 | 4",
                "DELETE FROM entries WHERE entry = 1 | 1",
                "UPDATE entries SET entry = 19 WHERE entry = 9 | 9",
            })
    void namesTheFirstBrokenEntry(String tampering, long broken) throws Exception {
        withoutGuards(tampering);
        assertThatThrownBy(() -> JournalFile.open(directory, entry -> {}))
                .isInstanceOf(JournalRefusedException.class)
                .hasMessageContaining("the first broken entry is " + broken + " ");
        try (JournalReader reader = JournalReader.open(file())) {
            assertThatThrownBy(() -> reader.entries(entry -> {}))
                    .hasMessageContaining("the first broken entry is " + broken + " ");
        }
    }

    @Test
    void isWhatItsDescriptionSays() throws Exception {
        byte[] beginning = sha256("yardclock journal 2".getBytes(StandardCharsets.UTF_8));
        byte[] content = sha256(FRAMED);

        Row row = new Chain().link(1, "edge", -5, BODY);

        assertThat(row.previous()).isEqualTo(beginning);
        assertThat(row.hash()).isEqualTo(sha256(beginning, content));
    }

    @Test
    void goesOnAsAJournalOfTheFirstFormatWasBegun() throws Exception {
        byte[] beginning = sha256("yardclock journal 1".getBytes(StandardCharsets.UTF_8));

        Row row = new Chain(1).link(1, "edge", -5, BODY);

        assertThat(row.previous()).isEqualTo(beginning);
        assertThat(row.hash()).isEqualTo(sha256(beginning, FRAMED));
    }

    @Test
    void tellsKindAndBodyApartHoweverTheyAreSplit() {
        byte[] one = new Chain().link(1, "ab", 0, "c").hash();
        byte[] other = new Chain().link(1, "a", 0, "bc").hash();
        assertThat(one).isNotEqualTo(other);
    }

    private void withoutGuards(String sql) throws Exception {
        try (Connection stranger = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = stranger.createStatement()) {
            statement.execute("DROP TRIGGER entries_are_never_changed");
            statement.execute("DROP TRIGGER entries_are_never_removed");
            statement.execute(sql);
        }
    }

    private Path file() {
        return directory.resolve(JournalFile.NAME);
    }

    private static byte[] sha256(byte[]... parts) throws Exception {
        MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
        for (byte[] part : parts) {
            sha256.update(part);
        }
        return sha256.digest();
    }

    /** Entry 1 of kind "edge" at −5 µs with this body, as {@link Chain} says it is written. */
    private static byte[] framed() {
        byte[] kind = "edge".getBytes(StandardCharsets.UTF_8);
        byte[] body = BODY.getBytes(StandardCharsets.UTF_8);
        ByteBuffer framed = ByteBuffer.allocate(8 + 8 + 4 + kind.length + 4 + body.length);
        framed.putLong(1).putLong(-5);
        framed.putInt(kind.length).put(kind).putInt(body.length).put(body);
        return framed.array();
    }
}
