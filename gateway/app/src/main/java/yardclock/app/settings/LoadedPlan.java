package yardclock.app.settings;

import yardclock.core.course.ExamPlan;

import java.util.Objects;

/**
 * An exam plan that was read without a problem, with the very bytes it was read from and their
 * hash: what is frozen for the day and printed on each sheet. Immutable.
 */
public final class LoadedPlan {
    private final ExamPlan plan;
    private final String sha256;
    private final byte[] bytes;

    LoadedPlan(ExamPlan plan, byte[] bytes) {
        this.plan = Objects.requireNonNull(plan);
        this.bytes = bytes.clone();
        this.sha256 = SourceFile.sha256(bytes);
    }

    public ExamPlan plan() {
        return plan;
    }

    /** Of the file's bytes, in lower-case hexadecimal. */
    public String sha256() {
        return sha256;
    }

    /** A copy of the file. */
    public byte[] bytes() {
        return bytes.clone();
    }
}
