package yardclock.sim.demo;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.settings.Roster;
import yardclock.sim.referee.Figures;
import yardclock.sim.tablets.Gateway;
import yardclock.sim.units.UnitCounts;

import java.io.PrintWriter;
import java.net.URI;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The demo from start to end, in the caller's thread: gateway up, people in, day run, figures out.
 *
 * <p>What a person should read goes to one writer, the line of figures to another, so that a
 * program can read the last.
 */
public final class Demo {
    private static final int UP_SECONDS = 60;
    private static final int PROGRESS_SECONDS = 5;
    private static final int SETTLE_SECONDS = 15;
    private static final long STUCK_REAL_NANOS = TimeUnit.MINUTES.toNanos(2);
    private static final long STUCK_EXAM_MICROS = TimeUnit.MINUTES.toMicros(25);

    private final DemoSettings settings;
    private final PrintWriter words;
    private final PrintWriter figures;

    public Demo(DemoSettings settings, PrintWriter words, PrintWriter figures) {
        this.settings = settings;
        this.words = words;
        this.figures = figures;
    }

    /** Runs until every candidate is done, or until the process is told to stop. */
    public void run() throws DemoFailedException, InterruptedException {
        DayFolder folder = DayFolder.forNewDay(settings.data());
        Roster roster = folder.writeRoster(settings.candidates());
        GatewayProcess process = new GatewayProcess(settings, folder);
        Thread stopping = new Thread(process::stop, "stopping");
        Runtime.getRuntime().addShutdownHook(stopping);
        try {
            process.start();
            CompletableFuture<Integer> death = process.death();
            awaitUp(settings.http(), process);
            try (SimulatedDay day = new SimulatedDay(settings, folder, roster)) {
                announce(day, folder);
                day.begin();
                watch(day, death, process);
                if (settings.untilFinished()) {
                    figures.println(judge(day, process).line());
                } else {
                    say("Every candidate is done. The pages stay up until Ctrl-C.");
                    death.join();
                    throw ended(process);
                }
            }
        } finally {
            process.stop();
        }
    }

    /** Waits until the gateway answers and its broker is up. */
    public static void awaitUp(String http, GatewayProcess process)
            throws DemoFailedException, InterruptedException {
        try (Gateway gateway = new Gateway(URI.create("http://" + http))) {
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(UP_SECONDS);
            while (System.nanoTime() < until) {
                if (!process.isAlive()) {
                    throw ended(process);
                }
                Gateway.Answer state = Enrolment.await(gateway.get("/api/state", ""));
                if (state.isOk() && state.body().path("broker").asText().equals("up")) {
                    return;
                }
                TimeUnit.MILLISECONDS.sleep(100);
            }
        }
        throw new DemoFailedException("The gateway did not come up within a minute.");
    }

    private static DemoFailedException ended(GatewayProcess process) {
        return new DemoFailedException(
                "The gateway has ended by itself. Its last words:"
                        + System.lineSeparator()
                        + process.lastWords());
    }

    private void announce(SimulatedDay day, DayFolder folder) {
        String pages = "http://" + settings.http();
        say("The pages are at " + pages + "/ and the public board at " + pages + "/board");
        say("To take part, open one of these; each code works once:");
        for (Map.Entry<String, String> role : day.codesForPeople().entrySet()) {
            say("  %-12s %s/enrol#%s".formatted(role.getKey(), pages, role.getValue()));
        }
        say("The day is kept in " + folder.path());
        say(
                "%d candidates, exam time %d times real time, seed %d. Ctrl-C ends it."
                        .formatted(settings.candidates(), settings.speed(), settings.seed()));
    }

    private void watch(SimulatedDay day, CompletableFuture<Integer> death, GatewayProcess process)
            throws DemoFailedException, InterruptedException {
        CompletableFuture<Object> over = CompletableFuture.anyOf(day.finished(), death);
        while (true) {
            try {
                over.get(PROGRESS_SECONDS, TimeUnit.SECONDS);
                if (death.isDone()) {
                    throw ended(process);
                }
                return;
            } catch (TimeoutException e) {
                say(progress(day));
                giveUpWhenStuck(day);
            } catch (ExecutionException e) {
                throw new DemoFailedException("The watch over the day failed.", e);
            }
        }
    }

    private void giveUpWhenStuck(SimulatedDay day) throws DemoFailedException {
        boolean stuck = day.watch().hasStuck(STUCK_REAL_NANOS, STUCK_EXAM_MICROS);
        if (settings.untilFinished() && stuck) {
            throw new DemoFailedException("Nothing moves any more: " + day.watch().details());
        }
    }

    private String progress(SimulatedDay day) throws DemoFailedException {
        List<UnitCounts> counts = day.unitCounts();
        long seconds = TimeUnit.MICROSECONDS.toSeconds(day.stage().nowMicros());
        long edges = edges(counts);
        long repeats = day.repeats(counts);
        return "%d:%02d:%02d exam time: %s; %d edges, %d chatter or repeats, %d not kept yet"
                .formatted(
                        seconds / 3_600,
                        seconds / 60 % 60,
                        seconds % 60,
                        day.watch().words(),
                        edges,
                        repeats,
                        open(counts));
    }

    private static long edges(Collection<UnitCounts> counts) {
        return counts.stream().mapToLong(UnitCounts::edges).sum();
    }

    private static long open(Collection<UnitCounts> counts) {
        return counts.stream().mapToLong(UnitCounts::open).sum();
    }

    /** Lets the last edges get home, then compares. */
    private Figures judge(SimulatedDay day, GatewayProcess process)
            throws DemoFailedException, InterruptedException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(SETTLE_SECONDS);
        List<UnitCounts> counts = day.unitCounts();
        while (open(counts) > 0 && System.nanoTime() < until) {
            TimeUnit.MILLISECONDS.sleep(200);
            counts = day.unitCounts();
        }
        say(progress(day));
        JsonNode state = day.state();
        say(
                "The digest is that of the first %1$d entries: replay FILE --entries %1$d gives it."
                        .formatted(state.path("entries").asLong()));
        return day.figures(process.journalEdges(), counts, state.path("digest").asText());
    }

    private void say(String line) {
        words.println(line);
        words.flush();
    }
}
