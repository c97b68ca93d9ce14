package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Team;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

/** What a press sends: the very acts the gateway reads, once each, and what comes back as words. */
class PressTest extends WithPresses {
    @Test
    void the_proctors_zones_send_start_mark_and_finish() {
        try (Tablet tablet = show("post-start")) {
            tablet.page().click("[data-act=start]");
            awaitActs(new Act.GiveStart(17));
            server.show("post", ScriptedFrames.of("post-under-way", "running"));
            pressWhenSettled(tablet.page(), "[data-act=mark]");
            tablet.page().click("[data-act=finish]");
            awaitActs(
                    new Act.GiveStart(17),
                    new Act.Tap(17, "mannequin-drag", "turned-post"),
                    new Act.Tap(17, "mannequin-drag", "finish"));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    /** A finger already on its way when the zone changed its meaning does not count. */
    private static void pressWhenSettled(Page page, String zone) {
        page.waitForSelector(zone + "[data-settled=true]");
        page.click(zone);
    }

    @Test
    void a_fault_names_its_criterion() {
        try (Tablet tablet = show("post-call")) {
            tablet.page().click(".criteria li:first-child button:last-child");
            awaitActs(new Act.Call(17, "mannequin-drag", "no-running", true, ""));
            assertThat(tablet.page().locator(".ask")).hasCount(0);
        }
    }

    @Test
    void an_equipment_fault_holds_the_candidate_with_its_reason_and_words() {
        try (Tablet tablet = show("post-call")) {
            Page page = tablet.page();
            page.click("[data-act=hold]");
            page.click("label:has([value=equipment-fault])");
            page.fill("textarea", "maul head loose");
            page.click("[data-ask=yes]");
            awaitActs(new Act.HoldCandidate(17, Reason.EQUIPMENT_FAULT, "maul head loose"));
        }
    }

    @Test
    void a_double_tap_is_one_act() {
        try (Tablet tablet = show("post-under-way")) {
            tablet.page().dblclick("[data-act=finish]");
            tablet.page().click("[data-act=mark]");
            awaitActs(
                    new Act.Tap(17, "mannequin-drag", "finish"),
                    new Act.Tap(17, "mannequin-drag", "turned-post"));
        }
    }

    @Test
    void a_lost_answer_is_asked_for_again_under_the_same_key() {
        try (Tablet tablet = show("post-under-way")) {
            server.cutAnswers(1);
            tablet.page().click("[data-act=finish]");
            await().until(() -> server.rulings().size() == 2);
            assertThat(server.rulings())
                    .extracting(one -> one.path("key").asText())
                    .containsOnly(server.rulings().get(0).path("key").asText());
            assertThat(tablet.page().locator("[data-act=finish]"))
                    .hasAttribute("aria-busy", "false");
            assertThat(tablet.page().locator(".note")).hasCount(0);
        }
    }

    @Test
    void a_refusal_is_said_in_the_tablets_language() {
        server.answerWith(409, "{\"refused\":\"already-ruled\",\"words\":\"Someone did.\"}");
        Chromium.Way spanish = new Chromium.Way(Chromium.Glass.PHONE, "es", "dark", false);
        Scene scene = Scene.named("post-splits");
        try (Tablet tablet = Tablet.show(chromium, server, scene, spanish)) {
            tablet.page().click("[data-act=confirm-mannequin-drag]");
            assertThat(tablet.page().locator(".note.warn"))
                    .containsText("Rechazado: Alguien ya decidió sobre esto.");
        }
    }

    @Test
    void what_breaks_under_a_candidate_is_an_equipment_fault_of_that_station() {
        try (Tablet tablet = show("post-call")) {
            tablet.page().click("[data-act=equipment]");
            tablet.page().fill("textarea", "strap torn");
            tablet.page().click("[data-ask=yes]");
            awaitActs(new Act.EquipmentFault(17, "mannequin-drag", "strap torn"));
        }
    }

    @Test
    void a_note_wants_words() {
        try (Tablet tablet = show("post-call")) {
            Page page = tablet.page();
            page.click("[data-act=note]");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".wrong")).hasCount(1);
            page.fill("textarea", "asked for water");
            page.click("[data-ask=yes]");
            awaitActs(new Act.Note(17, "asked for water"));
        }
    }

    @Test
    void a_proctor_stops_one_candidate_for_good() {
        try (Tablet tablet = show("post-call")) {
            stopOne(tablet.page());
            awaitActs(new Act.StopOne(17, Reason.MEDICAL, "sat down"));
        }
    }

