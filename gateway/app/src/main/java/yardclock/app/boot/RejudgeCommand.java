package yardclock.app.boot;

import com.fasterxml.jackson.core.JsonProcessingException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.json.Json;
import yardclock.core.board.TriggerView;
import yardclock.core.course.GuardLimit;
import yardclock.core.course.GuardTimes;
import yardclock.core.engine.Engine;
import yardclock.core.ruling.Rejudgement;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/** Says what other guards of a trigger would have found of the turns in a journal. */
@Command(
        name = "rejudge",
        description = {
            "Judges a station's turns anew with other guards of one trigger and prints what would"
                    + " be other as one JSON object.",
            "Nothing is changed. It may be done while a gateway runs on the journal."
        },
        mixinStandardHelpOptions = true)
final class RejudgeCommand implements Callable<Integer> {
    private static final long MOST_MILLIS = 3_600_000;

    @Spec private CommandSpec spec;

    @Option(
            names = "--journal",
            required = true,
            paramLabel = "FILE",
            description = "the journal, as DIR/journal.db")
    private Path file;

    @Option(names = "--station", required = true, paramLabel = "ID", description = "of the plan")
    private String station;

    @Option(
            names = "--point",
            required = true,
            paramLabel = "POINT",
            description = "start, finish or a checkpoint's id")
    private String point;

    @Option(
            names = "--guard",
            paramLabel = "NAME=MS",
            description = "as minBlock=120; those not named are as in force at the journal's end")
    private Map<String, Long> guards = new TreeMap<>();

    @Override
    public Integer call() throws RefusedException, JsonProcessingException {
        check();
        Engine engine = Replayed.of(file, Long.MAX_VALUE).engine();
        Rejudgement answer =
                engine.rejudge(new Rejudgement.Question(station, point, times(engine)));
        if (answer.refusal() != null) {
            throw new RefusedException(answer.refusal().words());
        }
        spec.commandLine().getOut().println(Json.mapper().writeValueAsString(answer.found()));
        return 0;
    }

    private void check() throws RefusedException {
        List<String> known = Arrays.stream(GuardLimit.values()).map(GuardLimit::word).toList();
        for (Map.Entry<String, Long> guard : guards.entrySet()) {
            String said = "--guard " + guard.getKey() + "=" + guard.getValue();
            if (!known.contains(guard.getKey())) {
                throw new RefusedException(said + " is none of " + String.join(", ", known) + ".");
            }
            if (guard.getValue() < 0 || guard.getValue() > MOST_MILLIS) {
                throw new RefusedException(said + " is no time from 0 to 3600000 ms.");
            }
        }
    }

    private GuardTimes times(Engine engine) {
        Map<String, Long> micros = new TreeMap<>();
        if (engine.plan().isPresent()) {
            for (TriggerView one : engine.bench(new Engine.View(0, List.of())).triggers()) {
                if (one.station().equals(station) && one.point().equals(point)) {
                    one.guards().forEach(guard -> micros.put(guard.guard(), guard.micros()));
                }
            }
        }
        guards.forEach((name, millis) -> micros.put(name, millis * 1_000));
        return new GuardTimes(
                of(micros, GuardLimit.LOCKOUT),
                of(micros, GuardLimit.STAYS_FOR),
                of(micros, GuardLimit.CLEAR_FOR),
                of(micros, GuardLimit.STOOD_FOR),
                of(micros, GuardLimit.MIN_BLOCK),
                of(micros, GuardLimit.MERGE_GAP),
                of(micros, GuardLimit.WITHIN),
                of(micros, GuardLimit.SPACING));
    }

    private static long of(Map<String, Long> micros, GuardLimit guard) {
        return micros.getOrDefault(guard.word(), 0L);
    }
}
