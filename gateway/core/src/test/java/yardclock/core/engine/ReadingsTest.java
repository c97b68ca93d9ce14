package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

import java.util.List;

/** An ambiguous split shows its readings; a person chooses one, as it was on the screen. */
class ReadingsTest {
    private final Yard yard = Yard.open(new TestPlan().beamAtLaps().make());
    private final Walk walk = new Walk(yard, 101, "proctor1").at(10);

    /** Two cut the beam at the last start, 0.15 s apart; the tap comes 0.11 s after the second. */
    private void toTheEnd() {
        walk.release().station("walk");
        walk.stations(1, 5);
        yard.after(5).edge("u7/1", 1);
        yard.after(0.1).edge("u7/1", 0);
        yard.after(0.05).edge("u7/1", 1);
        yard.after(0.11);
        walk.tap("laps", "start");
        yard.after(0.2).edge("u7/1", 0);
        walk.press("u7/2");
        walk.press("u7/2");
        yard.after(0.1);
        walk.tap("laps", "finish").after(10);
    }

    private PostFrame.Split laps() {
        return yard.engine().post(yard.view(), "proctor1").candidate().splits().get(5);
    }

    private Verdict choose(int reading, List<Long> shown, long supersedes) {
        Act act = new Act.ChooseReading(101, "laps", reading);
        String key = "choose-" + yard.journal().size();
        long now = yard.view().gatewayMicros();
        return yard.take(new Input.Ruling(key, "proctor1", "", 0, now, -1, supersedes, shown, act))
                .verdict();
    }

    private static List<Long> shown(PostFrame.Split split) {
        return split.readings().stream().map(PostFrame.Reading::splitMicros).toList();
    }

    @Test
    void the_second_reading_stands_once_a_person_chose_it() {
        toTheEnd();
        PostFrame.Split before = laps();
        assertThat(before.state()).isEqualTo("ambiguous");
        assertThat(before.readings()).hasSizeGreaterThan(1);
        assertThat(choose(1, shown(before), -1).isAccepted()).isTrue();
        PostFrame.Split after = laps();
        assertThat(after.state()).isEqualTo("confirmed");
        assertThat(after.splitMicros()).isEqualTo(before.readings().get(1).splitMicros());
        assertThat(after.lowerMicros()).isEqualTo(before.readings().get(1).lowerMicros());
        assertThat(after.upperMicros()).isEqualTo(before.readings().get(1).upperMicros());
        assertThat(yard.split(101, "laps").why()).isEqualTo(before.readings().get(1).words().en());
    }

    @Test
    void the_reading_named_alone_by_its_split_is_as_good() {
        toTheEnd();
        long second = laps().readings().get(1).splitMicros();
        assertThat(choose(1, List.of(second), -1).isAccepted()).isTrue();
        assertThat(laps().splitMicros()).isEqualTo(second);
    }

    @Test
    void the_best_reading_chosen_is_the_split_as_it_was_proposed() {
        toTheEnd();
        PostFrame.Split before = laps();
        assertThat(shown(before).get(0)).isEqualTo(before.splitMicros());
        assertThat(choose(0, shown(before), -1).isAccepted()).isTrue();
        assertThat(laps().splitMicros()).isEqualTo(before.splitMicros());
        assertThat(laps().upperMicros()).isEqualTo(before.upperMicros());
    }

    @Test
    void a_reading_that_gives_another_split_by_now_is_refused() {
        toTheEnd();
        List<Long> shown = shown(laps());
        List<Long> other = shown.stream().map(micros -> micros + 1).toList();
        assertThat(choose(1, other, -1).refusal()).isEqualTo(Refusal.OUT_OF_DATE);
        assertThat(choose(7, shown, -1).refusal()).isEqualTo(Refusal.OUT_OF_DATE);
        assertThat(choose(1, List.of(), -1).refusal()).isEqualTo(Refusal.OUT_OF_DATE);
        assertThat(laps().state()).isEqualTo("ambiguous");
    }

    @Test
    void a_split_without_readings_has_none_to_choose() {
        toTheEnd();
        Act act = new Act.ChooseReading(101, "drag", 0);
        assertThat(yard.rule("proctor1", act).refusal()).isEqualTo(Refusal.OUT_OF_DATE);
    }

    @Test
    void a_choice_supersedes_what_stood_and_uncovers_it_when_taken_back() {
        toTheEnd();
        List<Long> shown = shown(laps());
        yard.ok("proctor1", new Act.Confirm(101, "laps"));
        long confirmed = laps().standing().entry();
        assertThat(choose(1, shown, -1).refusal()).isEqualTo(Refusal.ALREADY_RULED);
        assertThat(choose(1, shown, confirmed).isAccepted()).isTrue();
        long chosen = laps().standing().entry();
        assertThat(laps().splitMicros()).isEqualTo(shown.get(1));
        yard.ok("proctor1", new Act.WithdrawRuling(101, "laps", chosen, ""));
        assertThat(laps().standing().entry()).isEqualTo(confirmed);
        assertThat(laps().splitMicros()).isEqualTo(shown.get(0));
    }

    @Test
    void a_choice_replayed_gives_the_same_state() {
        toTheEnd();
        choose(1, shown(laps()), -1);
        yard.ok("proctor1", new Act.VoidSplit(101, "drag", Reason.OTHER, ""));
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }
}
