package yardclock.app.settings;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a roster from its CSV file ({@code number,name,group}, with that header): the whole roster,
 * or every problem of it. Stateless; any thread may call it.
 */
public final class RosterFile {
    private static final CsvFactory CSV =
            CsvFactory.builder().enable(CsvParser.Feature.TRIM_SPACES).build();

    private RosterFile() {}

    public static Reading<Roster> read(Path path) {
        Findings findings = new Findings(path.toString());
        Optional<byte[]> bytes = SourceFile.bytes(path, findings);
        return bytes.isPresent()
                ? read(bytes.get(), findings)
                : Reading.refused(findings.problems());
    }

    /**
     * Reads a roster that is in memory already.
     *
     * @param name what problems call the file
     */
    public static Reading<Roster> read(byte[] bytes, String name) {
        return read(bytes, new Findings(name));
    }

    private static Reading<Roster> read(byte[] bytes, Findings findings) {
        RosterRows roster = new RosterRows(findings);
        SourceFile.text(bytes, findings).ifPresent(text -> rows(text, roster, findings));
        return findings.isEmpty()
                ? Reading.of(roster.roster(), findings.file())
                : Reading.refused(findings.problems());
    }

    private static void rows(String text, RosterRows roster, Findings findings) {
        try (CsvParser parser = CSV.createParser(text)) {
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                row(parser, roster);
            }
            roster.end();
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String wrong = "not readable as CSV: " + e.getOriginalMessage();
            findings.add(at == null ? 0 : at.getLineNr(), "", wrong, "");
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory cannot fail", e);
        }
    }

    private static void row(CsvParser parser, RosterRows roster) throws IOException {
        int line = 0;
        List<String> fields = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            // The row's own token stands at the end of the row before; its first field does not.
            line = line == 0 ? parser.currentTokenLocation().getLineNr() : line;
            fields.add(parser.getText().strip());
        }
        roster.add(line, fields);
    }
}
