package yardclock.pages;

import yardclock.sim.people.Candidate;
import yardclock.sim.people.Companion;
import yardclock.sim.people.Mishap;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A proctor whose hands are a page: what they see beside the candidate becomes the zone to press.
 * Sees on the stage's thread; the test presses on the browser's.
 */
final class WalkingProctor implements Companion {
    private static final String COURSE_DONE = "";

    private final BlockingQueue<String> presses = new LinkedBlockingQueue<>();
    private final int lastStation;

    WalkingProctor(int stations) {
        this.lastStation = stations - 1;
    }

    /** The next zone to press, as a selector; empty when the candidate is through the course. */
    Optional<String> nextPress() throws InterruptedException {
        String press = presses.poll(90, TimeUnit.SECONDS);
        if (press == null) {
            throw new IllegalStateException("nothing happened beside the candidate for long");
        }
        return Optional.of(press).filter(selector -> !selector.equals(COURSE_DONE));
    }

    @Override
    public void standsAtStart(Candidate candidate) {
        presses.add("[data-act=start][aria-disabled=false]");
    }

    @Override
    public void sees(Candidate candidate, String station, String checkpoint) {
        presses.add("[data-act=mark][data-point=" + checkpoint + "][data-settled=true]");
    }

    @Override
    public void nears(Candidate candidate, int stationIndex, long plannedStart) {
        candidate.startAt(stationIndex, plannedStart);
    }

    @Override
    public void finished(Candidate candidate, int stationIndex) {
        if (stationIndex == lastStation) {
            presses.add(COURSE_DONE);
        }
    }

    @Override
    public void mishap(Candidate candidate, int stationIndex, Mishap.Kind kind) {
        throw new IllegalStateException("this run was to be uneventful, not " + kind);
    }
}
