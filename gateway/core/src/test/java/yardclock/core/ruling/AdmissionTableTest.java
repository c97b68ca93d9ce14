package yardclock.core.ruling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The written table of who may do what, and the written precedence of refusals, are the code's. */
class AdmissionTableTest {
    private static final Path RECORD = Path.of("../decisions/0023-rulings-that-supersede.md");

    @Test
    void the_record_says_of_each_act_who_may_do_it() throws IOException {
        List<String> written = lines("| `");
        List<String> rows = new ArrayList<>();
        for (ActKind kind : ActKind.values()) {
            StringBuilder row = new StringBuilder("| `" + kind.word() + "` |");
            for (Role role : Role.values()) {
                row.append(kind.allows(role) ? " yes |" : " – |");
            }
            rows.add(row.toString());
        }
        assertThat(written).isEqualTo(rows);
    }

    @Test
    void the_record_lists_the_refusals_in_the_order_they_are_given() throws IOException {
        List<String> written =
                Files.readAllLines(RECORD).stream()
                        .filter(line -> line.matches("\\d+\\. `[a-z-]+`"))
                        .map(line -> line.replaceAll("^\\d+\\. `|`$", ""))
                        .toList();
        Stream<String> codes = Arrays.stream(Refusal.values()).map(Refusal::code);
        assertThat(written).isEqualTo(codes.toList());
    }

    private static List<String> lines(String start) throws IOException {
        return Files.readAllLines(RECORD).stream().filter(l -> l.startsWith(start)).toList();
    }
}
