package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.pins.Sht3x.Air;
import yardclock.app.pins.VirtualSht3x.Disturbance;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.ExamPlan;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** From the sensor on a mock bus to the journal and the heat watch, on a real lane. */
class ClimateSensorTest {
    /** At this speed one minute of exam time is a second: a round, and the heater's cooling. */
    private static final int SPEED = 60;

    private static final String UNIT = "fu-12";
    private static final String OTHER_UNIT = "fu-11";

    @TempDir Path directory;

    private final VirtualSht3x twin = new VirtualSht3x();
    private final ExamPlan plan = DemoPlan.plan().plan();
    private final List<AutoCloseable> opened = new ArrayList<>();
    private LiveLane yard;

    @BeforeEach
    void open() throws Exception {
        yard = new LiveLane(directory, SPEED, (engine, view) -> {});
    }

    @AfterEach
    void close() throws Exception {
        for (AutoCloseable each : opened) {
            each.close();
        }
        yard.close();
    }

    @Test
    void whatTheSensorReadsIsJournalledAndReachesTheHeatWatch() throws Exception {
        twin.air(0x7000, 0x6000);
        ClimateSensor sensor = start(UNIT, twin);
        awaitKept(sensor, 1);
        Input.Climate first = yard.journalled(Input.Climate.class).get(0);
        Air air = Air.of(0x7000, 0x6000);
        assertThat(first.source()).isEqualTo(UNIT);
        assertThat(new Air(first.centiCelsius(), first.centiPercent())).isEqualTo(air);
        assertThat(first.globeCentiCelsius()).isNull();
        assertThat(first.boot()).isEqualTo(yard.journalled(Input.Health.class).get(0).boot());
        assertThat(yard.ask(ClimateSensorTest::shown)).isEqualTo(air);
        assertThat(yard.troubles.words()).isEmpty();
    }

    @Test
    void theHeaterIsPutOffBeforeTheFirstReading() throws Exception {
        awaitKept(start(UNIT, twin), 1);
        assertThat(twin.commands()).startsWith(Sht3x.STATUS, Sht3x.HEATER_OFF, Sht3x.MEASURE);
    }

    @Test
    void aDisturbedTransferOrTwoIsTriedAgainAndOnlySoundReadingsCome() throws Exception {
        twin.disturb(Disturbance.NACK_ANSWER, Disturbance.FLIPPED_HUMIDITY_BIT);
        ClimateSensor sensor = start(UNIT, twin);
        awaitKept(sensor, 1);
        assertThat(sensor.count(ClimateOutcome.NO_ANSWER)).isEqualTo(1);
        assertThat(sensor.count(ClimateOutcome.WRONG_CHECKSUM)).isEqualTo(1);
        assertThat(twin.count(Sht3x.RESET)).isZero();
        assertOnlySoundReadings();
    }

    @Test
    void afterThreeFailuresItIsResetIsSaidToBeSilentAndComesBack() throws Exception {
        twin.disturb(Disturbance.SHORT_ANSWER, Disturbance.SHORT_ANSWER, Disturbance.SHORT_ANSWER);
        ClimateSensor sensor = start(UNIT, twin);
        await().until(() -> !yard.troubles.words().isEmpty());
        assertThat(yard.troubles.words())
                .singleElement()
                .asString()
                .contains("fu-12", "0x44", "cut short", "Nothing is put in its place");
        await().until(() -> twin.count(Sht3x.RESET) == 1);
        assertThat(yard.journalled(Input.Climate.class)).isEmpty();
        awaitKept(sensor, 1);
        assertThat(sensor.count(ClimateOutcome.SHORT_ANSWER)).isEqualTo(3);
        assertThat(yard.troubles.words()).isEmpty();
        assertOnlySoundReadings();
    }

    @Test
    void aSensorThatIsPulledOutIsSilentAndReadsAgainWhenItIsBack() throws Exception {
        ClimateSensor sensor = start(UNIT, twin);
        awaitKept(sensor, 1);
        twin.gone(true);
        await().until(() -> !yard.troubles.words().isEmpty());
        long kept = sensor.count(ClimateOutcome.KEPT);
        long unanswered = sensor.count(ClimateOutcome.NO_ANSWER);
        await().until(() -> sensor.count(ClimateOutcome.NO_ANSWER) >= unanswered + 3);
        assertThat(yard.journalled(Input.Climate.class)).hasSize((int) kept);
        twin.gone(false);
        awaitKept(sensor, kept + 1);
        assertThat(yard.troubles.words()).isEmpty();
    }

