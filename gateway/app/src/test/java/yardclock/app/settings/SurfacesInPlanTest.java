package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.Condition;
import yardclock.core.course.SurfaceRules;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What a plan says of noted conditions of the ground and the weather. */
class SurfacesInPlanTest {
    private static final Path SMALL = Path.of("src/test/resources/plans/good/small.yaml");

    @Test
    void the_conditions_that_hold_a_station_are_those_the_plan_names() throws IOException {
        assertThat(read("surfaces: {holdStation: ice}\n").value().plan().surfaces())
                .isEqualTo(new SurfaceRules(List.of(Condition.ICE)));
        assertThat(read("surfaces: {holdStation: \"wet, gust\"}\n").value().plan().surfaces())
                .isEqualTo(new SurfaceRules(List.of(Condition.WET, Condition.GUST)));
    }

    @Test
    void a_plan_that_names_none_only_advises() throws IOException {
        assertThat(read("").value().plan().surfaces()).isEqualTo(SurfaceRules.ADVISORY);
        assertThat(read("surfaces: {}\n").value().plan().surfaces())
                .isEqualTo(SurfaceRules.ADVISORY);
    }

    @Test
    void what_is_no_condition_or_dry_or_said_twice_is_refused_with_what_would_be_allowed()
            throws IOException {
        assertThat(problems("surfaces: {holdStation: mud}\n")).contains("dry, wet, ice, glare");
        assertThat(problems("surfaces: {holdStation: dry}\n")).contains("never held");
        assertThat(problems("surfaces: {holdStation: \"ice, ice\"}\n")).contains("each word once");
        assertThat(problems("surfaces: {holdCourse: ice}\n")).contains("there is no such key");
    }

    @Test
    void a_station_may_not_be_called_as_the_other_spots_are() throws IOException {
        String plan = Files.readString(SMALL);
        for (String taken : new String[] {"yard", "climb"}) {
            String called = plan.replace("- id: drag\n", "- id: " + taken + "\n");
            assertThat(called).isNotEqualTo(plan);
            assertThat(reading(called).problems().text()).contains("yard and climb are taken");
        }
    }

    private static String problems(String block) throws IOException {
        return read(block).problems().text();
    }

    private static Reading<LoadedPlan> read(String block) throws IOException {
        return reading(Files.readString(SMALL) + block);
    }

    private static Reading<LoadedPlan> reading(String plan) {
        return ExamPlanFile.read(plan.getBytes(StandardCharsets.UTF_8), "plan.yaml");
    }
}
