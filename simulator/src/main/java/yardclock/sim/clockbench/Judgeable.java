package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;

import java.util.List;

/** A recording with the true gateway time of each edge, in the same order. */
public record Judgeable(Recording recording, List<Long> truthMicros) {
    public Judgeable {
        truthMicros = List.copyOf(truthMicros);
    }
}
