package yardclock.core.trouble;

import yardclock.core.course.Contact;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.health.Unit;
import yardclock.core.run.StationRun;

/** One sensor as one station needs it, and what is known of its trouble. */
final class Watched {
    final StationRun run;
    final Unit unit;
    final SensorRef ref;
    final SensorPlan plan;
    final int restState;

    /** The longest plausible block of the triggers that use it; 0 for no limit. */
    final long longestMicros;

    /** Whether candidates wait on it before they are sent: then it may well be pressed. */
    final boolean isStoodOn;

    /** Whether nobody gets through the station without it. */
    final boolean isNeeded;

    private int state = -1;
    private long sinceMicros;
    private Trouble trouble;
    private String byHand = "";
    long dueMicros = Long.MAX_VALUE;

    Watched(StationRun run, Unit unit, SensorPlan plan) {
        Station station = run.station();
        this.run = run;
        this.unit = unit;
        this.plan = plan;
        this.ref = new SensorRef(unit.plan().id(), plan.number());
        this.restState =
                station.homeContacts().stream()
                        .filter(home -> home.sensor().equals(ref))
                        .mapToInt(Contact::state)
                        .findFirst()
                        .orElse(plan.restState());
        this.longestMicros = longest(station);
        this.isStoodOn = station.start().endsBlock() && isOf(station.start());
        this.isNeeded = station.triggers().stream().anyMatch(this::needs);
    }

    private long longest(Station station) {
        return station.triggers().stream()
                .filter(this::isOf)
                .mapToLong(trigger -> trigger.site().longestBlockMicros())
                .max()
                .orElse(0);
    }

    private boolean isOf(Trigger trigger) {
        return trigger.contacts().stream().anyMatch(contact -> contact.sensor().equals(ref));
    }

    private boolean needs(Trigger trigger) {
        boolean isOneOfSeveral =
                switch (trigger.combination()) {
                    case ANY_OF -> trigger.contacts().size() > 1;
                    case JUDGED, SIGNAL -> true;
                    default -> false;
                };
        return isOf(trigger) && !isOneOfSeveral;
    }

    /** Takes over the sensor's state; whether a trouble is over by it. */
    boolean see(long nowMicros) {
        int now = unit.status().sensorState(ref.sensor());
        if (now != state) {
            state = now;
            sinceMicros = nowMicros;
        }
        boolean isOver =
                trouble == Trouble.NEVER_SEEN ? isSeen() : trouble != null && state == restState;
        dueMicros = isAway() ? dueMicros : Long.MAX_VALUE;
        return isOver;
    }

    /** Blocked, pressed or open where it should not be; false while its state is unknown. */
    boolean isAway() {
        return state >= 0 && state != restState;
    }

    boolean isSeen() {
        return unit.status().lastEdgeMicros(ref.sensor()) >= 0;
    }

    /** Since when it is away while the station waits for nobody. */
    long awaySinceMicros() {
        return Math.max(sinceMicros, run.sinceMicros());
    }

    Trouble trouble() {
        return trouble;
    }

    void trouble(Trouble now) {
        trouble = now;
        byHand = now == null ? "" : byHand;
    }

    void goOnByHand(String who) {
        byHand = who;
    }

    boolean holds() {
        return trouble != null && byHand.isEmpty();
    }

    SensorTrouble told() {
        return new SensorTrouble(
                run.station().id(), ref, plan.name(), trouble, awaySinceMicros(), byHand);
    }

    @Override
    public String toString() {
        return ref
                + " "
                + state
                + " "
                + sinceMicros
                + " "
                + trouble
                + " "
                + byHand
                + " "
                + dueMicros;
    }
}
