package yardclock.core.engine;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.BoundAlarm;
import yardclock.core.health.Unit;
import yardclock.core.time.ClockStatus;
import yardclock.core.time.GatewayTime;

import java.util.Locale;

/**
 * Tells once when a unit's clock is known less well than the plan allows, takes that back when it
 * is known well again, and tells when its counter jumped.
 */
record ClockWatch(long limitMicros) {
    /** An exchange was had: looks where that can have changed anything. */
    void compared(Unit unit, long nowMicros, int speed, Gathering out) {
        long jumps = unit.clockFaults(unit.status().boot());
        if (unit.jumpAlarm().isNews(jumps) || !unit.boundAlarm().isAssured(nowMicros, speed)) {
            look(unit, nowMicros, speed, out);
        }
    }

    void look(Unit unit, long nowMicros, int speed, Gathering out) {
        ClockStatus clock = unit.clockLimits(unit.status().boot(), new GatewayTime(nowMicros));
        BoundAlarm.Change change = unit.boundAlarm().look(clock, limitMicros, nowMicros, speed);
        if (unit.jumpAlarm().isToTell(clock.faults())) {
            tell(
                    unit,
                    "Its clock jumped without a restart. Marks beside the jump cover both sides of"
                            + " it. If it happens again, change the unit.",
                    out);
        }
        switch (change) {
            case RAISED -> {
                unit.boundAlarm().tell(words(clock.boundWidthMicros()));
                tell(unit, unit.boundAlarm().told(), out);
            }
            case CLEARED -> {
                String over = unit.boundAlarm().told();
                out.conclude(Fact.aboutUnit(FactKind.ALARM_OVER, unit.plan().id(), over));
            }
            case NONE -> { // Told already, or nothing to tell.
            }
        }
    }

    private String words(long widthMicros) {
        return "Its clock is known to "
                + millis(widthMicros)
                + " ms only, the plan allows "
                + millis(limitMicros)
                + " ms. Bring the unit nearer to the access point, or wait for the next exchanges;"
                + " until then marks carry the wide interval.";
    }

    private static void tell(Unit unit, String words, Gathering out) {
        out.conclude(Fact.aboutUnit(FactKind.ALARM, unit.plan().id(), words));
    }

    private static String millis(long micros) {
        return String.format(Locale.ROOT, "%d.%d", micros / 1000, micros % 1000 / 100);
    }
}
