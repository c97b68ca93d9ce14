package yardclock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;

import io.javalin.http.Context;

import yardclock.app.json.Json;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongSupplier;

/** Reads a request's body: JSON, an object, of limited size. Any thread. */
final class Bodies {
    private static final String ARRIVED = "yardclock.arrived";

    private final Refusals refusals;
    private final LongSupplier gatewayMicros;

    Bodies(Refusals refusals, LongSupplier gatewayMicros) {
        this.refusals = refusals;
        this.gatewayMicros = gatewayMicros;
    }

    /**
     * A body and the gateway time at which its last byte was in.
     *
     * @param json an object
     */
    record Body(JsonNode json, long receivedMicros) {}

    /** To be called first of all for a request: its headers are in. */
    void arrived(Context request) {
        request.attribute(ARRIVED, gatewayMicros.getAsLong());
    }

    /** Gateway time at which a request's headers were in. */
    static long arrivedMicros(Context request) {
        Long micros = request.attribute(ARRIVED);
        if (micros == null) {
            throw new IllegalStateException("nobody noted when a request arrived");
        }
        return micros;
    }

    /** The body, or empty when the request was refused already. */
    Optional<Body> read(Context request) throws IOException {
        if (!isJson(request)) {
            refusals.refuse(request, WebRefusal.NOT_JSON);
            return Optional.empty();
        }
        if (request.req().getContentLengthLong() > WebLimits.BODY_BYTES) {
            refusals.refuse(request, WebRefusal.TOO_LARGE);
            return Optional.empty();
        }
        byte[] bytes;
        try (InputStream in = request.req().getInputStream()) {
            bytes = in.readNBytes(WebLimits.BODY_BYTES + 1);
        }
        long receivedMicros = gatewayMicros.getAsLong();
        if (bytes.length > WebLimits.BODY_BYTES) {
            refusals.refuse(request, WebRefusal.TOO_LARGE);
            return Optional.empty();
        }
        return parse(request, bytes).map(json -> new Body(json, receivedMicros));
    }

    private Optional<JsonNode> parse(Context request, byte[] bytes) throws IOException {
        try {
            JsonNode json = Json.mapper().readTree(bytes);
            if (json != null && json.isObject()) {
                return Optional.of(json);
            }
            refusals.refuse(request, WebRefusal.MALFORMED, "Send one JSON object.");
        } catch (JsonProcessingException e) {
            refusals.refuse(request, WebRefusal.MALFORMED, "This is not JSON.");
        }
        return Optional.empty();
    }

    private static boolean isJson(Context request) {
        String type = request.contentType();
        if (type == null) {
            return false;
        }
        String plain = type.split(";", 2)[0].strip();
        return plain.toLowerCase(Locale.ROOT).equals("application/json");
    }
}
