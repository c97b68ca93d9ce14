package yardclock.app.boot;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;

/**
 * A gateway that owns its process: it runs until a signal comes or the lane dies, and is then
 * closed in order. Told to stop, the process ends with 0; after a fault of its own it ends with 1,
 * so that whoever watches over it starts it again.
 */
final class Serving {
    private static final Logger LOG = LoggerFactory.getLogger(Serving.class);

    private final PrintWriter out;
    private final CountDownLatch over = new CountDownLatch(1);
    private volatile int status;

    Serving(PrintWriter out) {
        this.out = out;
    }

    int run(ServeSettings settings) throws RefusedException, InterruptedException {
        Gateway gateway = Gateway.start(settings, this::fail);
        Thread stopping = new Thread(() -> stop(gateway), "stopping");
        Runtime.getRuntime().addShutdownHook(stopping);
        gateway.announcement().lines().forEach(out::println);
        over.await();
        return status;
    }

    private void fail(Throwable cause) {
        status = Main.REFUSED;
        LOG.error("The gateway ends itself, to be started again", cause);
        over.countDown();
    }

    // Halting is what makes the exit code ours: after a signal the JVM would end with 143.
    private void stop(Gateway gateway) {
        gateway.close();
        LOG.info("The gateway has stopped");
        Runtime.getRuntime().halt(status);
    }
}
