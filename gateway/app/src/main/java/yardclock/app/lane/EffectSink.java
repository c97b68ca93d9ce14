package yardclock.app.lane;

import yardclock.core.fact.Effect;

import java.util.List;

/**
 * Where the engine's effects go once the entries that asked for them are committed.
 *
 * <p>Called on the lane's thread, before the receipts of the same batch. It must only put the
 * effects aside for a thread of its own and may drop what it cannot carry: repeating an effect does
 * no harm, and {@code engine.standing()}, asked through {@link Questions}, says at any time what
 * must hold in the world.
 */
@FunctionalInterface
public interface EffectSink {
    void release(List<Effect> effects);
}
