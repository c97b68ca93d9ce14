package yardclock.sim.tablets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.sim.stage.LiveStage;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

class LiveTabletTest {
    private final LiveStage stage = new LiveStage(60);
    private StubGateway stub;
    private Gateway gateway;
    private LiveTablet<PostFrame> tablet;

    @BeforeEach
    void open() throws IOException {
        stub = new StubGateway();
        gateway = stub.gateway();
        Tablet.Access access = new Tablet.Access("token", "t-1", "proctor");
        PageClock clock = new PageClock(stage, 1);
        LiveTablet.Page<PostFrame> page = new LiveTablet.Page<>("/api/live/post", PostFrame.class);
        tablet = new LiveTablet<>(stage, gateway, access, clock, page);
        stage.begin();
    }

    @AfterEach
    void close() {
        tablet.close();
        gateway.close();
        stub.close();
        stage.close();
    }

    private void tap(String point) {
        tap(point, new CopyOnWriteArrayList<>());
    }

    private void tap(String point, List<Gateway.Answer> answers) {
        stage.soon(() -> tablet.press(new Act.Tap(12, "low-deck", point), -1, answers::add));
    }

    @Test
    void rulings_go_out_in_order_each_with_its_key_however_often_it_is_sent() {
        stub.answerNext(503, "{\"refused\":\"journal-trouble\"}");
        stub.answerNext(503, "{\"refused\":\"journal-trouble\"}");
        tap("touch");
        tap("finish");
        await().until(() -> stub.rulings.size() == 4);
        assertThat(stub.rulings)
                .extracting(ruling -> ruling.path("act").path("point").asText())
                .containsExactly("touch", "touch", "touch", "finish");
        List<String> keys = stub.rulings.stream().map(r -> r.path("key").asText()).toList();
        assertThat(keys.subList(0, 3)).containsOnly(keys.get(0));
        assertThat(keys.get(3)).isNotEqualTo(keys.get(0));
    }

    @Test
    void a_refusal_reaches_whoever_pressed_and_the_queue_goes_on() {
        List<Gateway.Answer> answers = new CopyOnWriteArrayList<>();
        stub.answerNext(409, "{\"refused\":\"already-ruled\",\"words\":\"Someone has.\"}");
        tap("touch", answers);
        tap("finish", answers);
        await().until(() -> answers.size() == 2);
        assertThat(answers.get(0).isOk()).isFalse();
        assertThat(answers.get(0).refused()).isEqualTo("already-ruled");
        assertThat(answers.get(1).isOk()).isTrue();
    }

    @Test
    void a_stream_that_breaks_is_opened_again_after_the_last_frame_it_had() throws IOException {
        List<PostFrame> seen = new CopyOnWriteArrayList<>();
        stub.show(Frames.free());
        stage.soon(() -> tablet.open(seen::add));
        await().until(() -> !seen.isEmpty());
        assertThat(tablet.isFresh()).isTrue();
        stub.cutStreams();
        await().until(() -> stub.lastIds.size() == 2);
        assertThat(stub.lastIds).containsExactly("", "1");
        await().until(() -> seen.size() == 2);
    }

    @Test
    void a_page_that_hears_nothing_is_not_fresh() {
        assertThat(tablet.isFresh()).isFalse();
    }
}
