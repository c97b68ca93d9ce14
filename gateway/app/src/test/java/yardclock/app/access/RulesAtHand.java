package yardclock.app.access;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Role;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** The real rules without a lane: an offer is applied at once, in the caller's thread. */
final class RulesAtHand implements Inbox, Rolls, GatewayClock {
    final Map<String, Integer> lookUps = new ConcurrentHashMap<>();
    final List<Input> taken = new ArrayList<>();
    private final Engine engine = new Engine();
    String lost;
    boolean full;
    long realNanos;

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        if (full) {
            return false;
        }
        if (lost != null) {
            done.accept(new Receipt(List.of(), lost));
            return true;
        }
        taken.addAll(inputs);
        Entry entry = new Entry(engine.lastEntry() + 1, 0, inputs.get(0));
        done.accept(new Receipt(List.of(engine.apply(entry)), null));
        return true;
    }

    @Override
    public CompletionStage<Optional<Holder>> holder(String tokenSha256) {
        lookUps.merge(tokenSha256, 1, Integer::sum);
        return CompletableFuture.completedFuture(engine.holder(tokenSha256));
    }

    @Override
    public CompletionStage<Optional<Role>> codeRole(String codeSha256) {
        return CompletableFuture.completedFuture(engine.codeRole(codeSha256));
    }

    @Override
    public GatewayTime now() {
        return new GatewayTime(0);
    }

    @Override
    public WallTime wall() {
        return new WallTime(0);
    }

    @Override
    public int speed() {
        return 1;
    }

    @Override
    public long realNanos() {
        return realNanos;
    }
}
