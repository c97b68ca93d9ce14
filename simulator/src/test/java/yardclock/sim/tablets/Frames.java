package yardclock.sim.tablets;

import yardclock.app.settings.DemoPlan;
import yardclock.core.board.Head;
import yardclock.core.board.HeatView;
import yardclock.core.board.PostFrame;
import yardclock.core.board.StationView;
import yardclock.core.course.Station;
import yardclock.core.course.Text;

import java.util.List;

/** Frames of a proctor's page as a gateway would send them. */
final class Frames {
    static final Text NO_TEXT = new Text("", "");
    private static final HeatView HEAT = new HeatView(-1, "unknown", -1, 0, 0, -1, "");

    private Frames() {}

    static Head head(long frame) {
        return new Head(frame, 0, 0, 1, Head.CourseStatus.RUNNING, "", List.of(), HEAT, List.of());
    }

    static PostFrame free() {
        return new PostFrame(head(0), "t-1", "Alder", null, List.of(), 0);
    }

    /** A frame as new as the candidate's revision. */
    static PostFrame of(PostFrame.Candidate candidate) {
        return new PostFrame(head(candidate.revision()), "t-1", "Alder", candidate, List.of(), 0);
    }

    static PostFrame.Candidate released(int number, boolean canGiveStart) {
        return new PostFrame.Candidate(
                number,
                "released",
                1,
                canGiveStart,
                -1,
                false,
                at(0, StationView.State.READY),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false);
    }

    static PostFrame.Candidate walking(int number, int station, StationView.State state) {
        return new PostFrame.Candidate(
                number,
                "walking",
                1,
                false,
                -1,
                false,
                at(station, state),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false);
    }

    static PostFrame.Candidate finished(
            int number, long revision, List<PostFrame.Split> splits, String result) {
        return new PostFrame.Candidate(
                number,
                result.isEmpty() ? "finished" : "done",
                revision,
                false,
                -1,
                false,
                null,
                List.of(),
                List.of(),
                splits,
                List.of(),
                result,
                false);
    }

    static PostFrame.Split split(String station, String state, boolean clean) {
        String label = clean ? "clean" : "look";
        return new PostFrame.Split(
                station,
                NO_TEXT,
                state,
                clean,
                50_000_000,
                0,
                0,
                -1,
                NO_TEXT,
                label,
                List.of(),
                null,
                false,
                List.of(),
                null,
                List.of(),
                List.of());
    }

    private static PostFrame.At at(int index, StationView.State state) {
        Station station = DemoPlan.plan().plan().stations().get(index);
        return new PostFrame.At(
                station.id(),
                index,
                9,
                station.name(),
                station.task(),
                NO_TEXT,
                state,
                false,
                false,
                false,
                List.of(),
                List.of());
    }
}
