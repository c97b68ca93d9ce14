package yardclock.sim.referee;

import yardclock.core.board.PostFrame;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.time.Stamp;
import yardclock.sim.people.TruthBook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes down what the gateway said of each split while it could still change its mind: every time
 * it called one clean, and how it looked to the proctor last before the ruling. Judges nothing.
 */
public final class Witness {
    private static final String CLEAN = "clean";
    private final Map<TruthBook.Visit, PostFrame.Split> looks = new LinkedHashMap<>();
    private final Map<TruthBook.Visit, Map<String, Stamp>> stamps = new LinkedHashMap<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Tapped> taps = new ArrayList<>();

    /**
     * The gateway called a split clean.
     *
     * @param start null where a frame says it, which shows no stamps; so is the finish
     * @param lowerMicros of the split; −1 where a fact says it, which has no interval
     */
    record Claim(
            TruthBook.Visit visit,
            Stamp start,
            Stamp finish,
            long splitMicros,
            long lowerMicros,
            long upperMicros) {}

    /** A tap at the instant it was pressed. */
    record Tapped(Act.Tap tap, long examMicros) {}

    /** A proctor's page shows a frame. */
    public void sees(PostFrame frame) {
        PostFrame.Candidate shown = frame.candidate();
        if (shown != null) {
            shown.splits().stream().filter(s -> !isRuled(s)).forEach(s -> look(shown.number(), s));
        }
    }

    private static boolean isRuled(PostFrame.Split split) {
        return switch (split.state()) {
            case "confirmed", "void", "by-hand" -> true;
            default -> false;
        };
    }

    private void look(int number, PostFrame.Split split) {
        TruthBook.Visit visit = new TruthBook.Visit(number, split.station());
        PostFrame.Split before = looks.put(visit, split);
        if (split.clean() && !split.equals(before)) {
            claims.add(
                    new Claim(
                            visit,
                            null,
                            null,
                            split.splitMicros(),
                            split.lowerMicros(),
                            split.upperMicros()));
        }
    }

    /** The gateway concluded something. */
    public void reads(Fact fact) {
        TruthBook.Visit visit = new TruthBook.Visit(fact.number(), fact.station());
        switch (fact.kind()) {
            case MARK_PROPOSED, MARK_CHANGED, MARK_SETTLED -> {
                if (fact.stamp() != null) {
                    stampsOf(visit).put(fact.point(), fact.stamp());
                }
            }
            case SPLIT_PROPOSED -> {
                if (fact.words().equals(CLEAN)) {
                    claims.add(claim(visit, fact));
                }
            }
            default -> {
                // says nothing of a split that nobody ruled on yet
            }
        }
    }

    private Claim claim(TruthBook.Visit visit, Fact fact) {
        Map<String, Stamp> known = stampsOf(visit);
        long micros = fact.valueMicros();
        return new Claim(visit, known.get("start"), known.get("finish"), micros, -1, -1);
    }

    private Map<String, Stamp> stampsOf(TruthBook.Visit visit) {
        return stamps.computeIfAbsent(visit, any -> new LinkedHashMap<>());
    }

    /** A proctor taps. */
    public void hears(Act.Tap tap, long examMicros) {
        taps.add(new Tapped(tap, examMicros));
    }

    List<Claim> claims() {
        return claims;
    }

    List<Tapped> taps() {
        return taps;
    }

    /** How a split looked last before it was ruled on; null when no proctor saw it. */
    PostFrame.Split look(TruthBook.Visit visit) {
        return looks.get(visit);
    }

    /** The newest stamps the gateway gave start, checkpoints and finish. */
    Map<String, Stamp> stamps(TruthBook.Visit visit) {
        return stamps.getOrDefault(visit, Map.of());
    }

    /** Whether a fact is one this witness writes down. */
    public static boolean concerns(Fact fact) {
        FactKind kind = fact.kind();
        return kind == FactKind.SPLIT_PROPOSED
                || kind == FactKind.MARK_PROPOSED
                || kind == FactKind.MARK_CHANGED
                || kind == FactKind.MARK_SETTLED;
    }
}
