package yardclock.core.engine;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.Head.CourseStatus;
import yardclock.core.proof.ProofWhy;
import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Surfaces;
import yardclock.core.readiness.Team;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.ActKind;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A yard gone mad: anybody does anything at any time, sensors change as they like, units reboot,
 * repeat themselves and answer nonsense. All from one seed.
 */
final class RandomYard {
    private final Random random;
    private final Yard yard;
    private final List<Input.Edge> sent = new ArrayList<>();
    private final List<Input.Edge> heldBack = new ArrayList<>();
    private final boolean replacesBoards;
    private int keys;

    RandomYard(long seed, boolean replacesBoards, Yard yard) {
        this.replacesBoards = replacesBoards;
        this.random = new Random(seed);
        this.yard = yard;
    }

    void step() {
        yard.after(random.nextInt(8) == 0 ? random.nextInt(30) : random.nextDouble());
        switch (random.nextInt(20)) {
            case 0, 1, 2, 3, 4, 5, 6, 7, 8 -> edge();
            case 9 -> deliverHeldBack();
            case 10 -> repeat();
            case 11 -> yard.exchange(unit());
            case 12 -> strange();
            case 13 -> yard.health(unit());
            case 14, 15, 16, 17 -> sensible();
            default -> ruling();
        }
    }

    private String unit() {
        return "u" + (1 + random.nextInt(7));
    }

    private void edge() {
        int sensor = random.nextInt(12) == 0 ? 9 : 1 + random.nextInt(4);
        Input.Edge edge = yard.happens(unit() + "/" + sensor, random.nextInt(2));
        if (random.nextInt(10) == 0) {
            heldBack.add(edge);
        } else {
            send(edge);
        }
    }

    private void send(Input.Edge edge) {
        sent.add(edge);
        yard.take(edge);
    }

    private void deliverHeldBack() {
        heldBack.forEach(this::send);
        heldBack.clear();
    }

    private void repeat() {
        if (!sent.isEmpty()) {
            Input.Edge edge = sent.get(random.nextInt(sent.size()));
            boolean altered = random.nextInt(4) == 0;
            yard.take(
                    altered
                            ? new Input.Edge(
                                    edge.unit(),
                                    edge.boot(),
                                    edge.seq(),
                                    edge.sensor(),
                                    1 - edge.state(),
                                    edge.tick())
                            : edge);
        }
    }

    /** What should never come: it may be refused, it may not hurt. */
    private void strange() {
        String unit = unit();
        String boot = yard.unit(unit).boot();
        long far = 1L << (10 + random.nextInt(38));
        switch (random.nextInt(12)) {
            case 8 -> yard.tablet(proctorTablet()).load(Math.round(yard.now() * 1e6));
            case 9 -> yard.compare(proctorTablet());
            case 10 ->
                    yard.take(
                            new Input.TabletExchange(
                                    proctorTablet(), "p" + far % 9, "x", far, far / 2, far, far));
            case 11 -> tapWithoutClock();
            case 0 -> yard.unit(unit).reboot(Math.round(yard.now() * 1e6));
            case 1 -> yard.take(new Input.UnitDown(unit));
            case 2 -> yard.take(new Input.Edge(unit, boot, far, 1, 1, far));
            case 3 -> yard.take(new Input.Edge(unit, "ghost" + far, 0, 2, 1, far));
            case 4 ->
                    yard.take(
                            new Input.ExchangeAnswered(
                                    unit, boot, "x", far, far / 2, far / 2 + 5, far + 9));
            case 5 -> yard.take(new Input.Climate(unit, (int) far, 4_000, null, null, null, 0));
            case 6 -> restart(far);
            default -> yard.take(new Input.SettingsApplied(unit, 2, ""));
        }
    }

    private String proctorTablet() {
        return "proctor" + (1 + random.nextInt(4));
    }

