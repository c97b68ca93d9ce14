package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.pi4j.io.gpio.digital.DigitalState;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.lane.Inbox.Receipt;
import yardclock.core.board.Head.CourseStatus;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Dead-man, lamps, horn and the wired stop button, on mock lines and a real lane. */
class OutputsTest {
    private static final int BUTTON_LINE = 17;

    /** Longer than a pulse and all that an idle lane takes to the next. */
    private static final Duration SOME_PULSES = Duration.ofMillis(3_500);

    @TempDir Path directory;

    private final MockOutputs board = new MockOutputs();
    private final AtomicInteger pulses = new AtomicInteger();
    private OutputsBench bench;
    private LocalUnit unit;

    @BeforeEach
    void open() throws Exception {
        bench = new OutputsBench(directory, board);
        board.onRise(OutputJob.PULSE, pulses::incrementAndGet);
    }

    @AfterEach
    void close() throws Exception {
        if (unit != null) {
            unit.close();
        }
        bench.close();
        board.close();
    }

    @Test
    void whileTheLaneTurnsThePulseGoesOnAndRunHasPower() {
        awaitPulses(3);
        assertThat(pulses.get()).isLessThanOrEqualTo(bench.looks() + 1);
        await().until(() -> board.isOn(OutputJob.RUN) && board.isOn(OutputJob.QUIET));
        assertThat(board.isOn(OutputJob.HEAT)).as("no reading yet: not known").isFalse();
    }

    @Test
    void aStopEndsThePulseTakesRunsPowerAndSoundsTheHornAndARestartBringsThemBack()
            throws Exception {
        awaitPulses(1);
        enrolSafety();
        rule("stop", new Act.StopAll("she fell"));
        await().until(() -> !board.isOn(OutputJob.RUN) && !board.isOn(OutputJob.QUIET));
        assertNoPulseWhileTheLaneLooksOn();
        rule("restart", new Act.Restart());
        int stopped = pulses.get();
        await().until(() -> pulses.get() > stopped && board.isOn(OutputJob.RUN));
        assertThat(board.isOn(OutputJob.RELEASE)).as("still held").isFalse();
    }

    @Test
    void theWiredButtonStopsByItsNameAndItsEdgeIsJournalledFirst() throws Exception {
        awaitPulses(1);
        wireButton();
        board.input(BUTTON_LINE, DigitalState.HIGH);
        await().until(() -> status() == CourseStatus.STOPPED);
        await().until(() -> !board.isOn(OutputJob.RUN));
        Input.Edge press =
                bench.lane().journalled(Input.Edge.class).stream()
                        .filter(edge -> edge.state() == 1)
                        .findFirst()
                        .orElseThrow();
        assertThat(press.unit() + "/" + press.sensor() + "=" + press.state())
                .isEqualTo("fu-12/8=1");
        assertThat(bench.lane().ask(OutputsTest::words))
                .isEqualTo("Stopped by Stop at the tower (fu-12/8)");
        assertNoPulseWhileTheLaneLooksOn();
    }

    @Test
    void aLaneThatHangsGivesNoPulseAndAllLosesItsPowerUntilItGoesOn() {
        awaitPulses(1);
        CountDownLatch hung = new CountDownLatch(1);
        CompletableFuture<Boolean> hanging = bench.lane().lane.ask(engine -> isLetGo(hung));
        await().until(() -> !board.isOn(OutputJob.RUN) && !board.isOn(OutputJob.QUIET));
        int before = pulses.get();
        await().during(SOME_PULSES).until(() -> pulses.get() == before);
        hung.countDown();
        await().until(() -> hanging.isDone() && pulses.get() > before);
        await().until(() -> board.isOn(OutputJob.RUN));
    }

