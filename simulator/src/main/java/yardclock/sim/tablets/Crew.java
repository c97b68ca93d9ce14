package yardclock.sim.tablets;

import yardclock.core.board.CrewFrame;
import yardclock.core.ruling.Act;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.Spot;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * The station crew: puts back what the page lists, then calls the station ready when the page shows
 * every contact home. Each station has its own pair of hands. Lives on the stage.
 */
public final class Crew {
    private enum Task {
        PUTTING_BACK,
        PUT_BACK,
        CALLING
    }

    private final Stage stage;
    private final Tablet<CrewFrame> tablet;
    private final Ground ground;
    private final Map<String, Task> tasks = new HashMap<>();

    public Crew(Stage stage, Tablet<CrewFrame> tablet, Ground ground) {
        this.stage = stage;
        this.tablet = tablet;
        this.ground = ground;
    }

    public void begin() {
        tablet.open(this::looksAt);
    }

    private void looksAt(CrewFrame frame) {
        Set<String> listed = new HashSet<>();
        for (CrewFrame.Reset reset : frame.resets()) {
            listed.add(reset.station());
            work(reset);
        }
        Set<String> gone = new HashSet<>(tasks.keySet());
        gone.removeAll(listed);
        gone.forEach(this::done);
    }

    /** Off the list: we called it ready, or somebody with another tablet did. */
    private void done(String station) {
        if (tasks.remove(station) != Task.PUTTING_BACK) {
            ready(station);
        }
    }

    /**
     * Nobody's answer comes so late that it takes a station from who has stepped up to it since.
     */
    private void ready(String station) {
        if (ground.yard().spot(station) == Spot.TO_BE_PUT_BACK) {
            ground.yard().setSpot(station, Spot.READY);
        }
    }

    private void work(CrewFrame.Reset reset) {
        String station = reset.station();
        Task task = tasks.get(station);
        if (task == null && ground.yard().spot(station) != Spot.OCCUPIED) {
            tasks.put(station, Task.PUTTING_BACK);
            stage.afterMicros(ground.resetMicros(station), () -> putBack(station));
        } else if (task == Task.PUT_BACK && reset.openContacts().isEmpty()) {
            tasks.put(station, Task.CALLING);
            tablet.press(new Act.StationReady(station), -1, answer -> called(station, answer));
        }
    }

    private void putBack(String station) {
        ground.yard().putBack(station);
        tasks.replace(station, Task.PUT_BACK);
    }

    private void called(String station, Gateway.Answer answer) {
        if (answer.isOk()) {
            ready(station);
        } else {
            tasks.replace(station, Task.PUT_BACK);
        }
    }
}
