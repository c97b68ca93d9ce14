package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Verdict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;

/**
 * Three tablets rule on one candidate's splits at once: each sees only what it last heard, loses
 * its link, keeps its presses in order, sends the first again while no answer came. Whatever the
 * order, the day ends as {@link RulingModel} says, and each ruling was applied once.
 */
class InterleavingsTest {
    private static final int SEEDS = 200;
    private static final int PRESSES = 14;
    private static final List<String> TABLETS = List.of("proctor1", "coordinator1", "coordinator2");

    /** One press as a tablet keeps it. */
    private record Press(String key, Act act, long supersedes) {}

    /** A tablet: what it shows of each station, what waits, and whether it has a link. */
    private static final class Tablet {
        final String device;
        final Deque<Press> outbox = new ArrayDeque<>();
        final long[] shown = {-1, -1, -1, -1, -1, -1};
        boolean isLinked = true;

        Tablet(String device) {
            this.device = device;
        }
    }

    private Yard yard;
    private RulingModel model;
    private Random random;
    private int keys;
    private int accepted;
    private int conflicts;
    private final List<Long> heard = new ArrayList<>();

    @Test
    void whatever_the_order_each_ruling_counts_once_and_the_second_of_two_is_refused() {
        int refused = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            play(seed);
            refused += conflicts;
        }
        assertThat(refused).as("conflicts were met at all").isGreaterThan(SEEDS);
    }

    private void play(long seed) {
        yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        model = new RulingModel(TestPlan.stations());
        random = new Random(seed);
        accepted = 0;
        conflicts = 0;
        heard.clear();
        List<Tablet> tablets = TABLETS.stream().map(Tablet::new).toList();
        int pressed = 0;
        while (pressed < PRESSES * tablets.size()
                || tablets.stream().anyMatch(tablet -> !tablet.outbox.isEmpty())) {
            Tablet tablet = tablets.get(random.nextInt(tablets.size()));
            switch (random.nextInt(4)) {
                case 0 -> {
                    if (pressed < PRESSES * tablets.size()) {
                        pressed++;
                        tablet.outbox.add(press(tablet));
                    }
                }
                case 1 -> tablet.isLinked = random.nextInt(3) > 0;
                case 2 -> look(tablet);
                default -> send(tablet, seed);
            }
            yard.after(random.nextInt(3));
        }
        compare(seed);
    }

    private Press press(Tablet tablet) {
        int at = random.nextInt(TestPlan.stations().size());
        String station = TestPlan.stations().get(at);
        Act act =
                switch (random.nextInt(4)) {
                    case 0 -> new Act.Confirm(101, station);
                    case 1 -> new Act.VoidSplit(101, station, Reason.OTHER, "");
                    case 2 -> new Act.HandTime(101, station, 9_000_000, Reason.SENSOR_FAILED, "");
                    default -> new Act.WithdrawRuling(101, station, anyEntry(tablet, at), "");
                };
        return new Press("p" + keys++, act, tablet.shown[at]);
    }

    /** Mostly what is shown; now and then another one this day has seen. */
    private long anyEntry(Tablet tablet, int at) {
        boolean isOther = !heard.isEmpty() && random.nextInt(5) == 0;
        return isOther ? heard.get(random.nextInt(heard.size())) : Math.max(1, tablet.shown[at]);
    }

    private void look(Tablet tablet) {
        if (tablet.isLinked) {
            for (int i = 0; i < tablet.shown.length; i++) {
                tablet.shown[i] = model.top(TestPlan.stations().get(i));
            }
        }
    }

    /** Sends the first press; its answer may be lost, and then it stays and is sent again. */
    private void send(Tablet tablet, long seed) {
        Press press = tablet.outbox.peek();
        if (press == null || !tablet.isLinked) {
            return;
        }
        long entry = yard.journal().size() + 1L;
        Verdict verdict = yard.take(ruling(tablet, press)).verdict();
        String expected = expected(press, entry);
        String said = verdict.isAccepted() ? "" : verdict.refusal().code();
        assertThat(said).as("seed %d, %s by %s", seed, press, tablet.device).isEqualTo(expected);
        if (verdict.isAccepted() && verdict.entry() == entry) {
            accepted++;
            heard.add(entry);
        }
        if (said.equals("already-ruled")) {
            conflicts++;
            assertThat(verdict.standing()).as("seed %d: both sides", seed).isNotNull();
        }
        boolean isAnswerLost = random.nextInt(3) == 0;
        if (!isAnswerLost) {
            tablet.outbox.remove();
        }
    }

    private Input.Ruling ruling(Tablet tablet, Press press) {
        long now = yard.view().gatewayMicros();
        return new Input.Ruling(
                press.key(),
                tablet.device,
                "",
                0,
                now,
                -1,
                press.supersedes(),
                List.of(),
                press.act());
    }

    private String expected(Press press, long entry) {
        String key = press.key();
        return switch (press.act().kind()) {
            case CONFIRM -> lay(press, entry, ((Act.Confirm) press.act()).station(), "confirmed");
            case VOID_SPLIT -> lay(press, entry, ((Act.VoidSplit) press.act()).station(), "void");
            case HAND_TIME -> lay(press, entry, ((Act.HandTime) press.act()).station(), "by-hand");
            default -> {
                Act.WithdrawRuling back = (Act.WithdrawRuling) press.act();
                yield model.lift(key, entry, back.station(), back.entry());
            }
        };
    }

    private String lay(Press press, long entry, String station, String state) {
        return model.lay(press.key(), entry, station, state, press.supersedes());
    }

    private void compare(long seed) {
        for (String station : TestPlan.stations()) {
            assertThat(yard.split(101, station).state())
                    .as("seed %d, %s", seed, station)
                    .isEqualTo(model.state(station));
        }
        assertThat(accepted).as("seed %d: applied once each", seed).isEqualTo(model.applied());
        assertThat(!yard.result(101).outcome().isEmpty())
                .as("seed %d: over", seed)
                .isEqualTo(model.isOver());
    }
}
