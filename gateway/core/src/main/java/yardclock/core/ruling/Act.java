package yardclock.core.ruling;

import yardclock.core.proof.ProofWhy;
import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Team;

/**
 * What a person can decide or tap. Each act is one record; its {@code kind} is its word in JSON.
 *
 * <p>{@code reason} is a code of the closed list in {@link Reason}; {@code words} is free text of
 * at most 500 characters.
 */
public sealed interface Act {
    default ActKind kind() {
        return ActKind.of(this);
    }

    /** Sends the next candidate to the course with a proctor's device beside them. */
    record Release(int number, String proctorDevice) implements Act {}

    /** The proctor asks for the start signal: horn or light at the first station. */
    record GiveStart(int number) implements Act {}

    /**
     * A hand mark.
     *
     * @param point {@code start}, {@code finish} or a checkpoint's id
     */
    record Tap(int number, String station, String point) implements Act {}

    /** A warning or a fault on a criterion. */
    record Call(int number, String station, String criterion, boolean fault, String words)
            implements Act {}

    /** The split stands as shown. */
    record Confirm(int number, String station) implements Act {}

    /**
     * One of an ambiguous split's readings stands.
     *
     * @param reading its place among the readings as shown, the best one's being 0; the ruling's
     *     {@code shownMicros} says which split that reading gave
     */
    record ChooseReading(int number, String station, int reading) implements Act {}

    /** The split does not stand, and no time takes its place. */
    record VoidSplit(int number, String station, Reason reason, String words) implements Act {}

    /**
     * A time by hand takes the split's place.
     *
     * @param splitMicros the time read from a stop-watch; or 0 to let the proctor's own taps stand
     */
    record HandTime(int number, String station, long splitMicros, Reason reason, String words)
            implements Act {}

    /** Stops the clock-relevant time of one candidate until resumed; credited. */
    record HoldCandidate(int number, Reason reason, String words) implements Act {}

    record ResumeCandidate(int number) implements Act {}

    /** No new releases until resumed. */
    record HoldCourse(Reason reason, String words) implements Act {}

    record ResumeCourse() implements Act {}

    /** Everyone stops where they are. Only the safety officer restarts. */
    record StopAll(String words) implements Act {}

    record Restart() implements Act {}

    /** The crew has put a station back in order. */
    record StationReady(String station) implements Act {}

    /** The candidate gives up the attempt. */
    record Withdraw(int number, String words) implements Act {}

    /** The candidate did not come. */
    record NoShow(int number) implements Act {}

    /** The result was told to the candidate. */
    record Tell(int number) implements Act {}

    /** Another proctor's device goes on with this candidate. */
    record HandOver(int number, String proctorDevice) implements Act {}

    /** Makes a field unit blink. */
    record Identify(String unit, int seconds) implements Act {}

    /**
     * Compares two units' clocks by trips of one sensor each, the first unit's being the reference.
     */
    record BeginCalibration(String referenceUnit, int referenceSensor, String unit, int sensor)
            implements Act {}

    /**
     * @param accept whether its result counts from now on; else it is given up
     */
    record EndCalibration(boolean accept) implements Act {}

    /**
     * Gives a station's trigger other guards for edges stamped from now on; those given with 0 are
     * not used. In microseconds, within {@code GuardLimit}.
     *
     * @param point {@code start}, {@code finish} or a checkpoint's id
     * @param adjustment how often it was adjusted as shown: another by now is out of date
     * @param words why; they must be there
     */
    record AdjustTrigger(
            String station,
            String point,
            int adjustment,
            long lockoutMicros,
            long staysForMicros,
            long clearForMicros,
            long stoodForMicros,
            long minBlockMicros,
            long mergeGapMicros,
            long withinMicros,
            long spacingMicros,
            String words)
            implements Act {}

    /**
     * Somebody of the staff walks the course before a candidate does: its edges are nobody's.
     *
     * @param station the one to prove; empty for the whole course
     */
    record BeginProofRun(String station, ProofWhy why) implements Act {}

    /**
     * A press at a point of the proof run, to compare what the sensor says with.
     *
     * @param point {@code start}, {@code finish} or a checkpoint's id
     */
    record ProofTap(String station, String point) implements Act {}

