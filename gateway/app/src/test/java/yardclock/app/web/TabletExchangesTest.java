package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.clock.GatewayClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

import java.util.SplittableRandom;

/** The table of open questions, in a time that the test moves. */
class TabletExchangesTest {
    private static final long SEED = 7;
    private final HandClock clock = new HandClock();
    private int ids;
    private final TabletExchanges exchanges =
            new TabletExchanges(clock, new SplittableRandom(SEED), () -> "id-" + ids++);

    @Test
    void an_answer_within_three_seconds_counts_and_a_later_one_does_not() {
        String quick = exchanges.ask("d").id();
        String slow = exchanges.ask("d").id();
        clock.nanos += TabletExchanges.LATE_NANOS;
        assertThat(exchanges.take("d", quick).isRefused()).isFalse();
        clock.nanos++;
        assertThat(exchanges.take("d", slow).refused()).isEqualTo("exchange-late");
        assertThat(exchanges.take("d", slow).refused()).isEqualTo("exchange-used");
    }

    @Test
    void the_question_keeps_the_gateway_time_it_was_asked_at() {
        TabletExchanges.ClockMessage asked = exchanges.ask("d");
        clock.nanos += 5_000_000;
        assertThat(exchanges.take("d", asked.id()).value().gatewaySentMicros())
                .isEqualTo(asked.gatewayMicros());
    }

    @Test
    void old_ids_are_forgotten_and_the_table_stays_small() {
        String old = exchanges.ask("d").id();
        for (int i = 0; i < 10_000; i++) {
            exchanges.ask("d");
        }
        assertThat(exchanges.take("d", old).refused()).isEqualTo("exchange-unknown");
    }

    @Test
    void gaps_are_short_in_a_burst_and_five_seconds_give_or_take_after_it() {
        for (int i = 0; i < 1_000; i++) {
            assertThat(exchanges.gapNanos(true) / 1e9).as("seed " + SEED).isBetween(0.3, 0.9);
            assertThat(exchanges.gapNanos(false) / 1e9).as("seed " + SEED).isBetween(3.0, 7.0);
        }
    }

    @Test
    void a_stream_asks_quickly_first_and_again_when_its_page_wants_it() {
        ClockedChunks chunks = new ClockedChunks(() -> null, exchanges, "d");
        assertThat(chunks.next()).as("a page that opens is drawn first").isNull();
        clock.nanos += 900_000_000;
        for (int i = 0; i < TabletExchanges.BURST; i++) {
            assertThat(chunks.next()).isNotNull();
            assertThat(chunks.next()).as("not twice at once").isNull();
            clock.nanos += 900_000_000;
        }
        assertThat(chunks.next()).as("the burst is over").isNull();
        chunks.burst();
        clock.nanos += 900_000_000;
        assertThat(chunks.next()).isNotNull();
    }

    @Test
    void frames_that_wait_go_first() {
        byte[] frame = {1};
        byte[][] waiting = {frame};
        ClockedChunks chunks =
                new ClockedChunks(
                        () -> {
                            byte[] next = waiting[0];
                            waiting[0] = null;
                            return next;
                        },
                        exchanges,
                        "d");
        clock.nanos += 900_000_000;
        assertThat(chunks.next()).isSameAs(frame);
        assertThat(chunks.next()).isNotNull();
    }

    private static final class HandClock implements GatewayClock {
        private long nanos = 1_000_000_000;

        @Override
        public GatewayTime now() {
            return new GatewayTime(nanos / 1_000);
        }

        @Override
        public WallTime wall() {
            return new WallTime(0);
        }

        @Override
        public int speed() {
            return 1;
        }

        @Override
        public long realNanos() {
            return nanos;
        }
    }
}
