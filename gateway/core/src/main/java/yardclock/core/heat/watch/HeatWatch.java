package yardclock.core.heat.watch;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.HeatReason;
import yardclock.core.heat.HeatReason.Kind;
import yardclock.core.heat.ReadingLevel;
import yardclock.core.heat.Trend;
import yardclock.core.heat.watch.HeatChange.Acknowledgement;
import yardclock.core.heat.watch.HeatStatus.Confirmation;
import yardclock.core.heat.watch.HeatStatus.Freshness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The level, as shown: readings by arrival, lightning and gusts, and the passing of time.
 *
 * <p>Owned by one thread. Each method takes the present gateway time and first concludes what was
 * due before it, so that the shown history is the same however seldom the watch is called.
 */
public final class HeatWatch {
    /** After the last thunder or flash (NOAA); each one begins it anew. */
    static final long LIGHTNING = 30 * Due.MINUTE;

    private static final long CONFIRM_WITHIN = 5 * Due.MINUTE;

    /** A rise by more levels at once is to be confirmed. */
    private static final int STEEP = 2;

    /** Gusts are sampled by a person; so many changes are more than a day can have. */
    static final int CHANGES_KEPT = 2_000;

    private static final long NEVER = Long.MAX_VALUE;

    private final HeatRules rules;
    private final int workWatts;
    private final LevelFold fold = new LevelFold();
    private final Sanities sanities = new Sanities();
    private final MeasuredHistory measured = new MeasuredHistory();
    private final Map<String, Long> newestOf = new TreeMap<>();
    private final List<HeatChange> changes = new ArrayList<>();
    private final List<Acknowledgement> acknowledged = new ArrayList<>();
    private Taken newest;

    /** Kept until the next reading, since screens ask with each frame; null while nobody asked. */
    private Optional<Trend.Rise> likely;

    private long believedMicros = NEVER;
    private long steepMicros = NEVER;
    private int steepLevel;
    private long flashMicros = NEVER;
    private int gustMmPerS = -1;
    private long gustMicros = NEVER;
    private int counted;
    private long concludedMicros;

    /**
     * @param workWatts the metabolic rate of the work
     */
    public HeatWatch(HeatRules rules, int workWatts, long nowMicros) {
        this.rules = rules;
        this.workWatts = workWatts;
        conclude(nowMicros);
    }

    /**
     * Takes a reading.
     *
     * @return a sentence for each value that cannot be; then nothing was taken
     */
    public List<String> take(HeatReading reading) {
        List<String> wrong = ReadingLevel.wrong(reading, rules, workWatts);
        if (!wrong.isEmpty()) {
            return wrong;
        }
        passTime(reading.arrivedMicros());
        ReadingLevel level = ReadingLevel.of(reading, rules, workWatts);
        if (!measured.add(reading, level)) {
            return List.of();
        }
        int before = Math.max(0, fold.level());
        if (!isLate(reading)) {
            show(sanities.judge(reading, level));
        }
        fold.raiseTo(measured.level());
        confirm(reading, level, before);
        likely = null;
        conclude(reading.arrivedMicros());
        return List.of();
    }

    /** Whether a reading has a value that cannot be, and would not be taken. */
    public boolean isImpossible(HeatReading reading) {
        return !ReadingLevel.wrong(reading, rules, workWatts).isEmpty();
    }

    /** What was read before a later reading of that source, or too long ago, only is history. */
    private boolean isLate(HeatReading reading) {
        long age = reading.arrivedMicros() - reading.measuredMicros();
        Long before = newestOf.get(reading.from().source());
        return age >= Due.at(fold.level()) || before != null && reading.measuredMicros() < before;
    }

    private void show(Taken taken) {
        HeatReading reading = taken.reading();
        newestOf.put(reading.from().source(), reading.measuredMicros());
        fold.take(taken);
        if (!taken.isSuspect()) {
            boolean isFirst = believedMicros == NEVER;
            believedMicros =
                    isFirst
                            ? reading.measuredMicros()
                            : Math.max(believedMicros, reading.measuredMicros());
        }
        newest = taken;
    }

