package yardclock.core.proof;

/** Why somebody walks a proof run. */
public enum ProofWhy {
    START_OF_DAY,
    AFTER_REPAIR
}
