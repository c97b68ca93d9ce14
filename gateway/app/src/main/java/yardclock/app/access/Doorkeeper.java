package yardclock.app.access;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Answer;
import yardclock.app.lane.Inbox;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;
import yardclock.core.ruling.Verdict;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Trades codes for tokens, makes codes, and says who holds a token. Safe from any thread.
 *
 * <p>Nothing is answered before the journal has it: the stages complete on the lane's thread, so
 * whoever writes to a socket afterwards must leave that thread first.
 */
public final class Doorkeeper {
    /** Wrong codes a minute: a mistyping crew stays below, and 40 bits stay out of reach. */
    static final int WRONG_CODES_A_MINUTE = 20;

    /** Unknown tokens looked up a minute, so that guessing never keeps the lane busy. */
    static final int UNKNOWN_TOKENS_A_MINUTE = 600;

    /** Known holders kept at hand; a day has a few dozen. When full it starts anew. */
    static final int HOLDERS_AT_HAND = 1_000;

    static final int PERSON_MAX = 60;

    private static final int TOKEN_MAX = 100;

    private final Inbox inbox;
    private final Rolls rolls;
    private final Tries wrongCodes;
    private final Tries unknownTokens;
    private final Secrets secrets = new Secrets();
    private final Map<String, Holder> atHand = new ConcurrentHashMap<>();

    public Doorkeeper(Inbox inbox, Rolls rolls, GatewayClock clock) {
        this.inbox = inbox;
        this.rolls = rolls;
        this.wrongCodes = new Tries(WRONG_CODES_A_MINUTE, clock::realNanos);
        this.unknownTokens = new Tries(UNKNOWN_TOKENS_A_MINUTE, clock::realNanos);
    }

    /** Who holds this token; empty when nobody does. */
    public CompletionStage<Answer<Optional<Holder>>> holder(String token) {
        if (token.isEmpty() || token.length() > TOKEN_MAX) {
            return done(Answer.of(Optional.empty()));
        }
        String hash = Secrets.sha256(token);
        Holder known = atHand.get(hash);
        if (known != null) {
            return done(Answer.of(Optional.of(known)));
        }
        if (!unknownTokens.take()) {
            return done(tooManyTries());
        }
        return rolls.holder(hash).thenApply(found -> keepAtHand(hash, found));
    }

    private Answer<Optional<Holder>> keepAtHand(String hash, Optional<Holder> found) {
        if (found.isPresent()) {
            unknownTokens.giveBack();
            if (atHand.size() >= HOLDERS_AT_HAND) {
                atHand.clear();
            }
            atHand.put(hash, found.get());
        }
        return Answer.of(found);
    }

    /** Trades a one-time code for a token. */
    public CompletionStage<Answer<Enrolment>> enrol(String code, String person) {
        String name = person.strip();
        if (name.isEmpty() || name.codePoints().anyMatch(Character::isISOControl)) {
            return done(Answer.refused("name-missing", "Who are you? Enter your name."));
        }
        if (name.length() > PERSON_MAX) {
            return done(Answer.refused("name-too-long", "At most 60 characters for the name."));
        }
        if (!wrongCodes.take()) {
            return done(tooManyTries());
        }
        String typed = Secrets.typed(code);
        if (!Secrets.isCode(typed)) {
            return done(Answer.refused(Refusal.UNKNOWN_CODE));
        }
        String codeHash = Secrets.sha256(typed);
        return rolls.codeRole(codeHash)
                .thenCompose(
                        role -> {
                            if (role.isEmpty()) {
                                return done(Answer.refused(Refusal.UNKNOWN_CODE));
                            }
                            wrongCodes.giveBack();
                            return enrolAs(role.get(), codeHash, name);
                        });
    }

    private CompletionStage<Answer<Enrolment>> enrolAs(Role role, String codeHash, String person) {
        Enrolment enrolment = new Enrolment(secrets.token(), secrets.device(), role);
        Input.Enrolled input =
                new Input.Enrolled(
                        enrolment.device(),
                        person,
                        role,
                        codeHash,
                        Secrets.sha256(enrolment.token()));
        return commit(input, enrolment).whenComplete((answer, trouble) -> atHand.clear());
    }

    /** Makes a code for a role on behalf of a device. */
    public CompletionStage<Answer<OneTimeCode>> issue(Role role, String issuer) {
        String code = secrets.code();
        return commit(
                new Input.CodeIssued(Secrets.sha256(code), role, issuer), new OneTimeCode(code));
    }

    private <T> CompletionStage<Answer<T>> commit(Input input, T whenAccepted) {
        CompletableFuture<Answer<T>> answer = new CompletableFuture<>();
        boolean taken =
                inbox.offer(input, receipt -> answer.complete(judge(receipt, whenAccepted)));
        return taken ? answer : done(Answer.refused("busy", "The gateway is busy. Try again."));
    }

    private static <T> Answer<T> judge(Inbox.Receipt receipt, T whenAccepted) {
        if (!receipt.isKept()) {
            return Answer.refused("journal-trouble", receipt.lost());
        }
        Verdict verdict = receipt.outcomes().get(0).verdict();
        if (verdict == null) {
            return Answer.refused(
                    "only-collected",
                    "The rules have failed: nobody new can come in at the moment.");
        }
        return verdict.isAccepted() ? Answer.of(whenAccepted) : Answer.refused(verdict.refusal());
    }

    private static <T> Answer<T> tooManyTries() {
        return Answer.refused("too-many-tries", "Too many wrong tries. Wait a minute.");
    }

    private static <T> CompletionStage<T> done(T value) {
        return CompletableFuture.completedFuture(value);
    }
}
