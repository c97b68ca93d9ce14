package yardclock.app.web;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;

import java.nio.charset.StandardCharsets;

/** The bytes of server-sent messages, as the HTML standard's "event stream format" has them. */
final class SseText {
    static final String CONTENT_TYPE = "text/event-stream";
    private static final byte[] ALIVE = ": alive\n\n".getBytes(StandardCharsets.UTF_8);

    private SseText() {}

    /** A comment that readers skip; shared, so never change it. */
    static byte[] alive() {
        return ALIVE;
    }

    /** One message without a number, which no reader asks to go on from. */
    static byte[] message(String name, Object data) {
        return text("event: " + name, data);
    }

    /** One message; the mapper writes no line breaks, so the data is one line. */
    static byte[] message(String name, long id, Object data) {
        return text("event: " + name + "\nid: " + id, data);
    }

    private static byte[] text(String head, Object data) {
        try {
            String json = Json.mapper().writeValueAsString(data);
            String text = head + "\ndata: " + json + "\n\n";
            return text.getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("frames and facts always become JSON", e);
        }
    }
}
