package yardclock.core.ruling;

import yardclock.core.readiness.Checklist;

import java.util.ArrayList;
import java.util.List;

/** What people sign of the start-of-day checklist and take back, judged and carried out. */
final class ChecklistActs {
    private ChecklistActs() {}

    /** A note may be left out; whoever takes a signature back says why. */
    static List<Refusal> against(Act act, Checklist list) {
        List<Refusal> against = new ArrayList<>();
        String words = words(act);
        if (words.length() > Admission.WORDS_MAX) {
            against.add(Refusal.WORDS_TOO_LONG);
        }
        if (!isDone(act) && words.isBlank()) {
            against.add(Refusal.NO_WORDS);
        }
        if (!list.has(item(act))) {
            against.add(Refusal.UNKNOWN_ITEM);
        } else if (isDone(act) == list.isDone(item(act))) {
            against.add(isDone(act) ? Refusal.ALREADY_SIGNED : Refusal.NOT_SIGNED);
        }
        return against;
    }

    static void carryOut(Act act, Devices.Holder who, Checklist list, long nowMicros) {
        String words = words(act).strip();
        list.say(new Checklist.Word(item(act), isDone(act), words, who.person(), nowMicros));
    }

    private static boolean isDone(Act act) {
        return act.kind() == ActKind.CHECKLIST_DONE;
    }

    private static String item(Act act) {
        return act instanceof Act.ChecklistDone done
                ? done.item()
                : ((Act.ChecklistOpen) act).item();
    }

    private static String words(Act act) {
        String words =
                act instanceof Act.ChecklistDone done
                        ? done.words()
                        : ((Act.ChecklistOpen) act).words();
        return words == null ? "" : words;
    }
}
