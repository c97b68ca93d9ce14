package yardclock.core.engine;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;
import yardclock.core.ruling.Verdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;

/**
 * An engine with a yard around it: units that stamp with their own clocks, tablets that rule, and a
 * lane that hands in deadlines. Time is moved by the test, in seconds; all else follows.
 *
 * <p>Edges reach the engine {@value #LINK_MICROS} µs after they happened unless a test holds them
 * back; rulings at once. A tablet that rules compares its clock before, when it has not done so
 * lately. Every entry is kept, so that a test can replay the day.
 */
public final class Yard {
    public static final long LINK_MICROS = 5_000;
    private static final long SECOND = 1_000_000;
    private static final int DEADLINES_IN_A_ROW = 50;
    private static final long COMPARED_EVERY = 5 * SECOND;

    private final Engine engine = new Engine();
    private final List<Entry> journal = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final List<Effect> effects = new ArrayList<>();
    private final Map<String, TestUnit> units = new LinkedHashMap<>();
    private final Map<String, TestTablet> tablets = new LinkedHashMap<>();
    private final Map<String, Long> compared = new LinkedHashMap<>();
    private long nowMicros;
    private long lastEntryMicros;
    private long keys;
    private int speed = 1;

    /** By how much the gateway's clock reads more than true time. */
    private long lineMicros;

    private boolean isAway;
    private final List<Input> buffered = new ArrayList<>();
    private Random radio;
    private long nextExchangeMicros;
    private int burstLeft;

    /** A day with its plan, ten candidates 101–110 and every role's devices, clocks compared. */
    public static Yard open(ExamPlan plan) {
        return openFor(plan, 10);
    }

    /** As {@link #open}, with so many candidates from 101 on. */
    static Yard openFor(ExamPlan plan, int candidates) {
        Yard yard = begun(plan, 1, candidates);
        yard.units.keySet().forEach(yard::exchange);
        return yard;
    }

    /** As {@link #open}, at a speed, and with no exchange had yet. */
    public static Yard begun(ExamPlan plan, int speed) {
        return begun(plan, speed, 10);
    }

    private static Yard begun(ExamPlan plan, int speed, int candidates) {
        Yard yard = new Yard();
        yard.speed = speed;
        yard.take(new Input.Epoch("m1", "p1", 1_700_000_000_000_000L, 0, speed, false, "1"));
        yard.take(new Input.PlanFrozen(plan, "plan-sha"));
        List<RosterLine> lines = new ArrayList<>();
        for (int number = 101; number <= 100 + candidates; number++) {
            lines.add(new RosterLine(number, 1));
        }
        yard.take(new Input.RosterFrozen(lines, "roster-sha"));
        for (Role role : Role.values()) {
            for (int i = 1; i <= 4; i++) {
                yard.enrol(role.word() + i, role);
            }
        }
        plan.fieldUnits().forEach(u -> yard.units.put(u.id(), new TestUnit(u.id())));
        return yard;
    }

    public void enrol(String device, Role role) {
        tablets.put(device, new TestTablet(device));
        take(new Input.CodeIssued("code-" + device, role, ""));
        take(new Input.Enrolled(device, "P. " + device, role, "code-" + device, "token-" + device));
    }

    /** Lets time pass to so many seconds of true time; deadlines on the way are handed in. */
    public Yard at(double seconds) {
        long to = Math.round(seconds * SECOND);
        if (to < nowMicros) {
            throw new IllegalArgumentException("back to " + seconds + " from " + nowMicros);
        }
        if (isAway) {
            nowMicros = to;
            return this;
        }
        passExchanges(to);
        passDeadlines(to);
        nowMicros = to;
        return this;
    }

    public Yard after(double seconds) {
        return at((nowMicros + seconds * SECOND) / SECOND);
    }

    public double now() {
        return nowMicros / (double) SECOND;
    }

    /** From now on each unit's clock is compared every 5 s or so, over a link of random delays. */
    public Yard compareClocks(Random random) {
        radio = random;
        nextExchangeMicros = nowMicros;
        return this;
    }

