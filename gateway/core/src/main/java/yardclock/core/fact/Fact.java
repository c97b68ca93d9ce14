package yardclock.core.fact;

import yardclock.core.time.Stamp;

/**
 * Something concluded from an input. Past tense: it is so from this entry on.
 *
 * @param number the candidate's number, or 0
 * @param station the station's id, a field unit's id for facts about units, or empty
 * @param point {@code start}, {@code finish}, a checkpoint's id, or empty
 * @param stamp when it happened, or null
 * @param valueMicros a split, an official time or a credited hold, as the kind says; else 0
 * @param words a reason code or a plain sentence
 */
public record Fact(
        FactKind kind,
        int number,
        String station,
        String point,
        Stamp stamp,
        long valueMicros,
        String words) {

    public static Fact of(FactKind kind, int number, String station, String words) {
        return new Fact(kind, number, station, "", null, 0, words);
    }

    public static Fact aboutUnit(FactKind kind, String unit, String words) {
        return new Fact(kind, 0, unit, "", null, 0, words);
    }
}
