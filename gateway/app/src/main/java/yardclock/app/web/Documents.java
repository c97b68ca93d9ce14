package yardclock.app.web;

import yardclock.app.lane.Answer;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;

import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/**
 * The documents of the day, as the HTTP side needs them. What an answer holds is drawn when it is
 * asked for, on the thread that writes it out.
 *
 * @param plan the frozen plan; empty while there is none
 * @param telling the telling sheet of a number as HTML, for the one who asks
 * @param dossier the dossier of a number; drawing it may take minutes and gives nothing while
 *     another one is made or handed out. What it gives must be closed
 */
public record Documents(
        Supplier<Optional<Input.PlanFrozen>> plan,
        Supplier<CompletionStage<Answer<Supplier<byte[]>>>> resultsJson,
        Supplier<CompletionStage<Answer<Supplier<byte[]>>>> resultsCsv,
        BiFunction<Integer, Holder, CompletionStage<Answer<Supplier<String>>>> telling,
        BiFunction<Integer, DossierForm, CompletionStage<Answer<Supplier<Optional<InputStream>>>>>
                dossier) {}
