package yardclock.sim.twin;

import yardclock.app.stations.SteppedLink;
import yardclock.sim.stage.Stage;
import yardclock.sim.units.UnitLink;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * The broker, and the radio between it and the field units. Messages of one connection arrive in
 * their order; what is under way when a link breaks is lost, unless the broker has it already.
 */
final class Air implements SteppedLink.Broker {
    /** The broker notices a silent connection after one and a half keep-alives. */
    static final long WILL_MICROS = 7_500_000;

    static final String ROOT = "yc/1/";

    private final Stage stage;
    private final SplittableRandom random;
    private final Map<String, TwinLink> links = new LinkedHashMap<>();
    private Gate gateway;

    Air(Stage stage, SplittableRandom random) {
        this.stage = stage;
        this.random = random;
    }

    /** Where messages go that the broker has. */
    interface Gate {
        void arrived(String topic, byte[] payload, int qos, Runnable acknowledged);
    }

    void connect(Gate to) {
        gateway = to;
    }

    TwinLink linkOf(String unit, Path path) {
        TwinLink link = new TwinLink(stage, this, unit, path);
        links.put(unit, link);
        return link;
    }

    /** How long a message is under way, in microseconds. */
    interface Path {
        long upMicros();

        long downMicros();
    }

    /** A path of the given floors with late messages now and then. */
    Path path() {
        SplittableRandom own = random.split();
        long upFloor = own.nextLong(1_500, 3_000);
        long downFloor = own.nextLong(1_500, 4_000);
        return new Path() {
            @Override
            public long upMicros() {
                return upFloor + extraMicros(own);
            }

            @Override
            public long downMicros() {
                return downFloor + extraMicros(own);
            }
        };
    }

    private static long extraMicros(SplittableRandom own) {
        double quick = -600 * StrictMath.log(1 - own.nextDouble());
        boolean late = own.nextInt(100) < 6;
        return Math.round(quick + (late ? own.nextDouble() * 120_000 : 0));
    }

    /** A unit's message is at the broker, which hands it on at once. */
    void atBroker(String unit, UnitLink.Message message, Runnable acknowledged) {
        gateway.arrived(
                ROOT + unit + "/" + message.name(), message.payload(), message.qos(), acknowledged);
    }

    @Override
    public void publish(String topic, byte[] payload, int qos, boolean retained) {
        String[] parts = topic.substring(ROOT.length()).split("/", 2);
        TwinLink link = links.get(parts[0]);
        if (link != null) {
            link.fromBroker(new UnitLink.Message(parts[1], payload, qos, retained));
        }
    }
}