    private void tapWithoutClock() {
        Act tap = new Act.Tap(number(), pick(TestPlan.stations()), pick(POINTS));
        yard.ruleWithoutClock(proctorTablet(), "w" + keys++, tap, -1);
    }

    /** The same board again, or another one with any wall clock, after some time away. */
    private void restart(long far) {
        if (!replacesBoards || random.nextBoolean()) {
            yard.take(new Input.Epoch("m", "p", far, 0, 1, random.nextInt(3) > 0, "1"));
            return;
        }
        yard.loseGateway().after(random.nextInt(90));
        if (random.nextInt(3) == 0) {
            yard.unit(unit()).reboot(Math.round(yard.now() * 1e6));
        }
        yard.replaceBoard("m" + far, 1_000_000L * random.nextInt(3) * random.nextInt(100_000));
        yard.compareClocks(random);
    }

    /** What people who know their work would do next, so that the day goes on all the same. */
    private void sensible() {
        ControlFrame control = yard.engine().control(yard.view());
        boolean isProving =
                control.head().holds().stream()
                        .anyMatch(hold -> hold.code().equals("proof-run-under-way"));
        if (isProving && random.nextInt(4) == 0) {
            rule("technician1", new Act.SignProofRun("seen by eye"));
            rule("proctor2", new Act.SignProofRun("seen by eye"));
        } else if (control.head().course() == CourseStatus.STOPPED) {
            rule("safety1", new Act.Restart());
        } else if (control.head().course() == CourseStatus.HELD) {
            rule("coordinator1", new Act.ResumeCourse());
        } else if (control.startOfDay().stream().anyMatch(item -> !item.done())) {
            control.startOfDay()
                    .forEach(item -> rule("safety1", new Act.ChecklistDone(item.id(), "")));
        } else if (control.next().ready()) {
            Act release = new Act.Release(control.next().number(), control.next().proctorDevice());
            rule("coordinator1", release);
        } else if (random.nextBoolean()) {
            yard.engine()
                    .crew(yard.view())
                    .resets()
                    .forEach(reset -> rule("crew1", new Act.StationReady(reset.station())));
        } else if (!control.onCourse().isEmpty()) {
            goOn(control.onCourse().get(random.nextInt(control.onCourse().size())));
        }
    }

    private void goOn(ControlFrame.OnCourse line) {
        String device = line.proctor().replace("P. ", "");
        switch (line.phase()) {
            case "held" -> rule(device, new Act.ResumeCandidate(line.number()));
            case "released", "walking" ->
                    rule(device, new Act.Tap(line.number(), line.station(), "start"));
            case "at-station" -> rule(device, new Act.Tap(line.number(), line.station(), "finish"));
            default ->
                    TestPlan.stations()
                            .forEach(s -> rule(device, new Act.Confirm(line.number(), s)));
        }
    }

    private void rule(String device, Act act) {
        yard.rule(device, "s" + keys++, act, -1);
    }

    private void ruling() {
        ActKind kind = ActKind.values()[random.nextInt(ActKind.values().length)];
        boolean rare =
                kind == ActKind.STOP_ALL
                        || kind == ActKind.STOP_ONE
                        || kind == ActKind.WITHDRAW
                        || kind == ActKind.NO_SHOW
                        || kind == ActKind.HAND_READING
                        || kind == ActKind.LIGHTNING_SEEN;
        if (rare && random.nextInt(12) > 0) {
            return;
        }
        Role role = Role.values()[random.nextInt(Role.values().length)];
        if (random.nextInt(5) > 0) {
            while (!kind.allows(role)) {
                role = Role.values()[random.nextInt(Role.values().length)];
            }
        }
        String device = role.word() + (1 + random.nextInt(3));
        long basis = random.nextInt(4) == 0 ? random.nextInt(40) : -1;
        String key = random.nextInt(15) == 0 ? "again" : "r" + keys++;
        yard.rule(device, key, act(kind), basis);
    }

