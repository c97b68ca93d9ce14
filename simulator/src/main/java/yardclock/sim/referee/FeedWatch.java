package yardclock.sim.referee;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.json.Json;
import yardclock.sim.tablets.Stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Listens to the timing feed and gathers every mark a sensor proposed. Safe from any thread. */
public final class FeedWatch {
    private static final Logger LOG = LoggerFactory.getLogger(FeedWatch.class);
    private static final Set<String> BY_SENSOR = Set.of("automatic", "button");
    private static final Set<String> PROPOSING = Set.of("mark-proposed", "mark-changed");

    private final List<Proposal> proposals = new ArrayList<>();

    /** Takes one message of {@code /api/feed}. */
    public void take(Stream.Message message) {
        if (!message.kind().equals("fact")) {
            return;
        }
        try {
            take(Json.mapper().readTree(message.data()));
        } catch (JsonProcessingException e) {
            LOG.error("the feed said what cannot be read: {}", message.data(), e);
        }
    }

    private synchronized void take(JsonNode message) {
        JsonNode fact = message.path("fact");
        String source = fact.path("words").asText("").toLowerCase(Locale.ROOT);
        if (PROPOSING.contains(fact.path("kind").asText("")) && BY_SENSOR.contains(source)) {
            proposals.add(
                    new Proposal(
                            fact.path("number").asInt(),
                            fact.path("station").asText(),
                            fact.path("point").asText(),
                            fact.path("stamp").path("micros").asLong()));
        }
    }

    synchronized List<Proposal> proposals() {
        return List.copyOf(proposals);
    }
}
