package yardclock.core.engine;

import yardclock.core.account.Account;
import yardclock.core.account.Cause;
import yardclock.core.board.BenchFrame;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.BoardProjection;
import yardclock.core.board.ClockSheet;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.ControlProjection;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.Picture;
import yardclock.core.board.PostFrame;
import yardclock.core.board.PostProjection;
import yardclock.core.board.StaffProjection;
import yardclock.core.board.WatchFrame;
import yardclock.core.board.WatchProjection;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.fact.Canonical;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Unit;
import yardclock.core.passage.EdgeKey;
import yardclock.core.result.Result;
import yardclock.core.result.Results;
import yardclock.core.ruling.ActKind;
import yardclock.core.ruling.Decisions;
import yardclock.core.ruling.Devices;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Rejudgement;
import yardclock.core.ruling.Role;
import yardclock.core.ruling.Situation;
import yardclock.core.ruling.TabletClocks;
import yardclock.core.ruling.Verdict;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.TabletPress;
import yardclock.core.time.TimeLines;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/**
 * The exam day as one deterministic machine.
 *
 * <p>Hand it every journal entry in order; it answers with what follows. It owns the whole state,
 * belongs to one thread, and asks nothing of the world. {@link #digest()} is a fingerprint of the
 * state: two engines that took the same entries have the same one.
 *
 * <p>Before the plan is loaded there is no course; inputs of units and rulings then change nothing.
 */
public final class Engine {
    /** The version of the rules, journalled with each epoch. */
    public static final String RULES_VERSION = "1";

    private final Devices devices = new Devices();
    private final TabletClocks tablets = new TabletClocks();
    private final Alarms alarms = new Alarms();
    private final Account account = new Account();
    private Input.Epoch epoch;
    private WallReading wall = new WallReading(0, 0);
    private long lastEntry;
    private final Canonical chain = new Canonical();
    private String inputs = "";
    private long nowMicros;

    /** Before this nothing changes by time alone; MAX for never. */
    private long dueMicros = Long.MAX_VALUE;

    private ExamPlan plan;
    private String planSha256 = "";
    private String rosterSha256 = "";
    private List<RosterLine> roster = List.of();
    private CourseRun course;
    private Units units;
    private Decisions decisions;
    private Climates climates;

    /** Takes one entry; entries come in their order, without a hole. */
    public Outcome apply(Entry entry) {
        if (entry.number() != lastEntry + 1) {
            throw new IllegalArgumentException(
                    "entry " + entry.number() + " came after entry " + lastEntry);
        }
        lastEntry = entry.number();
        inputs = chain.line(inputs, entry).hex();
        nowMicros = Math.max(nowMicros, entry.gatewayMicros());
        Gathering out = new Gathering();
        if (nowMicros >= dueMicros) {
            course.passTime(nowMicros, out);
            units.passTime(nowMicros, out);
            climates.watch().passTime(nowMicros);
        }
        Verdict verdict = take(entry.input(), out);
        if (course != null) {
            units.calibrations().giveWay(out);
            dueMicros = Math.min(course.nextDeadlineMicros(), units.nextDeadlineMicros());
            dueMicros = Math.min(dueMicros, climates.watch().nextDeadlineMicros());
        }
        out.facts().forEach(alarms::hear);
        return new Outcome(out.facts(), out.effects(), verdict, nextDeadlineMicros());
    }

    private Verdict take(Input input, Gathering out) {
        switch (input.kind()) {
            case EPOCH -> begin((Input.Epoch) input, out);
            case WALL_STEPPED -> step((Input.WallStepped) input, out);
            case PLAN -> freeze((Input.PlanFrozen) input);
            case ROSTER -> enter((Input.RosterFrozen) input);
            case CODE -> {
                Input.CodeIssued code = (Input.CodeIssued) input;
                devices.issue(code.codeSha256(), code.role());
                return Verdict.accepted(lastEntry);
            }
            case ENROLMENT -> {
                return enrol((Input.Enrolled) input);
            }
            case RULING -> {
                return rule((Input.Ruling) input, out);
            }
            case TABLET_EXCHANGE -> compare((Input.TabletExchange) input, out);
            case CLIMATE -> climate((Input.Climate) input, out);
            case EDGE, HEALTH, UNIT_DOWN, EXCHANGE, ANSWER_REFUSED -> fromUnit(input, out);
            case SETTINGS_APPLIED, DEADLINE -> { // Time has passed already; nothing else follows.
            }
        }
        return null;
    }

