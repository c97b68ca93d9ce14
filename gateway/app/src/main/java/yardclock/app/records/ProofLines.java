package yardclock.app.records;

import yardclock.core.board.ProofView.SignedView;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.course.Text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The signed proof runs on paper, a line each: when, by whom, how many points were seen, and the
 * largest automatic minus hand. First the newest of the whole course, then those of single stations
 * that came after it, in their order.
 */
final class ProofLines {
    private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final ExamPlan plan;
    private final ZoneId zone;

    private ProofLines(ExamPlan plan, ZoneId zone) {
        this.plan = plan;
        this.zone = zone;
    }

    /**
     * @param proofs the newest first
     */
    static List<Text> of(List<SignedView> proofs, ExamPlan plan, ZoneId zone) {
        List<SignedView> since = new ArrayList<>();
        boolean isOfCourse = false;
        for (SignedView proof : proofs) {
            if (!isOfCourse) {
                since.add(proof);
            }
            isOfCourse |= proof.station().isEmpty();
        }
        Collections.reverse(since);
        List<Text> lines = new ArrayList<>();
        if (!isOfCourse) {
            lines.add(
                    new Text(
                            "No proof run of the whole course was signed before this sheet.",
                            "Antes de esta hoja no se firmó ninguno de todo el recorrido."));
        }
        ProofLines words = new ProofLines(plan, zone);
        since.forEach(proof -> lines.add(words.line(proof)));
        return lines;
    }

    private Text line(SignedView proof) {
        Text what = what(proof);
        String when =
                WALL.format(Instant.EPOCH.plus(proof.wallMicros(), ChronoUnit.MICROS).atZone(zone));
        String who = proof.first() + ", " + proof.second();
        String seen = proof.seen() + "/" + proof.points();
        String apart = seconds(proof.largestMicros());
        String words = proof.words().isEmpty() ? "" : " (" + proof.words() + ")";
        return new Text(
                what.en()
                        + String.format(
                                Locale.ROOT,
                                ", %s, signed by %s: %s points seen, largest automatic − hand %s%s",
                                when,
                                who,
                                seen,
                                apart,
                                words),
                what.es()
                        + String.format(
                                Locale.ROOT,
                                ", %s, firmado por %s: %s puntos vistos, mayor automático − mano"
                                        + " %s%s",
                                when,
                                who,
                                seen,
                                apart,
                                words));
    }

    private Text what(SignedView proof) {
        return proof.station().isEmpty()
                ? new Text("Whole course", "Todo el recorrido")
                : plan.station(proof.station())
                        .map(Station::name)
                        .orElse(new Text(proof.station(), proof.station()));
    }

    private static String seconds(Long micros) {
        if (micros == null) {
            return "–";
        }
        BigDecimal value = BigDecimal.valueOf(micros, 6).setScale(2, RoundingMode.HALF_EVEN);
        String sign = value.signum() < 0 ? "−" : "+";
        return sign + value.abs() + " s";
    }
}
