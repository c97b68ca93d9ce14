package yardclock.pages;

import yardclock.core.board.BenchFrame;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.Head;
import yardclock.core.board.HeatView;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.board.StationView;
import yardclock.core.course.Text;
import yardclock.core.time.ClockStatus;

import java.util.ArrayList;
import java.util.List;

/** Frames of a busy quarter of an hour in the invented demo day, made from the real records. */
final class Frames {
    static final long NOW = 3_600_000_000L;
    private static final long SECOND = 1_000_000L;

    static final List<Text> STATIONS =
            List.of(
                    new Text("Hydrant walk", "Marcha al hidrante"),
                    new Text("Mannequin drag", "Arrastre del maniquí"),
                    new Text("Pike poles", "Bicheros"),
                    new Text("Under the deck", "Bajo la cubierta"),
                    new Text("Rope bag", "Bolsa de cuerda"),
                    new Text("Fan carry", "Acarreo del ventilador"),
                    new Text("Wedge drive", "Empuje del bloque"),
                    new Text("Ground ladder", "Escalera de mano"),
                    new Text("Roll-up", "Enrollado"));
    static final List<String> IDS =
            List.of(
                    "hydrant-walk",
                    "mannequin-drag",
                    "pike-poles",
                    "low-deck",
                    "rope-bag",
                    "fan-carry",
                    "wedge-drive",
                    "ground-ladder",
                    "roll-up");

    private Frames() {}

    static Head head() {
        return head(Head.CourseStatus.RUNNING, "", List.of());
    }

    static Head head(Head.CourseStatus course, String words, List<String> troubles) {
        HeatView heat = new HeatView(1, "caution", 844, 2870, 5200, 300 * SECOND, "heat index");
        return new Head(4211, NOW, 1_790_350_200_000_000L, 1, course, words, heat, troubles);
    }

    static List<StationView> stations() {
        List<StationView> views = new ArrayList<>();
        for (int i = 0; i < IDS.size(); i++) {
            StationView.State state =
                    switch (i) {
                        case 1, 5, 8 -> StationView.State.IN_USE;
                        case 2, 4 -> StationView.State.TO_BE_RESET;
                        default -> StationView.State.READY;
                    };
            int number = i == 1 ? 17 : i == 5 ? 14 : i == 8 ? 12 : 0;
            String trouble = i == 6 ? "fu-08 is silent" : "";
            views.add(
                    new StationView(
                            IDS.get(i),
                            STATIONS.get(i),
                            state,
                            number,
                            NOW - 73 * SECOND,
                            trouble));
        }
        return views;
    }

    static ControlFrame control(Head head, boolean ready) {
        return new ControlFrame(
                head,
                new ControlFrame.Next(
                        18,
                        ready,
                        ready ? List.of() : List.of("station-not-ready", "interval-not-over"),
                        NOW + (ready ? 0 : 97 * SECOND),
                        "d-4"),
                List.of(
                        new ControlFrame.OnCourse(
                                17,
                                "at-station",
                                "mannequin-drag",
                                1,
                                "d-1",
                                NOW - 130 * SECOND,
                                -1,
                                1,
                                0,
                                0),
                        new ControlFrame.OnCourse(
                                14,
                                "held",
                                "fan-carry",
                                5,
                                "d-2",
                                NOW - 400 * SECOND,
                                NOW - 22 * SECOND,
                                0,
                                0,
                                0),
                        new ControlFrame.OnCourse(
                                13,
                                "walking",
                                "wedge-drive",
                                6,
                                "d-5",
                                NOW - 470 * SECOND,
                                -1,
                                0,
                                0,
                                0),
                        new ControlFrame.OnCourse(
                                12,
                                "finished",
                                "roll-up",
                                8,
                                "d-3",
                                NOW - 690 * SECOND,
                                -1,
                                0,
                                1,
                                3)),
                stations(),
                List.of(
                        new ControlFrame.ProctorView("d-1", "Alder", 17),
                        new ControlFrame.ProctorView("d-2", "Birch", 14),
                        new ControlFrame.ProctorView("d-3", "Cedar", 12),
                        new ControlFrame.ProctorView("d-4", "Dogwood", 0),
                        new ControlFrame.ProctorView("d-5", "Elm", 0)),
                List.of(
                        new ControlFrame.WaitingView(18, 2, 1),
                        new ControlFrame.WaitingView(19, 2, 2),
                        new ControlFrame.WaitingView(20, 2, 3),
                        new ControlFrame.WaitingView(21, 2, 4)),
                List.of(
                        new ControlFrame.DoneView(11, "passed", "Passed.", 655_234_000L, false),
                        new ControlFrame.DoneView(
                                10, "failed-time", "Failed: time.", 712_900_000L, true),
                        new ControlFrame.DoneView(9, "withdrawn", "Withdrawn.", -1, true)),
                List.of("fu-08 has been silent for 7 s"));
    }

    static CrewFrame crew() {
        return new CrewFrame(
                head(),
                List.of(
                        new CrewFrame.Reset(
                                IDS.get(4),
                                STATIONS.get(4),
                                NOW - 142 * SECOND,
                                List.of(new Text("bottom contact", "contacto inferior"))),
                        new CrewFrame.Reset(
                                IDS.get(2), STATIONS.get(2), NOW - 31 * SECOND, List.of())),
                stations());
    }

