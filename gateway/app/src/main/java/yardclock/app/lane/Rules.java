package yardclock.app.lane;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Outcome;

/** How an entry is applied to an engine; apart, so that a test can make the rules fail. */
@FunctionalInterface
interface Rules {
    Outcome apply(Engine engine, Entry entry);
}
