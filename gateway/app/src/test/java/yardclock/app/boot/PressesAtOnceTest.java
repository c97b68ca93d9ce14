package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.json.Json;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Three tablets press at the same instant on a whole gateway: real pages, lane and journal, each
 * press sent up to three times under its key, some answers never read, the gateway ended and begun
 * again in the middle. The order is whatever the machine makes of it; the journal tells which it
 * was, and a plain model of course holds must then have given the very same answers.
 */
class PressesAtOnceTest {
    private static final int ROUNDS = 20;
    private static final List<String> ROLES = List.of("coordinator", "safety", "technician");
    private static final List<String> ACTS =
            List.of("hold-course", "resume-course", "stop-all", "restart");

    @TempDir Path directory;

    private final List<Throwable> deaths = new CopyOnWriteArrayList<>();
    private final Map<String, String> heard = new ConcurrentHashMap<>();

    @Test
    void each_press_counts_once_whatever_the_order_and_over_a_restart() throws Exception {
        DayFolder day = DayFolder.in(directory);
        List<String> tokens = new ArrayList<>();
        String course;
        try (Gateway gateway = Gateway.start(day.settings(), deaths::add)) {
            for (String role : ROLES) {
                tokens.add(new Tablet(gateway.httpPort()).enrol(directory, role));
            }
            rounds(gateway, tokens, 0);
        }
        try (Gateway gateway = Gateway.start(day.settings(), deaths::add)) {
            repeatAll(new Tablet(gateway.httpPort(), tokens.get(0)));
            rounds(gateway, tokens, ROUNDS);
            Tablet looking = new Tablet(gateway.httpPort(), tokens.get(0));
            course = looking.firstFrame("control").path("head").path("course").asText();
        }
        assertThat(deaths).isEmpty();
        assertThat(course).isEqualTo(compareWith(day.entries()));
    }

    private void rounds(Gateway gateway, List<String> tokens, int from) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(ROLES.size());
        try {
            List<Future<Void>> all = new ArrayList<>();
            for (int i = 0; i < ROLES.size(); i++) {
                Tablet tablet = new Tablet(gateway.httpPort(), tokens.get(i));
                String name = ROLES.get(i);
                long seed = 31L * from + i;
                Callable<Void> hand = () -> pressOn(tablet, name, from, new Random(seed));
                all.add(hands.submit(hand));
            }
            for (Future<Void> hand : all) {
                hand.get();
            }
        } finally {
            hands.shutdownNow();
        }
    }

    private Void pressOn(Tablet tablet, String name, int from, Random random) throws Exception {
        for (int n = from; n < from + ROUNDS; n++) {
            String act = ACTS.get(random.nextInt(ACTS.size()));
            String key = name + "-" + act + "-" + n;
            int copies = random.nextInt(3);
            for (int copy = 0; copy < copies; copy++) {
                tablet.pressUnheard(key, act, fields(act));
            }
            heard.put(key, said(tablet.press(key, act, fields(act))));
        }
        return null;
    }

    /** A press of before the restart is answered as it was, and changes nothing. */
    private void repeatAll(Tablet coordinator) throws Exception {
        for (Map.Entry<String, String> before : Map.copyOf(heard).entrySet()) {
            String[] key = before.getKey().split("-", 2);
            if (key[0].equals("coordinator")) {
                String act = key[1].substring(0, key[1].lastIndexOf('-'));
                String again = said(coordinator.press(before.getKey(), act, fields(act)));
                assertThat(again).as(before.getKey()).isEqualTo(before.getValue());
            }
        }
    }

    private static Object[] fields(String act) {
        return act.equals("hold-course") ? new Object[] {"reason", "weather"} : new Object[0];
    }

    /** {@code "taken at 17"}, or the refusal's code. */
    private static String said(HttpResponse<String> answer) throws IOException {
        JsonNode body = Json.mapper().readTree(answer.body());
        return answer.statusCode() == 200
                ? "taken at " + body.path("entry").asLong()
                : body.path("refused").asText(answer.body());
    }

    /** Plays the journal's order through the model; gives how the course ends. */
    private String compareWith(List<Entry> journal) {
        Map<String, String> first = new LinkedHashMap<>();
        String course = "running";
        int copies = 0;
        for (Entry entry : journal) {
            if (!(entry.input() instanceof Input.Ruling ruling)) {
                continue;
            }
            if (first.containsKey(ruling.key())) {
                copies++;
                continue;
            }
            String act = ruling.act().kind().word();
            String refusal = refusal(ruling.key(), act, course);
            first.put(ruling.key(), refusal.isEmpty() ? "taken at " + entry.number() : refusal);
            course = refusal.isEmpty() ? after(act) : course;
        }
        heard.forEach(
                (key, answer) -> {
                    boolean isTurnedAwayAtTheDoor = !first.containsKey(key);
                    String meant = isTurnedAwayAtTheDoor ? "not-your-role" : first.get(key);
                    assertThat(answer).as(key).isEqualTo(meant);
                });
        assertThat(copies).as("copies reached the journal at all").isPositive();
        assertThat(first.values())
                .as("presses were taken at all")
                .anyMatch(a -> a.startsWith("taken"));
        return course;
    }

    private static String refusal(String key, String act, String course) {
        String role = key.substring(0, key.indexOf('-'));
        boolean may =
                switch (act) {
                    case "stop-all" -> true;
                    case "restart" -> role.equals("safety");
                    case "resume-course" -> role.equals("coordinator");
                    default -> !role.equals("technician");
                };
        if (!may) {
            return "not-your-role";
        }
        return switch (act) {
            case "hold-course" ->
                    course.equals("running")
                            ? ""
                            : course.equals("held") ? "already-held" : "stopped";
            case "resume-course" ->
                    course.equals("held") ? "" : course.equals("stopped") ? "stopped" : "not-held";
            case "restart" -> course.equals("stopped") ? "" : "not-stopped";
            default -> "";
        };
    }

    private static String after(String act) {
        return switch (act) {
            case "hold-course", "restart" -> "held";
            case "resume-course" -> "running";
            default -> "stopped";
        };
    }
}
