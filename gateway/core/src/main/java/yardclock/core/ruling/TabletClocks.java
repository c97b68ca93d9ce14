package yardclock.core.ruling;

import yardclock.core.health.UnitClocks;
import yardclock.core.run.TabletPress;
import yardclock.core.time.Exchange;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.StationTick;
import yardclock.core.time.TimeLines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The clocks of the tablets by boot, and the one place where a press gets its time.
 *
 * <p>A press is dated by the clock of the boot it was made in, whenever it arrives; its arrival is
 * an upper limit. While that boot was never compared with the gateway the press waits, and the
 * first exchange dates it. A press without a boot, or of one that is never compared, gets no time.
 * A boot that runs on over a restart of the gateway ties its time lines, as a field unit's does.
 * Owned by one thread.
 */
public final class TabletClocks {
    /** A page loaded anew or woken is a new boot; presses of older ones arrive within minutes. */
    static final int BOOTS_KEPT = 8;

    /** Nobody presses so often before a page's first exchange. The oldest never get a time. */
    static final int WAITING_MAX = 200;

    private final Map<String, Tablet> tablets = new LinkedHashMap<>();
    private int line;

    private static final class Tablet {
        private final UnitClocks clocks;
        private final List<TabletPress> waiting = new ArrayList<>();

        Tablet(int line) {
            clocks = new UnitClocks(BOOTS_KEPT, line);
        }

        void await(TabletPress press) {
            waiting.add(press);
            if (waiting.size() > WAITING_MAX) {
                waiting.remove(0);
            }
        }

        boolean date(TabletPress press) {
            GatewayTime arrived = new GatewayTime(press.arrivedMicros());
            Optional<UnitClocks.Dated> dated =
                    clocks.date(press.boot(), new StationTick(press.tick()), arrived);
            dated.ifPresent(at -> press.date(at.line(), at.stamp()));
            return dated.isPresent();
        }

        @Override
        public String toString() {
            return clocks + " " + waiting;
        }
    }

    private Tablet tablet(String device) {
        return tablets.computeIfAbsent(device, d -> new Tablet(line));
    }

    /** A press as it arrived, with its time if that can be said already. */
    TabletPress press(Decisions.Request request, TimeLines lines) {
        TabletPress press =
                new TabletPress(
                        request.device(),
                        request.boot(),
                        request.tick(),
                        request.receivedMicros(),
                        lines);
        Tablet tablet = tablet(request.device());
        if (!request.boot().isEmpty() && !tablet.date(press)) {
            tablet.await(press);
        }
        return press;
    }

    /**
     * Takes an exchange with a tablet into account.
     *
     * @return the presses that have a time because of it, in the order they came; empty when the
     *     exchange is an impossible one
     */
    public Optional<List<TabletPress>> compare(String device, String boot, Exchange exchange) {
        Tablet tablet = tablet(device);
        if (boot.isEmpty() || !tablet.clocks.clock(boot, "").accept(exchange)) {
            return Optional.empty();
        }
        List<TabletPress> dated =
                tablet.waiting.stream()
                        .filter(press -> press.boot().equals(boot) && tablet.date(press))
                        .toList();
        tablet.waiting.removeAll(dated);
        return Optional.of(dated);
    }

    /** Ties the present time line to an earlier one by a boot that ran on; whether it did. */
    public boolean tie(String device, String boot, TimeLines lines) {
        return tablet(device).clocks.tie("tablet " + device + " " + boot, boot, lines);
    }

    /** A new time line of the gateway: clocks are compared anew. */
    public void beginLine(int next) {
        line = next;
        tablets.values().forEach(tablet -> tablet.clocks.begin(next));
    }

    /** Before there is a plan nothing is timed, and nothing is to be tied. */
    public void forget() {
        tablets.clear();
    }

    @Override
    public String toString() {
        return line + " " + tablets;
    }
}
