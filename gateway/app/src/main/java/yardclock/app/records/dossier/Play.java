package yardclock.app.records.dossier;

import yardclock.app.json.Json;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.InputKind;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.passage.EdgeKey;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;
import yardclock.core.run.Attempt;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Hands entries to the rules again and notes what concerns one number. One thread.
 *
 * <p>Entries may be missing. At each missing number time stands still and nothing happens, but for
 * the roster: where it is left out, this number alone is on it.
 */
public final class Play {
    private static final Set<FactKind> OF_MARKS =
            EnumSet.of(
                    FactKind.MARK_PROPOSED,
                    FactKind.MARK_CHANGED,
                    FactKind.MARK_SETTLED,
                    FactKind.SPLIT_PROPOSED);

    private static final Set<FactKind> OF_UNITS =
            EnumSet.of(
                    FactKind.UNIT_SILENT,
                    FactKind.UNIT_BACK,
                    FactKind.UNIT_BOOTED,
                    FactKind.WIDE_BOUND,
                    FactKind.CALIBRATED,
                    FactKind.CALIBRATION_BROKEN_OFF);

    /** Also with no number: they hold for all. */
    private static final Set<FactKind> OF_ALL =
            EnumSet.of(
                    FactKind.COURSE_HELD,
                    FactKind.COURSE_RESUMED,
                    FactKind.STOPPED,
                    FactKind.RESTARTED);

    final int number;
    final Engine engine = new Engine();
    final List<Timeline.FactLine> facts = new ArrayList<>();
    final List<Timeline.ConditionLine> conditions = new ArrayList<>();
    final List<Ruled> rulings = new ArrayList<>();
    final Map<EdgeKey, Entry> entryOfEdge = new TreeMap<>();
    final Set<String> devices = new TreeSet<>();
    final List<Further.WallLine> walls = new ArrayList<>();
    final UnitTallies units = new UnitTallies();

    /** Entries by which a wired stop button was pressed or released: they hold for all. */
    final Set<Long> stopButtons = new TreeSet<>();

    private final Map<String, Input.Enrolled> holders = new TreeMap<>();
    Input.Epoch epoch;
    long epochMicros;
    private final Numbering numbering;
    private final boolean isWhole;
    final boolean isFirst;
    private boolean hasRoster;
    private long atMicros;
    private long releasedMicros = Long.MAX_VALUE;
    private long lastMicros = Long.MIN_VALUE;
    private long lastMarkMicros = Long.MIN_VALUE;
    private final StationAlarms alarms = new StationAlarms();

    /** A ruling about the number, with the holder at that moment and the verdict. */
    record Ruled(Entry entry, Input.Ruling ruling, String person, String role, String refusal) {

        /**
         * Refused by what the entries that go with one number do not tell: a trigger where somebody
         * else is at the station, a restart while a unit's stop button is pressed, a release for
         * want of a proof run.
         */
        boolean isRefusedByOthers() {
            boolean isByOthers =
                    ruling.act() instanceof Act.AdjustTrigger
                            || refusal.equals(Json.word(Refusal.STOP_BUTTON_PRESSED))
                            || refusal.startsWith("proof-run-");
            return isByOthers && !refusal.isEmpty();
        }
    }

    /** For a whole journal. */
    public Play(int number) {
        this(number, new Numbering(List.of(), true), true);
    }

    private Play(int number, Numbering numbering, boolean isWhole) {
        this.isFirst = !isWhole && numbering.isOfFirstVersion();
        this.number = number;
        this.numbering = numbering;
        this.isWhole = isWhole;
        this.hasRoster = isWhole;
    }

    /**
     * The timeline that follows from a part of a journal.
     *
     * @throws IllegalArgumentException when the entries are in no order that a journal can have
     */
    public static Timeline ofPart(List<Entry> entries, int number) {
        return ofPart(new Numbering(entries, false), entries, number);
    }

    /** The same, as a dossier of the first version was made. */
    public static Timeline ofFirstVersion(List<Entry> entries, int number) {
        return ofPart(new Numbering(entries, true), entries, number);
    }

    private static Timeline ofPart(Numbering numbering, List<Entry> entries, int number) {
        Play play = new Play(number, numbering, false);
        play.hasRoster = entries.stream().anyMatch(e -> e.input().kind() == InputKind.ROSTER);
        entries.forEach(play::take);
        return play.timeline();
    }

    /**
     * Takes one entry; their numbers rise.
     *
     * @throws IllegalArgumentException when an entry can't follow those before
     */
    public void take(Entry entry) {
        while (engine.lastEntry() + 1 < entry.number()) {
            engine.apply(new Entry(engine.lastEntry() + 1, atMicros, filler()));
        }
        atMicros = entry.gatewayMicros();
        Input input = isWhole ? entry.input() : ofPart(entry.input());
        Outcome outcome = engine.apply(new Entry(entry.number(), entry.gatewayMicros(), input));
        if (input instanceof Input.Edge edge) {
            EdgeKey key = new EdgeKey(edge.unit(), edge.boot(), edge.seq());
            entryOfEdge.putIfAbsent(key, entry);
        }
        note(entry, outcome);
        outcome.facts().forEach(fact -> note(entry, fact));
    }

    /** A part has no proof run in it, and a release in it was admitted with all there was. */
    private static Input withoutProofRun(Input.PlanFrozen frozen) {
        ExamPlan plan = frozen.plan();
        return new Input.PlanFrozen(plan.ruledBy(plan.day().withoutProofRun()), frozen.sha256());
    }

