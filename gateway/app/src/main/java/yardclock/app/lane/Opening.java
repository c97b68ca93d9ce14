package yardclock.app.lane;

import yardclock.core.engine.Input;

import java.util.List;

/**
 * The start's own inputs: the epoch, and on the first day the plan, the roster and the first codes.
 * They are kept before anything else is taken in.
 *
 * @param micros the gateway time of the anchor the epoch speaks of
 */
public record Opening(long micros, List<Input> inputs) {
    public Opening {
        inputs = List.copyOf(inputs);
    }

    static Opening none() {
        return new Opening(0, List.of());
    }

    boolean isEmpty() {
        return inputs.isEmpty();
    }
}
