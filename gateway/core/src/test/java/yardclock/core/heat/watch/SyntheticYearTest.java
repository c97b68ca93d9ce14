package yardclock.core.heat.watch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A year of hourly readings through the index and the level, each day by a watch of its own that
 * also reads what lies between two hours, as a sensor in a yard does. The year is synthetic, made
 * here from a seed: a warm temperate place with a yearly and a daily wave and weather that lasts
 * some days (common practice, no source). What is asserted follows from physics and from the
 * definitions, not from any record of weather. The picture lies under {@code target/}, to be looked
 * at.
 */
class SyntheticYearTest {
    private static final long SEED = 20_260_315;
    private static final int HOURS = 365 * 24;
    private static final List<Hour> YEAR = new ArrayList<>();

    /**
     * @param shown the level the watch showed when it had taken the reading
     */
    private record Hour(int at, double air, double dewPoint, ReadingLevel reading, int shown) {
        int month() {
            return at * 12 / HOURS;
        }

        double indexF() {
            return reading.indexDeciF() / 10.0;
        }
    }

    private record Weather(double air, double dewPoint) {
        Weather towards(Weather next, double part) {
            return new Weather(
                    air + part * (next.air - air), dewPoint + part * (next.dewPoint - dewPoint));
        }
    }

    @BeforeAll
    static void make() throws IOException {
        List<Weather> weather = weather(new Random(SEED));
        HeatWatch watch = null;
        for (int at = 0; at < HOURS; at++) {
            Weather now = weather.get(at);
            if (at % 24 == 0) {
                watch = new HeatWatch(HeatRules.DEFAULTS, WatchedDay.WORK_W, minutes(at));
            }
            HeatReading reading = reading(at * 60L, now);
            take(watch, reading);
            ReadingLevel level = ReadingLevel.of(reading, HeatRules.DEFAULTS, WatchedDay.WORK_W);
            YEAR.add(new Hour(at, now.air, now.dewPoint, level, watch.status(minutes(at)).level()));
            Weather next = weather.get(Math.min(at + 1, HOURS - 1));
            for (int minute = 10; minute < 60; minute += 10) {
                take(watch, reading(at * 60L + minute, now.towards(next, minute / 60.0)));
            }
        }
        draw(Path.of("target", "synthetic-heat-year.svg"));
    }

    private static List<Weather> weather(Random random) {
        List<Weather> all = new ArrayList<>();
        double spell = 0;
        double damp = 0;
        for (int at = 0; at < HOURS; at++) {
            spell = 0.985 * spell + 0.55 * random.nextGaussian();
            damp = 0.985 * damp + 0.35 * random.nextGaussian();
            double season = -StrictMath.cos(2 * StrictMath.PI * (at / 24.0 - 15) / 365);
            double daily = -StrictMath.cos(2 * StrictMath.PI * (at % 24 - 3) / 24.0);
            double air = 16 + 12 * season + 5 * daily + spell;
            all.add(new Weather(air, Math.min(air - 0.3, 8 + 10 * season + damp)));
        }
        return all;
    }

    private static long minutes(int hour) {
        return hour * 60L * WatchedDay.MINUTE;
    }

    private static void take(HeatWatch watch, HeatReading reading) {
        assertThat(watch.take(reading)).as("seed %d, %s", SEED, reading).isEmpty();
    }

    /** Relative humidity by Magnus, only to have one (WMO-No. 8, annex 4.B). */
    private static HeatReading reading(long minute, Weather weather) {
        double percent = 100 * vapour(weather.dewPoint) / vapour(weather.air);
        return WatchedDay.reading(
                "yard",
                minute,
                minute,
                (int) StrictMath.round(weather.air * 100),
                (int) StrictMath.round(percent * 100));
    }

    private static double vapour(double celsius) {
        return 6.112 * StrictMath.exp(17.62 * celsius / (243.12 + celsius));
    }

    @Test
    void the_dew_point_comes_back_and_wbgt_lies_between_it_and_the_air() {
        // Below freezing it is the frost point, which lies higher.
        for (Hour hour : YEAR.stream().filter(hour -> hour.dewPoint > 0.5).toList()) {
            assertThat(hour.reading.dewPointCentiC() / 100.0)
                    .as("%s", hour)
                    .isBetween(hour.dewPoint - 0.35, hour.dewPoint + 0.35);
            assertThat(hour.reading.wbgtCentiC() / 100.0)
                    .as("shade only: %s", hour)
                    .isBetween(hour.dewPoint - 0.35, hour.air + 0.01);
        }
    }

