package yardclock.core.engine;

import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.ruling.Verdict;

import java.util.List;
import java.util.OptionalLong;

/**
 * What one entry led to.
 *
 * @param verdict the answer for rulings, codes and enrolments; null for other kinds
 * @param nextDeadlineMicros the gateway time at which the lane must hand in a {@link
 *     Input.Deadline}, if nothing else has changed it before
 */
public record Outcome(
        List<Fact> facts, List<Effect> effects, Verdict verdict, OptionalLong nextDeadlineMicros) {
    public Outcome {
        facts = List.copyOf(facts);
        effects = List.copyOf(effects);
    }
}
