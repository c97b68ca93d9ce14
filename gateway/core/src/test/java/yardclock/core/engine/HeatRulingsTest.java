package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

import java.util.List;

/**
 * What people tell the heat watch, and what it holds. The half hour after thunder or lightning is
 * NOAA's ("30 minutes after the last"); that a level holds releases and stops nobody by itself, and
 * the minutes without a reading, are this project's heat design.
 */
class HeatRulingsTest {
    private static final int MINUTE = 60;
    private final Yard yard = Yard.open(new TestPlan().make());

    @Test
    void after_thunder_nobody_new_is_released_for_half_an_hour_from_the_last() {
        new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        yard.ok("proctor2", new Act.LightningSeen());
        assertThat(releases(102)).isEqualTo(Refusal.HEAT_HOLDS);
        assertThat(blockers()).contains("heat-holds");
        yard.after(20 * MINUTE).ok("crew1", new Act.LightningSeen());
        assertThat(releases(102)).isEqualTo(Refusal.HEAT_HOLDS);
        yard.after(29 * MINUTE + 50);
        assertThat(releases(102)).as("no early resume").isEqualTo(Refusal.HEAT_HOLDS);
        yard.after(11);
        assertThat(releases(102)).isNotEqualTo(Refusal.HEAT_HOLDS);
        assertThat(yard.result(101).splits()).as("who moved went on").hasSize(1);
    }

    @Test
    void a_reading_by_hand_of_level_three_holds_until_it_was_cool_for_a_while() {
        assertThat(releasesAfterReading(4_000, 4_500)).isEqualTo(Refusal.HEAT_HOLDS);
        assertThat(yard.engine().control(yard.view()).head().heat().level())
                .isGreaterThanOrEqualTo(3);
        assertThat(releasesAfterReading(2_000, 4_000))
                .as("one cool reading lowers nothing")
                .isEqualTo(Refusal.HEAT_HOLDS);
    }

    @Test
    void an_unknown_level_wants_a_name_and_then_lets_releases_go_on() {
        reading(2_800, 4_500);
        yard.after(40 * MINUTE);
        assertThat(releases(101)).isEqualTo(Refusal.HEAT_UNKNOWN);
        yard.ok("safety1", new Act.AcknowledgeHeat());
        assertThat(releases(101)).isNull();
    }

    @Test
    void an_hour_without_a_reading_is_not_acknowledged_away() {
        reading(2_800, 4_500);
        yard.after(61 * MINUTE);
        yard.ok("safety1", new Act.AcknowledgeHeat());
        assertThat(releases(101)).isEqualTo(Refusal.HEAT_SILENT);
        reading(2_800, 4_500);
        assertThat(releases(101)).isNull();
    }

    @Test
    void a_gust_holds_only_above_the_plate_that_somebody_entered() {
        yard.ok("safety1", new Act.GustRead(30_000));
        assertThat(yard.engine().control(yard.view()).head().heat().level())
                .as("a level of gust needs a reading of heat beside it; no plate is entered")
                .isEqualTo(-1);
        assertThat(yard.rule("safety1", new Act.GustRead(-1)).refusal())
                .isEqualTo(Refusal.READING_IMPOSSIBLE);
        assertThat(yard.rule("safety1", new Act.GustRead(120_000)).refusal())
                .isEqualTo(Refusal.READING_IMPOSSIBLE);
    }

    @Test
    void a_reading_names_its_instrument() {
        Act nameless = new Act.HandReading(2_800, 4_500, null, " ");
        assertThat(yard.rule("safety1", nameless).refusal()).isEqualTo(Refusal.READING_IMPOSSIBLE);
    }

    private Refusal releasesAfterReading(int centiCelsius, int centiPercent) {
        reading(centiCelsius, centiPercent);
        return releases(101);
    }

    private void reading(int centiCelsius, int centiPercent) {
        yard.ok("safety1", new Act.HandReading(centiCelsius, centiPercent, null, "a hygrometer"));
    }

    private Refusal releases(int number) {
        return yard.rule("coordinator1", new Act.Release(number, "proctor3")).refusal();
    }

    private List<String> blockers() {
        return yard.engine().control(yard.view()).next().blockers();
    }
}
