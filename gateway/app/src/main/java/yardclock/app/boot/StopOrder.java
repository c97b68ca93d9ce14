package yardclock.app.boot;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.util.ArrayDeque;

/**
 * What must be closed, the last added first. One part that fails to close does not keep the others
 * open. One thread at a time.
 */
final class StopOrder {
    private static final Logger LOG = LoggerFactory.getLogger(StopOrder.class);

    private record Part(String name, AutoCloseable part) {}

    private final ArrayDeque<Part> parts = new ArrayDeque<>();

    <T extends AutoCloseable> T add(String name, T part) {
        parts.push(new Part(name, part));
        return part;
    }

    void closeAll() {
        while (!parts.isEmpty()) {
            Part next = parts.pop();
            try {
                next.part().close();
            } catch (Exception e) {
                LOG.error("The {} did not close cleanly", next.name(), e);
            }
        }
    }
}
