package yardclock.app.pins;

import com.pi4j.io.i2c.I2C;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/**
 * A temperature and humidity sensor of the SHT3x class, one command at a time.
 *
 * <p>Source of every number: Sensirion, <em>Datasheet SHT3x-DIS</em>, version 5 (May 2018), by
 * section. A command is two bytes; each two bytes of an answer are followed by their checksum. A
 * measurement is a single shot without clock stretching, so that a sensor that hangs can't hold the
 * bus: it is asked again after the time a measurement takes at most.
 *
 * <p>One thread. Each method waits milliseconds at most by itself, and as long as the kernel's bus
 * driver takes to give up.
 */
final class Sht3x {
    /** Section 3.3 and table 8: ADDR to ground; to the supply. */
    static final int ADDRESS = 0x44;

    static final int OTHER_ADDRESS = 0x45;

    /** Table 9: single shot, high repeatability, no clock stretching. */
    static final int MEASURE = 0x2400;

    /** Tables 14, 16 and 17. */
    static final int RESET = 0x30A2;

    static final int HEATER_OFF = 0x3066;
    static final int STATUS = 0xF32D;

    /** Table 18. */
    private static final int HEATER_BIT = 1 << 13;

    /** Table 4: at most 15 ms at high repeatability; rounded up for a slow supply. */
    private static final long MEASURING_MILLIS = 20;

    /** Table 4: at most 1 ms after a soft reset. */
    private static final long RESET_MILLIS = 2;

    /** Table 9: at least 1 ms between a command and the reading of its answer. */
    private static final long ANSWER_MILLIS = 1;

    private static final int FULL_SCALE = 65_535;

    private final I2C device;

    Sht3x(I2C device) {
        this.device = device;
    }

    /** Why there is no answer to go by. */
    enum Fault {
        NO_ANSWER("it does not answer"),
        SHORT_ANSWER("its answer is cut short"),
        WRONG_CHECKSUM("its checksum is wrong");

        private final String words;

        Fault(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** An answer that can't be used; nothing is guessed from the part that came. */
    static final class FaultException extends Exception {
        private static final long serialVersionUID = 1L;

        private final Fault fault;

        FaultException(Fault fault, Throwable cause) {
            super(fault.words(), cause);
            this.fault = fault;
        }

        Fault fault() {
            return fault;
        }
    }

    /** Air as read off, 1/100 °C and 1/100 % of saturation. */
    record Air(int centiCelsius, int centiPercent) {
        /**
         * Section 4.13: T = −45 + 175·S/65535, RH = 100·S/65535. Half a hundredth is rounded up;
         * with this scale, which is odd, it never comes to exactly that.
         */
        static Air of(int rawTemperature, int rawHumidity) {
            return new Air(scaled(17_500, rawTemperature) - 4_500, scaled(10_000, rawHumidity));
        }

        private static int scaled(long span, int raw) {
            return (int) ((2 * span * raw + FULL_SCALE) / (2 * FULL_SCALE));
        }
    }

    void heaterOff() throws FaultException {
        send(HEATER_OFF);
    }

    /** Takes the sensor back to its state after power-up, heater off. */
    void reset() throws FaultException, InterruptedException {
        send(RESET);
        TimeUnit.MILLISECONDS.sleep(RESET_MILLIS);
    }

    boolean isHeaterOn() throws FaultException, InterruptedException {
        send(STATUS);
        TimeUnit.MILLISECONDS.sleep(ANSWER_MILLIS);
        return (words(1)[0] & HEATER_BIT) != 0;
    }

    Air measure() throws FaultException, InterruptedException {
        send(MEASURE);
        TimeUnit.MILLISECONDS.sleep(MEASURING_MILLIS);
        int[] words = words(2);
        return Air.of(words[0], words[1]);
    }

    private void send(int command) throws FaultException {
        byte[] bytes = {(byte) (command >> 8), (byte) command};
        try {
            device.write(bytes, 0, bytes.length);
        } catch (RuntimeException e) {
            throw new FaultException(Fault.NO_ANSWER, e);
        }
    }

    /** The words of an answer, each with its checksum behind it. */
    private int[] words(int count) throws FaultException {
        byte[] bytes = new byte[3 * count];
        int came;
        try {
            came = device.read(bytes, 0, bytes.length);
        } catch (RuntimeException e) {
            throw new FaultException(Fault.NO_ANSWER, e);
        }
        if (came < bytes.length) {
            throw new FaultException(came <= 0 ? Fault.NO_ANSWER : Fault.SHORT_ANSWER, null);
        }
        int[] words = new int[count];
        for (int i = 0; i < count; i++) {
            byte[] word = Arrays.copyOfRange(bytes, 3 * i, 3 * i + 2);
            if (checksum(word) != (bytes[3 * i + 2] & 0xFF)) {
                throw new FaultException(Fault.WRONG_CHECKSUM, null);
            }
            words[i] = (word[0] & 0xFF) << 8 | word[1] & 0xFF;
        }
        return words;
    }

    /** Table 20: CRC-8 with polynomial 0x31, begun with 0xFF, nothing mirrored or turned round. */
    static int checksum(byte... bytes) {
        int crc = 0xFF;
        for (byte each : bytes) {
            crc ^= each & 0xFF;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 0x80) != 0 ? crc << 1 ^ 0x31 : crc << 1;
            }
            crc &= 0xFF;
        }
        return crc;
    }
}
