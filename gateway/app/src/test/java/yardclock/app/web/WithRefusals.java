package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;

import yardclock.app.json.Json;

import java.net.http.HttpResponse;

/** A gateway's web side under test, whose refusals all have the one form. */
class WithRefusals {
    final WebBench bench = new WebBench();

    @AfterEach
    void close() {
        bench.close();
    }

    static String ruling(String act) {
        return "{\"key\":\"k1\",\"deviceMicros\":5,\"basis\":-1,\"act\":" + act + "}";
    }

    final void refused(HttpResponse<String> answer, int status, String reason) throws Exception {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/json");
        JsonNode body = Json.mapper().readTree(answer.body());
        assertThat(body.path("refused").asText()).isEqualTo(reason);
        assertThat(body.path("words").asText()).isNotEmpty();
        assertThat(answer.body()).doesNotContain("Exception").doesNotContain("yardclock.");
        assertThat(bench.refused).contains(reason);
    }
}
