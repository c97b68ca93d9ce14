package yardclock.core.engine;

import yardclock.core.board.ControlFrame;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.ActKind;
import yardclock.core.ruling.Reason;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * One candidate on the course, and what people do there at once: holds, stops and restarts, a
 * change of proctors, and rulings on the splits so far. The answers are as plain as the written
 * rules: who before what, what before when; held once; only the safety officer restarts, and the
 * course stays held then; a proctor rules on the candidate beside them alone.
 */
final class CourseScene implements TabletsAtOnce.Scene {
    private static final List<String> PROCTORS = List.of("proctor1", "proctor2");

    /** Where the candidate and the course stand. */
    record Standing(String proctor, boolean isHeld, String course, int holdsIn, int holdsOut) {}

    private final int number;
    private final RulingScene splits;
    private final Random random;
    private final Map<String, String> answered = new HashMap<>();
    private String proctor;
    private String course = "running";
    private boolean isHeld;
    private int holdsIn;
    private int holdsOut;
    private int applied;

    CourseScene(int number, String proctor, RulingScene splits, Random random) {
        this.number = number;
        this.proctor = proctor;
        this.splits = splits;
        this.random = random;
    }

    RulingScene splits() {
        return splits;
    }

    int applied() {
        return applied;
    }

    @Override
    public Map<String, Long> standing() {
        return splits.standing();
    }

    @Override
    public Act press(TabletsAtOnce.Tablet tablet) {
        return switch (random.nextInt(12)) {
            case 0, 1 -> new Act.HoldCandidate(number, Reason.OTHER, "");
            case 2, 3 -> new Act.ResumeCandidate(number);
            case 4, 5 -> new Act.HandOver(number, PROCTORS.get(random.nextInt(2)));
            case 6 -> new Act.HoldCourse(Reason.WEATHER, "");
            case 7 -> new Act.ResumeCourse();
            case 8 -> random.nextBoolean() ? new Act.StopAll("") : new Act.Restart();
            default -> splits.press(tablet);
        };
    }

    @Override
    public String expected(TabletsAtOnce.Press press, long entry) {
        String before = answered.get(press.key());
        if (before != null) {
            return before;
        }
        String answer = judge(press, entry);
        answered.put(press.key(), answer);
        applied += answer.isEmpty() ? 1 : 0;
        return answer;
    }

    private String judge(TabletsAtOnce.Press press, long entry) {
        String role = press.device().replaceAll("[0-9]", "");
        ActKind kind = press.act().kind();
        if (!mayDo(role, kind)) {
            return "not-your-role";
        }
        boolean isAboutTheDay =
                switch (kind) {
                    case HOLD_COURSE, RESUME_COURSE, STOP_ALL, RESTART -> true;
                    default -> false;
                };
        if (!isAboutTheDay && role.equals("proctor") && !press.device().equals(proctor)) {
            return "not-your-candidate";
        }
        return switch (kind) {
            case HOLD_CANDIDATE -> isHeld ? "already-held" : hold();
            case RESUME_CANDIDATE -> resume();
            case HAND_OVER -> handOver(((Act.HandOver) press.act()).proctorDevice());
            case HOLD_COURSE -> holdCourse();
            case RESUME_COURSE -> resumeCourse();
            case STOP_ALL -> stop();
            case RESTART -> restart();
            default -> splits.expected(press, entry);
        };
    }

    private static boolean mayDo(String role, ActKind kind) {
        return switch (kind) {
            case STOP_ALL -> true;
            case RESTART -> role.equals("safety");
            case HOLD_COURSE -> role.equals("coordinator") || role.equals("safety");
            case RESUME_COURSE, HAND_OVER -> role.equals("coordinator");
            default -> role.equals("coordinator") || role.equals("proctor");
        };
    }

    private String hold() {
        isHeld = true;
        holdsIn++;
        return "";
    }

    private String resume() {
        if (course.equals("stopped")) {
            return "stopped";
        }
        if (!isHeld) {
            return "not-held";
        }
        isHeld = false;
        holdsOut++;
        return "";
    }

    private String handOver(String to) {
        if (to.equals(proctor)) {
            return "proctor-busy";
        }
        proctor = to;
        return "";
    }

    private String holdCourse() {
        if (!course.equals("running")) {
            return course.equals("stopped") ? "stopped" : "already-held";
        }
        course = "held";
        return "";
    }

    private String resumeCourse() {
        if (!course.equals("held")) {
            return course.equals("stopped") ? "stopped" : "not-held";
        }
        course = "running";
        return "";
    }

    private String stop() {
        course = "stopped";
        if (!isHeld) {
            hold();
        }
        return "";
    }

    private String restart() {
        if (!course.equals("stopped")) {
            return "not-stopped";
        }
        course = "held";
        return "";
    }

    Standing meant() {
        return new Standing("P. " + proctor, isHeld, course, holdsIn, holdsOut);
    }

    Standing seen(Yard yard) {
        ControlFrame frame = yard.engine().control(yard.view());
        ControlFrame.OnCourse line = frame.onCourse().get(0);
        return new Standing(
                line.proctor(),
                line.phase().equals("held"),
                frame.head().course().name().toLowerCase(Locale.ROOT),
                yard.facts(FactKind.HOLD_IN).size(),
                yard.facts(FactKind.HOLD_OUT).size());
    }
}