    private void passExchanges(long to) {
        while (radio != null && nextExchangeMicros <= to) {
            passDeadlines(nextExchangeMicros);
            nowMicros = Math.max(nowMicros, nextExchangeMicros);
            units.keySet().forEach(this::exchangeByRadio);
            nextExchangeMicros += burstLeft > 0 ? 100_000 : 3 * SECOND + radio.nextInt(4_000_000);
            burstLeft--;
        }
    }

    /** Most messages take some milliseconds, one in ten a tenth of a second. */
    private void exchangeByRadio(String unit) {
        long down = 2_000 + delayMicros();
        long up = 2_000 + delayMicros();
        take(onLine(units.get(unit).exchange(nowMicros - down - up, down, up)));
    }

    private long delayMicros() {
        double mean = radio.nextInt(10) == 0 ? 100_000 : 4_000;
        return Math.round(-Math.log(1 - radio.nextDouble()) * mean);
    }

    /** An answer with a tick from far in the future. */
    public Yard wildAnswer(String unit) {
        Input.ExchangeAnswered x = units.get(unit).exchange(nowMicros - 8_000, 4_000, 4_000);
        long tick = x.unitReceivedTick() + 1_000_000 * SECOND;
        long sent = x.gatewaySentMicros() + lineMicros;
        take(new Input.ExchangeAnswered(unit, x.boot(), "wild", sent, tick, tick, sent + 8_000));
        return this;
    }

    private Input onLine(Input.ExchangeAnswered x) {
        return new Input.ExchangeAnswered(
                x.unit(),
                x.boot(),
                x.id(),
                x.gatewaySentMicros() + lineMicros,
                x.unitReceivedTick(),
                x.unitSentTick(),
                x.gatewayReceivedMicros() + lineMicros);
    }

    /** The gateway is gone: units count on and keep their edges, nobody is answered. */
    public Yard loseGateway() {
        isAway = true;
        return this;
    }

    /**
     * Another board takes over. Edges that were kept come when {@link #deliverKept} says so.
     *
     * @param laterMicros how long after the last entry its time line seems to begin
     */
    public Yard replaceBoard(String machineBoot, long laterMicros) {
        long lastReading = journal.get(journal.size() - 1).gatewayMicros();
        isAway = false;
        lineMicros = lastReading + laterMicros - nowMicros;
        lastEntryMicros = nowMicros;
        nextExchangeMicros = nowMicros;
        burstLeft = 3;
        take(new Input.Epoch(machineBoot, "p", 1_700_000_000_000_000L, 7, speed, false, "1"));
        return this;
    }

    public Yard deliverKept() {
        List<Input> kept = List.copyOf(buffered);
        buffered.clear();
        kept.forEach(this::take);
        return this;
    }

    private void passDeadlines(long to) {
        int inARow = 0;
        OptionalLong deadline = engine.nextDeadlineMicros();
        while (deadline.isPresent() && deadline.getAsLong() - lineMicros <= to) {
            put(new Input.Deadline(), Math.max(lastEntryMicros, deadline.getAsLong() - lineMicros));
            deadline = engine.nextDeadlineMicros();
            inARow++;
            if (inARow > DEADLINES_IN_A_ROW) {
                throw new AssertionError("a deadline stands though it was answered: " + deadline);
            }
        }
    }

    public TestUnit unit(String id) {
        return units.get(id);
    }

    /** A sensor changes now, and the engine hears of it at once. */
    public Outcome edge(String sensor, int state) {
        return take(happens(sensor, state));
    }

    /** A sensor changes now; the edge is the test's to deliver. */
    public Input.Edge happens(String sensor, int state) {
        String[] parts = sensor.split("/");
        return units.get(parts[0]).edge(Integer.parseInt(parts[1]), state, nowMicros);
    }

    public Outcome exchange(String unit) {
        return take(onLine(units.get(unit).exchange(nowMicros - 8_000, 4_000, 4_000)));
    }

    public Outcome health(String unit) {
        return take(units.get(unit).health(nowMicros));
    }