    @Test
    void aHeaterThatWasLeftOnIsPutOffAndNothingIsReadUntilItIsCold() throws Exception {
        twin.heater(true);
        ClimateSensor sensor = start(UNIT, twin);
        await().until(() -> sensor.count(ClimateOutcome.HEATER_ON) >= 1);
        assertThat(yard.troubles.words()).singleElement().asString().contains("heater was on");
        assertThat(twin.count(Sht3x.HEATER_OFF)).isPositive();
        assertThat(twin.count(Sht3x.MEASURE)).isZero();
        awaitKept(sensor, 1);
        assertThat(yard.troubles.words()).isEmpty();
    }

    @Test
    void aHeaterThatStaysOnNeverGivesAReading() throws Exception {
        twin.heaterStuck();
        ClimateSensor sensor = start(UNIT, twin);
        await().until(() -> sensor.count(ClimateOutcome.HEATER_ON) >= 4);
        assertThat(twin.count(Sht3x.MEASURE)).isZero();
        assertThat(yard.journalled(Input.Climate.class)).isEmpty();
    }

    @Test
    void withoutABusItSaysSoLooksAgainAndEverythingElseRunsOn() throws Exception {
        ClimateSensor sensor = wire(UNIT);
        sensor.start();
        await().until(() -> sensor.count(ClimateOutcome.NO_BUS) >= 2);
        assertThat(yard.troubles.words()).singleElement().asString().contains("bus of this board");
        assertThat(yard.ask(Engine::lastEntry)).isPositive();
        assertThat(yard.journalled(Input.Climate.class)).isEmpty();
    }

    @Test
    void aSecondPlaceIsASecondSourceOfReadings() throws Exception {
        VirtualSht3x elsewhere = new VirtualSht3x();
        elsewhere.air(0x5800, 0x7000);
        awaitKept(start(UNIT, twin), 1);
        awaitKept(start(OTHER_UNIT, elsewhere), 1);
        assertThat(yard.journalled(Input.Climate.class))
                .extracting(Input.Climate::source)
                .contains(UNIT, OTHER_UNIT);
        assertThat(yard.troubles.words()).isEmpty();
    }

    @Test
    void itStopsAtOnceAlsoInTheMiddleOfAWait() throws Exception {
        ClimateSensor sensor = start(UNIT, twin);
        awaitKept(sensor, 1);
        long begun = System.nanoTime();
        sensor.close();
        assertThat(System.nanoTime() - begun).isLessThan(TimeUnit.SECONDS.toNanos(2));
        int commands = twin.commands().size();
        long entries = yard.ask(Engine::lastEntry);
        await().until(() -> yard.ask(Engine::lastEntry) > entries + 1);
        assertThat(twin.commands()).hasSize(commands);
    }

    private void assertOnlySoundReadings() throws Exception {
        assertThat(yard.journalled(Input.Climate.class))
                .isNotEmpty()
                .extracting(each -> new Air(each.centiCelsius(), each.centiPercent()))
                .containsOnly(Air.of(0x6666, 0x8000));
    }

    private static Air shown(Engine engine) {
        var head = engine.watch(new Engine.View(0, List.of())).head();
        return new Air(head.heat().centiCelsius(), head.heat().centiPercent());
    }

    private void awaitKept(ClimateSensor sensor, long count) {
        await().until(() -> sensor.count(ClimateOutcome.KEPT) >= count);
    }

    private ClimateSensor start(String id, VirtualSht3x at) {
        ClimateSensor sensor = wire(id);
        sensor.start(at::bus);
        return sensor;
    }

    private ClimateSensor wire(String id) {
        LocalUnit unit =
                new LocalUnit(
                        PinMap.none(id),
                        plan.fieldUnit(id).orElseThrow(),
                        yard.lane,
                        yard.clock,
                        yard.troubles);
        ClimateSensor sensor =
                new ClimateSensor(
                        ClimateWiring.parse(id), unit, yard.lane, yard.clock, yard.troubles);
        unit.start(new BoardPins());
        opened.add(sensor);
        opened.add(unit);
        return sensor;
    }
}
