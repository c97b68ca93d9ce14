package yardclock.app.stations;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Effect;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** One message of the gateway to a unit, encoded. */
record Outgoing(String topic, byte[] payload, int qos, boolean retained) {

    static Outgoing of(Effect effect) {
        if (effect instanceof Effect.Kept kept) {
            return kept(kept);
        } else if (effect instanceof Effect.AskAgain again) {
            return resend(again);
        } else if (effect instanceof Effect.Show show) {
            return show(show);
        } else if (effect instanceof Effect.Blink blink) {
            return identify(blink);
        }
        throw new IllegalArgumentException("no message says " + effect);
    }

    private static Outgoing kept(Effect.Kept kept) {
        ObjectNode json = json().put("boot", kept.boot()).put("upto", kept.upto());
        return message(kept.unit(), "kept", json, 1, true);
    }

    private static Outgoing resend(Effect.AskAgain again) {
        ObjectNode json =
                json().put("boot", again.boot()).put("from", again.from()).put("to", again.to());
        return message(again.unit(), "resend", json, 1, false);
    }

    static Outgoing ask(String unit, String id, long gatewayMicros) {
        return message(unit, "ask", json().put("id", id).put("gateway", gatewayMicros), 0, false);
    }

    private static Outgoing show(Effect.Show show) {
        ObjectNode json =
                json().put("output", show.output())
                        .put("what", show.what())
                        .put("expiresMs", show.expiresMillis());
        return message(show.unit(), "show", json, 0, false);
    }

    private static Outgoing identify(Effect.Blink blink) {
        return message(blink.unit(), "identify", json().put("seconds", blink.seconds()), 1, false);
    }

    /** Only inputs have a polarity and a pull; outputs 9–12 are left out. */
    static Outgoing settings(String unit, int version, List<SensorPlan> sensors) {
        ObjectNode json = json().put("version", version);
        ArrayNode list = json.putArray("sensors");
        for (SensorPlan sensor : sensors) {
            if (sensor.number() < SensorRef.FIRST_OUTPUT) {
                list.addObject()
                        .put("number", sensor.number())
                        .put("inverted", sensor.inverted())
                        .put("pullUp", sensor.pullUp());
            }
        }
        return message(unit, "settings", json, 1, true);
    }

    private static ObjectNode json() {
        return JsonNodeFactory.instance.objectNode().put("v", UnitMessages.VERSION);
    }

    private static Outgoing message(
            String unit, String leaf, ObjectNode json, int qos, boolean retained) {
        byte[] bytes = json.toString().getBytes(StandardCharsets.UTF_8);
        return new Outgoing(UnitMessages.ROOT + unit + "/" + leaf, bytes, qos, retained);
    }
}