    @Test
    void months_that_are_warmer_have_a_higher_index() {
        List<Integer> byAir = ranked(hour -> hour.air);
        List<Integer> byIndex = ranked(Hour::indexF);
        int apart = 0;
        for (int month = 0; month < 12; month++) {
            apart = Math.max(apart, Math.abs(byAir.indexOf(month) - byIndex.indexOf(month)));
        }
        assertThat(apart).as("%s against %s", byAir, byIndex).isLessThanOrEqualTo(1);
    }

    @Test
    void winter_has_no_heat_and_summer_afternoons_have_most_of_it() {
        assertThat(YEAR).filteredOn(hour -> hour.air < 15).noneMatch(h -> h.reading.level() > 0);
        List<Hour> hot = YEAR.stream().filter(hour -> hour.reading.level() >= 2).toList();
        assertThat(hot).hasSizeGreaterThan(50).hasSizeLessThan(HOURS / 4);
        assertThat(hot).allMatch(hour -> hour.month() >= 4 && hour.month() <= 9);
        long byDay = hot.stream().filter(hour -> hour.at % 24 >= 9 && hour.at % 24 <= 21).count();
        assertThat(byDay * 10).isGreaterThan(hot.size() * 7L);
    }

    @Test
    void the_shown_level_is_never_under_what_the_reading_says() {
        assertThat(YEAR).allMatch(hour -> hour.shown >= hour.reading.level());
        long same = YEAR.stream().filter(hour -> hour.shown == hour.reading.level()).count();
        assertThat(same).as("and mostly the same").isGreaterThan(HOURS * 9 / 10);
    }

    @Test
    void the_first_level_begins_where_the_index_or_the_wbgt_reaches_its_bound() {
        for (Hour hour : YEAR) {
            if (hour.reading.indexHighDeciF() > 800) {
                assertThat(hour.reading.level()).as("%s", hour).isGreaterThanOrEqualTo(1);
            }
            if (hour.reading.indexHighDeciF() > 900) {
                assertThat(hour.reading.level()).as("%s", hour).isGreaterThanOrEqualTo(2);
            }
        }
    }

    private static List<Integer> ranked(ToDoubleFunction<Hour> value) {
        return IntStream.range(0, 12)
                .boxed()
                .sorted((one, other) -> Double.compare(mean(one, value), mean(other, value)))
                .toList();
    }

    private static double mean(int month, ToDoubleFunction<Hour> value) {
        return YEAR.stream()
                .filter(hour -> hour.month() == month)
                .mapToDouble(value)
                .average()
                .orElseThrow();
    }

    /** Index as dots over the bounds, the shown level below; one dot an hour. */
    private static void draw(Path file) throws IOException {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1100 520\">");
        svg.append("<rect width=\"1100\" height=\"520\" fill=\"white\"/>");
        for (int bound : HeatRules.DEFAULTS.indexDeciF()) {
            double y = y(bound / 10.0);
            svg.append(text(1048, y, bound / 10 + " °F"));
            svg.append(line(y));
        }
        StringBuilder dots = new StringBuilder();
        StringBuilder levels = new StringBuilder();
        for (Hour hour : YEAR) {
            double x = 40 + hour.at * 1000.0 / HOURS;
            dots.append(String.format(Locale.ROOT, "M%.1f %.1fh1", x, y(hour.indexF())));
            levels.append(String.format(Locale.ROOT, "M%.1f %dh1", x, 505 - 20 * hour.shown));
        }
        svg.append(path(dots, "#0b3c46")).append(path(levels, "#8a2f00"));
        for (int level = 0; level <= 4; level++) {
            svg.append(text(2, 509 - 20 * level, "level " + level));
        }
        for (int month = 0; month < 12; month++) {
            svg.append(text(60 + month * 1000 / 12.0, 414, Integer.toString(month + 1)));
        }
        Files.createDirectories(file.getParent());
        Files.writeString(file, svg.append("</svg>\n"));
    }

    private static double y(double fahrenheit) {
        return 400 - (fahrenheit - 10) * 380 / 120;
    }

    private static String line(double y) {
        String form = "<path d=\"M40 %.1fH1040\" stroke=\"#5d676c\"/>";
        return String.format(Locale.ROOT, form, y);
    }

    private static String text(double x, double y, String words) {
        String form = "<text x=\"%.1f\" y=\"%.1f\" font-size=\"12\">%s</text>";
        return String.format(Locale.ROOT, form, x, y, words);
    }

    private static String path(CharSequence way, String colour) {
        return "<path fill=\"none\" stroke=\"" + colour + "\" d=\"" + way + "\"/>";
    }
}
