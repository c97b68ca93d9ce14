package yardclock.app.records.dossier.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Further;
import yardclock.app.records.dossier.Timeline;
import yardclock.app.records.dossier.Timeline.RulingLine;
import yardclock.app.records.paper.Language;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.Condition;
import yardclock.core.course.Text;
import yardclock.core.ruling.ActKind;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** A page written from a made-up dossier with all that can stand in one. */
class DossierPageTest {
    private static final String HEAD = "ab".repeat(32);
    private static final String HOSTILE =
            "<script>alert(1)</script>\" onload='x' & \u202Etxt\u0007";
    private static final Timeline.MarkLine START =
            new Timeline.MarkLine(60_000_000, 59_990_000, 60_010_000, "automatic", 11);
    private static final Timeline.MarkLine FINISH =
            new Timeline.MarkLine(101_000_000, 100_750_000, 101_030_000, "tap", -1);

    private static final Timeline.Standing STANDING =
            new Timeline.Standing(
                    "passed",
                    "Passed.",
                    600_000_000,
                    599_000_000,
                    601_000_000,
                    "within",
                    "",
                    61_000_000,
                    true);
    private static final Timeline.TurnLine TURN =
            new Timeline.TurnLine(
                    "mannequin-drag",
                    "confirmed",
                    START,
                    FINISH,
                    41_000_000,
                    40_740_000,
                    41_040_000,
                    -1,
                    41_000_000,
                    new Text("by tap", "por toque"),
                    List.of(),
                    List.of(Condition.WET, Condition.GUST));
    private static final Timeline.EdgeLine EDGE =
            new Timeline.EdgeLine(
                    11,
                    "mannequin-drag",
                    "fu-02",
                    1,
                    0,
                    "b",
                    4,
                    123_456,
                    60_000_000,
                    59_990_000,
                    60_010_000,
                    "start",
                    "mark",
                    new Text("makes a mark", "forma una marca"));
    private static final Timeline.FactLine SEEN =
            new Timeline.FactLine(
                    11,
                    60_020_000,
                    "mark-proposed",
                    "mannequin-drag",
                    "start",
                    60_000_000,
                    59_990_000,
                    60_010_000,
                    0,
                    "AUTOMATIC");

    private static String page(Language language, RulingLine... rulings) {
        return page(language, "by the taps", List.of(), rulings);
    }

    private static String page(
            Language language, String alarm, List<String> differences, RulingLine... rulings) {
        Timeline.FactLine said =
                new Timeline.FactLine(
                        8, 55_000_000, "go-on-by-hand", "rope-bag", "", -1, -1, -1, 0, alarm);
        return DossierPage.of(
                new Contents(
                        new Dossier(timeline(rulings), differences, List.of(said)),
                        DemoPlan.plan().plan(),
                        ZoneOffset.UTC,
                        new Contents.Proof(99, HEAD, 40, 59)),
                language);
    }

    private static Timeline timeline(RulingLine... rulings) {
        return new Timeline(
                7,
                new Timeline.Made("qb-3", 3, "cd".repeat(32), "1", 1, 0, 0),
                STANDING,
                List.of(TURN),
                List.of(EDGE),
                List.of(rulings),
                List.of(SEEN),
                List.of(new Timeline.ConditionLine(5, 50_000_000, 3_105, 4_210)),
                further());
    }

    private static Further further() {
        return new Further(
                List.of(new Further.WallLine(1, 0, 1_789_970_400_000_000L, 1)),
                new Further.Official("10:00.0", null, null),
                List.of(
                        new Further.PassageLine(
                                "mannequin-drag",
                                "start",
                                11,
                                60_000_000,
                                59_990_000,
                                60_010_000,
                                "3+1",
                                true,
                                List.of(11L, 12L),
                                List.of(350_000L, -1L))),
                List.of(
                        new Further.HoldLine(
                                70_000_000,
                                69_990_000,
                                70_010_000,
                                -1,
                                -1,
                                -1,
                                -1,
                                "station-not-ready")),
                List.of(new Further.CallLine("mannequin-drag", "none", true, 80_000_000, HOSTILE)),
                List.of(
                        new Further.UnitLine(
                                "fu-02",
                                new Text("Lane", "Carril"),
                                List.of("mannequin-drag"),
                                300,
                                7_100_000,
                                2,
                                3_700,
                                -81,
                                12,
                                9_000,
                                "1.0")));
    }

