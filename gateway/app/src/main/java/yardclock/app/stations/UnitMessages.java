package yardclock.app.stations;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

import yardclock.core.engine.Input;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The field-unit contract, read: topic and bytes in, inputs or a refusal out.
 *
 * <p>Pure: it keeps nothing between messages and asks nothing of the world, so that the vectors of
 * the specification are its test. Immutable; any thread may use it. Unknown fields are ignored,
 * everything that is known is checked.
 */
public final class UnitMessages {
    /** The contract's version, in every message's {@code v}. */
    public static final int VERSION = 1;

    static final String ROOT = "yc/1/";

    static final Pattern BOOT = Pattern.compile("[0-9a-f]{16}");

    private static final Pattern UNIT = Pattern.compile("[a-z0-9-]{1,24}");
    private static final Pattern EXCHANGE_ID = Pattern.compile("[A-Za-z0-9-]{1,32}");
    private static final Pattern FIRMWARE =
            Pattern.compile("[ -~]{1," + UnitLimits.FIRMWARE_CHARS + "}");

    /** Room for a radio's address as it is usually written, {@code aa:bb:cc:dd:ee:ff}. */
    private static final Pattern ACCESS_POINT =
            Pattern.compile("[0-9A-Za-z:._-]{1," + UnitLimits.ACCESS_POINT_CHARS + "}");

    private static final Pattern REFUSED =
            Pattern.compile("[ -~]{0," + UnitLimits.REFUSED_CHARS + "}");
    private static final char REPLACED = '\uFFFD';
    private static final JsonMapper STRICT = strict();

    private final Set<String> units;

    /**
     * @param units the ids of the plan's field units; any other is refused
     */
    public UnitMessages(Collection<String> units) {
        this.units = Set.copyOf(units);
    }

    /** Reads one message. Never throws, whatever the bytes are. */
    public Decoded decode(String topic, byte[] payload) {
        String[] parts =
                topic.startsWith(ROOT) ? topic.substring(ROOT.length()).split("/", -1) : null;
        if (parts == null || parts.length != 2 || !isFromUnit(parts[1])) {
            return Decoded.refused(
                    RejectionReason.UNKNOWN_TOPIC, "no unit's message belongs on this topic");
        }
        String unit = parts[0];
        if (!units.contains(unit)) {
            return stranger(unit);
        }
        if (payload.length > UnitLimits.MESSAGE_BYTES) {
            return Decoded.refused(
                    RejectionReason.TOO_LARGE,
                    payload.length + " bytes, allowed are " + UnitLimits.MESSAGE_BYTES);
        }
        return parse(unit, parts[1], payload);
    }

    private static Decoded stranger(String unit) {
        return UNIT.matcher(unit).matches()
                ? Decoded.refused(
                        RejectionReason.UNKNOWN_UNIT, "the plan has no field unit " + unit)
                : Decoded.refused(RejectionReason.BAD_UNIT_ID, "a unit id is " + UNIT.pattern());
    }

    private static boolean isFromUnit(String leaf) {
        return switch (leaf) {
            case "edges", "health", "climate", "answer", "applied" -> true;
            default -> false;
        };
    }

    private static Decoded parse(String unit, String leaf, byte[] payload) {
        String text;
        try {
            text = text(payload);
        } catch (CharacterCodingException e) {
            return Decoded.refused(RejectionReason.NOT_UTF8, "the bytes are not UTF-8");
        }
        try {
            JsonNode json = STRICT.readTree(text);
            return json.isMissingNode()
                    ? Decoded.refused(RejectionReason.NOT_JSON, "the message is empty")
                    : read(unit, leaf, json);
        } catch (JsonProcessingException e) {
            String words = e.getOriginalMessage();
            boolean twice = words != null && words.startsWith("Duplicate field");
            return Decoded.refused(
                    twice ? RejectionReason.DUPLICATE_KEY : RejectionReason.NOT_JSON,
                    twice ? "a key stands twice in one object" : "the text is not JSON");
        }
    }

