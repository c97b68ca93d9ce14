package yardclock.core.health;

import yardclock.core.time.ClockEnd;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;
import yardclock.core.time.StationTick;
import yardclock.core.time.TimeLines;
import yardclock.core.time.UnitClock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The clocks of one field unit: one a boot on the gateway's present time line, and those of the
 * same boots on lines before.
 *
 * <p>A boot that ran on over a restart of the gateway has a clock on either side of it. The two tie
 * the lines, and between them they date what was counted in the meantime.
 */
public final class UnitClocks {
    static final int CLOCKS_KEPT = 4;

    /** Clocks of ended lines; one that is gone leaves its marks as they were stamped. */
    static final int PAST_KEPT = 8;

    private final Map<String, UnitClock> present = new LinkedHashMap<>();
    private final List<Past> past = new ArrayList<>();
    private final Set<String> bridged = new TreeSet<>();
    private final int kept;
    private int line;

    UnitClocks() {
        this(CLOCKS_KEPT, 0);
    }

    /**
     * @param kept how many boots of the present time line
     */
    public UnitClocks(int kept, int line) {
        this.kept = kept;
        this.line = line;
    }

    /**
     * A clock that takes no more exchanges.
     *
     * @param last its newest one
     */
    private record Past(int line, String boot, UnitClock clock, ClockEnd last) {}

    /** Where a tick lies, on the time line it was dated on and as that line was read. */
    public record Dated(int line, Stamp stamp) {}

    /**
     * @param spared the boot whose clock does not give way to a new one
     */
    public UnitClock clock(String boot, String spared) {
        UnitClock clock = present.get(boot);
        if (clock == null) {
            clock = new ExchangeClock();
            present.put(boot, clock);
            if (present.size() > kept) {
                forgetOldest(boot, spared);
            }
        }
        return clock;
    }

    /** Boots that only answers speak of must not push out the clock of the present one. */
    private void forgetOldest(String newest, String spared) {
        present.keySet().stream()
                .filter(boot -> !boot.equals(newest) && !boot.equals(spared))
                .findFirst()
                .ifPresent(present::remove);
    }

    Optional<UnitClock> known(String boot) {
        return Optional.ofNullable(present.get(boot));
    }

    /** The clock of a boot on a line, present or past. */
    Optional<UnitClock> known(String boot, int onLine) {
        if (onLine == line) {
            return known(boot);
        }
        return of(boot).stream().filter(p -> p.line == onLine).map(Past::clock).findFirst();
    }

    /** A new time line of the gateway: what was compared with the old one is set aside. */
    public void begin(int nextLine) {
        present.forEach(
                (boot, clock) ->
                        clock.last().ifPresent(l -> past.add(new Past(line, boot, clock, l))));
        while (past.size() > PAST_KEPT) {
            past.remove(0);
        }
        present.clear();
        bridged.clear();
        line = nextLine;
    }

    private List<Past> of(String boot) {
        return past.isEmpty() ? List.of() : past.stream().filter(p -> p.boot.equals(boot)).toList();
    }

    /**
     * Ties the present line to the one this boot was last compared on, better with each exchange
     * until no later one can say more.
     *
     * @return whether it said anything
     */
    public boolean tie(String source, String boot, TimeLines lines) {
        List<Past> before = of(boot);
        UnitClock after = present.get(boot);
        if (before.isEmpty() || after == null || bridged.contains(boot)) {
            return false;
        }
        Optional<ClockEnd> first = after.first();
        if (first.isEmpty()) {
            lines.untie(source);
        } else {
            Past newest = before.get(before.size() - 1);
            lines.tie(source, newest.line, newest.last, first.get());
            if (first.get().isSettled(after)) {
                bridged.add(boot);
            }
        }
        return true;
    }

    /**
     * What was counted before the last exchange on an ended line is dated there. What was counted
     * while the gateway was away is dated from whichever side knows it better. It waits until the
     * lines can be tied, so that it takes its place among moved instants.
     */
    public Optional<Dated> date(String boot, StationTick tick, GatewayTime arrival) {
        List<Past> before = of(boot);
        for (Past each : before) {
            if (tick.compareTo(each.last.tick()) <= 0) {
                return on(each, tick);
            }
        }
        UnitClock clock = present.get(boot);
        if (clock == null || !before.isEmpty() && clock.exchanges() <= 1) {
            return Optional.empty();
        }
        Optional<Dated> now = clock.at(tick, arrival).map(stamp -> new Dated(line, stamp));
        return now.isEmpty() || before.isEmpty() || !isBeforeFirst(boot, tick)
                ? now
                : narrower(now, on(before.get(before.size() - 1), tick));
    }

    private boolean isBeforeFirst(String boot, StationTick tick) {
        return present.get(boot).first().filter(f -> tick.compareTo(f.tick()) < 0).isPresent();
    }

    /** When it arrived is known on another line, so that is no limit here. */
    private static Optional<Dated> on(Past clock, StationTick tick) {
        return clock.clock
                .at(tick, new GatewayTime(Long.MAX_VALUE))
                .map(stamp -> new Dated(clock.line, stamp));
    }

    private static Optional<Dated> narrower(Optional<Dated> now, Optional<Dated> then) {
        boolean isThen =
                then.isPresent() && then.get().stamp.widthMicros() < now.get().stamp.widthMicros();
        return isThen ? then : now;
    }

    @Override
    public String toString() {
        return present + " " + line + " " + past + " " + bridged;
    }
}
