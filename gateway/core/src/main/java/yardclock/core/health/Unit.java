package yardclock.core.health;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorPlan;
import yardclock.core.intake.AnswerLedger;
import yardclock.core.intake.UnitLedger;
import yardclock.core.ordering.Watermark;
import yardclock.core.time.ClockStatus;
import yardclock.core.time.ClockTrace;
import yardclock.core.time.Corrections;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;
import yardclock.core.time.TimeLines;
import yardclock.core.time.UnitClock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One field unit as the gateway knows it: its ledger of edges, its clocks by boot, its status, and
 * the edges that still wait for a first exchange.
 */
public final class Unit {
    /** A unit whose clock is never compared can't fill the memory; its edges stay journalled. */
    static final int WAITING_MAX = 4_000;

    private final FieldUnit plan;
    private final UnitLedger ledger = new UnitLedger();
    private final AnswerLedger answers = new AnswerLedger();
    private final UnitStatus status = new UnitStatus();
    private final BoundAlarm boundAlarm = new BoundAlarm();
    private final JumpAlarm jumpAlarm = new JumpAlarm();
    private final UnitClocks clocks = new UnitClocks();
    private final Watermark watermark = new Watermark();
    private final StampOrder order = new StampOrder();
    private final List<Waiting> waiting = new ArrayList<>();
    private final Corrections corrections = new Corrections();
    private long askedAgainMicros = Long.MIN_VALUE;
    private String bootOfGap = "";
    private long turnedAway;

    public Unit(FieldUnit plan) {
        this.plan = plan;
    }

    /** The plan's units by their ids, never heard of yet. */
    public static Map<String, Unit> all(ExamPlan plan) {
        Map<String, Unit> units = new LinkedHashMap<>();
        plan.fieldUnits().forEach(unit -> units.put(unit.id(), new Unit(unit)));
        return units;
    }

    /** An edge without a bound yet. */
    public record Waiting(
            String boot, long seq, int sensor, int state, long tick, long arrivedMicros) {
        private Waiting arrivedBy(long micros) {
            return new Waiting(boot, seq, sensor, state, tick, micros);
        }
    }

    public FieldUnit plan() {
        return plan;
    }

    public UnitLedger ledger() {
        return ledger;
    }

    /** How far nothing it stamped is missing. */
    public Watermark watermark() {
        return watermark;
    }

    public AnswerLedger answers() {
        return answers;
    }

    public UnitStatus status() {
        return status;
    }

    public BoundAlarm boundAlarm() {
        return boundAlarm;
    }

    public JumpAlarm jumpAlarm() {
        return jumpAlarm;
    }

    public UnitClock clock(String boot) {
        return clocks.clock(boot, status.boot());
    }

    /** The clock of a boot that was compared on one of the gateway's time lines. */
    public Optional<UnitClock> knownClock(String boot, int line) {
        return clocks.known(boot, line);
    }

    /** How late a sensor may answer, as the plan says. */
    public long responseMicros(int sensor) {
        for (SensorPlan each : plan.sensors()) {
            if (each.number() == sensor) {
                return each.responseMicros();
            }
        }
        return 0;
    }

    /** The figures of a boot's clock, of one never compared if there is none. */
    public ClockStatus clockStatus(String boot, GatewayTime now) {
        return clocks.known(boot).orElseGet(ExchangeClock::new).status(now);
    }

    /** Of them, those that say how well the clock is known. */
    public ClockStatus clockLimits(String boot, GatewayTime now) {
        return clocks.known(boot).orElseGet(ExchangeClock::new).limits(now);
    }

    /** How often this boot's counter jumped. */
    public long clockFaults(String boot) {
        return clocks.known(boot).map(UnitClock::faults).orElse(0L);
    }

    /** The figures as a picture. */
    public ClockTrace clockTrace(String boot, GatewayTime now) {
        return clocks.known(boot).map(clock -> clock.trace(now)).orElseGet(ClockTrace::empty);
    }

    /**
     * A new time line of the gateway: clocks are compared anew. Whatever waits arrived before it.
     */
    public void beginLine(int line, long nowMicros) {
        clocks.begin(line);
        waiting.replaceAll(edge -> edge.arrivedBy(nowMicros));
        boundAlarm.forget();
        watermark.forget();
    }

    /** Ties the present time line to an earlier one by a boot that ran on; whether it did. */
    public boolean tie(String boot, TimeLines lines) {
        return clocks.tie(plan.id() + " " + boot, boot, lines);
    }

    /** Instants were moved; what is placed from now on is placed beside moved ones only. */
    public void forgetOrder() {
        order.clear();
    }

    /** Where an edge lies, and on which time line. */
    public record Placed(int line, Stamp stamp) {}

