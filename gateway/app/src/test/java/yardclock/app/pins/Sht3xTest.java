package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.pi4j.io.i2c.I2C;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import yardclock.app.pins.Sht3x.Air;
import yardclock.app.pins.Sht3x.Fault;
import yardclock.app.pins.Sht3x.FaultException;
import yardclock.app.pins.VirtualSht3x.Disturbance;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** One command at a time, on Pi4J's mock of a bus. */
class Sht3xTest {
    private final VirtualSht3x twin = new VirtualSht3x();
    private final SensorBus bus = twin.bus();
    private final I2C line = bus.open(ClimateWiring.parse("fu-12"));
    private final Sht3x sensor = new Sht3x(line);

    @AfterEach
    void close() {
        bus.close();
    }

    /** Sensirion, Datasheet SHT3x-DIS, version 5 (May 2018), table 20: CRC(0xBEEF) = 0x92. */
    @Test
    void theChecksumIsTheDataSheets() {
        assertThat(Sht3x.checksum((byte) 0xBE, (byte) 0xEF)).isEqualTo(0x92);
    }

    /** The formulas of section 4.13 in exact fractions, half a hundredth rounded up. */
    @Test
    void everyRawValueBecomesHundredthsByTheDataSheetsFormula() {
        BigDecimal scale = new BigDecimal(65_535);
        for (int raw = 0; raw <= 65_535; raw++) {
            BigDecimal celsius = new BigDecimal(17_500L * raw).divide(scale, 9, RoundingMode.FLOOR);
            BigDecimal percent = new BigDecimal(10_000L * raw).divide(scale, 9, RoundingMode.FLOOR);
            Air expected =
                    new Air(
                            celsius.setScale(0, RoundingMode.HALF_UP).intValueExact() - 4_500,
                            percent.setScale(0, RoundingMode.HALF_UP).intValueExact());
            assertThat(Air.of(raw, raw)).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, -4500, 0", "65535, 13000, 10000", "26214, 2500, 4000", "16852, 0, 2571"})
    void theEndsOfTheScaleAndPlainValuesAreWhatTheyAreByHand(int raw, int celsius, int percent) {
        assertThat(Air.of(raw, raw)).isEqualTo(new Air(celsius, percent));
    }

    @Test
    void aMeasurementIsASingleShotWithoutClockStretching() throws Exception {
        twin.air(0x7000, 0x6000);
        assertThat(sensor.measure()).isEqualTo(Air.of(0x7000, 0x6000));
        assertThat(twin.commands()).containsExactly(0x2400);
    }

    @ParameterizedTest
    @CsvSource({
        "NACK_COMMAND, NO_ANSWER",
        "NACK_ANSWER, NO_ANSWER",
        "EMPTY_ANSWER, NO_ANSWER",
        "SHORT_ANSWER, SHORT_ANSWER",
        "FLIPPED_TEMPERATURE_BIT, WRONG_CHECKSUM",
        "FLIPPED_HUMIDITY_BIT, WRONG_CHECKSUM",
        "LINE_STUCK_HIGH, WRONG_CHECKSUM",
        "LINE_STUCK_LOW, WRONG_CHECKSUM"
    })
    void aDisturbedTransferIsNoReadingAndSaysWhy(Disturbance disturbance, Fault fault)
            throws Exception {
        twin.disturb(disturbance);
        assertThatThrownBy(sensor::measure)
                .isInstanceOfSatisfying(
                        FaultException.class, e -> assertThat(e.fault()).isEqualTo(fault));
        assertThat(sensor.measure()).isEqualTo(Air.of(0x6666, 0x8000));
    }

    @Test
    void theHeaterIsSeenInTheStatusAndPutOff() throws Exception {
        assertThat(sensor.isHeaterOn()).isFalse();
        twin.heater(true);
        assertThat(sensor.isHeaterOn()).isTrue();
        sensor.heaterOff();
        assertThat(sensor.isHeaterOn()).isFalse();
        assertThat(twin.commands()).containsExactly(0xF32D, 0xF32D, 0x3066, 0xF32D);
    }

    @Test
    void aResetPutsTheHeaterOffToo() throws Exception {
        twin.heater(true);
        sensor.reset();
        assertThat(sensor.isHeaterOn()).isFalse();
        assertThat(twin.commands()).containsExactly(0x30A2, 0xF32D);
    }
}