    private Act proof(ActKind kind) {
        String station = pick(TestPlan.stations());
        return switch (kind) {
            case BEGIN_PROOF_RUN ->
                    new Act.BeginProofRun(
                            random.nextBoolean() ? "" : station,
                            random.nextBoolean() ? ProofWhy.AFTER_REPAIR : null);
            case PROOF_TAP -> new Act.ProofTap(station, pick(POINTS));
            case PROOF_SIGNAL -> new Act.ProofSignal();
            case SIGN_PROOF_RUN -> new Act.SignProofRun(random.nextBoolean() ? "by eye" : "");
            default -> new Act.EndProofRun("");
        };
    }

    private Act act(ActKind kind) {
        int number = number();
        String station = random.nextInt(30) == 0 ? null : pick(TestPlan.stations());
        String words = random.nextInt(10) == 0 ? null : "words";
        Reason reason = random.nextInt(10) == 0 ? null : Reason.values()[random.nextInt(10)];
        return switch (kind) {
            case RELEASE -> new Act.Release(next(), proctor());
            case GIVE_START -> new Act.GiveStart(number);
            case TAP -> new Act.Tap(number, station, pick(POINTS));
            case CALL -> new Act.Call(number, station, pick(CRITERIA), random.nextBoolean(), words);
            case CONFIRM -> new Act.Confirm(number, station);
            case CHOOSE_READING -> new Act.ChooseReading(number, station, random.nextInt(3));
            case VOID_SPLIT -> new Act.VoidSplit(number, station, reason, words);
            case HAND_TIME -> new Act.HandTime(number, station, splitMicros(), reason, words);
            case HOLD_CANDIDATE -> new Act.HoldCandidate(number, reason, words);
            case RESUME_CANDIDATE -> new Act.ResumeCandidate(number);
            case HOLD_COURSE -> new Act.HoldCourse(reason, words);
            case RESUME_COURSE -> new Act.ResumeCourse();
            case STOP_ALL -> new Act.StopAll(words);
            case RESTART -> new Act.Restart();
            case STATION_READY -> new Act.StationReady(station);
            case WITHDRAW -> new Act.Withdraw(number, words);
            case NO_SHOW -> new Act.NoShow(number);
            case TELL -> new Act.Tell(number);
            case HAND_OVER -> new Act.HandOver(number, proctor());
            case IDENTIFY -> new Act.Identify(unit(), random.nextInt(70));
            case BEGIN_CALIBRATION ->
                    new Act.BeginCalibration(
                            unit(), 1 + random.nextInt(3), unit(), random.nextInt(11));
            case BEGIN_PROOF_RUN, PROOF_TAP, PROOF_SIGNAL, SIGN_PROOF_RUN, END_PROOF_RUN ->
                    proof(kind);
            case END_CALIBRATION -> new Act.EndCalibration(random.nextBoolean());
            case ADJUST_TRIGGER -> adjust(station, words);
            case GO_ON_BY_HAND -> new Act.GoOnByHand(station, reason, words);
            case NOTE -> new Act.Note(number, words);
            case CONFIRM_CLEAN -> new Act.ConfirmClean(number);
            case STRIKE -> strike(reason, words);
            case ASSIGN -> assign(number, station, reason, words);
            case ADD_MARK -> {
                long at = yard.view().gatewayMicros() - splitMicros();
                yield new Act.AddMark(number, station, pick(POINTS), at, reason, words);
            }
            case WITHDRAW_RULING -> new Act.WithdrawRuling(number, station, anEntry(), words);
            case EQUIPMENT_FAULT -> new Act.EquipmentFault(number, station, words);
            case STOP_ONE -> new Act.StopOne(number, reason, words);
            case SWAP_ORDER -> new Act.SwapOrder(number, number(), reason, words);
            case RUN_AGAIN -> new Act.RunAgain(number, reason, words);
            case RUN_STATION_AGAIN -> new Act.RunStationAgain(number, station, reason, words);
            case ACKNOWLEDGE_HEAT -> new Act.AcknowledgeHeat();
            case HAND_READING ->
                    new Act.HandReading(random.nextInt(4_500), random.nextInt(11_000), null, words);
            case LIGHTNING_SEEN -> new Act.LightningSeen();
            case GUST_READ -> new Act.GustRead(random.nextInt(20_000));
            case TEAM_AWAY -> new Act.TeamAway(team(), words);
            case TEAM_BACK -> new Act.TeamBack(team(), words);
            case CHECKLIST_DONE -> new Act.ChecklistDone(pick(ITEMS), words);
            case CHECKLIST_OPEN -> new Act.ChecklistOpen(pick(ITEMS), words);
            case NOTE_SURFACE -> noteSurface(station, words);
        };
    }

