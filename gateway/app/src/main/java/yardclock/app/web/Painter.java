package yardclock.app.web;

import yardclock.core.board.BenchFrame;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Draws the frame for an audience; called on the lane's thread. */
@FunctionalInterface
interface Painter {
    Painted paint(Engine engine, View view, Audience audience);

    /** A frame and its number; the frame is immutable and becomes JSON later, on another thread. */
    record Painted(long number, Object frame) {}

    /**
     * The painter that asks the engine.
     *
     * @param benchNotes what only adapters know and the technician must see, newest first
     */
    static Painter ofEngine(Supplier<List<String>> benchNotes) {
        return (engine, view, audience) ->
                switch (audience.kind()) {
                    case CONTROL -> {
                        var frame = engine.control(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case POST -> {
                        var frame = engine.post(view, audience.device());
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case CREW -> {
                        var frame = engine.crew(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case WATCH -> {
                        var frame = engine.watch(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case BOARD -> {
                        var frame = engine.board(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case BENCH -> {
                        var frame = noted(engine.bench(view), benchNotes.get());
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case LEADERBOARD -> {
                        var frame = engine.leaderboard(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                };
    }

    private static BenchFrame noted(BenchFrame frame, List<String> notes) {
        List<String> alarms = new ArrayList<>(notes);
        alarms.addAll(frame.alarms());
        return frame.withAlarms(alarms);
    }
}
