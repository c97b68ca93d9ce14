package yardclock.app.lane;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Outcome;

import java.util.List;
import java.util.OptionalLong;

/**
 * The engine and how far it has come. Fed from the journal at the start, by the lane afterwards,
 * and owned by whichever thread does that.
 *
 * <p>When the rules meet something impossible, the state goes to <em>collect only</em>: a new
 * engine is built from the entries before the one that failed, and nothing is applied from then on.
 * Entries are still journalled, screens show that last good state under a sentence, and a later
 * version of the rules can work the whole journal through. Starting again meets the same entry in
 * the same way, so a poisonous entry can't make the gateway crash again and again.
 */
public final class LiveState {
    static final String TROUBLE = "rules";

    private static final Logger LOG = LoggerFactory.getLogger(LiveState.class);
    private static final Outcome ONLY_COLLECTED =
            new Outcome(List.of(), List.of(), null, OptionalLong.empty());

    private final FeedRing feed;
    private final Troubles troubles;
    private final Rules rules;
    private Engine engine = new Engine();
    private volatile long lastEntry;
    private long lastMicros;
    private long failedEntry;
    private long goodMicros;
    private boolean built = true;
    private OptionalLong deadline = OptionalLong.empty();

    public LiveState(FeedRing feed, Troubles troubles) {
        this(feed, troubles, Engine::apply);
    }

    LiveState(FeedRing feed, Troubles troubles, Rules rules) {
        this.feed = feed;
        this.troubles = troubles;
        this.rules = rules;
    }

    /** Takes the next entry of the journal. Never throws for what the rules make of it. */
    public Outcome apply(Entry entry) {
        lastEntry = entry.number();
        lastMicros = entry.gatewayMicros();
        if (isCollectingOnly()) {
            return ONLY_COLLECTED;
        }
        try {
            Outcome outcome = rules.apply(engine, entry);
            goodMicros = entry.gatewayMicros();
            deadline = outcome.nextDeadlineMicros();
            feed.add(entry, outcome.facts());
            return outcome;
        } catch (RuntimeException | AssertionError | StackOverflowError e) {
            fail(entry, e);
            return ONLY_COLLECTED;
        }
    }

    private void fail(Entry entry, Throwable cause) {
        LOG.error("The rules failed at entry {}: collecting only from here on", entry, cause);
        failedEntry = entry.number();
        built = false;
        deadline = OptionalLong.empty();
        troubles.raise(
                TROUBLE,
                "The rules failed at entry "
                        + failedEntry
                        + ". Everything is still kept, but this picture stands still. Go on by hand"
                        + " and call the timing technician.");
    }

    /**
     * Builds the last good state anew if the rules have failed since. To be called before the
     * engine is looked at, and with no reading of the journal under way.
     */
    public void settle(Journal journal) {
        if (built) {
            return;
        }
        built = true;
        Engine anew = new Engine();
        try {
            journal.replay(failedEntry - 1, entry -> rules.apply(anew, entry));
        } catch (RuntimeException e) {
            // What could be built is still the truest picture there is.
            LOG.error("The last good state could not be built wholly", e);
        }
        engine = anew;
    }

    public boolean isCollectingOnly() {
        return failedEntry > 0;
    }

    /** The number of the newest entry, 0 while there is none. Safe from any thread. */
    public long lastEntry() {
        return lastEntry;
    }

    /** Gateway time of the newest entry. */
    public long lastMicros() {
        return lastMicros;
    }

    Engine engine() {
        return engine;
    }

    OptionalLong deadline() {
        return deadline;
    }

    /** The time to draw frames for: now, or the last good moment when the state stands still. */
    long pictureMicros(long nowMicros) {
        return isCollectingOnly() ? goodMicros : Math.max(nowMicros, lastMicros);
    }
}
