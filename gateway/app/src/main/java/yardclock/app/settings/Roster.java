package yardclock.app.settings;

import yardclock.core.course.RosterLine;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The candidates of the day in the order of their file. The lines go to the journal, the names stay
 * here, in memory, and appear in no text this type makes of itself. Immutable.
 *
 * <p>The hash is taken over numbers and groups only, in their order: a hash over names would be a
 * trace of them in the journal, and a corrected spelling is no other roster.
 */
public final class Roster {
    private final List<RosterLine> lines;
    private final Map<Integer, String> names;
    private final String sha256;

    Roster(List<RosterLine> lines, Map<Integer, String> names) {
        this.lines = List.copyOf(lines);
        this.names = new TreeMap<>(names);
        StringBuilder hashed = new StringBuilder();
        this.lines.forEach(
                l -> hashed.append(l.number()).append(',').append(l.group()).append('\n'));
        this.sha256 = SourceFile.sha256(hashed.toString().getBytes(StandardCharsets.UTF_8));
    }

    public List<RosterLine> lines() {
        return lines;
    }

    /** The name behind a number, for the staff's eyes; never for the board or the journal. */
    public Optional<String> name(int number) {
        return Optional.ofNullable(names.get(number));
    }

    /** In lower-case hexadecimal, over one line {@code number,group} for each candidate. */
    public String sha256() {
        return sha256;
    }

    /** The first candidates of this roster, as for a short demonstration. */
    public Roster first(int candidates) {
        List<RosterLine> some = lines.subList(0, Math.min(candidates, lines.size()));
        Map<Integer, String> theirs = new TreeMap<>();
        some.forEach(line -> theirs.put(line.number(), names.get(line.number())));
        return new Roster(some, theirs);
    }

    @Override
    public String toString() {
        return "Roster of " + lines.size() + " candidates";
    }
}
