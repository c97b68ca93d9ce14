package yardclock.core.reading;

import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;

/**
 * A passage that may have been the candidate's.
 *
 * @param isByRule whether the plan's trigger took it as it stands; otherwise a guard was spoiled
 */
record Possible(Passage passage, boolean isByRule) {
    TimedEdge edge() {
        return passage.edge();
    }

    long atMicros() {
        return passage.edge().stamp().micros();
    }
}