    private void confirm(HeatReading reading, ReadingLevel level, int before) {
        if (fold.level() - before > STEEP) {
            steepMicros = reading.arrivedMicros();
            steepLevel = fold.level();
        } else if (reading.from().isByHand()
                || level.level() >= steepLevel
                || fold.level() < steepLevel) {
            steepMicros = NEVER;
        }
    }

    /** Thunder was heard, or a flash seen. */
    public void flash(long nowMicros) {
        passTime(nowMicros);
        flashMicros = nowMicros;
        conclude(nowMicros);
    }

    /** A gust as somebody read it where people climb; it stands until the next. */
    public void gust(int mmPerS, long nowMicros) {
        passTime(nowMicros);
        gustMmPerS = mmPerS;
        gustMicros = nowMicros;
        conclude(nowMicros);
    }

    /** Somebody has seen the newest change. */
    public void acknowledge(String person, long nowMicros) {
        passTime(nowMicros);
        acknowledged.add(new Acknowledgement(counted, person, nowMicros));
        if (acknowledged.size() > CHANGES_KEPT) {
            acknowledged.remove(0);
        }
    }

    /**
     * Gateway time broke off for nobody knows how long: what is known is too old, and the half hour
     * after lightning begins again.
     */
    public void interrupt(long nowMicros) {
        passTime(nowMicros);
        if (believedMicros != NEVER) {
            believedMicros = nowMicros - Due.unknownAt(fold.level());
        }
        fold.gap();
        flashMicros = isLightning(nowMicros) ? nowMicros : NEVER;
        conclude(nowMicros);
    }

    /** Concludes what time alone has changed. */
    public void passTime(long nowMicros) {
        long due = nextDeadlineMicros();
        while (due <= nowMicros) {
            conclude(due);
            due = nextDeadlineMicros();
        }
        concludedMicros = Math.max(concludedMicros, nowMicros);
    }

    /** When time alone changes something next; MAX for never. */
    public long nextDeadlineMicros() {
        long next = Math.min(pending(flashMicros, LIGHTNING), pending(steepMicros, CONFIRM_WITHIN));
        next = Math.min(next, pending(believedMicros, Due.at(fold.level())));
        next = Math.min(next, pending(believedMicros, Due.unknownAt(fold.level())));
        return Math.min(next, pending(believedMicros, Due.SILENT));
    }

    private long pending(long since, long lasts) {
        return since == NEVER || since + lasts <= concludedMicros ? NEVER : since + lasts;
    }

    private void conclude(long atMicros) {
        concludedMicros = Math.max(concludedMicros, atMicros);
        HeatStatus now = status(atMicros);
        boolean isSame = !changes.isEmpty() && changes.get(changes.size() - 1).status().equals(now);
        if (isSame) {
            return;
        }
        counted++;
        changes.add(
                new HeatChange(
                        counted,
                        atMicros,
                        now,
                        newest == null ? null : newest.reading(),
                        newest == null ? null : newest.level(),
                        rules.version()));
        if (changes.size() > CHANGES_KEPT) {
            changes.remove(0);
        }
    }

    /** What holds at an instant, not before the last one this watch was told of. */
    public HeatStatus status(long atMicros) {
        Freshness freshness = freshness(atMicros);
        boolean isKnown = freshness == Freshness.FRESH || freshness == Freshness.AGEING;
        int beside = besideHeat(atMicros).stream().mapToInt(HeatReason::level).max().orElse(0);
        boolean isLevel = isKnown || beside == 4;
        int reached = Math.max(beside, fold.level());
        return new HeatStatus(
                isLevel ? reached : -1,
                fold.level(),
                isLevel ? reached : Math.max(1, reached),
                freshness,
                confirmation(atMicros),
                isLightning(atMicros),
                newest == null ? List.of() : newest.suspicions());
    }