    /** Asks for the start signal in a proof run, so that the output is seen. */
    record ProofSignal() implements Act {}

    /**
     * What the proof run showed stands; the second one to say so closes it.
     *
     * @param words why, where a point is missing or apart
     */
    record SignProofRun(String words) implements Act {}

    /** The proof run is given up, and shows nothing. */
    record EndProofRun(String words) implements Act {}

    /** A station whose sensor is in trouble goes on all the same: its times are taken by hand. */
    record GoOnByHand(String station, Reason reason, String words) implements Act {}

    /** Words for the record, about a candidate or, with number 0, about the day. */
    record Note(int number, String words) implements Act {}

    /** All splits of a candidate that nothing speaks against stand as shown. */
    record ConfirmClean(int number) implements Act {}

    /** A passage counts for nothing: the named edge and that sensor's other edge of it. */
    record Strike(String unit, String boot, long seq, Reason reason, String words) implements Act {}

    /**
     * A passage, named by one of its edges, makes the mark of a point in a candidate's turn: it lay
     * in the tray, or was taken for somebody else's or for another point's.
     */
    record Assign(
            String unit,
            String boot,
            long seq,
            int number,
            String station,
            String point,
            Reason reason,
            String words)
            implements Act {}

    /** A mark that no sensor made, at a gateway time; it carries a hand's interval. */
    record AddMark(
            int number, String station, String point, long atMicros, Reason reason, String words)
            implements Act {}

    /** A ruling does not stand any more; what it superseded stands again. */
    record WithdrawRuling(int number, String station, long entry, String words) implements Act {}

    /** Something of the station broke under a candidate: held from the press on, credited. */
    record EquipmentFault(int number, String station, String words) implements Act {}

    /** One candidate stops for good, for medical or other reasons; never kept for later. */
    record StopOne(int number, Reason reason, String words) implements Act {}

    /** Two candidates who wait change places. */
    record SwapOrder(int number, int otherNumber, Reason reason, String words) implements Act {}

    /**
     * Who is through or out runs the whole course again, for cause and after full rest: they wait
     * behind everybody, and the attempt before stays on record, void.
     */
    record RunAgain(int number, Reason reason, String words) implements Act {}

    /**
     * One who is held runs a station again, after an equipment fault: its turn is set aside and
     * stays on record, and the hold ends at the new start.
     */
    record RunStationAgain(int number, String station, Reason reason, String words)
            implements Act {}

    /** Somebody has seen what the heat watch says now, and goes on knowing it. */
    record AcknowledgeHeat() implements Act {}

    /**
     * A reading by hand, of the moment it was sent.
     *
     * @param centiCelsius air temperature, 1/100 °C
     * @param centiPercent relative humidity, 1/100 %
     * @param globeCentiCelsius black globe temperature, 1/100 °C; null for none
     * @param instrument what it was read off, in words
     */
    record HandReading(
            int centiCelsius, int centiPercent, Integer globeCentiCelsius, String instrument)
            implements Act {}

    /** Thunder was heard, or a flash seen: half an hour from now on nobody new is released. */
    record LightningSeen() implements Act {}

    /** A team that stands by was called away: with it gone nobody new is released. */
    record TeamAway(Team team, String words) implements Act {}

    /** A team is back, and what was left alone was looked at again. */
    record TeamBack(Team team, String words) implements Act {}

    /** An item of the start-of-day checklist is so: whoever presses answers for it by name. */
    record ChecklistDone(String item, String words) implements Act {}

    /**
     * An item that was signed is not so, or not any more: it is open again.
     *
     * @param words why; they must be there
     */
    record ChecklistOpen(String item, String words) implements Act {}

    /**
     * What the ground and the weather are like at a spot, seen by a person: all of it, so that the
     * last word on a spot is the whole of it.
     *
     * @param where a station's id, {@code climb}, or {@code yard} for every spot at once
     * @param glare whether sun or its reflection is in the eyes of whoever works there
     * @param gust whether there are gusts
     */
    record NoteSurface(String where, Ground ground, boolean glare, boolean gust, String words)
            implements Act {}

    /** A gust as read off where people climb, mm/s; it stands until the next one. */
    record GustRead(int millimetresPerSecond) implements Act {}
}
