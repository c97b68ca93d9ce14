package yardclock.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.lane.Answer;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Role;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletionStage;

class DoorkeeperTest {
    private final RulesAtHand rules = new RulesAtHand();
    private final Doorkeeper keeper = new Doorkeeper(rules, rules, rules);

    private static <T> T now(CompletionStage<T> stage) {
        return stage.toCompletableFuture().getNow(null);
    }

    private String code(Role role) {
        return now(keeper.issue(role, "t-coord")).value().code();
    }

    private Answer<Enrolment> enrol(String code) {
        return now(keeper.enrol(code, "Linden Example"));
    }

    private Optional<Holder> holder(String token) {
        return now(keeper.holder(token)).value();
    }

    @Test
    void aCodeBringsATokenThatIsItsHoldersRole() {
        Enrolment enrolment = enrol(code(Role.PROCTOR)).value();
        assertThat(enrolment.role()).isEqualTo(Role.PROCTOR);
        assertThat(holder(enrolment.token()))
                .contains(new Holder(enrolment.device(), "Linden Example", Role.PROCTOR));
    }

    @Test
    void aCodeMayBeTypedAsPeopleType() {
        String code = code(Role.CREW);
        String typed = " " + code.substring(0, 4) + " - " + code.substring(4) + " ";
        assertThat(enrol(typed.toLowerCase(Locale.ROOT)).isRefused()).isFalse();
    }

    @Test
    void aCodeWorksOnce() {
        String code = code(Role.CREW);
        assertThat(enrol(code).isRefused()).isFalse();
        assertThat(enrol(code).refused()).isEqualTo("already-enrolled");
    }

    @Test
    void onlyHashesReachTheJournal() {
        String code = code(Role.SAFETY);
        Enrolment enrolment = enrol(code).value();
        assertThat(rules.taken.toString())
                .doesNotContain(code)
                .doesNotContain(enrolment.token())
                .contains(Secrets.sha256(code))
                .contains(Secrets.sha256(enrolment.token()));
        assertThat(enrolment.toString()).doesNotContain(enrolment.token());
        Input.CodeIssued issued = (Input.CodeIssued) rules.taken.get(0);
        assertThat(issued.issuer()).isEqualTo("t-coord");
    }

    @Test
    void twentyWrongCodesAMinuteAndNoMore() {
        String good = code(Role.CREW);
        for (int i = 0; i < Doorkeeper.WRONG_CODES_A_MINUTE; i++) {
            String wrong = "WRNGCDE" + Secrets.ALPHABET.charAt(i);
            assertThat(enrol(wrong).refused()).isEqualTo("unknown-code");
        }
        assertThat(enrol("WRNGCDEZ").refused()).isEqualTo("too-many-tries");
        assertThat(enrol(good).refused()).isEqualTo("too-many-tries");
        rules.realNanos += 61_000_000_000L;
        assertThat(enrol(good).isRefused()).isFalse();
    }

    @Test
    void rightCodesAreNotCounted() {
        for (int i = 0; i < 2 * Doorkeeper.WRONG_CODES_A_MINUTE; i++) {
            assertThat(enrol(code(Role.PROCTOR)).isRefused()).isFalse();
        }
    }

    @Test
    void aKnownTokenIsLookedUpOnce() {
        String token = enrol(code(Role.PROCTOR)).value().token();
        for (int i = 0; i < 5; i++) {
            assertThat(holder(token)).isPresent();
        }
        assertThat(rules.lookUps).containsEntry(Secrets.sha256(token), 1);
        assertThat(enrol(code(Role.CREW)).isRefused()).isFalse();
        assertThat(holder(token)).as("an enrolment makes the keeper ask again").isPresent();
        assertThat(rules.lookUps).containsEntry(Secrets.sha256(token), 2);
    }

    @Test
    void guessedTokensDoNotKeepTheLaneBusy() {
        String token = enrol(code(Role.PROCTOR)).value().token();
        assertThat(holder(token)).isPresent();
        for (int i = 0; i < Doorkeeper.UNKNOWN_TOKENS_A_MINUTE; i++) {
            assertThat(holder("guess-" + i)).isEmpty();
        }
        assertThat(now(keeper.holder("guess")).refused()).isEqualTo("too-many-tries");
        assertThat(holder(token)).as("those at hand are not shut out").isPresent();
        assertThat(holder("")).isEmpty();
        assertThat(holder("x".repeat(101))).isEmpty();
    }

    @Test
    void aNameIsAskedForAndLimited() {
        String code = code(Role.CREW);
        assertThat(now(keeper.enrol(code, "  ")).refused()).isEqualTo("name-missing");
        assertThat(now(keeper.enrol(code, "a\nb")).refused()).isEqualTo("name-missing");
        assertThat(now(keeper.enrol(code, "n".repeat(61))).refused()).isEqualTo("name-too-long");
        assertThat(now(keeper.enrol(code, "n".repeat(60))).isRefused()).isFalse();
    }

    @Test
    void troubleOfTheJournalIsSaidAndUsesNothingUp() {
        String code = code(Role.CREW);
        rules.lost = "The disk is full.";
        assertThat(enrol(code).refused()).isEqualTo("journal-trouble");
        assertThat(enrol(code).words()).isEqualTo("The disk is full.");
        rules.lost = null;
        rules.full = true;
        assertThat(enrol(code).refused()).isEqualTo("busy");
        rules.full = false;
        assertThat(enrol(code).isRefused()).isFalse();
    }

    @Test
    void secretsHaveTheirLengthAndDoNotRepeat() {
        Secrets secrets = new Secrets();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1_000; i++) {
            assertThat(seen.add(secrets.token())).isTrue();
            assertThat(seen.add(secrets.code())).isTrue();
        }
        assertThat(secrets.token()).hasSize(43);
        assertThat(secrets.code()).hasSize(8).matches(Secrets::isCode);
        assertThat(secrets.device()).matches("t-[a-z2-9]{6}");
    }

    /** Check value: FIPS 180-4's example for "abc", from memory. */
    @Test
    void hashesAreSha256InHex() {
        assertThat(Secrets.sha256("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
