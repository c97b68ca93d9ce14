package yardclock.core.engine;

import yardclock.core.board.ProofView;
import yardclock.core.proof.ProofPoint;
import yardclock.core.proof.ProofWhy;
import yardclock.core.ruling.Act;

/**
 * A technician who walks the test course in the clean way, and a proctor's tablet that is pressed
 * so much after each point.
 */
final class ProofWalk {
    private final Yard yard;
    private double late = 0.11;

    ProofWalk(Yard yard) {
        this.yard = yard;
    }

    ProofWalk begin(String station) {
        ProofWhy why = station.isEmpty() ? ProofWhy.START_OF_DAY : ProofWhy.AFTER_REPAIR;
        yard.ok("technician1", new Act.BeginProofRun(station, why));
        yard.after(2);
        return this;
    }

    /** From now on presses come so many seconds after what they are for. */
    ProofWalk late(double seconds) {
        late = seconds;
        return this;
    }

    ProofWalk tap(String station, String point) {
        yard.after(late).ok("proctor1", new Act.ProofTap(station, point));
        return this;
    }

    ProofWalk wholeCourse() {
        TestPlan.stations().forEach(station -> station(station));
        return this;
    }

    ProofWalk station(String id) {
        yard.after(5);
        switch (id) {
            case "walk" -> walk();
            case "drag" -> drag();
            case "poles" -> poles();
            case "bag" -> bag();
            case "fan" -> fan();
            case "laps" -> laps();
            default -> throw new IllegalArgumentException(id);
        }
        return this;
    }

    private void walk() {
        yard.ok("technician1", new Act.ProofSignal());
        yard.after(0.2).edge("u1/9", 1);
        tap("walk", "start");
        yard.after(0.5).edge("u1/9", 0);
        tap("walk", "cap");
        yard.after(2).edge("u1/3", 1);
        yard.after(0.1).edge("u1/3", 0);
    }

    private void drag() {
        yard.edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        tap("drag", "start");
        yard.after(3).edge("u2/2", 1);
        tap("drag", "post");
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        tap("drag", "finish");
        yard.after(2);
    }

    private void poles() {
        yard.edge("u3/1", 1);
        yard.after(1).edge("u3/1", 0);
        tap("poles", "start");
        yard.after(3).edge("u3/2", 1);
        tap("poles", "poles");
        yard.after(3).edge("u3/3", 1);
        tap("poles", "poles");
        yard.ok("proctor1", new Act.ProofTap("poles", "finish"));
        yard.after(2);
    }

    private void bag() {
        yard.edge("u4/1", 0);
        tap("bag", "start");
        yard.after(3).edge("u5/1", 1);
        tap("bag", "top");
        yard.after(0.4).edge("u5/1", 0);
        yard.after(3).edge("u4/1", 1);
        tap("bag", "finish");
    }

    private void fan() {
        yard.edge("u6/1", 1);
        yard.after(0.5).edge("u6/2", 1);
        tap("fan", "start");
        yard.after(0.3).edge("u6/1", 0);
        yard.after(0.2).edge("u6/2", 0);
        yard.after(3);
        tap("fan", "hands");
        yard.after(3).edge("u6/3", 1);
        tap("fan", "finish");
        yard.after(0.5).edge("u6/3", 0);
    }

    private void laps() {
        yard.edge("u7/1", 1);
        tap("laps", "start");
        yard.after(0.5).edge("u7/1", 0);
        press("u7/2");
        yard.after(4).edge("u7/2", 1);
        tap("laps", "finish");
        yard.after(0.1).edge("u7/2", 0);
    }

    private void press(String sensor) {
        yard.after(4).edge(sensor, 1);
        yard.after(0.1).edge(sensor, 0);
    }

    ProofWalk sign(String words) {
        yard.ok("technician1", new Act.SignProofRun(words));
        yard.ok("coordinator1", new Act.SignProofRun(words));
        return this;
    }

    ProofView view() {
        return yard.engine().bench(yard.view()).proof();
    }

    ProofPoint point(String station, String point) {
        return view().points().stream()
                .filter(p -> p.station().equals(station) && p.point().equals(point))
                .findFirst()
                .orElseThrow(() -> new AssertionError(station + " " + point + " in " + view()));
    }
}