    /** The platform's quick way puts its mark where the bytes are no UTF-8; that is looked into. */
    private static String text(byte[] payload) throws CharacterCodingException {
        String quick = new String(payload, StandardCharsets.UTF_8);
        return quick.indexOf(REPLACED) < 0
                ? quick
                : StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(payload)).toString();
    }

    private static Decoded read(String unit, String leaf, JsonNode json) {
        if (leaf.equals("edges")) {
            return edges(unit, json);
        }
        Fields fields = new Fields(json);
        fields.version(VERSION);
        Decoded decoded =
                switch (leaf) {
                    case "health" -> health(unit, fields);
                    case "climate" -> Decoded.of(climate(unit, fields));
                    case "answer" -> Decoded.of(answer(unit, fields));
                    default -> Decoded.of(applied(unit, fields));
                };
        return fields.rejection().map(Decoded::refused).orElse(decoded);
    }

    private static Decoded edges(String unit, JsonNode json) {
        if (!json.isArray()) {
            Fields fields = new Fields(json);
            Input.Edge edge = edge(unit, fields);
            return fields.rejection().map(Decoded::refused).orElseGet(() -> Decoded.of(edge));
        }
        if (json.isEmpty() || json.size() > UnitLimits.EDGES) {
            return Decoded.refused(
                    RejectionReason.TOO_MANY,
                    json.size() + " edges, allowed are 1 to " + UnitLimits.EDGES);
        }
        List<Input> taken = new ArrayList<>();
        List<Rejection> refused = new ArrayList<>();
        for (JsonNode element : json) {
            Fields fields = new Fields(element);
            Input.Edge edge = edge(unit, fields);
            fields.rejection().ifPresentOrElse(refused::add, () -> taken.add(edge));
        }
        return new Decoded(taken, Optional.empty(), refused);
    }

    private static Input.Edge edge(String unit, Fields fields) {
        fields.version(VERSION);
        return new Input.Edge(
                unit,
                fields.text("boot", BOOT),
                fields.whole("seq", 0, UnitLimits.WHOLE_MAX),
                fields.whole("sensor", 1, UnitLimits.SENSOR_MAX),
                fields.whole("state", 0, 1),
                fields.whole("tick", 0, UnitLimits.TICK_MAX));
    }

    private static Decoded health(String unit, Fields fields) {
        if (fields.has("up") && fields.whole("up", 0, 1) == 0) {
            return Decoded.of(new Input.UnitDown(unit));
        }
        Input.Health health =
                new Input.Health(
                        unit,
                        fields.text("boot", BOOT),
                        fields.whole("tick", 0, UnitLimits.TICK_MAX),
                        fields.whole("nextSeq", 0, UnitLimits.WHOLE_MAX),
                        fields.whole("batteryMillivolts", 0, UnitLimits.BATTERY_MILLIVOLTS_MAX),
                        fields.whole("rssiDbm", UnitLimits.RSSI_DBM_MIN, UnitLimits.RSSI_DBM_MAX),
                        fields.whole("bufferFill", 0, UnitLimits.BUFFER_MAX),
                        fields.whole("lowestFreeMemory", 0, UnitLimits.MEMORY_MAX),
                        fields.text("firmware", FIRMWARE),
                        fields.whole("contract", 1, UnitLimits.CONTRACT_MAX),
                        states(fields),
                        fields.has("accessPoint") ? fields.text("accessPoint", ACCESS_POINT) : "");
        return Decoded.of(health);
    }

    private static List<Integer> states(Fields fields) {
        List<Integer> states = new ArrayList<>();
        for (JsonNode state : fields.array("sensorStates", UnitLimits.SENSORS)) {
            states.add((int) fields.whole("sensorStates", state, -1, 1));
        }
        return states;
    }

    private static Input.Climate climate(String unit, Fields fields) {
        int low = UnitLimits.AIR_CENTI_MIN;
        return new Input.Climate(
                unit,
                fields.whole("centiCelsius", low, UnitLimits.AIR_CENTI_MAX),
                fields.whole("centiPercent", 0, UnitLimits.HUMIDITY_CENTI_MAX),
                fields.wholeOrNull("globeCentiCelsius", low, UnitLimits.GLOBE_CENTI_MAX),
                fields.wholeOrNull("windMmPerS", 0, UnitLimits.WIND_MILLIMETRES_MAX),
                fields.wholeOrNull("solarWm2", 0, UnitLimits.SOLAR_WATTS_MAX),
                fields.whole("tick", 0, UnitLimits.TICK_MAX),
                fields.has("boot") ? fields.text("boot", BOOT) : "");
    }

    private static Decoded.Answer answer(String unit, Fields fields) {
        String id = fields.text("id", EXCHANGE_ID);
        String boot = fields.text("boot", BOOT);
        long received = fields.whole("received", 0, UnitLimits.TICK_MAX);
        long sent = fields.whole("sent", received, UnitLimits.TICK_MAX);
        return new Decoded.Answer(unit, boot, id, received, sent);
    }

    private static Input.SettingsApplied applied(String unit, Fields fields) {
        int version = fields.whole("version", 0, Integer.MAX_VALUE);
        return new Input.SettingsApplied(unit, version, fields.text("refused", REFUSED));
    }

    private static JsonMapper strict() {
        JsonMapper mapper =
                JsonMapper.builder()
                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                        .build();
        mapper.getFactory()
                .setStreamReadConstraints(
                        StreamReadConstraints.builder()
                                .maxNestingDepth(8)
                                .maxNumberLength(40)
                                .build());
        return mapper;
    }
}
