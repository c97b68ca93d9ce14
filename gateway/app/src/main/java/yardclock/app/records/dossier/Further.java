package yardclock.app.records.dossier;

import yardclock.core.course.Text;
import yardclock.core.result.Result;
import yardclock.core.run.Elapsed;

import java.util.List;

/**
 * What a timeline says since the second version of a dossier's form. Instants as in {@link
 * Timeline}. Immutable.
 *
 * @param walls what the wall clock read and when; times of day for reading follow from these
 * @param official null while there is no result
 * @param units the field units of the attempt's stations, from its release until its time or its
 *     outcome was known
 */
public record Further(
        List<WallLine> walls,
        Official official,
        List<PassageLine> passages,
        List<HoldLine> holds,
        List<CallLine> calls,
        List<UnitLine> units) {
    public Further {
        walls = List.copyOf(walls);
        passages = List.copyOf(passages);
        holds = List.copyOf(holds);
        calls = List.copyOf(calls);
        units = List.copyOf(units);
    }

    /**
     * @param speed exam time per real time from here on
     */
    public record WallLine(long entry, long gatewayMicros, long wallMicros, int speed) {}

    /**
     * The official time as the plan displays it, and what its interval is made of.
     *
     * @param parts null without an official time
     * @param settled by final clock values; null while these are open
     */
    public record Official(String display, Elapsed.Parts parts, Result.Settled settled) {}

    /**
     * What a trigger recognised by the plan's rule.
     *
     * @param entry of the edge that stamps it
     * @param rule the plan's version and the count of adjustments on the bench, as {@code 3+0}
     * @param isMark whether the mark that stands rests on it
     * @param edges the entries of all its edges
     * @param partsMicros how long each of its parts lasted; −1 where an end of it was not seen
     */
    public record PassageLine(
            String station,
            String point,
            long entry,
            long micros,
            long lowerMicros,
            long upperMicros,
            String rule,
            boolean isMark,
            List<Long> edges,
            List<Long> partsMicros) {
        public PassageLine {
            edges = List.copyOf(edges);
            partsMicros = List.copyOf(partsMicros);
        }
    }

    /**
     * @param inMicros −1 where the press has no time
     * @param micros as pressed; −1 while it lasts or an end has no time
     */
    public record HoldLine(
            long inMicros,
            long inLowerMicros,
            long inUpperMicros,
            long outMicros,
            long outLowerMicros,
            long outUpperMicros,
            long micros,
            String reason) {}

    /** A warning or a fault as called. */
    public record CallLine(
            String station, String criterion, boolean fault, long micros, String person) {}

    /**
     * One field unit in the attempt's time.
     *
     * @param reports how many signs of life it gave
     * @param longestGapMicros between two of them, the last before the attempt among them
     * @param boots how many times it had started; 1 when it ran through
     * @param batteryLowestMillivolts 0 where it did not say; so with the others
     */
    public record UnitLine(
            String unit,
            Text place,
            List<String> stations,
            long reports,
            long longestGapMicros,
            int boots,
            int batteryLowestMillivolts,
            int rssiWeakestDbm,
            int bufferFullest,
            long memoryLowest,
            String firmware) {
        public UnitLine {
            stations = List.copyOf(stations);
        }
    }
}
