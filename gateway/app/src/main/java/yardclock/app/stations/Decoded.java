package yardclock.app.stations;

import yardclock.core.engine.Input;

import java.util.List;
import java.util.Optional;

/**
 * What a unit's message says: inputs, or the answer to an exchange, or refusals.
 *
 * <p>An array of edges may give both: its sound edges are taken, each unsound one is refused, so
 * that one bad edge does not hold up its neighbours for ever. Every other message gives one thing.
 */
public record Decoded(List<Input> inputs, Optional<Answer> answer, List<Rejection> rejections) {
    static final Decoded NOTHING = new Decoded(List.of(), Optional.empty(), List.of());

    public Decoded {
        inputs = List.copyOf(inputs);
        rejections = List.copyOf(rejections);
    }

    /** A unit's half of an exchange; the gateway's stamps are added by who asked. */
    public record Answer(String unit, String boot, String id, long receivedTick, long sentTick) {}

    static Decoded of(Input input) {
        return new Decoded(List.of(input), Optional.empty(), List.of());
    }

    static Decoded of(Answer answer) {
        return new Decoded(List.of(), Optional.of(answer), List.of());
    }

    static Decoded refused(RejectionReason reason, String words) {
        return refused(new Rejection(reason, words));
    }

    /** A refusal the journal may hear of as well. */
    static Decoded refused(Rejection rejection, Optional<Input> told) {
        return new Decoded(told.stream().toList(), Optional.empty(), List.of(rejection));
    }

    static Decoded refused(Rejection rejection) {
        return new Decoded(List.of(), Optional.empty(), List.of(rejection));
    }
}
