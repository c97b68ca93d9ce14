package yardclock.core.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/** One field unit's edges over its boots, and the tallies for the bench. */
public final class UnitLedger {
    /** A unit that reboots more often than this in a day has lost its oldest boots' comparison. */
    static final int BOOTS_KEPT = 16;

    private final Map<String, BootLedger> boots = new LinkedHashMap<>();
    private long fresh;
    private long duplicates;
    private long conflicts;
    private long refused;

    public Judgement take(String boot, long seq, RawEdge edge) {
        Judgement judgement = boot(boot).take(seq, edge);
        switch (judgement) {
            case FRESH -> fresh++;
            case DUPLICATE -> duplicates++;
            case CONFLICTING -> conflicts++;
            case BACKWARDS -> refused++;
        }
        return judgement;
    }

    /** The ledger of a boot, begun when it is first heard of. */
    public BootLedger boot(String boot) {
        BootLedger ledger = boots.get(boot);
        if (ledger == null) {
            ledger = new BootLedger();
            boots.put(boot, ledger);
            if (boots.size() > BOOTS_KEPT) {
                boots.remove(boots.keySet().iterator().next());
            }
        }
        return ledger;
    }

    public long fresh() {
        return fresh;
    }

    public long duplicates() {
        return duplicates;
    }

    public long conflicts() {
        return conflicts;
    }

    public long refused() {
        return refused;
    }

    @Override
    public String toString() {
        return boots + " " + fresh + "/" + duplicates + "/" + conflicts + "/" + refused;
    }
}
