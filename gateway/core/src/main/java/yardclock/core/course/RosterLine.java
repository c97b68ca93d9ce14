package yardclock.core.course;

/**
 * One candidate of the day as the engine knows them: the number they wear and the group they are
 * briefed with. Names stay outside the journal.
 */
public record RosterLine(int number, int group) {}
