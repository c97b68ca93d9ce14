package yardclock.app.clock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import java.util.function.LongSupplier;

/**
 * What the operating system knows of time: a monotonic count, a wall clock, and a name for this
 * boot of this machine. Two readings of the monotonic count compare only within one such boot. Safe
 * from any thread.
 *
 * @param boot the boot's id
 * @param monotonicNanos counts up steadily since some instant of this boot
 */
public record Machine(String boot, LongSupplier monotonicNanos, Clock wall) {
    private static final Path LINUX_BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");

    /** This very machine. Where it can't name its boot, each start counts as a new boot. */
    public static Machine here() {
        // On Linux nanoTime reads CLOCK_MONOTONIC, which all processes of one boot share.
        return new Machine(bootId(), System::nanoTime, Clock.systemUTC());
    }

    private static String bootId() {
        try {
            return Files.readString(LINUX_BOOT_ID).strip();
        } catch (IOException e) {
            return UUID.randomUUID().toString();
        }
    }

    long monotonicMicros() {
        return Math.floorDiv(monotonicNanos.getAsLong(), 1_000L);
    }

    long wallMicros() {
        Instant now = wall.instant();
        return Math.addExact(
                Math.multiplyExact(now.getEpochSecond(), 1_000_000L), now.getNano() / 1_000);
    }
}