    public Outcome take(Input input) {
        boolean underWay = input instanceof Input.Edge;
        if (isAway) {
            buffered.add(input);
            return null;
        }
        return put(input, Math.max(lastEntryMicros, nowMicros + (underWay ? LINK_MICROS : 0)));
    }

    /** Hands an input in at its own time; deadlines before it come first. */
    public Outcome deliver(long micros, Input input) {
        passDeadlines(micros);
        nowMicros = Math.max(nowMicros, micros);
        return put(input, Math.max(lastEntryMicros, micros));
    }

    private Outcome put(Input input, long atMicros) {
        lastEntryMicros = Math.max(lastEntryMicros, atMicros);
        Entry entry = new Entry(journal.size() + 1L, lastEntryMicros + lineMicros, input);
        journal.add(entry);
        Outcome outcome = engine.apply(entry);
        facts.addAll(outcome.facts());
        effects.addAll(outcome.effects());
        return outcome;
    }

    public Verdict rule(String device, Act act) {
        return rule(device, act, -1);
    }

    public Verdict rule(String device, Act act, long basis) {
        return rule(device, "key-" + keys++, act, basis);
    }

    public Verdict rule(String device, String key, Act act, long basis) {
        TestTablet tablet = tablets.get(device);
        if (tablet == null) {
            return ruleWithoutClock(device, key, act, basis);
        }
        if (nowMicros - compared.getOrDefault(device, -COMPARED_EVERY) >= COMPARED_EVERY) {
            compare(device);
        }
        return take(new Input.Ruling(
                        key,
                        device,
                        tablet.boot(),
                        tablet.tick(nowMicros),
                        receivedMicros(),
                        basis,
                        act))
                .verdict();
    }

    private long receivedMicros() {
        return Math.max(nowMicros, lastEntryMicros) + lineMicros;
    }

    /** A ruling of a device that has no clock to speak of. */
    public Verdict ruleWithoutClock(String device, String key, Act act, long basis) {
        return take(new Input.Ruling(key, device, "", 0, receivedMicros(), basis, act)).verdict();
    }

    /** Every tablet's page is loaded anew. */
    public void loadTablets() {
        tablets.values().forEach(tablet -> tablet.load(nowMicros));
    }

    public TestTablet tablet(String device) {
        return tablets.get(device);
    }

    /** An exchange with a tablet that ends now. */
    public Outcome compare(String device) {
        compared.put(device, nowMicros);
        Input.TabletExchange x = tablets.get(device).exchange(nowMicros - 8_000, 4_000, 4_000);
        return take(
                new Input.TabletExchange(
                        x.device(),
                        x.boot(),
                        x.id(),
                        x.gatewaySentMicros() + lineMicros,
                        x.tabletReceivedTick(),
                        x.tabletSentTick(),
                        x.gatewayReceivedMicros() + lineMicros));
    }

    /** As {@link #rule}, and it must be accepted. */
    public Yard ok(String device, Act act) {
        Verdict verdict = rule(device, act);
        if (!verdict.isAccepted()) {
            throw new AssertionError(act + " was refused: " + verdict.refusal());
        }
        return this;
    }

    public Engine engine() {
        return engine;
    }

    public List<Entry> journal() {
        return journal;
    }

    public List<Fact> facts() {
        return facts;
    }

    public List<Fact> facts(FactKind kind) {
        return facts.stream().filter(f -> f.kind() == kind).toList();
    }

    public List<Effect> effects() {
        return effects;
    }

    public Engine.View view() {
        return new Engine.View(Math.max(nowMicros, lastEntryMicros) + lineMicros, List.of());
    }

    public Result result(int number) {
        return engine.results().stream()
                .filter(r -> r.number() == number)
                .findFirst()
                .orElseThrow();
    }

    public Result.SplitLine split(int number, String station) {
        return result(number).splits().stream()
                .filter(line -> line.station().equals(station))
                .findFirst()
                .orElseThrow(() -> new AssertionError(number + " has no split at " + station));
    }

    public int speed() {
        return speed;
    }
}