    static BoardFrame board(Head head, boolean times) {
        List<BoardFrame.Line> lines = new ArrayList<>();
        lines.add(new BoardFrame.Line(18, 2, "called", 0, -1, -1));
        for (int number : List.of(17, 14, 13)) {
            lines.add(new BoardFrame.Line(number, 2, "on-course", 0, -1, -1));
        }
        for (int number : List.of(12, 11, 10, 9, 8)) {
            lines.add(new BoardFrame.Line(number, 1, "course-done", 0, -1, -1));
        }
        for (int place = 1; place <= 11; place++) {
            long from = NOW + place * 255L * SECOND;
            lines.add(
                    new BoardFrame.Line(
                            18 + place,
                            2 + place / 6,
                            "waiting",
                            place,
                            from,
                            from + 240 * SECOND));
        }
        return new BoardFrame(
                head, lines, times ? List.of(new BoardFrame.Time(10, "11:52.9", true)) : List.of());
    }

    static LeaderboardFrame leaderboard() {
        return new LeaderboardFrame(
                head(),
                List.of(
                        row(1, 8, "9:48.3", 588_310_000L, "within", "passed"),
                        row(2, 11, "10:55.2", 655_234_000L, "within", "passed"),
                        row(3, 7, "11:40.0", 700_021_000L, "undecided", "undecided"),
                        row(4, 10, "11:52.9", 712_900_000L, "over", "failed-time"),
                        new LeaderboardFrame.Row(0, 9, "", -1, -1, -1, "", "withdrawn")));
    }

    private static LeaderboardFrame.Row row(
            int rank, int number, String display, long micros, String decision, String outcome) {
        return new LeaderboardFrame.Row(
                rank, number, display, micros, micros - 48_000, micros + 51_000, decision, outcome);
    }

    static BenchFrame bench() {
        List<BenchFrame.SensorView> drag =
                List.of(
                        sensor(1, "mat", new Text("start mat", "alfombra de salida"), 0, 0),
                        sensor(2, "photo-eye", new Text("post beam", "haz del poste"), 0, 0),
                        sensor(3, "photo-eye", new Text("finish line beam", "haz de meta"), 1, 0));
        List<BenchFrame.SensorView> wedge =
                List.of(
                        sensor(1, "contact", new Text("home contact", "contacto de reposo"), 1, 1),
                        sensor(2, "contact", new Text("end contact", "contacto final"), -1, 0));
        return new BenchFrame(
                head(),
                List.of(
                        unit(
                                "fu-02",
                                new Text("Drag lane", "Pista de arrastre"),
                                "up",
                                List.of(),
                                drag),
                        unit(
                                "fu-08",
                                new Text("Wedge bench", "Banco del bloque"),
                                "silent",
                                List.of("211-214"),
                                wedge),
                        unit(
                                "fu-12",
                                new Text("Tower, spare", "Torre, reserva"),
                                "never-seen",
                                List.of(),
                                List.of())),
                edges(),
                List.of("fu-08 has been silent for 7 s"));
    }

    private static List<BenchFrame.EdgeView> edges() {
        List<BenchFrame.EdgeView> edges = new ArrayList<>();
        long[] ago = {52, 51, 44, 43, 30, 29, 28, 27, 12, 8};
        for (int i = ago.length - 1; i >= 0; i--) {
            edges.add(
                    new BenchFrame.EdgeView(
                            "fu-02", 100 + i, 3, 1 - i % 2, NOW - ago[i] * SECOND, 4_200));
        }
        edges.add(new BenchFrame.EdgeView("fu-02", 98, 1, 0, NOW - 40 * SECOND, 4_200));
        edges.add(new BenchFrame.EdgeView("fu-02", 97, 1, 1, NOW - 47 * SECOND, 4_200));
        return edges;
    }

    private static BenchFrame.SensorView sensor(
            int number, String kind, Text name, int state, int rest) {
        return new BenchFrame.SensorView(number, kind, name, state, rest, NOW - 8 * SECOND);
    }

    private static BenchFrame.UnitView unit(
            String id,
            Text place,
            String status,
            List<String> gaps,
            List<BenchFrame.SensorView> sensors) {
        boolean seen = !status.equals("never-seen");
        return new BenchFrame.UnitView(
                id,
                place,
                status,
                "",
                NOW - 620 * SECOND,
                seen ? "9f03a7c1d2e4b586" : "",
                seen ? 215 : 0,
                seen ? 210 : -1,
                gaps,
                seen ? 214 : 0,
                23,
                0,
                1,
                seen ? 3870 : -1,
                seen ? -61 : 0,
                0,
                seen ? "0.4.1" : "",
                new ClockStatus(
                        seen ? 120 : 0,
                        -12_400,
                        seen ? 3_100 : -1,
                        seen ? 4_200 : -1,
                        seen ? 3_900_000 : -1),
                sensors);
    }

    static PostFrame post(PostFrame.Candidate candidate) {
        return post(head(), candidate);
    }

    static PostFrame post(Head head, PostFrame.Candidate candidate) {
        return new PostFrame(head, "d-1", "Alder", candidate);
    }
}
