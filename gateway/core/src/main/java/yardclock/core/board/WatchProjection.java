package yardclock.core.board;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;
import yardclock.core.heat.Trend;
import yardclock.core.heat.watch.HeatChange.Acknowledgement;
import yardclock.core.heat.watch.HeatStatus;
import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.run.Attempt;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the safety officer's frame. */
public final class WatchProjection {
    private static final long HOUR_MICROS = 3_600_000_000L;

    /** More points than a page is wide in pixels show nothing more. */
    private static final int POINTS_MAX = 400;

    private final Picture picture;
    private final HeatWatch heat;
    private final long nowMicros;

    public WatchProjection(Picture picture) {
        this.picture = picture;
        this.heat = picture.heat();
        this.nowMicros = picture.moment().gatewayMicros();
    }

    public WatchFrame frame() {
        return new WatchFrame(
                picture.head(),
                heat(),
                TeamView.all(picture.course().standBy()),
                CheckView.all(picture.course().checklist()),
                SurfaceView.all(picture.course()),
                moving(),
                day());
    }

    private WatchFrame.Heat heat() {
        HeatStatus status = heat.status(nowMicros);
        ReadingLevel figures = heat.figures();
        boolean isRead = figures != null;
        HeatRules rules = heat.rules();
        Optional<Trend.Rise> likely = heat.likely();
        return new WatchFrame.Heat(
                status.was(),
                word(status.freshness()),
                word(status.confirmation()),
                status.suspicions().stream().map(WatchProjection::word).toList(),
                heat.reasons(nowMicros),
                status.isLightning() ? heat.lightningOverMicros() : -1,
                isRead ? figures.indexDeciF() : 0,
                isRead ? figures.indexHighDeciF() : 0,
                isRead ? figures.wbgtCentiC() : 0,
                isRead ? figures.wbgtLowCentiC() : 0,
                isRead ? figures.wbgtHighCentiC() : 0,
                isRead ? figures.method() : "",
                by(heat.newest()),
                heat.dueMicros(),
                likely.map(Trend.Rise::level).orElse(-1),
                likely.map(Trend.Rise::atMicros).orElse(-1L),
                acknowledgedBy(),
                rules.version(),
                rules.signedBy(),
                rules.indexDeciF(),
                rules.plateGustMmPerS() != null,
                rules.turnoutCentiC() != null);
    }

    private static String word(Enum<?> code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String by(HeatReading reading) {
        boolean isByHand = reading != null && reading.from().isByHand();
        return isByHand ? reading.from().person() + ", " + reading.from().instrument() : "";
    }

    private String acknowledgedBy() {
        List<Acknowledgement> all = heat.acknowledgements();
        return heat.isAcknowledged() ? all.get(all.size() - 1).person() : "";
    }

    private List<WatchFrame.Moving> moving() {
        return picture.course().attempts().stream()
                .filter(Attempt::isOnCourse)
                .map(this::moving)
                .toList();
    }

    private WatchFrame.Moving moving(Attempt attempt) {
        long out = Math.max(0, nowMicros - attempt.releasedMicros());
        return new WatchFrame.Moving(
                attempt.number(),
                Phases.word(attempt),
                attempt.stationIndex(),
                picture.course().plan().stations().get(attempt.stationIndex()).name(),
                ControlProjection.startedMicros(attempt),
                ControlProjection.heldSinceMicros(attempt),
                Math.min(HOUR_MICROS, out));
    }

    private List<WatchFrame.Point> day() {
        List<Map.Entry<HeatReading, ReadingLevel>> all = heat.measured().readings();
        return all.subList(Math.max(0, all.size() - POINTS_MAX), all.size()).stream()
                .map(one -> point(one.getKey(), one.getValue()))
                .toList();
    }

    private static WatchFrame.Point point(HeatReading reading, ReadingLevel level) {
        return new WatchFrame.Point(
                reading.measuredMicros(),
                level.indexDeciF(),
                level.indexHighDeciF(),
                level.level());
    }
}
