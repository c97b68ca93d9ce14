package yardclock.pages;

import yardclock.core.board.PostFrame;
import yardclock.core.board.StationView;
import yardclock.core.course.Text;

import java.util.ArrayList;
import java.util.List;

/** The states a candidate beside a proctor goes through. */
final class PostFrames {
    private PostFrames() {}

    static PostFrame.Candidate beforeStart() {
        PostFrame.At at =
                at(
                        0,
                        false,
                        true,
                        List.of(point("cap-off", "Cap off", "Tapa abierta", 0, 1, true)));
        return candidate("released", true, at, List.of(), "", false);
    }

    static PostFrame.Candidate underWay(int seen) {
        PostFrame.At at =
                at(
                        1,
                        true,
                        false,
                        List.of(
                                point(
                                        "turned-post",
                                        "Turned the post",
                                        "Rodeó el poste",
                                        seen,
                                        1,
                                        false)));
        return candidate("at-station", false, at, List.of(), "", false);
    }

    static PostFrame.Candidate walking() {
        PostFrame.At at =
                at(2, false, false, List.of(point("poles", "Poles", "Bicheros", 0, 3, false)));
        return candidate("walking", false, at, List.of(), "", false);
    }

    static PostFrame.Candidate held() {
        return candidate("held", false, underWay(1).station(), List.of(), "", false);
    }

    static PostFrame.Candidate finished() {
        return candidate("finished", false, null, splits(), "", false);
    }

    static PostFrame.Candidate done(boolean told) {
        return candidate("done", false, null, splits(), "passed", told);
    }

    static List<PostFrame.Split> splits() {
        List<PostFrame.Split> splits = new ArrayList<>();
        splits.add(
                split(
                        0,
                        "confirmed",
                        true,
                        58_214_000L,
                        58_600_000L,
                        "your press",
                        "su pulsación"));
        splits.add(
                split(
                        1,
                        "proposed",
                        true,
                        47_912_000L,
                        47_800_000L,
                        "finish line clear 1.6 s, last release",
                        "línea libre 1.6 s, última liberación"));
        splits.add(
                split(
                        2,
                        "ambiguous",
                        false,
                        66_430_000L,
                        -1,
                        "two passages could be the finish",
                        "dos pasos podrían ser la meta"));
        splits.add(
                split(
                        3,
                        "incomplete",
                        false,
                        -1,
                        64_100_000L,
                        "the touch pad was not seen",
                        "no se vio la placa"));
        splits.add(
                split(
                        4,
                        "proposed",
                        true,
                        49_050_000L,
                        -1,
                        "bottom contact closed",
                        "contacto inferior cerrado"));
        splits.add(
                split(
                        5,
                        "void",
                        false,
                        -1,
                        -1,
                        "someone else tripped the sensor",
                        "otra persona activó el sensor"));
        return splits;
    }

    private static PostFrame.Split split(
            int index,
            String state,
            boolean clean,
            long micros,
            long hand,
            String why,
            String porQue) {
        return new PostFrame.Split(
                Frames.IDS.get(index),
                Frames.STATIONS.get(index),
                state,
                clean,
                micros,
                micros < 0 ? -1 : micros - 2_400,
                micros < 0 ? -1 : micros + 3_100,
                hand,
                new Text(why, porQue));
    }

    private static PostFrame.Candidate candidate(
            String phase,
            boolean canStart,
            PostFrame.At at,
            List<PostFrame.Split> splits,
            String result,
            boolean told) {
        List<PostFrame.Warning> calls =
                at == null
                        ? List.of()
                        : List.of(new PostFrame.Warning(at.id(), "no-running", false));
        return new PostFrame.Candidate(17, phase, 9, canStart, -1, at, calls, splits, result, told);
    }

    private static PostFrame.At at(
            int index, boolean started, boolean judged, List<PostFrame.Point> points) {
        boolean armed = points.stream().allMatch(point -> point.seen() >= point.count());
        return new PostFrame.At(
                Frames.IDS.get(index),
                index,
                9,
                Frames.STATIONS.get(index),
                new Text(
                        "142 lb, 51 ft, all of it over the line",
                        "142 lb, 51 ft, todo tras la línea"),
                new Text(
                        "finish line clear 1.5 s, last release",
                        "línea libre 1.5 s, última liberación"),
                StationView.State.IN_USE,
                started,
                judged,
                armed,
                points,
                List.of(
                        new PostFrame.CriterionView(
                                "no-running",
                                "prohibited",
                                new Text("Running between stations", "Correr entre estaciones"),
                                1,
                                0),
                        new PostFrame.CriterionView(
                                "all-over",
                                "judged",
                                new Text(
                                        "All of the mannequin over the line",
                                        "Todo el maniquí tras la línea"),
                                0,
                                0)));
    }

    private static PostFrame.Point point(
            String id, String en, String es, int seen, int count, boolean byProctor) {
        return new PostFrame.Point(id, new Text(en, es), seen, count, byProctor);
    }
}
