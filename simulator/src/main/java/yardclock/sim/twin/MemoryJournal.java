package yardclock.sim.twin;

import yardclock.app.lane.Journal;
import yardclock.core.engine.Entry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;

/** A journal that keeps its entries in memory. Owned by one thread. */
final class MemoryJournal implements Journal {
    private final List<Entry> entries = new ArrayList<>();

    @Override
    public Appended append(List<Entry> batch) {
        entries.addAll(batch);
        return Appended.kept();
    }

    @Override
    public void replay(long upTo, Consumer<Entry> each) {
        entries.stream().limit(upTo).forEach(each);
    }

    List<Entry> entries() {
        return Collections.unmodifiableList(entries);
    }
}
