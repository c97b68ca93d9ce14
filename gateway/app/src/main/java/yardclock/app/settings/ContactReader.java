package yardclock.app.settings;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorRef;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads contacts, as sensor and state, and says which sensors do not go with a rule. */
final class ContactReader {
    private final Wiring wiring;

    ContactReader(Wiring wiring) {
        this.wiring = wiring;
    }

    /** A contact and where it was written. */
    record Placed(Block block, Contact contact) {}

    /** Those contacts that name a wired sensor; the others are problems already. */
    List<Placed> read(List<Block> blocks) {
        List<Placed> placed = new ArrayList<>();
        for (Block block : blocks) {
            Optional<SensorRef> ref = wiring.ref(block, "sensor");
            int state = block.state("state");
            block.close();
            ref.ifPresent(r -> placed.add(new Placed(block, new Contact(r, state))));
        }
        return placed;
    }

    /** Contacts that must be in their state before a station can be called ready. */
    List<Contact> home(List<Block> blocks) {
        List<Placed> placed = read(blocks);
        for (Placed one : placed) {
            if (one.contact().sensor().isOutput()) {
                one.block().wrong("sensor", "an output has no home", "a sensor from 1 to 8");
            }
        }
        checkOnce(placed);
        return contacts(placed);
    }

    static List<Contact> contacts(List<Placed> placed) {
        return placed.stream().map(Placed::contact).toList();
    }

    /** Refuses outputs, hand buttons and repetitions where the rule has no use for them. */
    void check(List<Placed> placed, Combination rule) {
        for (Placed one : placed) {
            checkSide(one, rule);
            checkButton(one, rule);
        }
        if (rule == Combination.SEQUENCE) {
            checkMoves(placed);
        } else {
            checkOnce(placed);
        }
    }

    private static void checkSide(Placed one, Combination rule) {
        boolean isSignal = rule == Combination.SIGNAL;
        if (isSignal && !one.contact().sensor().isOutput()) {
            one.block().wrong("sensor", "a signal is given by an output", "an output from 9 to 12");
        }
        if (!isSignal && one.contact().sensor().isOutput()) {
            String wrong = "an output can only be used with the rule signal";
            one.block().wrong("sensor", wrong, "a sensor from 1 to 8");
        }
        if (isSignal && one.contact().state() == 0) {
            one.block().wrong("state", "a signal begins when its output closes", "closed");
        }
    }

    private void checkButton(Placed one, Combination rule) {
        SensorRef ref = one.contact().sensor();
        boolean isButton = wiring.kind(ref).filter(k -> k == SensorKind.PUSH_BUTTON).isPresent();
        if (rule == Combination.JUDGED && !isButton) {
            one.block().wrong("sensor", ref + " is no push-button", "push-buttons only");
        }
        if (rule == Combination.JUDGED && one.contact().state() == 0) {
            one.block().wrong("state", "the press is the time, not the release", "pressed");
        }
        if (wiring.kind(ref).filter(k -> k == SensorKind.STOP_BUTTON).isPresent()) {
            String wrong = ref + " is a stop button: it stops everybody and makes no mark";
            one.block().wrong("sensor", wrong, "a sensor of another kind");
        }
        if (rule != Combination.JUDGED && isButton) {
            String wrong = ref + " is pressed by a person, so its time is a hand time";
            one.block().wrong("sensor", wrong, "push-buttons with the rule judged only");
        }
    }

    private static void checkOnce(List<Placed> placed) {
        UniqueNames sensors = new UniqueNames();
        for (Placed one : placed) {
            sensors.add(one.block(), "sensor", one.contact().sensor().toString());
        }
    }

    private static void checkMoves(List<Placed> placed) {
        for (int i = 1; i < placed.size(); i++) {
            if (placed.get(i).contact().equals(placed.get(i - 1).contact())) {
                String wrong = "this step repeats the one before it, so nothing would change";
                placed.get(i).block().wrong("sensor", wrong, "another sensor or state");
            }
        }
    }
}
