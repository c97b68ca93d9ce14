package yardclock.app.lane;

import yardclock.core.ruling.Refusal;

import java.util.Objects;

/**
 * What a person gets back who asked for something: the thing, or a refusal with a reason code and
 * one plain sentence. Exactly one of {@code value} and {@code refused} is null.
 */
public record Answer<T>(T value, String refused, String words) {
    public Answer {
        if ((value == null) == (refused == null)) {
            throw new IllegalArgumentException("a value or a refusal, not both: " + refused);
        }
    }

    public static <T> Answer<T> of(T value) {
        return new Answer<>(Objects.requireNonNull(value), null, "");
    }

    public static <T> Answer<T> refused(Refusal refusal) {
        return refused(refusal.code(), refusal.words());
    }

    public static <T> Answer<T> refused(String reason, String words) {
        return new Answer<>(null, Objects.requireNonNull(reason), words);
    }

    public boolean isRefused() {
        return refused != null;
    }
}