    /**
     * Where a tick lies in gateway time, corrected where the unit is calibrated, the sensor's own
     * lateness included in the lower limit. What the unit counted in order lies in order. An
     * instant of an earlier time line is given where that line was moved to.
     */
    public Optional<Placed> place(Waiting edge, TimeLines lines) {
        StationTick tick = new StationTick(edge.tick());
        return clocks.date(edge.boot(), tick, new GatewayTime(edge.arrivedMicros()))
                .map(dated -> placed(edge, dated, lines.carriedMicros(dated.line())));
    }

    /** Where a tick that is no edge's lies in gateway time, without any guarantee. */
    public Optional<Stamp> dated(String boot, long tick, long arrivedMicros, TimeLines lines) {
        return clocks.date(boot, new StationTick(tick), new GatewayTime(arrivedMicros))
                .map(dated -> dated.stamp().moved(lines.carriedMicros(dated.line())));
    }

    private Placed placed(Waiting edge, UnitClocks.Dated dated, long carriedMicros) {
        Stamp corrected = corrected(edge.boot(), edge.arrivedMicros(), dated.stamp());
        Stamp inOrder = order.place(edge, corrected.moved(carriedMicros));
        return new Placed(dated.line(), inOrder.widened(responseMicros(edge.sensor()), 0));
    }

    /**
     * A stamp of an edge as the calibration says that was in force when the edge came, if there was
     * one.
     */
    public Stamp corrected(String boot, long arrivedMicros, Stamp stamp) {
        return corrections
                .of(boot, arrivedMicros)
                .map(correction -> correction.applied(stamp))
                .orElse(stamp);
    }

    /**
     * The edge's stamp by exchanges alone, as if the unit had never been calibrated and its sensors
     * answered at once.
     */
    public Optional<Stamp> uncorrected(Waiting edge) {
        return clock(edge.boot())
                .at(new StationTick(edge.tick()), new GatewayTime(edge.arrivedMicros()));
    }

    /** The same with the exchanges on both sides of it; final once {@link #isFinal}. */
    public Optional<Stamp> uncorrectedFinal(Waiting edge) {
        return clock(edge.boot())
                .settled(new StationTick(edge.tick()), new GatewayTime(edge.arrivedMicros()));
    }

    /** Whether later exchanges will not change the edge's final stamp any more. */
    public boolean isFinal(Waiting edge) {
        return clock(edge.boot()).isSettled(new StationTick(edge.tick()));
    }

    /** Whether this boot's clock was compared with the gateway's at all. */
    public boolean isCompared(String boot) {
        return clocks.known(boot).filter(clock -> clock.exchanges() > 0).isPresent();
    }

    /** What calibrations make of this unit's stamps. */
    public Corrections corrections() {
        return corrections;
    }

    /** Keeps an edge until its clock was compared; whether there was room. */
    public boolean await(Waiting edge) {
        if (waiting.size() >= WAITING_MAX) {
            turnedAway++;
            return false;
        }
        return waiting.add(edge);
    }

    /** How many edges have no place in time yet. */
    public int waitingEdges() {
        return waiting.size();
    }

    /** How many edges found no room to wait. */
    public long turnedAway() {
        return turnedAway;
    }

    /** Takes out all waiting edges that have a bound now, in the order they came. */
    public List<Waiting> takeStampable(String boot) {
        if (waiting.isEmpty()) {
            return List.of();
        }
        List<Waiting> now = waiting.stream().filter(w -> w.boot().equals(boot)).toList();
        waiting.removeAll(now);
        return now;
    }

    /**
     * Whether a resend may be asked for now; asking at once again would only double the traffic.
     */
    public boolean mayAskAgain(long nowMicros, long everyMicros) {
        boolean may =
                askedAgainMicros == Long.MIN_VALUE || nowMicros - askedAgainMicros >= everyMicros;
        if (may) {
            askedAgainMicros = nowMicros;
        }
        return may;
    }

    /** Something of this boot is missing. */
    public void openGap(String boot) {
        bootOfGap = boot;
    }

    /** Whether an open gap of this boot is closed now, which is said once. */
    public boolean closesGap(String boot) {
        boolean closes = bootOfGap.equals(boot) && ledger.boot(boot).gaps().isEmpty();
        bootOfGap = closes ? "" : bootOfGap;
        return closes;
    }

    @Override
    public String toString() {
        return plan.id()
                + " "
                + ledger
                + " "
                + status
                + " "
                + clocks
                + " "
                + waiting
                + " "
                + askedAgainMicros
                + " "
                + bootOfGap
                + " "
                + turnedAway
                + " "
                + answers
                + " "
                + boundAlarm
                + " "
                + jumpAlarm
                + " "
                + corrections
                + " "
                + watermark;
    }
}
