package yardclock;

import org.awaitility.Awaitility;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

import java.time.Duration;

/**
 * How long every test waits for a condition when it does not say: long, since a machine that does
 * other things too is slow and not wrong. A met condition never waits.
 */
public final class Patience implements BeforeAllCallback {
    @Override
    public void beforeAll(ExtensionContext context) {
        Awaitility.setDefaultTimeout(Duration.ofSeconds(45));
    }
}
