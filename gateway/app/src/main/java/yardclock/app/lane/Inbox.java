package yardclock.app.lane;

import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;

import java.util.List;
import java.util.function.Consumer;

/**
 * Where adapters hand in inputs. Any thread may call it.
 *
 * <p>The inbox is bounded. {@link #offer} never waits long: when the inbox is full it returns false
 * and nothing was taken, and the adapter must say so to whoever sent it.
 */
public interface Inbox {
    /**
     * Hands in inputs that belong together (one message's edges). They are committed in one batch
     * and in this order.
     *
     * @param inputs at least one and at most {@link Limits#BATCH_INPUTS}
     * @param done called on the lane's thread after the commit, with one outcome an input; must be
     *     quick. When the journal could not be written it gets {@link Receipt#lost}, and the inputs
     *     were not applied. When the rules have failed, inputs are kept but not applied: outcomes
     *     are then empty, and the verdict of a ruling is null.
     */
    boolean offer(List<? extends Input> inputs, Consumer<Receipt> done);

    default boolean offer(Input input, Consumer<Receipt> done) {
        return offer(List.of(input), done);
    }

    /** What became of an offer: outcomes after the commit, or a sentence why it is not kept. */
    record Receipt(List<Outcome> outcomes, String lost) {
        public boolean isKept() {
            return lost == null;
        }
    }
}
