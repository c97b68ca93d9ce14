package yardclock.sim.units;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.sim.stage.VirtualStage;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

class VirtualUnitTest {
    private static final long SECOND = 1_000_000;
    private static final List<Integer> REST = List.of(0, 0, 1, 0, -1, -1, -1, -1);

    private final VirtualStage stage = new VirtualStage(1);
    private final RecordingLink link = new RecordingLink();
    private final VirtualUnit unit =
            new VirtualUnit(stage, new UnitSettings("fu-01", REST, 25_000, 3), link);

    @BeforeEach
    void power() {
        unit.powerOn();
    }

    private void senseOften(int edges) {
        for (int i = 0; i < edges; i++) {
            stage.advanceMicros(1_000);
            unit.sense(1, (i + 1) % 2, stage.nowMicros());
        }
    }

    private String boot() {
        return unit.counts().boot();
    }

    private void kept(long upto) {
        link.say("kept", "{\"v\":1,\"boot\":\"" + boot() + "\",\"upto\":" + upto + "}");
        stage.settle();
    }

    @Test
    void an_edge_is_sent_at_once_and_alone_while_the_link_keeps_up() {
        link.comeUp();
        unit.sense(2, 1, stage.nowMicros());
        assertThat(link.messages("edges")).allMatch(JsonNode::isObject);
        JsonNode edge = link.edges().get(0);
        assertThat(edge.path("v").asInt()).isEqualTo(1);
        assertThat(edge.path("boot").asText()).matches("[0-9a-f]{16}");
        assertThat(edge.path("seq").asInt()).isZero();
        assertThat(edge.path("sensor").asInt()).isEqualTo(2);
        assertThat(edge.path("state").asInt()).isEqualTo(1);
    }

    @Test
    void a_backlog_goes_out_in_arrays_of_at_most_32() {
        senseOften(100);
        link.comeUp();
        link.acknowledgeAll();
        assertThat(link.messages("edges")).allMatch(message -> message.size() <= 32);
        assertThat(sequences()).hasSize(100);
        assertThat(link.messages("edges").size()).isBetween(4, 8);
    }

    private TreeSet<Long> sequences() {
        TreeSet<Long> sequences = new TreeSet<>();
        link.edges().forEach(edge -> sequences.add(edge.path("seq").asLong()));
        return sequences;
    }

    @Test
    void only_kept_empties_the_buffer_and_not_the_brokers_acknowledgement() {
        link.comeUp();
        senseOften(5);
        link.acknowledgeAll();
        assertThat(unit.counts().open()).isEqualTo(5);
        kept(3);
        assertThat(unit.counts().open()).isEqualTo(1);
        link.say("kept", "{\"v\":1,\"boot\":\"0000000000000000\",\"upto\":4}");
        stage.settle();
        assertThat(unit.counts().open()).isEqualTo(1);
    }

    @Test
    void after_a_broken_link_everything_not_kept_is_sent_again_in_order() {
        link.comeUp();
        senseOften(10);
        kept(5);
        link.goDown();
        senseOften(3);
        link.sent.clear();
        link.comeUp();
        link.acknowledgeAll();
        List<Long> sent = new ArrayList<>(sequences());
        assertThat(sent).containsExactly(6L, 7L, 8L, 9L, 10L, 11L, 12L);
    }

    @Test
    void a_range_that_is_asked_for_comes_again_and_nothing_beyond_it() {
        link.comeUp();
        senseOften(20);
        link.acknowledgeAll();
        link.sent.clear();
        link.say("resend", "{\"v\":1,\"boot\":\"" + boot() + "\",\"from\":4,\"to\":7}");
        stage.settle();
        assertThat(sequences()).containsExactly(4L, 5L, 6L, 7L);
    }

    @Test
    void what_is_not_kept_for_seconds_is_sent_once_more() {
        link.comeUp();
        senseOften(2);
        link.acknowledgeAll();
        link.sent.clear();
        stage.advanceMicros(10 * SECOND);
        assertThat(sequences()).containsExactly(0L, 1L);
    }

