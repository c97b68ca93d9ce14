package yardclock.sim.tablets;

import yardclock.core.board.PostFrame;
import yardclock.core.course.Criterion;
import yardclock.core.ruling.Act;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.Companion;
import yardclock.sim.people.Mishap;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.HandReaction;

import java.util.function.IntFunction;

/**
 * A proctor with a tablet who walks beside one candidate at a time. Lives on the stage.
 *
 * <p>The frame says whose companion the proctor is. While the candidate runs, the proctor taps what
 * they see; when the course is done, {@link Paperwork} rules on the splits and tells the result.
 */
public final class Proctor implements Companion {
    private static final long PLACE_MICROS = 3_000_000;
    private static final long ASK_AGAIN_REAL_MILLIS = 3_000;

    private final Stage stage;
    private final Tablet<PostFrame> tablet;
    private final Ground ground;
    private final IntFunction<Candidate> people;
    private final Paperwork paperwork;
    private final StationWait stationWait;
    private final Lookout lookout;
    private Candidate beside;
    private boolean askedForStart;

    public Proctor(
            Stage stage, Tablet<PostFrame> tablet, Ground ground, IntFunction<Candidate> people) {
        this.stage = stage;
        this.tablet = tablet;
        this.ground = ground;
        this.people = people;
        this.paperwork = new Paperwork(stage, tablet, ground);
        this.stationWait = new StationWait(stage, tablet, ground);
        this.lookout = new Lookout(stage, tablet);
    }

    public void begin() {
        tablet.open(this::looksAt);
        lookout.begin(() -> beside);
    }

    private void looksAt(PostFrame frame) {
        PostFrame.Candidate shown = frame.candidate();
        if (shown == null) {
            leave();
            return;
        }
        if (beside == null || beside.number() != shown.number()) {
            join(shown.number());
        }
        if (beside == null) {
            return;
        }
        giveStart();
        stationWait.look();
        if (shown.phase().equals("finished") || shown.phase().equals("done")) {
            beside.stop();
            paperwork.look();
        }
    }

    private void leave() {
        if (beside != null) {
            beside.leftAlone();
            beside = null;
        }
    }

    private void join(int number) {
        beside = people.apply(number);
        askedForStart = false;
        if (beside != null) {
            beside.accompaniedBy(this);
            beside.come();
        }
    }

    @Override
    public void standsAtStart(Candidate candidate) {
        stage.afterMicros(PLACE_MICROS, this::giveStart);
    }

    private void giveStart() {
        boolean stands = beside != null && beside.phase() == Candidate.Phase.AT_START;
        if (!stands || askedForStart || !tablet.isFresh()) {
            return;
        }
        PostFrame.Candidate shown = tablet.newest().candidate();
        if (shown == null || shown.number() != beside.number() || !shown.canGiveStart()) {
            return;
        }
        askedForStart = true;
        tablet.press(new Act.GiveStart(beside.number()), -1, this::startAnswered);
    }

    /** A signal that did not come, or was refused, is asked for again after a while. */
    private void startAnswered(Gateway.Answer answer) {
        stage.afterRealMillis(
                ASK_AGAIN_REAL_MILLIS,
                () -> {
                    askedForStart = false;
                    giveStart();
                });
    }

    @Override
    public void sees(Candidate candidate, String station, String checkpoint) {
        react(candidate.number(), station, checkpoint);
    }

    /** The second clock: a tap beside each automatic start; the horn needs none. */
    @Override
    public void begun(Candidate candidate, int stationIndex) {
        if (stationIndex > 0 && !hasOwnTaps(candidate, stationIndex)) {
            react(candidate.number(), ground.stationId(stationIndex), "start");
        }
    }

    @Override
    public void finished(Candidate candidate, int stationIndex) {
        if (!ground.isFinishJudged(stationIndex) && !hasOwnTaps(candidate, stationIndex)) {
            react(candidate.number(), ground.stationId(stationIndex), "finish");
        }
    }

    /** Taps that were drawn with the run, a missing one too, are not made twice. */
    private static boolean hasOwnTaps(Candidate candidate, int stationIndex) {
        return candidate.run().scripts().get(stationIndex).hasOwnTaps();
    }

    private void react(int number, String station, String point) {
        long reaction = HandReaction.micros(ground.handOf(number, station + point));
        stage.afterMicros(Math.max(0, reaction), () -> tap(number, station, point));
    }

    @Override
    public void taps(Candidate candidate, String station, String point) {
        tap(candidate.number(), station, point);
    }

    private void tap(int number, String station, String point) {
        tablet.press(new Act.Tap(number, station, point), -1, answer -> {});
    }

    @Override
    public void nears(Candidate candidate, int stationIndex, long plannedStart) {
        stationWait.nears(candidate, stationIndex, plannedStart);
    }

    @Override
    public void mishap(Candidate candidate, int stationIndex, Mishap.Kind kind) {
        int number = candidate.number();
        if (kind == Mishap.Kind.WITHDRAWAL) {
            tablet.press(new Act.Withdraw(number, "stops on the course"), -1, answer -> {});
            return;
        }
        ground.prohibition(stationIndex)
                .ifPresent(criterion -> callFault(candidate, stationIndex, criterion));
    }

    /** As many warnings as the criterion grants, then the fault. */
    private void callFault(Candidate candidate, int stationIndex, Criterion criterion) {
        for (int call = 0; call <= criterion.warnings(); call++) {
            boolean fault = call == criterion.warnings();
            Act act =
                    new Act.Call(
                            candidate.number(),
                            ground.stationId(stationIndex),
                            criterion.id(),
                            fault,
                            "");
            tablet.press(act, -1, answer -> {});
        }
        if (ground.stopsAfterFault()) {
            candidate.stop();
        }
    }
}
