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
 * Tells once when a unit's clock is known less well than the plan allows, once when it is known
 * well again, and when its counter jumped.
 */
record ClockWatch(long limitMicros) {
    void look(Unit unit, long nowMicros, int speed, Gathering out) {
        ClockStatus clock = unit.clockStatus(unit.status().boot(), new GatewayTime(nowMicros));
        BoundAlarm.Change change = unit.boundAlarm().look(clock, limitMicros, nowMicros, speed);
        if (unit.jumpAlarm().isToTell(clock.faults())) {
            tell(
                    unit,
                    "Its clock jumped without a restart. Marks beside the jump cover both sides of"
                            + " it. If it happens again, change the unit.",
                    out);
        }
        String width = millis(clock.boundWidthMicros());
        switch (change) {
            case RAISED ->
                    tell(
                            unit,
                            "Its clock is known to "
                                    + width
                                    + " ms only, the plan allows "
                                    + millis(limitMicros)
                                    + " ms. Bring the unit nearer to the access point, or wait for"
                                    + " the next exchanges; until then marks carry the wide"
                                    + " interval.",
                            out);
            case CLEARED -> tell(unit, "Its clock is known to " + width + " ms again.", out);
            case NONE -> { // Told already, or nothing to tell.
            }
        }
    }

    private static void tell(Unit unit, String words, Gathering out) {
        out.conclude(Fact.aboutUnit(FactKind.ALARM, unit.plan().id(), words));
    }

    private static String millis(long micros) {
        return String.format(Locale.ROOT, "%d.%d", micros / 1000, micros % 1000 / 100);
    }
}