    private void begin(Input.Epoch begun, Gathering out) {
        epoch = begun;
        wall = new WallReading(begun.wallMicros(), nowMicros);
        if (course == null && !begun.continuous()) {
            tablets.forget();
        }
        if (course != null) {
            course.setSpeed(begun.speed());
            if (!begun.continuous()) {
                units.calibrations().interrupt(nowMicros, out);
                course.beginLine(nowMicros, out);
                units.beginLine(nowMicros, out);
                climates.watch().interrupt(nowMicros);
                tablets.beginLine(course.lines().current());
            }
        }
    }

    private void step(Input.WallStepped stepped, Gathering out) {
        wall = new WallReading(stepped.wallMicros(), stepped.atMicros());
        out.conclude(Fact.of(FactKind.ALARM, 0, "", WallReading.words(stepped.stepMicros())));
    }

    /** A frozen plan does not change; a second one is not taken. */
    private void freeze(Input.PlanFrozen frozen) {
        if (plan != null) {
            return;
        }
        plan = frozen.plan();
        planSha256 = frozen.sha256();
        Map<String, Unit> known = Unit.all(plan);
        TimeLines lines = new TimeLines();
        course = new CourseRun(plan, new FieldClocks(known, lines), lines, account, nowMicros);
        course.setSpeed(epoch == null ? 1 : epoch.speed());
        course.enter(roster);
        units = new Units(known, lines, course, account);
        climates = new Climates(plan, known, lines, nowMicros);
        Situation situation =
                new Situation(
                        course,
                        devices,
                        units::sensorState,
                        units.calibrations(),
                        units.watch(),
                        units.proofs(),
                        climates.watch(),
                        at -> wall.at(at, course.speed()));
        decisions = new Decisions(situation, tablets);
    }

    private void enter(Input.RosterFrozen frozen) {
        if (!roster.isEmpty()) {
            return;
        }
        roster = frozen.lines();
        rosterSha256 = frozen.sha256();
        if (course != null) {
            course.enter(roster);
        }
    }

    private Verdict enrol(Input.Enrolled enrolled) {
        Devices.Holder holder =
                new Devices.Holder(enrolled.device(), enrolled.person(), enrolled.role());
        Refusal refusal = devices.enrol(holder, enrolled.codeSha256(), enrolled.tokenSha256());
        return Verdict.of(refusal, lastEntry);
    }

    private Verdict rule(Input.Ruling ruling, Gathering out) {
        if (decisions == null) {
            ActKind kind = ruling.act().kind();
            return Verdict.refused(devices.withoutPlan(ruling.device(), kind), lastEntry);
        }
        return decisions.decide(Requests.of(ruling, lastEntry), nowMicros, out);
    }

    private void compare(Input.TabletExchange answer, Gathering out) {
        if (devices.device(answer.device()).isEmpty()) {
            return;
        }
        Optional<List<TabletPress>> dated =
                tablets.compare(answer.device(), answer.boot(), Exchanges.of(answer));
        FactKind kind = dated.isEmpty() ? FactKind.EXCHANGE_REFUSED : FactKind.EXCHANGE_TAKEN;
        out.conclude(Fact.aboutUnit(kind, answer.device(), ""));
        if (course != null && dated.isPresent()) {
            if (tablets.tie(answer.device(), answer.boot(), course.lines())) {
                units.tied(nowMicros, out);
            }
            course.date(dated.get(), nowMicros, out);
        }
    }

    private void climate(Input.Climate reading, Gathering out) {
        if (climates != null) {
            climates.read(reading, new Climates.Clock(nowMicros, wall, course.speed()), out);
        }
    }

    private void fromUnit(Input input, Gathering out) {
        if (units == null) {
            if (input instanceof Input.Edge edge) {
                account.note(new EdgeKey(edge.unit(), edge.boot(), edge.seq()), Cause.NO_PLAN);
            }
            return;
        }
        switch (input.kind()) {
            case EDGE -> units.edge((Input.Edge) input, nowMicros, out);
            case HEALTH -> units.health((Input.Health) input, nowMicros, out);
            case UNIT_DOWN -> units.down(((Input.UnitDown) input).unit(), nowMicros, out);
            case EXCHANGE -> units.exchange((Input.ExchangeAnswered) input, nowMicros, out);
            case ANSWER_REFUSED -> units.answerRefused((Input.AnswerRefused) input, out);
            default -> throw new IllegalStateException("not from a unit: " + input.kind());
        }
    }

