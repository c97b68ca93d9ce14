package yardclock.core.run;

import yardclock.core.course.Text;

import java.util.List;
import java.util.Locale;

/**
 * What other guards of one trigger would have found of a station's turns today. Nothing of it is
 * applied; who wants it so rules on the splits.
 *
 * @param version what judges now, as {@code 1+2}
 * @param judged of how many turns something can be said
 * @param unchanged of how many of those nothing would be other
 * @param changed the others, in the order they were run
 * @param silent of which nothing can be said, and why
 */
public record Rejudged(
        String station,
        String point,
        String version,
        int judged,
        int unchanged,
        List<Line> changed,
        List<Silent> silent) {
    public Rejudged {
        changed = List.copyOf(changed);
        silent = List.copyOf(silent);
    }

    /**
     * One turn that would be judged otherwise.
     *
     * @param run which attempt of the number, from 1
     * @param version of the trigger that judged it then
     * @param state where the split stands now, whoever decided it
     * @param standsMicros the split as it stands now; −1 for none
     * @param before by the guards that judged it, from all that is known now
     * @param after by the other guards, from the same
     */
    public record Line(
            int number,
            int run,
            String version,
            SplitState state,
            long standsMicros,
            Found before,
            Found after) {}

    /**
     * What one wording of the triggers finds.
     *
     * @param startMicros gateway time; −1 where there is none
     * @param splitMicros −1 while incomplete; then so are the limits
     * @param why how the finish was found, or what speaks against the split
     */
    public record Found(
            long startMicros,
            long finishMicros,
            long splitMicros,
            long lowerMicros,
            long upperMicros,
            SplitLabel label,
            Text why) {
        static Found of(Turn turn) {
            Split split = Splits.of(turn);
            return new Found(
                    micros(turn.start()),
                    micros(turn.derivedFinish()),
                    split.micros(),
                    split.lowerMicros(),
                    split.upperMicros(),
                    split.label(),
                    split.why());
        }

        private static long micros(Mark mark) {
            return mark == null ? -1 : mark.best().micros();
        }
    }

    /** A turn of which nothing can be said. */
    public record Silent(int number, int run, Why why) {}

    /** Why nothing can be said of a turn. */
    public enum Why {
        /** It is under way. */
        UNDER_WAY,
        /** The attempt ended here before its time, and what came after was not judged. */
        ENDED,
        /** A sensor rattled without end, and not all its edges were kept. */
        EDGES_LOST,
        /** Edges of that time came, or may have come, when the turn took none any more. */
        CAME_TOO_LATE,
        /** The station was ready again, or time has not passed, before the guards are through. */
        NOT_OVER;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
