package yardclock.app.lane;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;

/**
 * Where pictures of the state are drawn for screens.
 *
 * <p>Called on the lane's thread and on no other: after batches, at most every {@link
 * Limits#FRAME_GAP_MILLIS}, and at least every {@link Limits#FRAME_AGE_MILLIS} so that ages move
 * on. It projects the frames it needs there and then, hands them to threads of its own, and keeps
 * no reference to the engine.
 */
@FunctionalInterface
public interface FrameSink {
    void accept(Engine engine, View view);
}