    @Test
    void ticks_count_from_the_boot_on_a_crystal_that_runs_fast() {
        link.comeUp();
        unit.sense(1, 1, stage.nowMicros());
        stage.advanceMicros(1_000 * SECOND);
        unit.sense(1, 0, stage.nowMicros());
        link.acknowledgeAll();
        List<JsonNode> edges = link.edges();
        long first = edges.get(0).path("tick").asLong();
        long last = edges.get(edges.size() - 1).path("tick").asLong();
        // 25 ppm of 1000 s are 25 ms; one microsecond for rounding.
        assertThat(last - first).isBetween(1_000_025_000L - 1, 1_000_025_000L + 1);
    }

    @Test
    void a_question_is_answered_the_moment_it_arrives() {
        link.comeUp();
        stage.advanceMicros(SECOND);
        link.say("ask", "{\"v\":1,\"id\":\"q1\",\"gateway\":5}");
        JsonNode answer = link.messages("answer").get(0);
        assertThat(answer.path("id").asText()).isEqualTo("q1");
        assertThat(answer.path("boot").asText()).isEqualTo(boot());
        assertThat(answer.path("sent").asLong())
                .isGreaterThanOrEqualTo(answer.path("received").asLong());
    }

    @Test
    void an_output_that_was_shown_says_so_with_an_edge_of_its_own_number() {
        List<String> shown = new ArrayList<>();
        unit.onShown((what, at) -> shown.add(what + " at " + at));
        link.comeUp();
        stage.advanceMicros(SECOND);
        link.say("show", "{\"v\":1,\"output\":9,\"what\":\"start\",\"expiresMs\":800}");
        stage.settle();
        assertThat(shown).containsExactly("start at " + SECOND);
        stage.advanceMicros(SECOND);
        List<String> edges =
                link.edges().stream()
                        .map(e -> e.path("sensor").asInt() + "=" + e.path("state").asInt())
                        .distinct()
                        .toList();
        assertThat(edges).containsExactly("9=1", "9=0");
    }

    @Test
    void it_says_which_access_point_it_is_at_and_says_so_at_once_when_that_changes() {
        link.comeUp();
        stage.settle();
        unit.roamTo("02:00:00:00:00:02");
        assertThat(link.messages("health"))
                .extracting(h -> h.path("accessPoint").asText())
                .containsSubsequence("02:00:00:00:00:01", "02:00:00:00:00:02");
    }

    @Test
    void health_comes_every_two_seconds_and_names_the_next_sequence_number() {
        link.comeUp();
        senseOften(3);
        link.sent.clear();
        stage.advanceMicros(20 * SECOND);
        List<JsonNode> health = link.messages("health");
        assertThat(health).hasSize(10);
        assertThat(health).allMatch(h -> h.path("nextSeq").asInt() == 3);
        assertThat(health.get(0).path("sensorStates").toString())
                .isEqualTo("[1,0,1,0,-1,-1,-1,-1]");
        assertThat(link.sent)
                .filteredOn(m -> m.name().equals("health"))
                .allMatch(m -> m.retained());
    }

    @Test
    void settings_are_answered_with_the_version_now_in_force() {
        link.comeUp();
        link.say("settings", "{\"v\":1,\"version\":7,\"sensors\":[{\"number\":1}]}");
        stage.settle();
        assertThat(link.messages("applied").get(0).path("version").asInt()).isEqualTo(7);
        assertThat(link.messages("applied").get(0).path("refused").asText()).isEmpty();
    }

    @Test
    void what_is_not_of_this_contract_is_ignored() {
        link.comeUp();
        link.sent.clear();
        link.say("show", "{\"v\":2,\"output\":9,\"what\":\"start\",\"expiresMs\":800}");
        link.say("show", "no JSON");
        link.say("show", "{\"v\":1,\"output\":3,\"what\":\"start\",\"expiresMs\":800}");
        stage.settle();
        assertThat(link.sent).isEmpty();
    }

    @Test
    void two_starts_are_two_boots() {
        VirtualUnit again =
                new VirtualUnit(stage, new UnitSettings("fu-01", REST, 25_000, 3), link);
        assertThat(again.counts().boot()).isNotEqualTo(boot());
    }
}
