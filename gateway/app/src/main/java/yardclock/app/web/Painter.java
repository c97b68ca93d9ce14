package yardclock.app.web;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;

/** Draws the frame for an audience; called on the lane's thread. */
@FunctionalInterface
interface Painter {
    Painted paint(Engine engine, View view, Audience audience);

    /** A frame and its number; the frame is immutable and becomes JSON later, on another thread. */
    record Painted(long number, Object frame) {}

    /** The painter that asks the engine. */
    static Painter ofEngine() {
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
                    case BOARD -> {
                        var frame = engine.board(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case BENCH -> {
                        var frame = engine.bench(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                    case LEADERBOARD -> {
                        var frame = engine.leaderboard(view);
                        yield new Painted(frame.head().frame(), frame);
                    }
                };
    }
}
