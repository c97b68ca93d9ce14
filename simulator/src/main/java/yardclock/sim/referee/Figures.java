package yardclock.sim.referee;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;

/**
 * The one line a finished demo prints.
 *
 * @param edges distinct edges the units stamped
 * @param splitErrorMsP99 99th percentile of the automatic splits' error, exam time; null without
 *     splits
 * @param splitErrorRealMsP99 the same in real time: divided by the speed
 * @param lostEdges edges the units stamped that the journal does not hold
 * @param wrongAssignments marks proposed for the wrong candidate, station or occasion
 */
public record Figures(
        int candidates,
        int passed,
        int failed,
        int undecided,
        long edges,
        Double splitErrorMsP99,
        Double splitErrorRealMsP99,
        long lostEdges,
        int wrongAssignments,
        String digest) {
    public String line() {
        try {
            return Json.mapper().writeValueAsString(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("figures that are no JSON", e);
        }
    }
}
