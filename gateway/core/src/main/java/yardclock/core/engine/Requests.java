package yardclock.core.engine;

import yardclock.core.ruling.Decisions;

/** From a ruling as it was journalled to what is decided on. */
final class Requests {
    private Requests() {}

    static Decisions.Request of(Input.Ruling ruling, long entry) {
        return new Decisions.Request(
                ruling.key(),
                ruling.device(),
                ruling.boot(),
                ruling.deviceMicros(),
                ruling.basis(),
                ruling.supersedes(),
                ruling.shownMicros(),
                ruling.receivedMicros(),
                entry,
                ruling.act());
    }
}
