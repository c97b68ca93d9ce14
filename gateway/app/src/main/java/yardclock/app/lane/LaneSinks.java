package yardclock.app.lane;

/** Where what follows from a batch goes; all are called on the lane's thread. */
public record LaneSinks(EffectSink effects, FrameSink frames, LaneMeter meter) {}
