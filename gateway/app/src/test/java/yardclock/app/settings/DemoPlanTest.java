package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The bundled demo says what the invented exam day says. Check values: the demo-day scenario. */
class DemoPlanTest {
    private final ExamPlan plan = DemoPlan.plan().plan();

    @Test
    void theCourseIsTheNineStationsInOrder() {
        assertThat(plan.stations())
                .extracting(Station::id)
                .containsExactly(
                        "hydrant-walk",
                        "mannequin-drag",
                        "pike-poles",
                        "low-deck",
                        "rope-bag",
                        "fan-carry",
                        "wedge-drive",
                        "ground-ladder",
                        "roll-up");
        assertThat(plan.stations())
                .extracting(s -> s.timing().medianMicros() / 1_000_000)
                .containsExactly(58L, 47L, 66L, 63L, 49L, 41L, 36L, 55L, 72L);
        assertThat(plan.fieldUnits()).hasSize(12);
    }

    @Test
    void theRulesAreThoseOfTheScenario() {
        assertThat(plan.timing().cutOffMicros()).isEqualTo(700_000_000L);
        assertThat(plan.timing().settleMicros()).isEqualTo(400_000L);
        assertThat(plan.timing().boundLimitMicros()).isEqualTo(50_000L);
        assertThat(plan.day().releaseIntervalMicros()).isEqualTo(255_000_000L);
        assertThat(plan.day().timesOnBoard()).isFalse();
        assertThat(plan.day().leaderboardPublic()).isFalse();
    }

    @Test
    void everyKindOfTriggerAndCriterionOccurs() {
        Set<Combination> rules =
                plan.stations().stream()
                        .flatMap(DemoPlanTest::triggers)
                        .map(Trigger::combination)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<CriterionKind> kinds =
                plan.stations().stream()
                        .flatMap(s -> s.criteria().stream())
                        .map(c -> c.kind())
                        .collect(Collectors.toCollection(TreeSet::new));
        // Its yard has no two beams at one line, which a coincidence would need.
        Set<Combination> wanted = EnumSet.complementOf(EnumSet.of(Combination.COINCIDENCE));
        assertThat(rules).containsExactlyElementsOf(wanted);
        assertThat(kinds).containsExactlyElementsOf(EnumSet.allOf(CriterionKind.class));
    }

    @Test
    void thePlanGoesThroughTheJournalUnchanged() throws Exception {
        String json = Json.mapper().writeValueAsString(plan);
        assertThat(Json.mapper().readValue(json, ExamPlan.class)).isEqualTo(plan);
    }

    @Test
    void theRosterHasNinetySixCandidatesInGroupsOfEleven() {
        Roster roster = DemoPlan.roster();
        assertThat(roster.lines()).hasSize(96);
        assertThat(roster.lines().get(10).group()).isEqualTo(1);
        assertThat(roster.lines().get(11).group()).isEqualTo(2);
        assertThat(roster.name(14)).contains("Harbor, Velvet");
        assertThat(roster.name(97)).isEmpty();
    }

    private static Stream<Trigger> triggers(Station station) {
        return Stream.concat(
                Stream.of(station.start(), station.finish()),
                station.checkpoints().stream().map(Checkpoint::trigger));
    }
}