    private Freshness freshness(long atMicros) {
        if (believedMicros == NEVER) {
            return Freshness.NONE;
        }
        long age = atMicros - believedMicros;
        boolean isUnknown = age >= Due.unknownAt(fold.level());
        if (isUnknown) {
            return age >= Due.SILENT ? Freshness.SILENT : Freshness.UNKNOWN;
        }
        return age >= Due.at(fold.level()) ? Freshness.AGEING : Freshness.FRESH;
    }

    private Confirmation confirmation(long atMicros) {
        if (steepMicros == NEVER) {
            return Confirmation.NONE;
        }
        return atMicros - steepMicros >= CONFIRM_WITHIN
                ? Confirmation.HAND_READING_ASKED
                : Confirmation.TO_BE_CONFIRMED;
    }

    private boolean isLightning(long atMicros) {
        return flashMicros != NEVER && atMicros - flashMicros < LIGHTNING;
    }

    /** Lightning and gusts, which need no reading of heat. */
    private List<HeatReason> besideHeat(long atMicros) {
        List<HeatReason> reasons = new ArrayList<>();
        if (isLightning(atMicros)) {
            reasons.add(new HeatReason(4, Kind.LIGHTNING, 0, 0));
        }
        Integer plate = rules.plateGustMmPerS();
        if (plate != null && gustMmPerS > plate) {
            reasons.add(gustOver(4, Kind.GUST_OVER_PLATE, plate));
        } else if (gustMmPerS >= rules.climbGustMmPerS()) {
            reasons.add(gustOver(2, Kind.GUST_AT_CLIMBS, rules.climbGustMmPerS()));
        }
        return reasons;
    }

    private HeatReason gustOver(int level, Kind kind, int boundMmPerS) {
        return new HeatReason(level, kind, gustMmPerS / 100, boundMmPerS / 100);
    }

    /** Every bound reached at an instant, by the newest reading or beside it. */
    public List<HeatReason> reasons(long atMicros) {
        List<HeatReason> reasons = new ArrayList<>(besideHeat(atMicros));
        if (newest != null) {
            reasons.addAll(newest.level().reasons());
        }
        return reasons;
    }

    /** A higher level that is likely within half an hour, by the trend of the newest readings. */
    public Optional<Trend.Rise> likely() {
        if (likely == null) {
            List<HeatReading> readings =
                    measured.readings().stream().map(Map.Entry::getKey).toList();
            likely = Trend.rise(readings, Math.max(0, fold.level()), rules, workWatts);
        }
        return likely;
    }

    public HeatRules rules() {
        return rules;
    }

    /** The newest reading that was shown, or null. */
    public HeatReading newest() {
        return newest == null ? null : newest.reading();
    }

    /** What it says, or null. */
    public ReadingLevel figures() {
        return newest == null ? null : newest.level();
    }

    /** The shown history, oldest first. */
    public List<HeatChange> changes() {
        return Collections.unmodifiableList(changes);
    }

    public List<Acknowledgement> acknowledgements() {
        return Collections.unmodifiableList(acknowledged);
    }

    /** Whether somebody has seen what stands now. */
    public boolean isAcknowledged() {
        return !acknowledged.isEmpty()
                && acknowledged.get(acknowledged.size() - 1).change() == counted;
    }

    public MeasuredHistory measured() {
        return measured;
    }

    /** When the last thunder or flash was; MAX for none today. */
    public long lastFlashMicros() {
        return flashMicros;
    }

    /** When the half hour after the last thunder or flash is over; MAX for none today. */
    public long lightningOverMicros() {
        return flashMicros == NEVER ? NEVER : flashMicros + LIGHTNING;
    }

    /** When the next reading is due; −1 before the first. */
    public long dueMicros() {
        return believedMicros == NEVER ? -1 : believedMicros + Due.at(fold.level());
    }

    @Override
    public String toString() {
        return changes
                + " "
                + acknowledged
                + " "
                + fold
                + " "
                + sanities
                + " "
                + measured
                + " "
                + flashMicros
                + " "
                + gustMmPerS
                + " "
                + gustMicros;
    }
}