    private Team team() {
        return Team.values()[random.nextInt(Team.values().length)];
    }

    /** Ice only now and then: it holds the whole yard. */
    private Act noteSurface(String station, String words) {
        Ground ground = Ground.values()[random.nextInt(12) / 5];
        String where = random.nextInt(3) == 0 ? Surfaces.YARD : station;
        return new Act.NoteSurface(
                where, ground, random.nextBoolean(), random.nextBoolean(), words);
    }

    /** Any guard at any trigger: mostly none that it can have. */
    private Act adjust(String station, String words) {
        long[] micros = random.longs(8, 0, 4).map(i -> i * 50_000).toArray();
        return new Act.AdjustTrigger(
                station,
                pick(POINTS),
                random.nextInt(2),
                micros[0],
                0,
                0,
                random.nextInt(3) * 300_000L,
                micros[1],
                micros[2],
                0,
                micros[3],
                words);
    }

    /** One of the newest edges, struck. */
    private Act strike(Reason reason, String words) {
        Input.Edge edge = anEdge();
        return new Act.Strike(edge.unit(), edge.boot(), edge.seq(), reason, words);
    }

    private Act assign(int number, String station, Reason reason, String words) {
        Input.Edge edge = anEdge();
        String point = pick(POINTS);
        return new Act.Assign(
                edge.unit(), edge.boot(), edge.seq(), number, station, point, reason, words);
    }

    /** One of the newest edges, if there are any. */
    private Input.Edge anEdge() {
        List<Input.Edge> edges =
                yard.journal().stream()
                        .skip(Math.max(0, yard.journal().size() - 200))
                        .map(Entry::input)
                        .filter(Input.Edge.class::isInstance)
                        .map(Input.Edge.class::cast)
                        .toList();
        return edges.isEmpty()
                ? new Input.Edge(unit(), "none", 1, 1, 1, 1)
                : edges.get(random.nextInt(edges.size()));
    }

    /** The entry of one of the newest rulings, mostly. */
    private long anEntry() {
        List<Entry> rulings =
                yard.journal().stream()
                        .skip(Math.max(0, yard.journal().size() - 100))
                        .filter(entry -> entry.input() instanceof Input.Ruling)
                        .toList();
        return rulings.isEmpty() ? 1 : rulings.get(random.nextInt(rulings.size())).number();
    }

    private static final List<String> POINTS =
            Arrays.asList("start", "finish", "cap", "post", "top", "hands", null);
    private static final List<String> ITEMS = Arrays.asList("cooling", "medical", "moat", null);
    private static final List<String> CRITERIA =
            Arrays.asList("must", "rough", "once", "advice", "none", null);

    private String pick(List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private int number() {
        return random.nextInt(25) == 0 ? random.nextInt(200) : 101 + random.nextInt(4);
    }

    private int next() {
        int next = yard.engine().control(yard.view()).next().number();
        return random.nextInt(6) == 0 ? number() : next;
    }

    private String proctor() {
        return random.nextInt(20) == 0 ? null : "proctor" + (1 + random.nextInt(4));
    }

    private long splitMicros() {
        return random.nextInt(3) == 0 ? 0 : random.nextInt(60_000_000);
    }
}
