package yardclock.sim.boot;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.LongFunction;

/**
 * Plays days of successive seeds beside each other, as many as the machine has cores and the memory
 * has room for, and hands them on in the order of their seeds. A day shares nothing with another.
 */
final class DaysAtOnce {
    /** What a day of 90 candidates keeps, and as much again to move about in. */
    private static final long BYTES_A_DAY = 200_000_000;

    private DaysAtOnce() {}

    /**
     * @param day plays the day of a seed, on any thread, and keeps little of it
     * @param next takes each day on the caller's thread
     */
    static <D> void play(long seed, int many, LongFunction<D> day, Consumer<D> next) {
        ExecutorService cores = Executors.newFixedThreadPool(Math.min(many, atOnce()));
        try {
            List<Future<D>> days = new ArrayList<>();
            for (long each = seed; each < seed + many; each++) {
                long one = each;
                days.add(cores.submit(() -> day.apply(one)));
            }
            for (Future<D> played : days) {
                next.accept(played.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a day broke off", e.getCause());
        } finally {
            cores.shutdownNow();
        }
    }

    private static int atOnce() {
        long room = Runtime.getRuntime().maxMemory() / BYTES_A_DAY;
        return (int) Math.max(1, Math.min(room, Runtime.getRuntime().availableProcessors()));
    }
}
