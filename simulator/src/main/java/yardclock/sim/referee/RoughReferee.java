package yardclock.sim.referee;

import yardclock.core.board.PostFrame;
import yardclock.core.time.Stamp;
import yardclock.sim.people.TruthBook;
import yardclock.sim.yard.Diary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Judges a rough day: its figures, and each split that went wrong in words. */
public final class RoughReferee {
    private static final long AROUND_MICROS = 5_000_000;
    private final TruthBook book;
    private final Witness witness;
    private final List<Diary.Happening> diary;
    private final CleanClaims claims;

    public RoughReferee(TruthBook book, Witness witness, List<Diary.Happening> diary) {
        this.book = book;
        this.witness = witness;
        this.diary = diary;
        this.claims = new CleanClaims(book, witness);
    }

    /**
     * What is counted elsewhere.
     *
     * @param edgesBy what became of the journal's edges, each asked for by itself
     * @param unaccounted the journal's edges of which nobody knows what became
     */
    public record Counted(
            long seed,
            int candidates,
            int passages,
            int strays,
            int outages,
            long edges,
            Map<String, Long> edgesBy,
            long unaccounted,
            long lostEdges,
            long wallMillis) {}

    public RoughFigures figures(Counted counted) {
        return new RoughFigures(
                List.of(counted.seed()),
                counted.candidates(),
                claims.run().size(),
                count(CleanClaims.Verdict.CLEAN),
                claims.wrong().size(),
                count(CleanClaims.Verdict.AMBIGUOUS_TRUTH_FIRST),
                count(CleanClaims.Verdict.AMBIGUOUS_TRUTH_NOT_FIRST),
                count(CleanClaims.Verdict.NOT_PROPOSED),
                counted.passages(),
                counted.strays(),
                RoughFigures.perHundred(counted.strays(), counted.passages()),
                counted.outages(),
                counted.edges(),
                counted.edgesBy(),
                counted.unaccounted(),
                counted.lostEdges(),
                counted.wallMillis());
    }

    private int count(CleanClaims.Verdict verdict) {
        return (int) claims.run().stream().filter(v -> claims.verdict(v) == verdict).count();
    }

    /** Each split that was called clean wrongly, or was not right at first sight, in words. */
    public List<String> tales() {
        List<String> tales = new ArrayList<>();
        claims.wrong().forEach((visit, why) -> tales.add(tale(visit, "WRONG CLEAN: " + why)));
        for (TruthBook.Visit visit : claims.run()) {
            CleanClaims.Verdict verdict = claims.verdict(visit);
            if (verdict != CleanClaims.Verdict.CLEAN && !claims.wrong().containsKey(visit)) {
                tales.add(tale(visit, verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
            }
        }
        return tales;
    }

    private String tale(TruthBook.Visit visit, String head) {
        StringBuilder text = new StringBuilder();
        text.append("== number ").append(visit.number()).append(" at ").append(visit.station());
        text.append(": ").append(head).append('\n');
        PostFrame.Split look = witness.look(visit);
        if (look != null) {
            text.append("   shown last: ").append(look).append('\n');
        }
        TruthBook.Instants truth = book.at(visit.number(), visit.station());
        if (truth == null) {
            return text.append("   was never there\n").toString();
        }
        around(text, visit, "start", truth.startMicros());
        if (truth.finishMicros() >= 0) {
            around(text, visit, "finish", truth.finishMicros());
        }
        return text.toString();
    }

    private void around(StringBuilder text, TruthBook.Visit visit, String point, long at) {
        text.append("   ").append(point).append(" truly at ").append(seconds(at));
        Stamp stamp = witness.stamps(visit).get(point);
        text.append(stamp == null ? ", no mark" : ", mark " + apart(stamp.micros() - at));
        for (Witness.Tapped tapped : witness.taps()) {
            boolean isThis =
                    tapped.tap().number() == visit.number()
                            && tapped.tap().station().equals(visit.station())
                            && tapped.tap().point().equals(point);
            text.append(isThis ? ", tap " + apart(tapped.examMicros() - at) : "");
        }
        text.append('\n');
        List<String> units = unitsNear(visit, at);
        for (Diary.Happening seen : diary) {
            boolean isNear = Math.abs(seen.examMicros() - at) <= AROUND_MICROS;
            if (isNear && units.contains(seen.sensor().unit())) {
                text.append("      ").append(words(seen, at)).append('\n');
            }
        }
    }

    /** The boards at which this candidate's own edges fell about then. */
    private List<String> unitsNear(TruthBook.Visit visit, long at) {
        return diary.stream()
                .filter(seen -> seen.by().who() == visit.number())
                .filter(seen -> Math.abs(seen.examMicros() - at) <= AROUND_MICROS)
                .map(seen -> seen.sensor().unit())
                .distinct()
                .toList();
    }

    private static String words(Diary.Happening seen, long at) {
        Diary.By by = seen.by();
        String who = by.who() > 0 ? " of " + by.who() : "";
        String bounce = by.bounce() ? " (chatter)" : "";
        String fate = seen.fate() == Diary.Fate.STAMPED ? "" : " " + seen.fate();
        return apart(seen.examMicros() - at)
                + "  "
                + seen.sensor()
                + (seen.state() == 1 ? " on  " : " off ")
                + by.cause().word()
                + who
                + bounce
                + fate;
    }

    private static String apart(long micros) {
        return String.format(Locale.ROOT, "%+.3f s", micros / 1e6);
    }

    private static String seconds(long micros) {
        return String.format(Locale.ROOT, "%.3f s", micros / 1e6);
    }
}
