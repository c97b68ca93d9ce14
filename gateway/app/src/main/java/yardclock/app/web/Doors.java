package yardclock.app.web;

import yardclock.app.lane.Answer;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Role;

import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Who may come in, as the HTTP side needs it. Each may be called from any thread and answers on
 * any.
 *
 * @param holder who holds a token
 * @param enrol trades a code for a token: code and person in; what is written as JSON out
 * @param issue makes a code: its role and the issuing device in
 */
public record Doors(
        Function<String, CompletionStage<Answer<Optional<Holder>>>> holder,
        BiFunction<String, String, ? extends CompletionStage<? extends Answer<?>>> enrol,
        BiFunction<Role, String, ? extends CompletionStage<? extends Answer<?>>> issue) {}
