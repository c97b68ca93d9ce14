package yardclock.sim.referee;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a rough day came to, beside its truth. Figures of several days can be added.
 *
 * @param splits how many were truly run, from a true start to a true finish
 * @param proposedClean how many of them the proctor saw as clean before ruling
 * @param cleanWrong splits ever called clean with a wrong number, stamp or interval
 * @param ambiguousTruthFirst shown with several readings, the truth before the others
 * @param notProposed shown as neither, or not at all
 * @param passages of candidates at sensors
 * @param edges distinct ones in the journal
 * @param edgesBy what became of them, by disposition and cause, as {@code explained: crossing}
 * @param edgesUnaccounted edges of the journal of which the gateway does not know what became
 * @param lostEdges edges the units stamped that the journal does not hold
 */
public record RoughFigures(
        List<Long> seeds,
        int candidates,
        int splits,
        int proposedClean,
        int cleanWrong,
        int ambiguousTruthFirst,
        int ambiguousTruthNotFirst,
        int notProposed,
        int passages,
        int strays,
        double straysPerHundred,
        int outages,
        long edges,
        Map<String, Long> edgesBy,
        long edgesUnaccounted,
        long lostEdges,
        long wallMillis) {
    /** At least so many of a hundred splits must be clean. */
    static final int CLEAN_PERCENT = 85;

    /** At least so many must be clean, or ambiguous with the truth first. */
    static final int RIGHT_PERCENT = 97;

    /** What is not as it must be, in plain words; empty when all is. */
    public List<String> broken() {
        List<String> broken = new ArrayList<>();
        if (cleanWrong > 0) {
            broken.add(cleanWrong + " splits were called clean and were wrong; none may be.");
        }
        if (isBelow(proposedClean, CLEAN_PERCENT)) {
            broken.add(share(proposedClean) + " were clean; at least 85 % must be.");
        }
        int right = proposedClean + ambiguousTruthFirst;
        if (isBelow(right, RIGHT_PERCENT)) {
            String words = " were clean, or ambiguous with the truth first; at least 97 % must be.";
            broken.add(share(right) + words);
        }
        if (edgesUnaccounted > 0) {
            broken.add(edgesUnaccounted + " edges of the journal are accounted for nowhere.");
        }
        if (lostEdges > 0) {
            broken.add(lostEdges + " edges that units stamped are not in the journal.");
        }
        return broken;
    }

    private boolean isBelow(int count, int percent) {
        return count * 100L < (long) splits * percent;
    }

    private String share(int count) {
        long permille = splits == 0 ? 0 : count * 1_000L / splits;
        return count + " of " + splits + " splits (" + permille / 10 + "." + permille % 10 + " %)";
    }

    public String line() {
        try {
            return Json.mapper().writeValueAsString(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("figures that are no JSON", e);
        }
    }

    /** Two days together. */
    public RoughFigures plus(RoughFigures other) {
        List<Long> both = new ArrayList<>(seeds);
        both.addAll(other.seeds);
        int allPassages = passages + other.passages;
        int allStrays = strays + other.strays;
        return new RoughFigures(
                both,
                candidates + other.candidates,
                splits + other.splits,
                proposedClean + other.proposedClean,
                cleanWrong + other.cleanWrong,
                ambiguousTruthFirst + other.ambiguousTruthFirst,
                ambiguousTruthNotFirst + other.ambiguousTruthNotFirst,
                notProposed + other.notProposed,
                allPassages,
                allStrays,
                perHundred(allStrays, allPassages),
                outages + other.outages,
                edges + other.edges,
                sum(edgesBy, other.edgesBy),
                edgesUnaccounted + other.edgesUnaccounted,
                lostEdges + other.lostEdges,
                wallMillis + other.wallMillis);
    }

    private static Map<String, Long> sum(Map<String, Long> one, Map<String, Long> other) {
        Map<String, Long> sum = new TreeMap<>(one);
        other.forEach((word, count) -> sum.merge(word, count, Long::sum));
        return sum;
    }

    /** To one decimal place. */
    static double perHundred(int strays, int passages) {
        return passages == 0 ? 0 : Math.round(strays * 1_000.0 / passages) / 10.0;
    }
}
