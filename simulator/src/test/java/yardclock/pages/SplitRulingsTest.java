package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

/** What a proctor rules on a split and on what it rests on, as the gateway reads it. */
class SplitRulingsTest extends WithPresses {
    @Test
    void a_confirm_says_which_picture_it_was_based_on() {
        try (Tablet tablet = show("post-splits")) {
            tablet.page().click("[data-act=confirm-mannequin-drag]");
            awaitActs(new Act.Confirm(17, "mannequin-drag"));
            assertThat(server.rulings().get(0).path("basis").asLong()).isEqualTo(9);
        }
    }

    @Test
    void all_clean_splits_go_with_one_press() {
        try (Tablet tablet = show("post-splits")) {
            tablet.page().click("[data-act=confirm-all]");
            awaitActs(new Act.Confirm(17, "mannequin-drag"), new Act.Confirm(17, "rope-bag"));
        }
    }

    @Test
    void a_hand_time_is_read_from_a_stop_watch_or_refused_in_words() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            page.click("[data-act=other-low-deck]");
            page.click("label:has([value=watch])");
            page.fill("[name=time]", "64");
            page.fill("[name=time]", "6:4");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".wrong")).containsText("1:05.3");
            page.fill("[name=time]", "1:04.2");
            page.click("[data-ask=yes]");
            page.click("label:has([value=sensor-failed])");
            page.click("[data-ask=yes]");
            awaitActs(new Act.HandTime(17, "low-deck", 64_200_000, Reason.SENSOR_FAILED, ""));
        }
    }

    @Test
    void an_ambiguous_split_is_decided_by_one_of_its_readings_as_they_were_shown() {
        try (Tablet tablet = show("post-splits")) {
            rule(tablet.page(), "pike-poles", "reading-1", "");
            awaitActs(new Act.ChooseReading(17, "pike-poles", 1));
            JsonNode sent = server.rulings().get(0);
            assertThat(sent.path("shownMicros").toString()).isEqualTo("[66430000,67810000]");
            assertThat(sent.path("supersedes").asLong()).isEqualTo(-1);
        }
    }

    @Test
    void a_ruling_over_another_names_the_one_that_was_on_the_screen() {
        try (Tablet tablet = show("post-splits")) {
            rule(tablet.page(), "hydrant-walk", "void", "sensor-failed");
            awaitActs(new Act.VoidSplit(17, "hydrant-walk", Reason.SENSOR_FAILED, ""));
            JsonNode sent = server.rulings().get(0);
            assertThat(sent.path("supersedes").asLong()).isEqualTo(4410);
            assertThat(sent.path("shownMicros").toString()).isEqualTo("[58214000]");
        }
    }

    @Test
    void a_ruling_is_taken_back_with_words() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            assertThat(page.locator(".split", new Page.LocatorOptions().setHasText("a cat")))
                    .containsText("Alder");
            rule(page, "fan-carry", "back-4415", "");
            awaitActs(new Act.WithdrawRuling(17, "fan-carry", 4415, ""));
        }
    }

    @Test
    void a_strike_is_taken_back_as_a_split_is() {
        try (Tablet tablet = show("post-splits")) {
            rule(tablet.page(), "mannequin-drag", "back-4402", "");
            awaitActs(new Act.WithdrawRuling(17, "mannequin-drag", 4402, ""));
        }
    }

    @Test
    void a_passage_is_struck_by_the_edge_that_names_it() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            page.click("[data-act=other-mannequin-drag]");
            page.click("label:has([value=strike])");
            assertThat(page.locator("[name=passage] option").last()).containsText("Finish");
            page.selectOption("[name=passage]", "2");
            assertThat(Measure.axe(page)).isEmpty();
            because(page, "sensor-tripped-by-other");
            Reason other = Reason.SENSOR_TRIPPED_BY_OTHER;
            awaitActs(new Act.Strike("yc-02", "5f21", 107, other, ""));
        }
    }

    @Test
    void a_mark_that_nothing_saw_is_added_at_a_time_of_day() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            page.click("[data-act=other-mannequin-drag]");
            page.click("label:has([value=add])");
            page.selectOption("[name=point]", "turned-post");
            page.fill("[name=at]", "25:00:00");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".wrong")).containsText("10:42:17.3");
            page.fill("[name=at]", timeOfDay(page.locator(".ask li").first().innerText()));
            assertThat(Measure.axe(page)).isEmpty();
            because(page, "sensor-failed");
            long start = 3_902_000_000L;
            Reason failed = Reason.SENSOR_FAILED;
            awaitActs(new Act.AddMark(17, "mannequin-drag", "turned-post", start, failed, ""));
        }
    }

    @Test
    void a_passage_of_the_tray_is_assigned_to_the_proctors_candidate() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            page.click("[data-act=assign-yc-02-118]");
            assertThat(page.locator("[name=number]")).hasCount(0);
            page.click("label:has([value=sensor-failed])");
            page.click("[data-ask=yes]");
            awaitActs(assigned(17));
            assertThat(server.rulings().get(0).path("basis").asLong()).isEqualTo(9);
        }
    }

    @Test
    void the_coordinator_says_whose_a_passage_is() {
        try (Tablet tablet = show("control")) {
            Page page = tablet.page();
            page.click("[data-act=assign-yc-02-118]");
            page.click("label:has([value=sensor-failed])");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".wrong")).containsText("number");
            page.fill("[name=number]", "21");
            assertThat(Measure.axe(page)).isEmpty();
            page.click("[data-ask=yes]");
            awaitActs(assigned(21));
        }
    }

    private static Act assigned(int number) {
        Reason failed = Reason.SENSOR_FAILED;
        return new Act.Assign("yc-02", "5f21", 118, number, "mannequin-drag", "start", failed, "");
    }

    /** Of a mark as it is shown, as {@code Start 10:42:17.3, start mat}. */
    private static String timeOfDay(String mark) {
        return mark.replaceAll("[^0-9]*([0-9:.]+).*", "$1");
    }

    private static void rule(Page page, String station, String way, String reason) {
        page.click("[data-act=other-" + station + "]");
        page.click("label:has([value=" + way + "])");
        because(page, reason);
    }

    private static void because(Page page, String reason) {
        page.click("[data-ask=yes]");
        page.waitForSelector("textarea");
        if (!reason.isEmpty()) {
            page.click("label:has([value=" + reason + "])");
        }
        page.click("[data-ask=yes]");
    }
}