    private static RulingLine ruling(long entry, ActKind act, String what, String status) {
        return new RulingLine(
                entry,
                120_000_000,
                119_990_000,
                5_000_000,
                "tab-1",
                "Hazel Example",
                "proctor",
                act.word(),
                what,
                57,
                List.of(41_000_000L),
                "",
                -1,
                status,
                status.equals("standing") ? -1 : entry + 1);
    }

    @Test
    void what_was_superseded_or_refused_stands_there_as_such() {
        String what = "{\"number\":7,\"station\":\"mannequin-drag\",\"reason\":\"sensor-failed\"}";
        RulingLine refused =
                new RulingLine(
                        23,
                        130_000_000,
                        130_000_000,
                        0,
                        "tab-2",
                        "Rowan Example",
                        "coordinator",
                        "confirm",
                        what,
                        60,
                        List.of(),
                        "already-ruled",
                        -1,
                        "",
                        -1);
        String page =
                page(
                        Language.EN,
                        ruling(21, ActKind.VOID_SPLIT, what, "superseded"),
                        ruling(22, ActKind.CONFIRM, what, "standing"),
                        refused);
        assertThat(page)
                .contains("<strong>SUPERSEDED</strong><br><small>by entry 22</small>")
                .contains("made the split void", "Reason: a sensor failed", "stands")
                .contains("<strong>REFUSED</strong><br><small>code already-ruled</small>")
                .contains("Hazel Example", "device tab-1", "the device gave no time")
                .contains("split 41.000\u00A0s", "revision 57");
        assertThat(page(Language.ES, ruling(21, ActKind.VOID_SPLIT, what, "withdrawn")))
                .contains("<strong>RETIRADA</strong><br><small>por la entrada 22</small>")
                .contains("anuló el parcial", "Motivo: falló un sensor");
    }

    @Test
    void every_instant_stands_with_its_zone_and_its_limits() {
        assertThat(page(Language.EN))
                .contains("06:01:00.000\u00A0UTC+00:00<br><small>06:00:59.990 … 06:01:00.010")
                .contains("41.000\u00A0s</strong><br><small>40.740\u00A0s … 41.040\u00A0s")
                .contains("31.05 °C", "42.10 %")
                .contains("wet, gusts")
                .contains("350", "3+1", "11, 12");
    }

    @Test
    void what_does_not_follow_from_the_entries_is_said_not_to() {
        String page = page(Language.EN, "by the taps", List.of("turns"));
        assertThat(page)
                .contains(HEAD, "dossier --check dossier-7.json")
                .contains("That nothing that matters was left out")
                .contains("these sections come out otherwise", "turns.")
                .contains("it is the word of whoever made it", "by the taps");
    }

    @Test
    void text_from_outside_is_only_ever_text() {
        String what = "{\"number\":7,\"words\":\"<b>&\\\"'\"}";
        String page =
                page(
                        Language.EN,
                        HOSTILE,
                        List.of("<i>"),
                        ruling(21, ActKind.NOTE, what, "standing"));
        assertThat(page)
                .doesNotContain("<script", "<b>", "<i>", "onload='", "\u202E", "\u0007")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot; onload=&#39;x&#39; &amp;")
                .contains("&lt;b&gt;&amp;&quot;&#39;");
    }

    @Test
    void nothing_is_loaded_from_anywhere_and_no_script_runs() {
        for (Language language : Language.values()) {
            assertThat(page(language))
                    .contains("<html lang=\"" + language.code() + "\">")
                    .contains("default-src 'none'; style-src 'unsafe-inline'")
                    .doesNotContain("http://", "https://", "<script", "<link", "src=", "url(");
        }
    }

    @Test
    void every_act_a_ruling_can_be_has_words_in_both_languages() {
        for (Language language : Language.values()) {
            List<String> codes = new ArrayList<>();
            for (ActKind kind : ActKind.values()) {
                String page = page(language, ruling(21, kind, "{\"number\":7}", "standing"));
                if (page.contains("<strong>" + kind.word() + "</strong>")) {
                    codes.add(kind.word());
                }
            }
            assertThat(codes).as("%s", language).isEmpty();
        }
    }
}
