package yardclock.app.lane;

import yardclock.core.engine.Entry;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

/** A journal whose disk a test can fill, and whose commit a test can hold up. */
final class JournalInMemory implements Journal {
    private final List<Entry> entries = new ArrayList<>();
    private final List<Integer> commits = new ArrayList<>();
    private volatile String trouble;
    private volatile CountDownLatch gate = new CountDownLatch(0);

    @Override
    public Appended append(List<Entry> batch) {
        try {
            gate.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        if (trouble != null) {
            return Appended.lost(trouble);
        }
        synchronized (entries) {
            entries.addAll(batch);
            commits.add(batch.size());
        }
        return Appended.kept();
    }

    @Override
    public void replay(long upTo, Consumer<Entry> each) {
        kept().stream().filter(entry -> entry.number() <= upTo).forEach(each);
    }

    List<Entry> kept() {
        synchronized (entries) {
            return List.copyOf(entries);
        }
    }

    List<Integer> commits() {
        synchronized (entries) {
            return List.copyOf(commits);
        }
    }

    void fail(String words) {
        trouble = words;
    }

    void mend() {
        trouble = null;
    }

    /** Every commit waits until the latch that is returned has counted down. */
    CountDownLatch hold() {
        CountDownLatch held = new CountDownLatch(1);
        gate = held;
        return held;
    }
}
