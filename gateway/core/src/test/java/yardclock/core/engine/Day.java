package yardclock.core.engine;

import yardclock.core.ruling.Act;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A scripted day: several candidates on the course at once, what happens to them in true time, and
 * everything that reaches the gateway because of it. What happens is fixed; how it travels is the
 * test's choice.
 *
 * <p>Each candidate's stations begin {@value #PITCH} s apart and take 9 s (the first) or 10 s.
 */
public final class Day {
    static final double PITCH = 17;
    private static final long SECOND = 1_000_000;
    private static final double FIRST_START = 1;

    private final List<Happening> happenings = new ArrayList<>();
    private final Map<String, TestUnit> units = new LinkedHashMap<>();
    private final Map<String, TestTablet> tablets = new TreeMap<>();
    private final Map<Integer, Double> releases = new TreeMap<>();
    private double endSeconds;

    /** What happens at a true time: an edge, or an act at a device. */
    private record Happening(long micros, String sensor, int state, String device, Act act) {}

    /** What reaches the gateway, and when. */
    public record Arrival(long micros, Input input) {
        boolean isEdge() {
            return input instanceof Input.Edge;
        }
    }

    /** How long each edge is under way. */
    public interface Link {
        long delayMicros();
    }

    public Day() {
        for (int i = 1; i <= 7; i++) {
            units.put("u" + i, new TestUnit("u" + i));
        }
    }

    public TestUnit unit(String id) {
        return units.get(id);
    }

    /**
     * One candidate over the whole course, released at a time, with a proctor; splits confirmed.
     */
    public Day candidate(int number, String proctor, double release) {
        releases.put(number, release);
        act(release, "coordinator1", new Act.Release(number, proctor));
        walk(number, proctor, start(number, 0));
        drag(start(number, 1));
        poles(start(number, 2));
        bag(start(number, 3));
        fan(number, proctor, start(number, 4));
        laps(start(number, 5));
        double after = start(number, 5) + 11;
        for (String station : TestPlan.stations()) {
            act(after += 0.1, proctor, new Act.Confirm(number, station));
        }
        act(after + 1, proctor, new Act.Tell(number));
        return this;
    }

    /** The true start of a candidate's station, in seconds. */
    public double start(int number, int station) {
        return releases.get(number) + FIRST_START + PITCH * station;
    }

    public double finish(int number, int station) {
        return start(number, station) + (station == 0 ? 9 : 10);
    }

    private void walk(int number, String proctor, double s) {
        act(s - 0.2, proctor, new Act.GiveStart(number));
        pulse("u1/9", s, 0.5);
        act(s + 5, proctor, new Act.Tap(number, "walk", "cap"));
        pulse("u1/3", s + 9, 0.1);
        ready("walk", s + 12);
    }

    private void drag(double s) {
        pulse("u2/1", s - 1, 1);
        pulse("u2/2", s + 5, 0.5);
        pulse("u2/3", s + 9, 1);
        ready("drag", s + 14);
    }

    private void poles(double s) {
        pulse("u3/1", s - 1, 1);
        pulse("u3/2", s + 5, 8);
        pulse("u3/3", s + 10, 3.5);
        ready("poles", s + 14.5);
    }

    private void bag(double s) {
        edge("u4/1", 0, s);
        pulse("u5/1", s + 5, 0.4);
        edge("u4/1", 1, s + 10);
        ready("bag", s + 12);
    }

    private void fan(int number, String proctor, double s) {
        pulse("u6/1", s - 0.5, 0.8);
        pulse("u6/2", s, 0.5);
        act(s + 5, proctor, new Act.Tap(number, "fan", "hands"));
        pulse("u6/3", s + 10, 0.5);
        ready("fan", s + 12);
    }

    private void laps(double s) {
        pulse("u7/1", s, 0.5);
        pulse("u7/2", s + 5, 0.1);
        pulse("u7/2", s + 10, 0.1);
        ready("laps", s + 12);
    }

    private void pulse(String sensor, double at, double seconds) {
        edge(sensor, 1, at);
        edge(sensor, 0, at + seconds);
    }

    private void ready(String station, double at) {
        act(at, "crew1", new Act.StationReady(station));
    }

    public Day edge(String sensor, int state, double at) {
        happenings.add(new Happening(micros(at), sensor, state, "", null));
        endSeconds = Math.max(endSeconds, at);
        return this;
    }

    public Day act(double at, String device, Act act) {
        happenings.add(new Happening(micros(at), "", 0, device, act));
        endSeconds = Math.max(endSeconds, at);
        return this;
    }

    private static long micros(double seconds) {
        return Math.round(seconds * SECOND);
    }

    /** A rattle after some changes of contacts whose triggers bear it: two more within 6 ms. */
    public Day rattle(long seed) {
        Random random = new Random(seed);
        for (Happening happening : List.copyOf(happenings)) {
            boolean bears = happening.sensor.matches("u[1567]/[1-8]|u2/[12]|u4/1");
            if (bears && random.nextInt(3) == 0) {
                int other = 1 - happening.state;
                happenings.add(
                        new Happening(happening.micros + 3_000, happening.sensor, other, "", null));
                happenings.add(
                        new Happening(
                                happening.micros + 6_000,
                                happening.sensor,
                                happening.state,
                                "",
                                null));
            }
        }
        return this;
    }

    /** Everything that reaches the gateway, in the order in which it does. */
    public List<Arrival> arrivals(Link link) {
        List<Arrival> arrivals = new ArrayList<>();
        happenings.sort(Comparator.comparingLong(Happening::micros));
        int key = 0;
        for (Happening happening : happenings) {
            if (happening.act == null) {
                arrivals.add(edge(happening, link));
            } else {
                Input ruling =
                        tablet(happening.device)
                                .press("day-" + key++, happening.act, happening.micros)
                                .receivedAt(happening.device, happening.micros);
                arrivals.add(new Arrival(happening.micros, ruling));
            }
        }
        signsOfLife(arrivals);
        arrivals.sort(Comparator.comparingLong(Arrival::micros));
        return arrivals;
    }

    private TestTablet tablet(String device) {
        return tablets.computeIfAbsent(device, TestTablet::new);
    }

    private Arrival edge(Happening happening, Link link) {
        String[] parts = happening.sensor.split("/");
        Input.Edge edge =
                units.get(parts[0])
                        .edge(Integer.parseInt(parts[1]), happening.state, happening.micros);
        return new Arrival(happening.micros + link.delayMicros(), edge);
    }

    /** An exchange each 5 s and health each 2 s; health as it was before the day's edges. */
    private void signsOfLife(List<Arrival> arrivals) {
        for (TestUnit unit : units.values()) {
            for (double at = 0.5; at < endSeconds + 5; at += 5) {
                Input.ExchangeAnswered answer = unit.exchange(micros(at), 4_000, 4_000);
                arrivals.add(new Arrival(answer.gatewayReceivedMicros(), answer));
            }
        }
        for (TestTablet tablet : tablets.values()) {
            for (double at = 0.4; at < endSeconds + 5; at += 5) {
                Input.TabletExchange answer = tablet.exchange(micros(at), 4_000, 4_000);
                arrivals.add(new Arrival(answer.gatewayReceivedMicros(), answer));
            }
        }
    }
}
