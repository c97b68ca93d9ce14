package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import yardclock.core.ruling.Role;

import java.net.http.HttpResponse;

/** Takes one candidate over the whole demo course, cleanly and at an even pace. */
final class OneRun {
    private final DayBench day;
    private final int number;

    OneRun(DayBench day, int number) {
        this.day = day;
        this.number = number;
    }

    void release() throws Exception {
        accepted(
                day.rule(
                        Role.COORDINATOR,
                        "release",
                        "number",
                        number,
                        "proctorDevice",
                        day.device(Role.PROCTOR)));
        day.lane.pass(5_000);
    }

    void hydrantWalk() throws Exception {
        accepted(day.rule(Role.PROCTOR, "give-start", "number", number));
        day.lane.pass(300);
        day.edge("fu-01", 9, 1);
        day.lane.pass(30_000);
        tap("hydrant-walk", "cap-off");
        day.lane.pass(25_000);
        day.edge("fu-01", 3, 1);
        day.edge("fu-01", 3, 0);
        walk();
    }

    void mannequinDrag() {
        press("fu-02", 1, 1_000);
        day.lane.pass(20_000);
        press("fu-02", 2, 400);
        day.lane.pass(25_000);
        press("fu-02", 3, 900);
        walk();
    }

    void pikePoles() {
        press("fu-03", 1, 1_000);
        for (int holder = 2; holder <= 4; holder++) {
            day.lane.pass(20_000);
            day.edge("fu-03", holder, 1);
        }
        walk();
    }

    void lowDeck() {
        press("fu-04", 1, 700);
        day.lane.pass(30_000);
        press("fu-04", 2, 300);
        day.lane.pass(30_000);
        press("fu-04", 3, 2_000);
        walk();
    }

    void ropeBag() {
        day.edge("fu-05", 1, 0);
        day.lane.pass(25_000);
        press("fu-06", 1, 2_000);
        day.lane.pass(20_000);
        day.edge("fu-05", 1, 1);
        walk();
    }

    void fanCarry() throws Exception {
        press("fu-07", 1, 200);
        press("fu-07", 2, 200);
        day.lane.pass(20_000);
        tap("fan-carry", "hands-changed");
        day.lane.pass(20_000);
        press("fu-07", 3, 200);
        press("fu-07", 4, 200);
        walk();
    }

    void wedgeDrive() {
        day.edge("fu-08", 1, 0);
        day.lane.pass(36_000);
        day.edge("fu-08", 2, 1);
        walk();
    }

    void groundLadder() {
        day.edge("fu-09", 1, 0);
        day.edge("fu-09", 2, 0);
        day.lane.pass(25_000);
        press("fu-10", 1, 500);
        day.lane.pass(25_000);
        day.edge("fu-09", 1, 1);
        day.lane.pass(100);
        day.edge("fu-09", 2, 1);
        walk();
    }

    void rollUp() throws Exception {
        press("fu-11", 1, 1_000);
        day.lane.pass(60_000);
        tap("roll-up", "accepted");
        day.lane.pass(3_000);
        day.edge("fu-11", 2, 1);
        walk();
    }

    /** Blocks or presses a sensor for so long. */
    private void press(String unit, int sensor, long millis) {
        day.edge(unit, sensor, 1);
        day.lane.pass(millis);
        day.edge(unit, sensor, 0);
    }

    private void tap(String station, String point) throws Exception {
        accepted(
                day.rule(
                        Role.PROCTOR, "tap", "number", number, "station", station, "point", point));
    }

    /** The walk to the next station; stays and watermarks are over by its end. */
    private void walk() {
        day.lane.pass(8_000);
        day.lane.give(new yardclock.core.engine.Input.Deadline());
        day.lane.pass(8_000);
        day.lane.give(new yardclock.core.engine.Input.Deadline());
    }

    void confirmAll() throws Exception {
        for (String station :
                yardclock.app.settings.DemoPlan.plan().plan().stations().stream()
                        .map(s -> s.id())
                        .toList()) {
            accepted(day.rule(Role.PROCTOR, "confirm", "number", number, "station", station));
        }
    }

    void tell() throws Exception {
        accepted(day.rule(Role.PROCTOR, "tell", "number", number));
    }

    private static void accepted(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    }
}
