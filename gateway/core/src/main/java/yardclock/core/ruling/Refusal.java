package yardclock.core.ruling;

import java.util.Locale;

/**
 * Why an act is not admitted. When several hold, the one written first here is given: who before
 * what, what before when.
 */
public enum Refusal {
    UNKNOWN_DEVICE("This device is not enrolled. Ask the coordinator for a code."),
    NOT_YOUR_ROLE("This role may not do that."),
    WORDS_TOO_LONG("At most 500 characters."),
    NO_WORDS("Say why, in words."),
    NO_PLAN("No exam plan is loaded."),
    UNKNOWN_NUMBER("No candidate has this number today."),
    UNKNOWN_STATION("The plan has no such station."),
    UNKNOWN_POINT("This station has no such start, checkpoint or finish."),
    UNKNOWN_CRITERION("This station has no such criterion."),
    ADVICE_ONLY("This is advice. It is never held against anyone."),
    UNKNOWN_ITEM("The plan's start-of-day checklist has no such item."),
    UNKNOWN_UNIT("The plan has no such field unit."),
    UNKNOWN_SENSOR("This field unit has no such sensor to trip."),
    SAME_UNIT("Choose sensors of two different field units."),
    NOT_YOUR_CANDIDATE("Another proctor is with this candidate."),
    STOPPED("The course is stopped. Only the safety officer restarts it."),
    COURSE_HELD("New releases are on hold."),
    CHECKLIST_OPEN("The start-of-day checklist has open items: no releases until they are signed."),
    TEAM_AWAY("A team that stands by was called away: no new releases until it is back."),
    HEAT_HOLDS("The heat watch is at a level that holds new releases."),
    HEAT_UNKNOWN("The heat level is unknown: acknowledge it, or read by hand."),
    HEAT_SILENT("No heat reading for an hour: no new releases until there is one."),
    SURFACE_HOLDS("What was noted of the ground or the weather holds a station."),
    PROOF_RUN_UNDER_WAY("A proof run is under way. Sign it, or give it up."),
    PROOF_RUN_MISSING("The plan asks for a proof run signed by two before anyone is released."),
    READING_IMPOSSIBLE("This reading cannot be. Look at the instrument."),
    NOT_NEXT("Another candidate is next."),
    STATION_NOT_READY("The first station is not ready."),
    STATION_HELD(
            "A station is held: a sensor is in trouble. The alarms name it; mend or go on by"
                    + " hand."),
    PROCTOR_BUSY("This proctor is with another candidate."),
    INTERVAL_NOT_OVER("The release interval is not over yet."),
    NOT_RELEASED("This candidate has not been released."),
    ALREADY_STARTED("This candidate's clock runs already."),
    NOT_ON_COURSE("This candidate is not on the course."),
    CLOCK_STARTS_HERE("The clock started at this station: only the whole course can be run again."),
    NO_SUCH_SPLIT("There is no such split to rule on."),
    NO_SUCH_EDGE("No turn at a station holds this edge."),
    PASSAGE_ELSEWHERE("The sensor that saw this passage is none of that point's."),
    NO_SUCH_RULING("There is no such ruling to take back."),
    ALREADY_RULED("Someone has ruled on this already."),
    OUT_OF_DATE("This has changed since it was on your screen. Look again."),
    NO_HAND_MARKS("There are no taps to take; give the time in full."),
    TIME_NOT_PLAUSIBLE("This time is not possible here."),
    GUARDS_IMPOSSIBLE("These values are outside their limits, or mean nothing with this trigger."),
    STATION_TAKEN("Someone is at this station, or on the way to it. Wait until they are through."),
    NOT_IN_USE("This station is not waiting to be made ready."),
    NOT_HOME("A home contact is still open: something is not back in its place."),
    STATION_NOT_HELD("No sensor's trouble holds this station."),
    ALREADY_HELD("This is on hold already."),
    NOT_HELD("This is not on hold."),
    HOLD_ENDS_AT_START("This hold ends when the candidate starts the station again."),
    ALREADY_AWAY("This team was called away already."),
    NOT_AWAY("This team is here already."),
    ALREADY_SIGNED("This item of the checklist is signed already."),
    NOT_SIGNED("This item of the checklist is open already."),
    NOT_STOPPED("The course is not stopped."),
    STOP_BUTTON_PRESSED("A wired stop button is pressed, or its cable is cut. Go and look."),
    NOT_DONE("There is no result to tell yet."),
    ALREADY_TOLD("The result was told already."),
    ALREADY_DONE("This attempt is over."),
    NOT_OVER("This attempt is not over yet."),
    NO_SUCH_PROCTOR("No proctor's tablet has this id."),
    UNIT_NOT_READY("One of these units is not up, or its clock was never compared."),
    STATION_AWAITS("Someone is at a station of these units, or has still to come by one."),
    CALIBRATED_IN_A_RING("The first of these is itself calibrated by the second. Swap them."),
    ALREADY_CALIBRATING("A calibration is under way already."),
    NOT_CALIBRATING("No calibration is under way."),
    UNIT_CHANGED("One of the units is not as it was when this calibration began. Begin again."),
    TOO_FEW_TRIPS("Too few trips count so far: at least 20 are needed."),
    TOO_SCATTERED("The differences scatter too much. Trip both at the very same moment."),
    STILL_UNSETTLED("The clocks' estimates have not settled. Wait some minutes, or trip on."),
    LIMITS_EXCLUDE("The guaranteed limits do not allow this. Choose the better known unit first."),
    PROOF_RUN_NOT_CLEAR(
            "Someone is on the course, at this station or on the way. Wait until they are"
                    + " through."),
    NOT_PROVING("No proof run of this station is under way."),
    SIGNED_BY_YOU("Another person signs on another device: you, or this device, signed already."),
    ALREADY_ENROLLED("This code was used already. Ask the coordinator for another."),
    UNKNOWN_CODE("This code is not known. Ask the coordinator for another.");

    private final String words;

    Refusal(String words) {
        this.words = words;
    }

    /** The reason code in JSON, as {@code not-your-role}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** One plain sentence for the person who was refused. */
    public String words() {
        return words;
    }
}
