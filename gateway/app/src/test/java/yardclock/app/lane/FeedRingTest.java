package yardclock.app.lane;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Entry;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

class FeedRingTest {
    @Test
    void numbersOnlyTheFactsThatAreOnTheFeed() {
        FeedRing feed = new FeedRing();
        add(feed, 4, released(12), Fact.aboutUnit(FactKind.EDGE_TAKEN, "fu-01", ""), told(12));
        add(feed, 9, told(13));

        assertThat(feed.newest()).isEqualTo(3);
        assertThat(frames(feed.after(0))).containsExactly(1L, 2L, 3L);
        assertThat(feed.after(2).items()).containsExactly(new Feed.Item(3, 9, 90, told(13)));
        assertThat(feed.after(3)).isEqualTo(new Feed.Page(false, List.of()));
    }

    @Test
    void saysWhenTheNumberAskedForIsNoLongerHeld() {
        FeedRing feed = new FeedRing(3);
        for (int n = 1; n <= 5; n++) {
            add(feed, n, released(n));
        }
        assertThat(feed.after(1).missed()).isTrue();
        assertThat(frames(feed.after(1))).containsExactly(3L, 4L, 5L);
        assertThat(feed.after(2).missed()).isFalse();
        assertThat(frames(feed.after(2))).containsExactly(3L, 4L, 5L);
    }

    @Test
    void saysWhenTheNumberAskedForWasNeverGivenOut() {
        FeedRing feed = new FeedRing();
        add(feed, 1, released(1));
        assertThat(feed.after(7).missed()).isTrue();
        assertThat(frames(feed.after(7))).containsExactly(1L);
    }

    @Test
    void givesTheSameNumbersWhenTheSameEntriesComeAgain() {
        FeedRing first = new FeedRing();
        FeedRing second = new FeedRing();
        for (FeedRing feed : List.of(first, second)) {
            add(feed, 1, released(1), told(1));
            add(feed, 2, released(2));
        }
        assertThat(first.after(0)).isEqualTo(second.after(0));
    }

    @Test
    void handsOutAtMostAPageAtOnce() {
        FeedRing feed = new FeedRing();
        for (int n = 1; n <= Limits.FEED_PAGE + 1; n++) {
            add(feed, n, released(n));
        }
        assertThat(feed.after(0).items()).hasSize(Limits.FEED_PAGE);
        assertThat(frames(feed.after(Limits.FEED_PAGE))).containsExactly(Limits.FEED_PAGE + 1L);
    }

    @Test
    void wakesFollowersUntilTheyClose() {
        FeedRing feed = new FeedRing();
        AtomicInteger woken = new AtomicInteger();
        Feed.Following following = feed.follow(woken::incrementAndGet);
        add(feed, 1, released(1));
        add(feed, 2, Fact.aboutUnit(FactKind.EDGE_TAKEN, "fu-01", ""));
        assertThat(woken).hasValue(1);
        following.close();
        add(feed, 3, released(2));
        assertThat(woken).hasValue(1);
    }

    private static void add(FeedRing feed, long entry, Fact... facts) {
        feed.add(new Entry(entry, entry * 10, LaneBench.edge(entry)), List.of(facts));
    }

    private static Fact released(int number) {
        return Fact.of(FactKind.RELEASED, number, "", "");
    }

    private static Fact told(int number) {
        return Fact.of(FactKind.TOLD, number, "", "");
    }

    private static List<Long> frames(Feed.Page page) {
        return page.items().stream().map(Feed.Item::frame).toList();
    }
}