    /** What must hold in the world now, whatever was lost: {@code kept} of each unit. */
    public List<Effect> standing() {
        return units == null ? List.of() : units.standing();
    }

    /** When the lane must hand in a {@link Input.Deadline}, if nothing else comes before. */
    public OptionalLong nextDeadlineMicros() {
        return dueMicros == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(dueMicros);
    }

    /**
     * SHA-256 over the canonical text of the state, in hex. It covers every entry taken in, also
     * one that changed nothing else, as a note.
     */
    public String digest() {
        Canonical text = new Canonical();
        text.line("rules", RULES_VERSION)
                .line("inputs", inputs)
                .line("epoch", epoch)
                .line("wall", wall);
        text.line("plan", planSha256).line("roster", rosterSha256).line("devices", devices);
        text.line("tablets", tablets).line("account", account);
        text.line("alarms", alarms).line("decisions", decisions);
        if (course != null) {
            course.describe(text);
            units.describe(text);
            climates.describe(text);
        }
        return text.hex();
    }

    /**
     * What became of an edge that came, to be asked for many edges at one moment; empty for one
     * that never came.
     */
    public Function<EdgeKey, Optional<Cause>> edgeCauses() {
        return course == null ? account::of : course.edgeEnds()::of;
    }

    public long lastEntry() {
        return lastEntry;
    }

    public Optional<ExamPlan> plan() {
        return Optional.ofNullable(plan);
    }

    public String planSha256() {
        return planSha256;
    }

    public String rosterSha256() {
        return rosterSha256;
    }

    /** Who holds the token with this hash, if anyone. */
    public Optional<Devices.Holder> holder(String tokenSha256) {
        return devices.holder(tokenSha256);
    }

    /** The role a one-time code was made for, used or not; empty when nobody made such a code. */
    public Optional<Role> codeRole(String codeSha256) {
        return devices.roleOfCode(codeSha256);
    }

    /** All candidates in the roster's order; to read, not to keep. */
    public List<Attempt> attempts() {
        return course == null ? List.of() : List.copyOf(course.attempts());
    }

    /** Of everybody the attempt that counts, and after them those that were run again. */
    public List<Result> results() {
        List<Attempt> all = course == null ? List.of() : course.everyRun();
        return all.stream().map(attempt -> Results.of(plan, attempt, course.surfaces())).toList();
    }

    public ControlFrame control(View view) {
        return new ControlProjection(picture(view)).frame();
    }

    /** One proctor's picture; without a candidate when the device is not with one. */
    public PostFrame post(View view, String device) {
        return new PostProjection(picture(view), device).frame();
    }

    public CrewFrame crew(View view) {
        return new StaffProjection(picture(view)).crew();
    }

    public WatchFrame watch(View view) {
        return new WatchProjection(picture(view)).frame();
    }

    public BoardFrame board(View view) {
        return new BoardProjection(picture(view)).board();
    }

    public LeaderboardFrame leaderboard(View view) {
        return new BoardProjection(picture(view)).leaderboard();
    }

    public BenchFrame bench(View view) {
        return new StaffProjection(picture(view)).bench();
    }

    /** One unit's clock as a picture; empty when the plan has no such unit. */
    public Optional<ClockSheet> clock(View view, String unit) {
        return new StaffProjection(picture(view)).clock(unit);
    }

    /** What other guards would have found of today's turns; nothing changes by asking. */
    public Rejudgement rejudge(Rejudgement.Question question) {
        return Rejudgement.of(course, question, nowMicros);
    }

    private Picture picture(View view) {
        if (course == null || epoch == null) {
            throw new IllegalStateException("frames need an epoch and a plan");
        }
        long at = Math.max(view.gatewayMicros(), nowMicros);
        long shown = wall.at(at, epoch.speed());
        return new Picture(
                new Picture.Moment(lastEntry, at, shown, view.troubles(), alarms.newestFirst()),
                course,
                units.all(),
                List.copyOf(units.newest()),
                devices,
                climates.watch(),
                units.calibrations(),
                units.watch(),
                units.proofs());
    }

    /**
     * What a projection needs from outside the state: the time to show it for, and troubles only
     * the adapters know of (disk full, broker gone).
     */
    public record View(long gatewayMicros, List<String> troubles) {
        public View {
            troubles = List.copyOf(troubles);
        }
    }
}
