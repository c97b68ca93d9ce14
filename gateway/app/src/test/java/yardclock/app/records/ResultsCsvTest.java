package yardclock.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.util.List;

class ResultsCsvTest {
    /** Check values: the rules of RFC 4180 section 2, numbers 5 to 7. */
    @Test
    void aCellIsQuotedWhereItMustBe() {
        assertThat(ResultsCsv.cell("plain")).isEqualTo("plain");
        assertThat(ResultsCsv.cell("")).isEmpty();
        assertThat(ResultsCsv.cell("a,b")).isEqualTo("\"a,b\"");
        assertThat(ResultsCsv.cell("a\r\nb")).isEqualTo("\"a\r\nb\"");
        assertThat(ResultsCsv.cell("say \"so\"")).isEqualTo("\"say \"\"so\"\"\"");
    }

    /** The characters a spreadsheet starts a formula with: common practice, no source. */
    @Test
    void whatASpreadsheetWouldCalculateIsMadeText() {
        for (String start : List.of("=", "+", "-", "@")) {
            assertThat(ResultsCsv.cell(start + "1")).isEqualTo("'" + start + "1");
        }
        assertThat(ResultsCsv.cell("\t=1")).isEqualTo("'\t=1");
        assertThat(ResultsCsv.cell("=HYPERLINK(\"x\")")).isEqualTo("\"'=HYPERLINK(\"\"x\"\")\"");
    }

    @Test
    void everyLineHasTheColumnsOfTheHeading() {
        String table = new String(ResultsCsv.of(SampleDay.day()), StandardCharsets.UTF_8);
        String[] lines = table.split("\r\n", -1);
        assertThat(lines).hasSize(4);
        assertThat(lines[3]).isEmpty();
        int columns = 15 + 3 * 9;
        assertThat(lines[0].split(",", -1)).hasSize(columns);
        assertThat(lines[0])
                .startsWith("number,run,group,outcome,")
                .contains(",hydrant-walk_split,");
        assertThat(lines[1])
                .startsWith(
                        "12,1,1,failed-criterion,\"'=1+2, \"\"so\"\" <b>&'\",11:40.0,699950001,")
                .contains(",yes,0,1,57.1,57050000,by-hand,");
        assertThat(lines[2].split(",", -1)).hasSize(columns);
        assertThat(lines[2]).startsWith("13,1,1,,,,,,,,,0,no,0,0,,,");
    }
}
