package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;

import java.util.List;

/** Pages whose presses are read as the gateway reads them. */
class WithPresses extends WithPages {
    final Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }

    final void awaitActs(Act... acts) {
        await().untilAsserted(() -> assertThat(acts()).isEqualTo(List.of(acts)));
    }

    final List<Act> acts() {
        return server.rulings().stream().map(WithPresses::act).toList();
    }

    private static Act act(JsonNode ruling) {
        try {
            return Json.mapper().treeToValue(ruling.path("act"), Act.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(ruling.toString(), e);
        }
    }
}
