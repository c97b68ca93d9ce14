package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.Verdict;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Tablets that press at once: each sees only what it last heard, loses its link, keeps its presses
 * in order, sends the first again while no answer came. What they press and what the answer ought
 * to be is the {@link Scene}'s; a seed gives one course of things.
 */
final class TabletsAtOnce {
    private static final int PRESSES = 14;

    /** One press as a tablet keeps it. */
    record Press(String key, String device, Act act, long supersedes) {}

    /** What one tablet would press, and what the written rules answer. */
    interface Scene {
        /** What is pressed on this tablet next. */
        Act press(Tablet tablet);

        /** The stations whose rulings a tablet shows, each with the entry that stands, or −1. */
        Map<String, Long> standing();

        /** The refusal's code that the rules give, or empty; a key that comes again has it too. */
        String expected(Press press, long entry);
    }

    /** A tablet: what it shows of each station, what waits, and whether it has a link. */
    static final class Tablet {
        final String device;
        final Map<String, Long> shown = new HashMap<>();
        private final Deque<Press> outbox = new ArrayDeque<>();
        private boolean isLinked = true;

        Tablet(String device) {
            this.device = device;
        }

        long shown(String station) {
            return shown.getOrDefault(station, -1L);
        }
    }

    private final Yard yard;
    private final Scene scene;
    private final Random random;
    private final List<Tablet> tablets;
    private final String seed;
    private int pressed;
    private int applied;
    private int conflicts;
    private int repeats;

    TabletsAtOnce(Yard yard, Scene scene, Random random, long seed, List<String> devices) {
        this.yard = yard;
        this.scene = scene;
        this.random = random;
        this.seed = "seed " + seed;
        this.tablets = devices.stream().map(Tablet::new).toList();
    }

    /** Until everything was pressed and answered. */
    TabletsAtOnce play(double secondsBetween) {
        int all = PRESSES * tablets.size();
        while (pressed < all || tablets.stream().anyMatch(tablet -> !tablet.outbox.isEmpty())) {
            Tablet tablet = tablets.get(random.nextInt(tablets.size()));
            switch (random.nextInt(4)) {
                case 0 -> {
                    if (pressed < all) {
                        press(tablet);
                    }
                }
                case 1 -> tablet.isLinked = random.nextInt(3) > 0;
                case 2 -> {
                    if (tablet.isLinked) {
                        tablet.shown.putAll(scene.standing());
                    }
                }
                default -> send(tablet);
            }
            yard.after(random.nextInt(3) * secondsBetween);
        }
        return this;
    }

    /** How many presses were taken, each counted once. */
    int applied() {
        return applied;
    }

    /** How many were refused because another ruling stands. */
    int conflicts() {
        return conflicts;
    }

    /** How many were sent again after an answer that got lost. */
    int repeats() {
        return repeats;
    }

    private void press(Tablet tablet) {
        Act act = scene.press(tablet);
        long supersedes = tablet.shown(stationOf(act));
        tablet.outbox.add(new Press("p" + pressed, tablet.device, act, supersedes));
        pressed++;
    }

    private static String stationOf(Act act) {
        return switch (act.kind()) {
            case CONFIRM -> ((Act.Confirm) act).station();
            case VOID_SPLIT -> ((Act.VoidSplit) act).station();
            case HAND_TIME -> ((Act.HandTime) act).station();
            default -> "";
        };
    }

    /** Sends the first press; its answer may be lost, and then it stays and is sent again. */
    private void send(Tablet tablet) {
        Press press = tablet.outbox.peek();
        if (press == null || !tablet.isLinked) {
            return;
        }
        long entry = yard.journal().size() + 1L;
        Verdict verdict = yard.take(ruling(press)).verdict();
        String said = verdict.isAccepted() ? "" : verdict.refusal().code();
        assertThat(said).as("%s, %s", seed, press).isEqualTo(scene.expected(press, entry));
        boolean isFirst = verdict.entry() == entry;
        repeats += isFirst ? 0 : 1;
        applied += isFirst && verdict.isAccepted() ? 1 : 0;
        if (said.equals("already-ruled")) {
            conflicts++;
            assertThat(verdict.standing()).as("%s: both sides", seed).isNotNull();
        }
        boolean isAnswerLost = random.nextInt(3) == 0;
        if (!isAnswerLost) {
            tablet.outbox.remove();
        }
    }

    private Input.Ruling ruling(Press press) {
        long now = yard.view().gatewayMicros();
        return new Input.Ruling(
                press.key(),
                press.device(),
                "",
                0,
                now,
                -1,
                press.supersedes(),
                List.of(),
                press.act());
    }
}