    /** Others on the roster have nothing here to be sent by: nobody waits for them. */
    private Input ofPart(Input input) {
        if (input instanceof Input.RosterFrozen roster) {
            List<RosterLine> own =
                    roster.lines().stream().filter(line -> line.number() == number).toList();
            return new Input.RosterFrozen(own, roster.sha256());
        }
        if (input instanceof Input.PlanFrozen frozen) {
            return withoutProofRun(frozen);
        }
        return numbering.renumbered(input);
    }

    private Input filler() {
        if (hasRoster || engine.plan().isEmpty()) {
            return new Input.Deadline();
        }
        hasRoster = true;
        return new Input.RosterFrozen(List.of(new RosterLine(number, 1)), "");
    }

    private void note(Entry entry, Outcome outcome) {
        switch (entry.input().kind()) {
            case EPOCH -> {
                epoch = (Input.Epoch) entry.input();
                epochMicros = entry.gatewayMicros();
                readWall(entry.number(), epochMicros, epoch.wallMicros());
            }
            case WALL_STEPPED -> {
                Input.WallStepped stepped = (Input.WallStepped) entry.input();
                readWall(entry.number(), stepped.atMicros(), stepped.wallMicros());
            }
            case HEALTH -> units.take((Input.Health) entry.input(), entry.gatewayMicros());
            case CLIMATE -> {
                Input.Climate air = (Input.Climate) entry.input();
                conditions.add(
                        new Timeline.ConditionLine(
                                entry.number(),
                                entry.gatewayMicros(),
                                air.centiCelsius(),
                                air.centiPercent()));
            }
            case ENROLMENT -> {
                Input.Enrolled enrolled = (Input.Enrolled) entry.input();
                if (outcome.verdict() != null && outcome.verdict().isAccepted()) {
                    holders.put(enrolled.device(), enrolled);
                }
            }
            case RULING -> note(entry, (Input.Ruling) entry.input(), outcome);
            default -> { // What it leads to comes as facts.
            }
        }
    }

    private void readWall(long entry, long atMicros, long wallMicros) {
        int speed = epoch == null ? 1 : epoch.speed();
        walls.add(new Further.WallLine(entry, atMicros, wallMicros, speed));
    }

    private void note(Entry entry, Input.Ruling ruling, Outcome outcome) {
        if (!Acts.concerns(ruling.act(), number)) {
            return;
        }
        devices.add(ruling.device());
        Acts.proctorDevice(ruling.act()).ifPresent(devices::add);
        Input.Enrolled holder = holders.get(ruling.device());
        boolean accepted = outcome.verdict() == null || outcome.verdict().isAccepted();
        if (accepted && ruling.act() instanceof Act.GoOnByHand act) {
            alarms.goesOn(entry, act, holder);
        }
        rulings.add(
                new Ruled(
                        entry,
                        ruling,
                        holder == null ? "" : holder.person(),
                        holder == null ? "" : holder.role().word(),
                        accepted ? "" : Json.word(outcome.verdict().refusal())));
    }

    private void note(Entry entry, Fact fact) {
        if (fact.kind() == FactKind.STOP_BUTTON) {
            stopButtons.add(entry.number());
        }
        boolean isOwn = fact.number() == number;
        if (isOwn) {
            hear(fact, entry.gatewayMicros());
        } else if (fact.number() == 0) {
            boolean isOfUnits = OF_UNITS.contains(fact.kind());
            alarms.hear(line(entry, fact), fact.kind(), isOfUnits);
        }
        boolean isOfAll = fact.number() == 0 && OF_ALL.contains(fact.kind());
        boolean isOfUnit = isFirst && fact.number() == 0 && OF_UNITS.contains(fact.kind());
        if (isOwn || isOfAll || isOfUnit) {
            facts.add(line(entry, fact));
        }
    }

    private void hear(Fact own, long atMicros) {
        releasedMicros = own.kind() == FactKind.RELEASED ? atMicros : releasedMicros;
        lastMicros = atMicros;
        lastMarkMicros = OF_MARKS.contains(own.kind()) ? atMicros : lastMarkMicros;
        units.hear(own, atMicros);
    }

    private static Timeline.FactLine line(Entry entry, Fact fact) {
        boolean has = fact.stamp() != null;
        return new Timeline.FactLine(
                entry.number(),
                entry.gatewayMicros(),
                Json.word(fact.kind()),
                fact.station(),
                fact.point(),
                has ? fact.stamp().micros() : -1,
                has ? fact.stamp().lowerMicros() : -1,
                has ? fact.stamp().upperMicros() : -1,
                fact.valueMicros(),
                fact.words());
    }

    /** Whether an instant lies within the attempt: from its release to the last said of it. */
    boolean isDuring(long micros) {
        return micros >= releasedMicros && micros <= lastMicros;
    }

    /** Whether an instant lies near enough to the attempt for its clocks to matter. */
    boolean isNear(long micros, long marginMicros) {
        return releasedMicros < Long.MAX_VALUE
                && micros >= releasedMicros - marginMicros
                && micros <= Math.max(releasedMicros, lastMarkMicros) + marginMicros;
    }

    /** What the gateway warned of at stations and units while the attempt lasted. */
    public List<Timeline.FactLine> alarms() {
        return alarms.during(releasedMicros, lastMarkMicros);
    }

    /** The hashes of the one-time codes that these devices used. */
    List<String> codes(Set<String> of) {
        return holders.values().stream()
                .filter(enrolled -> of.contains(enrolled.device()))
                .map(Input.Enrolled::codeSha256)
                .toList();
    }

    Optional<Attempt> attempt() {
        return engine.attempts().stream().filter(a -> a.number() == number).findFirst();
    }

    /** What was noted, as a timeline. */
    public Timeline timeline() {
        return new Writing(this).timeline();
    }
}
