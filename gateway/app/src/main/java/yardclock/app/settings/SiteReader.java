package yardclock.app.settings;

import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Site;
import yardclock.core.course.Tripper;

import java.util.List;

/** Reads how a trigger's sensors stand in the yard, and what else is to be expected of them. */
final class SiteReader {
    private static final String FALLBACKS = "tap, or a wired push-button as fu-02/1";

    private final Wiring wiring;

    SiteReader(Wiring wiring) {
        this.wiring = wiring;
    }

    Site read(Block block) {
        List<Tripper> trippers = block.words("alsoTrippedBy", Tripper.class);
        if (trippers.size() > 1 && trippers.contains(Tripper.NONE)) {
            block.wrong("alsoTrippedBy", "none goes with nothing else", "none, or the others");
        }
        Site site =
                new Site(
                        (int) block.count("height", PlanLimits.HEIGHT, 0),
                        (int) block.count("beforeLine", PlanLimits.BEFORE_LINE, 0),
                        trippers,
                        block.time("longestBlock", PlanLimits.LONGEST_BLOCK, 0),
                        fallback(block),
                        block.time("earliest", PlanLimits.PLAUSIBLE_AT, 0),
                        block.time("latest", PlanLimits.PLAUSIBLE_AT, 0));
        if (site.latestMicros() > 0 && site.latestMicros() < site.earliestMicros()) {
            String allowed = "at least " + Durations.text(site.earliestMicros());
            block.wrong("latest", "this is before earliest", allowed);
        }
        return site;
    }

    /** Null where the proctor's tap stands in. */
    private SensorRef fallback(Block block) {
        boolean isTap =
                block.maybe("fallback", Wiring.REF_FORM)
                        .filter(v -> v.text().equals("tap"))
                        .isPresent();
        if (isTap || !block.has("fallback")) {
            return null;
        }
        SensorRef ref = wiring.ref(block, "fallback").orElse(null);
        if (ref != null && wiring.kind(ref).filter(k -> k == SensorKind.PUSH_BUTTON).isEmpty()) {
            block.wrong("fallback", ref + " is no push-button", FALLBACKS);
            return null;
        }
        return ref;
    }
}
