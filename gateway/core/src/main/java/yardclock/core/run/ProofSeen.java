package yardclock.core.run;

import yardclock.core.time.Stamp;

import java.util.List;

/**
 * What a proof run saw at one point by now, by the sensors and by hand.
 *
 * @param count how often it has to be seen
 * @param isJudged whether a person's press makes this mark; then instants are not compared
 * @param isWired whether some sensor, button or output is to be seen here
 * @param automatic instants by the trigger's rule, in time order, with their own limits
 * @param pressed presses with a time, in time order, with the tablet clock's limits alone
 * @param presses how many presses there are, those without a time included
 */
public record ProofSeen(
        String station,
        String point,
        int count,
        boolean isJudged,
        boolean isWired,
        List<Stamp> automatic,
        List<Stamp> pressed,
        int presses) {
    public ProofSeen {
        automatic = List.copyOf(automatic);
        pressed = List.copyOf(pressed);
    }
}
