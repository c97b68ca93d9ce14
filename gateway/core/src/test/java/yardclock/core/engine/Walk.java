package yardclock.core.engine;

import yardclock.core.ruling.Act;

/**
 * One candidate with a proctor on the test course: the clean way through each station, ten seconds
 * each, with the edges a yard makes. Starts where the yard's time stands.
 */
public final class Walk {
    private static final double STATION_SECONDS = 10;
    private static final double WALK_SECONDS = 5;

    private final Yard yard;
    private final int number;
    private final String proctor;

    public Walk(Yard yard, int number, String proctor) {
        this.yard = yard;
        this.number = number;
        this.proctor = proctor;
    }

    public Walk at(double seconds) {
        yard.at(seconds);
        return this;
    }

    public Walk after(double seconds) {
        yard.after(seconds);
        return this;
    }

    public Walk release() {
        yard.ok("coordinator1", new Act.Release(number, proctor));
        return this;
    }

    /** Asks for the horn, and the horn sounds 0.2 s later. */
    public Walk horn() {
        yard.ok(proctor, new Act.GiveStart(number));
        yard.after(0.2).edge("u1/9", 1);
        yard.after(0.5).edge("u1/9", 0);
        return this;
    }

    public Walk tap(String station, String point) {
        yard.ok(proctor, new Act.Tap(number, station, point));
        return this;
    }

    /** From the release to the end of the course. */
    public Walk wholeCourse() {
        return release().station("walk").stations(1, 6);
    }

    /** A short walk to each of these stations in turn, and the clean way through it. */
    public Walk stations(int from, int to) {
        for (String station : TestPlan.stations().subList(from, to)) {
            yard.after(WALK_SECONDS);
            station(station);
        }
        return this;
    }

    /** Presses 4.5 s from now, for 0.1 s. */
    void press(String sensor) {
        yard.after(4.5).edge(sensor, 1);
        yard.after(0.1).edge(sensor, 0);
    }

    /** The clean way through one station; returns when its finish is final. */
    public Walk station(String id) {
        switch (id) {
            case "walk" -> {
                horn();
                yard.after(4);
                tap("walk", "cap");
                press("u1/3");
            }
            case "drag" -> drag();
            case "poles" -> poles();
            case "bag" -> bag();
            case "fan" -> fan();
            case "laps" -> laps();
            default -> throw new IllegalArgumentException(id);
        }
        return this;
    }

    /** Stands on a mat for 1 s and leaves it. */
    public Walk leaveMat(String mat) {
        yard.edge(mat, 1);
        yard.after(1).edge(mat, 0);
        return this;
    }

    private void drag() {
        leaveMat("u2/1");
        yard.after(STATION_SECONDS / 2).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(2);
    }

    private void poles() {
        leaveMat("u3/1");
        yard.after(STATION_SECONDS / 2).edge("u3/2", 1);
        yard.after(STATION_SECONDS / 2).edge("u3/3", 1);
        yard.after(1.5);
    }

    private void bag() {
        yard.edge("u4/1", 0);
        yard.after(STATION_SECONDS / 2).edge("u5/1", 1);
        yard.after(0.4).edge("u5/1", 0);
        yard.after(4.6).edge("u4/1", 1);
    }

    private void fan() {
        through("u6/1", "u6/2");
        yard.after(STATION_SECONDS / 2 - 0.5);
        tap("fan", "hands");
        yard.after(STATION_SECONDS / 2).edge("u6/3", 1);
        yard.after(0.5).edge("u6/3", 0);
    }

    private void through(String near, String far) {
        yard.edge(near, 1);
        yard.after(0.5).edge(far, 1);
        yard.after(0.3).edge(near, 0);
        yard.after(0.2).edge(far, 0);
    }

    private void laps() {
        yard.edge("u7/1", 1);
        yard.after(0.5).edge("u7/1", 0);
        press("u7/2");
        press("u7/2");
    }

    /** The crew puts a station back and taps ready. */
    public Walk reset(String station) {
        switch (station) {
            case "poles" -> {
                yard.edge("u3/2", 0);
                yard.after(0.5).edge("u3/3", 0);
            }
            default -> {}
        }
        yard.after(0.5).ok("crew1", new Act.StationReady(station));
        return this;
    }

    /** The proctor confirms every split. */
    public Walk confirmAll() {
        for (String station : TestPlan.stations()) {
            yard.ok(proctor, new Act.Confirm(number, station));
        }
        return this;
    }
}
