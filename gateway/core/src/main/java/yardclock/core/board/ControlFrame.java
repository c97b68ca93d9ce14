package yardclock.core.board;

import java.util.List;

/** The coordinator's picture: who is where, who is next, what holds them. */
public record ControlFrame(
        Head head,
        Next next,
        List<TeamView> teams,
        List<CheckView> startOfDay,
        List<SurfaceView> surfaces,
        List<OnCourse> onCourse,
        List<StationView> stations,
        List<ProctorView> proctors,
        List<WaitingView> waiting,
        List<DoneView> done,
        List<String> alarms,
        List<TrayView> tray,
        int trayRest) {

    /**
     * The next candidate and what still stands against a release.
     *
     * @param number 0 when nobody waits
     * @param ready true when a release would be accepted now
     * @param blockers refusal codes, in the order of their precedence
     * @param notBeforeMicros gateway time at which the release interval is over
     * @param proctorDevice the free proctor's device that would go along, or empty
     */
    public record Next(
            int number,
            boolean ready,
            List<String> blockers,
            long notBeforeMicros,
            String proctorDevice) {}

    /**
     * A candidate between release and course done.
     *
     * @param phase released, at-station, walking, held or finished (splits to be ruled on)
     * @param station the station they are at or walk to
     * @param startedMicros gateway time of the first start, or −1
     * @param heldSinceMicros gateway time of the hold in force, or −1
     * @param startsAgain whether that hold ends when they start the station again
     * @param canRunAgain the station they can run again now, or empty
     */
    public record OnCourse(
            int number,
            String phase,
            String station,
            int stationIndex,
            String proctor,
            long startedMicros,
            long heldSinceMicros,
            boolean startsAgain,
            String canRunAgain,
            int warnings,
            int faults,
            int splitsToRule) {}

    /** A proctor's tablet and the candidate it is with, 0 for none. */
    public record ProctorView(String device, String person, int number) {}

    /** A candidate in the queue. */
    public record WaitingView(int number, int group, int place) {}

    /** A candidate who is done; officialMicros −1 when there is no official time. */
    public record DoneView(
            int number, String outcome, String outcomeWords, long officialMicros, boolean told) {}
}
