package yardclock.core.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Gathers the day's taps beside the automatic marks of the same instants. Reads the state only. */
public final class SecondClocks {
    /** A tap further from the mark than this was for another instant. */
    static final long SAME_INSTANT_MICROS = 2_000_000;

    private final List<Pair> pairs = new ArrayList<>();

    private record Pair(SecondClock.About about, long tappedMicros, long differenceMicros) {}

    public SecondClocks(CourseRun course) {
        for (Attempt attempt : course.attempts()) {
            for (Turn turn : attempt.turns()) {
                String station = turn.station().id();
                take(station, TurnJudge.START, turn.startTap(), turn.derivedStart());
                take(station, TurnJudge.FINISH, turn.finishTap(), turn.derivedFinish());
            }
        }
        pairs.sort(Comparator.comparingLong(Pair::tappedMicros));
    }

    private void take(String station, String point, Mark tap, Mark seen) {
        if (tap == null || seen == null || seen.isByHand() || tap.line() != seen.line()) {
            return;
        }
        long tapped = HandMarks.pressOf(tap).micros();
        long difference = tapped - seen.best().micros();
        if (Math.abs(difference) <= SAME_INSTANT_MICROS) {
            String device = tap.press().device();
            SecondClock.About about = new SecondClock.About(station, point, device);
            pairs.add(new Pair(about, tapped, difference));
        }
    }

    /** For each start and finish that was both tapped and seen, in the order they first were. */
    public List<SecondClock> byPoint() {
        return by(about -> new SecondClock.About(about.station(), about.point(), ""));
    }

    /** For each proctor's tablet. */
    public List<SecondClock> byProctor() {
        return by(about -> new SecondClock.About("", "", about.device()));
    }

    private List<SecondClock> by(Function<SecondClock.About, SecondClock.About> key) {
        Map<SecondClock.About, List<Long>> gathered = new LinkedHashMap<>();
        for (Pair pair : pairs) {
            gathered.computeIfAbsent(key.apply(pair.about()), k -> new ArrayList<>())
                    .add(pair.differenceMicros());
        }
        List<SecondClock> clocks = new ArrayList<>();
        gathered.forEach((about, all) -> clocks.add(SecondClock.of(about, all)));
        return clocks;
    }
}