    @Test
    void aLaneThatHasDiedGivesNoPulse() {
        awaitPulses(1);
        var unused =
                bench.lane()
                        .lane
                        .ask(
                                engine -> {
                                    throw new AssertionError("as a test has it");
                                });
        await().until(() -> !bench.lane().deaths.isEmpty());
        int before = pulses.get();
        await().during(SOME_PULSES).until(() -> pulses.get() <= before + 1);
        assertThat(board.isOn(OutputJob.RUN)).isFalse();
    }

    @Test
    void whereNothingCanBeKeptAStopCouldNotBeEitherAndThePulseEnds() {
        awaitPulses(1);
        bench.lane().loseJournal();
        offer(new Input.UnitDown(LiveLane.UNIT));
        await().until(() -> !board.isOn(OutputJob.RUN));
        assertNoPulseWhileTheLaneLooksOn();
    }

    @Test
    void closingTakesThePowerFromEveryLineAtOnce() {
        awaitPulses(1);
        bench.outputs().close();
        int before = pulses.get();
        for (OutputJob job : OutputJob.values()) {
            assertThat(board.isOn(job)).as("%s", job).isFalse();
        }
        int looks = bench.looks();
        await().until(() -> bench.looks() >= looks + 3);
        assertThat(pulses.get()).isEqualTo(before);
    }

    @Test
    void aGatewayThatIsKilledGivesNoPulseAnyMore() throws Exception {
        Path day = Files.createDirectory(directory.resolve("other"));
        Path file = directory.resolve("pulses");
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                PulseProcess.class.getName(),
                                day.toString(),
                                file.toString())
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try {
            await().until(() -> Files.exists(file) && Files.size(file) >= 3);
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        long killed = Files.size(file);
        await().during(SOME_PULSES).until(() -> Files.size(file) == killed);
    }

    @Test
    void offABoardItIsSaidAndNothingElseHappens() {
        Outputs none =
                new Outputs(OutputMap.parse("pulse=5"), bench.lane().clock, bench.lane().troubles);
        none.start(new BoardPins());
        assertThat(bench.lane().troubles.of(Outputs.TROUBLE))
                .contains("lamps and horn")
                .contains("everything else runs on");
        none.close();
        awaitPulses(1);
    }

    /** The lane looks at the state again and again, and none of these looks lets it rise. */
    private void assertNoPulseWhileTheLaneLooksOn() {
        int before = pulses.get();
        int looks = bench.looks();
        await().until(() -> bench.looks() >= looks + 4);
        assertThat(pulses.get()).isEqualTo(before);
    }

    private void awaitPulses(int more) {
        int before = pulses.get();
        await().until(() -> pulses.get() >= before + more);
    }

    private static boolean isLetGo(CountDownLatch hung) {
        try {
            return hung.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private void wireButton() {
        unit =
                new LocalUnit(
                        PinMap.parse(LiveLane.UNIT + ":8=" + BUTTON_LINE),
                        bench.lane().plan.fieldUnit(LiveLane.UNIT).orElseThrow(),
                        bench.lane().lane,
                        bench.lane().clock,
                        bench.lane().troubles);
        unit.start(board.pins());
    }

    private CourseStatus status() throws Exception {
        return bench.lane()
                .ask(engine -> engine.crew(new Engine.View(0, List.of())).head().course());
    }

    private static String words(Engine engine) {
        return engine.crew(new Engine.View(0, List.of())).head().courseWords();
    }

    private void enrolSafety() {
        offer(new Input.CodeIssued("code", Role.SAFETY, ""));
        offer(new Input.Enrolled("safety1", "Ines", Role.SAFETY, "code", "token"));
    }

    private void rule(String key, Act act) {
        Receipt receipt = offer(new Input.Ruling(key, "safety1", "", 0, 0, -1, act));
        assertThat(receipt.outcomes().get(0).verdict().refusal()).isNull();
    }

    private Receipt offer(Input input) {
        CompletableFuture<Receipt> kept = new CompletableFuture<>();
        assertThat(bench.lane().lane.offer(input, kept::complete)).isTrue();
        return kept.orTimeout(30, TimeUnit.SECONDS).join();
    }
}
