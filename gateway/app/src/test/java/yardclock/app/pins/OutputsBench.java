package yardclock.app.pins;

import yardclock.core.engine.Engine;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;

/** Outputs of a mock board on a real lane, put together as the gateway does. */
final class OutputsBench implements AutoCloseable {
    private static final String MAP = "pulse=5,run=6,release=13,heat=19,quiet=26";

    private final AtomicInteger looks = new AtomicInteger();
    private final LiveLane lane;
    private final Outputs outputs;
    private volatile Outputs shownTo;

    OutputsBench(Path directory, MockOutputs board) throws Exception {
        lane = new LiveLane(directory, 1, this::look);
        outputs = new Outputs(OutputMap.parse(MAP), lane.clock, lane.troubles);
        shownTo = outputs;
        outputs.start(board.pins());
    }

    private void look(Engine engine, Engine.View view) {
        Outputs to = shownTo;
        if (to != null && engine.plan().isPresent()) {
            to.look(engine.crew(view).head(), lane.lane.takesStops());
            looks.incrementAndGet();
        }
    }

    LiveLane lane() {
        return lane;
    }

    Outputs outputs() {
        return outputs;
    }

    /** How often the lane has shown the state. */
    int looks() {
        return looks.get();
    }

    @Override
    public void close() throws Exception {
        outputs.close();
        lane.close();
    }
}
