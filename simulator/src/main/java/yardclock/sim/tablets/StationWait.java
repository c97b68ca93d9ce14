package yardclock.sim.tablets;

import yardclock.core.board.Head;
import yardclock.core.board.PostFrame;
import yardclock.core.board.StationView;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.sim.people.Candidate;
import yardclock.sim.stage.Stage;

/**
 * How a proctor sees to it that nobody starts on a station that is not ready: looks at the page, or
 * at the station where the page does not say; holds the candidate, and resumes when it is ready.
 * Lives on the stage.
 *
 * <p>The walk that is left when the hold begins is what is walked after it, so that a credited hold
 * changes nothing of the official time.
 */
final class StationWait {
    private static final long LOOK_AGAIN_MICROS = 1_000_000;

    private final Stage stage;
    private final Tablet<PostFrame> tablet;
    private final Ground ground;
    private Wait wait;

    /** A candidate kept from a station since an instant, with so much of the walk left. */
    private static final class Wait {
        private final Candidate candidate;
        private final int station;
        private final long since;
        private final long walkLeft;
        private boolean answered;
        private boolean ours;

        Wait(Candidate candidate, int station, long since, long walkLeft) {
            this.candidate = candidate;
            this.station = station;
            this.since = since;
            this.walkLeft = walkLeft;
        }
    }

    StationWait(Stage stage, Tablet<PostFrame> tablet, Ground ground) {
        this.stage = stage;
        this.tablet = tablet;
        this.ground = ground;
    }

    void nears(Candidate candidate, int stationIndex, long plannedStart) {
        ground.queues(candidate, ground.stationId(stationIndex));
        if (mayGoOn(candidate, stationIndex, false)) {
            ground.leavesQueue(candidate, ground.stationId(stationIndex));
            candidate.startAt(stationIndex, plannedStart);
            return;
        }
        long now = stage.nowMicros();
        Wait begun = new Wait(candidate, stationIndex, now, plannedStart - now);
        wait = begun;
        Act hold = new Act.HoldCandidate(candidate.number(), Reason.STATION_NOT_READY, "");
        tablet.press(hold, -1, answer -> holdAnswered(begun, answer));
        lookLater(begun);
    }

    private void holdAnswered(Wait begun, Gateway.Answer answer) {
        begun.answered = true;
        begun.ours = answer.isOk();
        look();
    }

    /** Looks whether the wait is over; does nothing when there is none. */
    void look() {
        Wait now = wait;
        if (now == null || !now.answered || !mayGoOn(now.candidate, now.station, now.ours)) {
            return;
        }
        wait = null;
        long resumed = stage.nowMicros();
        if (now.ours) {
            Act resume = new Act.ResumeCandidate(now.candidate.number());
            tablet.press(resume, -1, answer -> {});
            ground.waited(now.candidate.number(), now.since, resumed);
        }
        ground.leavesQueue(now.candidate, ground.stationId(now.station));
        now.candidate.startAt(now.station, resumed + now.walkLeft);
    }

    private void lookLater(Wait begun) {
        stage.afterMicros(
                LOOK_AGAIN_MICROS,
                () -> {
                    if (wait == begun) {
                        look();
                        lookLater(begun);
                    }
                });
    }

    /**
     * The page decides when it shows this candidate before this station, else the eye. But nobody
     * steps up to a station that another is at: that is seen there before any sensor tells the
     * page, and there is one ladder.
     *
     * @param heldByUs whether a hold on the page is our own, and so no reason to wait
     */
    private boolean mayGoOn(Candidate candidate, int stationIndex, boolean heldByUs) {
        String station = ground.stationId(stationIndex);
        if (!ground.isFirst(candidate, station)) {
            return false;
        }
        PostFrame frame = tablet.isFresh() ? tablet.newest() : null;
        PostFrame.Candidate shown = frame == null ? null : frame.candidate();
        if (shown == null || shown.number() != candidate.number()) {
            return ground.looksReady(station);
        }
        boolean stopped = frame.head().course() == Head.CourseStatus.STOPPED;
        boolean heldByOther = shown.phase().equals("held") && !heldByUs;
        if (stopped || heldByOther) {
            return false;
        }
        PostFrame.At at = shown.station();
        if (at == null || !at.id().equals(station)) {
            return ground.looksReady(station);
        }
        // Somebody's crossing may have been taken for this candidate's start; they go all the same.
        return at.started()
                ? ground.looksReady(station)
                : at.state() == StationView.State.READY && !ground.isOccupied(station);
    }
}
