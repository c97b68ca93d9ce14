package yardclock.app.stations;

/** A refusal: its reason, and a sentence that names the field and the value. */
public record Rejection(RejectionReason reason, String words) {}
