package yardclock.core.board;

import yardclock.core.account.TrayEdge;
import yardclock.core.course.Station;
import yardclock.core.passage.TimedEdge;

import java.util.List;

/**
 * The newest passages that are nobody's.
 *
 * @param rest how many more there are
 */
record Tray(List<TrayView> listed, int rest) {
    static Tray of(Picture picture, int listedMax) {
        var ends = picture.course().edgeEnds();
        List<TrayEdge> all = ends.tray();
        List<TrayView> listed =
                all.stream().limit(listedMax).map(kept -> view(picture, kept)).toList();
        return new Tray(listed, (int) (all.size() - listed.size() + ends.trayDropped()));
    }

    private static TrayView view(Picture picture, TrayEdge kept) {
        TimedEdge edge = kept.edge();
        long age = picture.moment().gatewayMicros() - edge.stamp().micros();
        return new TrayView(
                kept.station(),
                picture.sensorName(edge.sensor()),
                edge.stamp().micros(),
                Math.max(0, age / 1_000),
                kept.cause().words(),
                edge.sensor().unit(),
                edge.boot(),
                edge.seq(),
                points(picture, kept));
    }

    private static List<TrayView.Point> points(Picture picture, TrayEdge kept) {
        Station station = picture.course().station(kept.station()).orElseThrow().station();
        return station.pointsOf(kept.edge().sensor()).stream()
                .map(id -> new TrayView.Point(id, Points.name(station, id)))
                .toList();
    }
}
