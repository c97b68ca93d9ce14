package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Effect;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

class OutboxTest {
    private final Outbox outbox = new Outbox();

    @Test
    void onlyTheNewestOfARetainedTopicIsSent() throws InterruptedException {
        outbox.put(kept("fu-01", 1));
        outbox.put(kept("fu-02", 5));
        outbox.put(kept("fu-01", 2));
        assertThat(drained()).containsExactly(text(kept("fu-01", 2)), text(kept("fu-02", 5)));
        assertThat(drained()).isEmpty();
    }

    @Test
    void aNewLinkIsToldEverythingThatStands() throws InterruptedException {
        outbox.put(kept("fu-01", 1));
        outbox.put(kept("fu-02", 5));
        drained();
        outbox.put(kept("fu-01", 2));
        outbox.linkUp();
        assertThat(drained())
                .containsExactlyInAnyOrder(text(kept("fu-01", 2)), text(kept("fu-02", 5)));
    }

    @Test
    void aMomentaryMessageDoesNotOutliveItsLink() throws InterruptedException {
        Outgoing resend = Outgoing.of(new Effect.AskAgain("fu-01", BenchUnit.BOOT, 1, 2));
        outbox.put(Outgoing.of(new Effect.Show("fu-01", 9, "start", 100)));
        outbox.put(resend);
        outbox.linkUp();
        assertThat(drained()).containsExactly(text(resend));
    }

    @Test
    void whatCouldNotBeSentNeverReplacesWhatIsNewer() throws InterruptedException {
        outbox.put(kept("fu-01", 1));
        Outgoing failed = outbox.poll(0);
        outbox.put(kept("fu-01", 2));
        outbox.putBack(failed);
        outbox.linkUp();
        assertThat(drained()).containsExactly(text(kept("fu-01", 2)));
    }

    @Test
    void whenTooManyWaitTheOldestIsDroppedAndCounted() throws InterruptedException {
        for (int i = 0; i <= Outbox.PASSING_MAX; i++) {
            outbox.put(Outgoing.of(new Effect.AskAgain("fu-01", BenchUnit.BOOT, i, i)));
        }
        assertThat(outbox.dropped()).isEqualTo(1);
        assertThat(drained())
                .hasSize(Outbox.PASSING_MAX)
                .first()
                .asString()
                .contains("\"from\":1,");
    }

    private List<String> drained() throws InterruptedException {
        List<String> messages = new ArrayList<>();
        for (Outgoing each = outbox.poll(0); each != null; each = outbox.poll(0)) {
            messages.add(text(each));
        }
        return messages;
    }

    private static Outgoing kept(String unit, long upto) {
        return Outgoing.of(new Effect.Kept(unit, BenchUnit.BOOT, upto));
    }

    private static String text(Outgoing message) {
        return message.topic() + " " + new String(message.payload(), StandardCharsets.UTF_8);
    }
}
