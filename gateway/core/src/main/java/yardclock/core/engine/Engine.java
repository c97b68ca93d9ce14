package yardclock.core.engine;

import yardclock.core.board.BenchFrame;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.fact.Effect;
import yardclock.core.result.Result;
import yardclock.core.ruling.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The exam day as one deterministic machine.
 *
 * <p>Hand it every journal entry in order; it answers with what follows. It owns the whole state,
 * belongs to one thread, and asks nothing of the world. {@link #digest()} is a fingerprint of the
 * state: two engines that took the same entries have the same one.
 */
public final class Engine {
    /** The version of the rules, journalled with each epoch. */
    public static final String RULES_VERSION = "1";

    public Outcome apply(Entry entry) {
        throw new UnsupportedOperationException("under construction: " + entry);
    }

    /** What must hold in the world now, whatever was lost: {@code kept} of each unit. */
    public List<Effect> standing() {
        return List.of();
    }

    public OptionalLong nextDeadlineMicros() {
        return OptionalLong.empty();
    }

    /** SHA-256 over the canonical text of the state, in hex. */
    public String digest() {
        return "";
    }

    /** Who holds the token with this hash, if anyone. */
    public Optional<Holder> holder(String tokenSha256) {
        return Optional.empty();
    }

    /** The role a one-time code was made for, used or not; empty when nobody made such a code. */
    public Optional<Role> codeRole(String codeSha256) {
        return Optional.empty();
    }

    /** An enrolled device. */
    public record Holder(String device, String person, Role role) {}

    /** All candidates in the roster's order. */
    public List<Result> results() {
        return List.of();
    }

    public ControlFrame control(View view) {
        throw new UnsupportedOperationException();
    }

    public PostFrame post(View view, String device) {
        throw new UnsupportedOperationException();
    }

    public CrewFrame crew(View view) {
        throw new UnsupportedOperationException();
    }

    public BoardFrame board(View view) {
        throw new UnsupportedOperationException();
    }

    public LeaderboardFrame leaderboard(View view) {
        throw new UnsupportedOperationException();
    }

    public BenchFrame bench(View view) {
        throw new UnsupportedOperationException();
    }

    /**
     * What a projection needs from outside the state: the time to show it for, and troubles only
     * the adapters know of (disk full, broker gone).
     */
    public record View(long gatewayMicros, List<String> troubles) {
        public View {
            troubles = List.copyOf(troubles);
        }
    }
}