    /** It would come minutes late: the proctor is told to use the voice instead. */
    @Test
    void stopping_one_without_a_link_is_never_kept_for_later() {
        try (Tablet tablet = show("post-call")) {
            Page page = tablet.page();
            cut(page);
            stopOne(page);
            assertThat(page.locator(".note.warn").last()).containsText("by voice");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "0");
            page.context().setOffline(false);
            page.waitForSelector("html[data-link=live][data-stale=false]");
            assertThat(server.rulings()).isEmpty();
        }
    }

    private static void stopOne(Page page) {
        page.click("[data-act=stop-one]");
        page.click("label:has([value=medical])");
        page.fill("textarea", "sat down");
        page.click("[data-ask=yes]");
    }

    @Test
    void control_releases_the_next_with_the_chosen_proctor() {
        try (Tablet tablet = show("control")) {
            assertThat(tablet.page().locator("[data-act=release]"))
                    .hasAttribute("aria-disabled", "true");
            server.show("control", ScriptedFrames.of("control-ready", "running"));
            tablet.page().click("label:has([value=d-5])");
            tablet.page().click("[data-act=release][aria-disabled=false]");
            awaitActs(new Act.Release(18, "d-5"));
        }
    }

    @Test
    void control_lets_one_who_is_held_run_a_station_again_with_a_reason() {
        try (Tablet tablet = show("control")) {
            Page page = tablet.page();
            page.click("[data-act=more-17]");
            assertThat(page.locator("[data-act=withdraw]")).hasCount(1);
            assertThat(page.locator("[data-act=station-again]")).hasCount(0);
            page.keyboard().press("Escape");
            page.click("[data-act=more-14]");
            page.click("[data-act=station-again]");
            page.click("label:has([value=equipment-fault])");
            page.fill("textarea", "wheel came off");
            page.click("[data-ask=yes]");
            awaitActs(
                    new Act.RunStationAgain(
                            14, "fan-carry", Reason.EQUIPMENT_FAULT, "wheel came off"));
        }
    }

    @Test
    void who_runs_a_station_again_is_started_there_and_not_resumed() {
        try (Tablet tablet = show("post-again")) {
            Page page = tablet.page();
            assertThat(page.locator("[data-act=resume]")).hasCount(0);
            assertThat(page.locator(".who-station")).containsText("The hold ends at the start");
            pressWhenSettled(page, "[data-act=mark]");
            awaitActs(new Act.Tap(17, "pike-poles", "start"));
        }
    }

    @Test
    void the_crews_ready_waits_for_the_last_contact() {
        try (Tablet tablet = show("crew")) {
            assertThat(tablet.page().locator("[data-act=ready-rope-bag]"))
                    .hasAttribute("aria-disabled", "true");
            tablet.page().click("[data-act=ready-pike-poles]");
            awaitActs(new Act.StationReady("pike-poles"));
        }
    }

    @Test
    void the_safety_officer_calls_a_team_away_and_the_crew_itself_back() {
        try (Tablet tablet = show("watch")) {
            Page page = tablet.page();
            page.click("[data-act=team-medical]");
            page.fill("textarea", "to the gate");
            page.click("[data-ask=yes]");
            awaitActs(new Act.TeamAway(Team.MEDICAL, "to the gate"));
            assertThat(page.locator("[data-act=let-7]")).hasCount(0);
            server.show("watch", ScriptedFrames.of("watch-away", "away"));
            assertThat(page.locator("[data-holds]")).containsText("Medical team called away");
            assertThat(page.locator("main h2").first()).containsText("Out now");
            assertThat(tablet.complaints()).isEmpty();
        }
        try (Tablet tablet = show("crew-away")) {
            tablet.page().click("[data-act=team-course-crew]");
            tablet.page().click("[data-ask=yes]");
            await().until(() -> acts().contains(new Act.TeamBack(Team.COURSE_CREW, "")));
        }
    }

    @Test
    void an_item_of_the_checklist_is_signed_after_a_question_and_taken_back_with_words() {
        try (Tablet tablet = show("watch-early")) {
            Page page = tablet.page();
            assertThat(page.locator("main h2").first()).containsText("Start of day");
            assertThat(page.locator("[data-item=medical]")).containsText("called to the gate");
            assertThat(page.locator("[data-holds]")).containsText("Start-of-day checklist open");
            page.click("[data-act=check-trained]");
            assertThat(page.locator(".ask")).containsText("Somebody trained for heat illness");
            page.click("[data-ask=back]");
            page.click("[data-act=check-trained]");
            page.fill("textarea", "I am");
            page.click("[data-ask=yes]");
            awaitActs(new Act.ChecklistDone("trained", "I am"));
            page.click("[data-act=check-cooling]");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".ask .wrong")).containsText("Say why");
            page.fill("textarea", "melted");
            page.click("[data-ask=yes]");
            await().until(
                            () ->
                                    acts().contains(new Act.ChecklistOpen("cooling", "melted"))
                                            && acts().size() == 2);
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void the_coordinator_reads_which_items_of_the_checklist_are_open() {
        try (Tablet tablet = show("control-early")) {
            Page page = tablet.page();
            assertThat(page.locator(".blockers")).containsText("Somebody trained for heat illness");
            assertThat(page.locator(".blockers")).not().containsText("Ice, water and a tub");
            String named = "[{\"en\":\"A tub of ice\",\"es\":\"Una tina\"}]";
            server.answerWith(
                    409,
                    "{\"refused\":\"checklist-open\",\"words\":\"x\",\"named\":" + named + "}");
            server.show("control", ScriptedFrames.of("control-ready", "running"));
            page.click("[data-act=release]");
            assertThat(page.locator(".note.warn"))
                    .containsText("until they are signed. A tub of ice");
        }
    }

    @Test
    void the_ground_is_noted_spot_by_spot_beginning_with_what_stands() {
        try (Tablet tablet = show("watch")) {
            Page page = tablet.page();
            assertThat(page.locator("[data-spot=hydrant-walk]")).containsText("not noted");
            page.click("[data-act=ground-mannequin-drag]");
            assertThat(page.locator("[name=glare]")).isChecked();
            page.click("label:has([value=ice])");
            page.click("label:has([name=gust])");
            page.click("[data-ask=yes]");
            page.click("[data-act=ground-yard]");
            assertThat(page.locator("[data-ask=yes]")).hasAttribute("aria-disabled", "true");
            page.click("label:has([value=wet])");
            page.fill("textarea", "rain");
            page.click("[data-ask=yes]");
            awaitActs(
                    new Act.NoteSurface("mannequin-drag", Ground.ICE, true, true, ""),
                    new Act.NoteSurface("yard", Ground.WET, false, false, "rain"));
            server.show("watch", ScriptedFrames.of("watch-ice", "ice"));
            assertThat(page.locator("[data-spot=mannequin-drag]")).containsText("takes nobody");
            assertThat(page.locator("[data-holds]")).containsText("Ground or weather");
            assertThat(tablet.complaints()).isEmpty();
        }
        try (Tablet tablet = show("control")) {
            assertThat(tablet.page().locator("[data-spot]")).hasCount(3);
            assertThat(tablet.page().locator("[data-spot=climb]")).containsText("dry, gusts");
            assertThat(tablet.page().locator("[data-act^=ground-]")).hasCount(0);
        }
    }

    @Test
    void each_who_moves_is_let_finish_or_stopped_and_only_a_stop_is_sent() {
        try (Tablet tablet = show("watch-away")) {
            Page page = tablet.page();
            page.click("[data-act=let-8]");
            assertThat(page.locator("[data-act=let-8]")).hasAttribute("aria-pressed", "true");
            page.click("[data-act=stop-7]");
            page.click("label:has([value=medical])");
            page.click("[data-ask=yes]");
            awaitActs(new Act.StopOne(7, Reason.MEDICAL, ""));
            assertThat(page.locator(".note.done")).containsText("Number 7");
            server.show("watch", ScriptedFrames.of("watch", "running"));
            assertThat(page.locator("[data-act=let-8]")).hasCount(0);
        }
    }

    @Test
    void a_stop_for_one_that_nobody_answers_is_said_to_be_unsent_and_never_sent_again() {
        try (Tablet tablet = show("watch-away")) {
            Page page = tablet.page();
            server.fallDeaf(true);
            page.click("[data-act=stop-7]");
            page.click("label:has([value=weather])");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".note.warn")).containsText("NOT SENT. Stop number 7");
            page.click("[data-act=let-8]");
            assertThat(page.locator("[data-act=let-8]")).hasAttribute("aria-pressed", "true");
            server.fallDeaf(false);
            assertThat(server.rulings()).hasSize(1);
        }
    }

    @Test
    void the_technician_makes_a_unit_blink() {
        try (Tablet tablet = show("bench")) {
            tablet.page().click("[data-act=identify-fu-02]");
            awaitActs(new Act.Identify("fu-02", 10));
        }
    }
}
