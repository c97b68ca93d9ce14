package yardclock.core.board;

import yardclock.core.course.Condition;
import yardclock.core.course.Station;
import yardclock.core.course.Text;
import yardclock.core.readiness.Surfaces;
import yardclock.core.run.CourseRun;

import java.util.List;

/**
 * What the ground and the weather are like at one spot, by the last word on it.
 *
 * @param where a station's id, or climb
 * @param name the station's
 * @param conditions the ground's first; empty while nobody has said anything
 * @param holds whether the station takes nobody because of it
 * @param words as they were said; may be empty
 * @param person who said so
 * @param atMicros gateway time of that, −1 for none
 */
public record SurfaceView(
        String where,
        Text name,
        List<Condition> conditions,
        boolean holds,
        String words,
        String person,
        long atMicros) {
    private static final Text CLIMB = new Text("Climb", "Subida");

    public SurfaceView {
        conditions = List.copyOf(conditions);
    }

    static List<SurfaceView> all(CourseRun course) {
        return course.surfaces().spots().stream().map(spot -> of(spot, course)).toList();
    }

    private static SurfaceView of(String spot, CourseRun course) {
        Surfaces surfaces = course.surfaces();
        Text name = course.plan().station(spot).map(Station::name).orElse(CLIMB);
        return surfaces.now(spot)
                .map(
                        note ->
                                new SurfaceView(
                                        spot,
                                        name,
                                        note.conditions(),
                                        surfaces.holds(spot),
                                        note.words(),
                                        note.person(),
                                        surfaces.micros(note)))
                .orElseGet(() -> new SurfaceView(spot, name, List.of(), false, "", "", -1));
    }
}
