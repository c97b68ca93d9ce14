package yardclock.app.settings;

import yardclock.core.course.GuardLimit;

import java.util.Locale;

/**
 * Every number a plan or roster file may carry, with its range and the reason for it; and how large
 * the files and their lists may be. Durations are in microseconds.
 */
public enum PlanLimits {
    FORMAT(Unit.COUNT, 1, 1, "this reader knows the first form of the file only"),
    VERSION(Unit.COUNT, 1, 9_999, "counted up at each change, so four digits outlast a plan"),
    STATIONS(Unit.ITEMS, 1, 24, "what a board can show on one screen"),
    FIELD_UNITS(Unit.ITEMS, 1, 32, "what one access point and one technician can look after"),
    SENSORS(Unit.ITEMS, 0, 12, "eight inputs and four outputs on a field unit"),
    CHECK_ITEMS(Unit.ITEMS, 1, 12, "what one person can look at and answer for before the day"),
    CHECKPOINTS(Unit.ITEMS, 0, 8, "what a proctor can press without looking it up"),
    CRITERIA(Unit.ITEMS, 1, 16, "without one nobody could say what a fault is; more are not kept"),
    CONTACTS(Unit.ITEMS, 0, 8, "the inputs of one field unit"),
    HOME_CONTACTS(Unit.ITEMS, 0, 16, "the inputs of two field units"),

    SENSOR_NUMBER(Unit.COUNT, 1, 12, "inputs are 1 to 8, outputs 9 to 12"),
    TIMES_SEEN(Unit.COUNT, 1, 20, "beyond that, counting is a job for a counter"),
    NTH(Unit.COUNT, 1, 20, "beyond that, counting is a job for a counter"),
    WARNINGS(Unit.COUNT, 0, 5, "more warnings than that are no rule"),
    WORK_WATTS(Unit.WATTS, 115, 700, "from rest to above very heavy work"),
    WBGT(Unit.CELSIUS, 15, 40, "below is no heat, above nobody works"),
    TURNOUT(Unit.CELSIUS, 0, 20, "gear never makes heat easier to bear"),
    GUST(Unit.METRES_A_SECOND, 1, 60, "from a breeze to a hurricane"),
    LATITUDE(Unit.DEGREES, -90, 90, "from pole to pole, north counted up"),
    LONGITUDE(Unit.DEGREES, -180, 180, "once round the earth, east counted up"),

    CUT_OFF(Unit.TIME, 10_000_000, 7_200_000_000L, "shorter is a slip, longer is two exams"),
    RESOLUTION(Unit.TIME, 1_000, 1_000_000, "finer shows digits no sensor can answer for"),
    SETTLE(Unit.TIME, 10_000, 10_000_000, "a contrary edge must have time to arrive"),
    BOUND_LIMIT(Unit.TIME, 1_000, 1_000_000, "wider than a second is no automatic time"),
    JUDGED_ALLOWANCE(Unit.TIME, 0, 1_000_000, "a wider doubt needs a sensor instead"),
    RELEASE_INTERVAL(Unit.TIME, 1_000_000, 7_200_000_000L, "a longer pause is a hold"),
    HOLD_CREDIT(Unit.TIME, 0, 1_800_000_000L, "a longer hold is a rest, and so another exam"),
    MEDIAN(Unit.TIME, 1_000_000, 1_800_000_000L, "shorter is no task, longer is more than one"),
    PLAUSIBLE(Unit.TIME, 100_000, 3_600_000_000L, "nobody passes two sensors faster than that"),
    RESET(Unit.TIME, 0, 1_800_000_000L, "a longer reset would stop the day"),
    WALK(Unit.TIME, 0, 1_800_000_000L, "a longer walk is a station of its own"),

    LOCKOUT(GuardLimit.LOCKOUT),
    STAYS_FOR(GuardLimit.STAYS_FOR),
    CLEAR_FOR(GuardLimit.CLEAR_FOR),
    STOOD_FOR(GuardLimit.STOOD_FOR),
    MIN_BLOCK(GuardLimit.MIN_BLOCK),
    MERGE_GAP(GuardLimit.MERGE_GAP),
    WITHIN(GuardLimit.WITHIN),
    SPACING(GuardLimit.SPACING),
    STAMP(Unit.COUNT, 1, 2, "a direction has two contacts"),
    HEIGHT(Unit.MILLIMETRES, 0, 4_000, "nobody breaks a beam above that"),
    BEFORE_LINE(Unit.MILLIMETRES, -5_000, 5_000, "farther off it is another line"),
    LONGEST_BLOCK(Unit.TIME, 100_000, 3_600_000_000L, "a body is through; a lane is not an hour"),
    PLAUSIBLE_AT(Unit.TIME, 0, 3_600_000_000L, "nobody takes an hour to a mark"),
    RESPONSE(Unit.TIME, 0, 500_000, "a slower sensor cannot time anyone"),

    ID(Unit.CHARACTERS, 1, 24, "ids stand in topics and addresses"),
    NAME(Unit.CHARACTERS, 1, 60, "what fits a button on a small tablet"),
    WORDS(Unit.CHARACTERS, 1, 300, "what can be read out or read at arm's length"),
    PLACE_NAME(Unit.CHARACTERS, 1, 80, "what fits the head of a printed sheet"),

    FILE_BYTES(Unit.BYTES, 1, 256 * 1024, "many times the largest real file, and quick to read"),
    DEPTH(Unit.ITEMS, 0, 12, "the plan itself needs eight"),
    PROBLEMS(Unit.ITEMS, 0, 200, "nobody corrects more in one round"),

    CANDIDATE_NUMBER(Unit.COUNT, 1, 9_999, "what can be read on a chest from a distance"),
    CANDIDATE_NAME(Unit.CHARACTERS, 1, 80, "what fits one line of a printed sheet"),
    GROUP(Unit.COUNT, 1, 99, "more groups than that are not briefed in one day"),
    ROSTER_LINES(Unit.ITEMS, 1, 500, "a day sees 30 to 120; four times that is a slip");

    /** What a limit counts. */
    enum Unit {
        COUNT(""),
        ITEMS(" entries"),
        CHARACTERS(" characters"),
        BYTES(" bytes"),
        WATTS(" W"),
        CELSIUS(" °C"),
        METRES_A_SECOND(" m/s"),
        DEGREES("°"),
        MILLIMETRES(" mm"),
        TIME("");

        private final String word;

        Unit(String word) {
            this.word = word;
        }
    }

    private final Unit unit;
    private final long min;
    private final long max;
    private final String reason;

    PlanLimits(Unit unit, long min, long max, String reason) {
        this.unit = unit;
        this.min = min;
        this.max = max;
        this.reason = reason;
    }

    PlanLimits(GuardLimit limit) {
        this(Unit.TIME, limit.min(), limit.max(), limit.reason());
    }

    public long min() {
        return min;
    }

    public long max() {
        return max;
    }

    public String reason() {
        return reason;
    }

    /** The limit's own name in words, as {@code cut off}. */
    String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    boolean admits(long value) {
        return value >= min && value <= max;
    }

    boolean isTime() {
        return unit == Unit.TIME;
    }

    /** The range in words, as {@code 10 s to 2 h}. */
    public String allowed() {
        String low = isTime() ? Durations.text(min) : Long.toString(min);
        String high = isTime() ? Durations.text(max) : Long.toString(max);
        return (min == max ? low : low + " to " + high) + unit.word;
    }
}
