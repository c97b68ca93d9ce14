package yardclock.core.run;

import java.util.List;

/**
 * Who ruled, on what, by which clocks, and what was on their screen.
 *
 * @param deviceMicros the tablet's own clock at the press, 0 when it has none
 * @param atMicros gateway time when it was in
 * @param basis the revision of the attempt that was shown, −1 when none was
 * @param shownMicros the splits that were shown, best reading first; empty when none was
 */
public record RuledBy(
        String person,
        String role,
        String device,
        long deviceMicros,
        long atMicros,
        long basis,
        List<Long> shownMicros) {
    public RuledBy {
        shownMicros = List.copyOf(shownMicros);
    }
}
