package yardclock.app.pins;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.io.i2c.I2CProviderBase;
import com.pi4j.plugin.mock.provider.i2c.MockI2C;
import com.pi4j.plugin.mock.provider.i2c.MockI2CProvider;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * A sensor behind Pi4J's mock of a bus: it takes commands, has a heater and a status, and answers
 * with what is to be read, or as a disturbed line would. The checksums are from a table of its own.
 */
final class VirtualSht3x {
    static final String PROVIDER = "virtual-sht3x";

    private final List<Integer> commands = new ArrayList<>();
    private final Deque<Disturbance> disturbances = new ArrayDeque<>();
    private int rawTemperature = 0x6666;
    private int rawHumidity = 0x8000;
    private boolean isHeaterOn;
    private boolean isHeaterStuck;
    private boolean isGone;
    private int opened;

    enum Disturbance {
        NACK_COMMAND,
        NACK_ANSWER,
        EMPTY_ANSWER,
        SHORT_ANSWER,
        FLIPPED_TEMPERATURE_BIT,
        FLIPPED_HUMIDITY_BIT,
        LINE_STUCK_HIGH,
        LINE_STUCK_LOW
    }

    synchronized void air(int temperature, int humidity) {
        rawTemperature = temperature;
        rawHumidity = humidity;
    }

    /** From now on, in turn, one for each measurement. */
    synchronized void disturb(Disturbance... next) {
        disturbances.addAll(List.of(next));
    }

    synchronized void heater(boolean on) {
        isHeaterOn = on;
    }

    synchronized void heaterStuck() {
        isHeaterStuck = true;
        isHeaterOn = true;
    }

    synchronized void gone(boolean gone) {
        isGone = gone;
    }

    synchronized List<Integer> commands() {
        return List.copyOf(commands);
    }

    synchronized long count(int command) {
        return commands.stream().filter(each -> each == command).count();
    }

    synchronized int opened() {
        return opened;
    }

    /** A bus with this sensor on it; each opening is a context of its own. */
    SensorBus bus() {
        synchronized (this) {
            opened++;
        }
        Context context = Pi4J.newContextBuilder().noAutoDetect().add(new Provider(this)).build();
        return new SensorBus(context, PROVIDER);
    }

    private synchronized byte[] take(int command) {
        if (isGone) {
            throw new Pi4JException("Remote I/O error");
        }
        boolean isMeasuring = command == Sht3x.MEASURE;
        Disturbance disturbance = isMeasuring ? disturbances.poll() : null;
        if (disturbance == Disturbance.NACK_COMMAND) {
            throw new Pi4JException("Remote I/O error");
        }
        commands.add(command);
        return switch (command) {
            case Sht3x.MEASURE -> disturbed(disturbance, answer(rawTemperature, rawHumidity));
            case Sht3x.STATUS -> answer(0x8010 | (isHeaterOn ? 0x2000 : 0));
            case Sht3x.HEATER_OFF, Sht3x.RESET -> {
                isHeaterOn = isHeaterStuck;
                yield new byte[0];
            }
            default -> throw new Pi4JException("no such command: " + command);
        };
    }

    private static byte[] disturbed(Disturbance disturbance, byte[] answer) {
        if (disturbance == null) {
            return answer;
        }
        switch (disturbance) {
            case NACK_COMMAND -> throw new IllegalStateException("was no command");
            case NACK_ANSWER -> {
                return null;
            }
            case EMPTY_ANSWER -> {
                return new byte[0];
            }
            case SHORT_ANSWER -> {
                return Arrays.copyOf(answer, 4);
            }
            case FLIPPED_TEMPERATURE_BIT -> answer[1] ^= 0x10;
            case FLIPPED_HUMIDITY_BIT -> answer[3] ^= 0x01;
            case LINE_STUCK_HIGH -> Arrays.fill(answer, (byte) 0xFF);
            case LINE_STUCK_LOW -> Arrays.fill(answer, (byte) 0);
        }
        return answer;
    }

    static byte[] answer(int... words) {
        byte[] bytes = new byte[3 * words.length];
        for (int i = 0; i < words.length; i++) {
            bytes[3 * i] = (byte) (words[i] >> 8);
            bytes[3 * i + 1] = (byte) words[i];
            bytes[3 * i + 2] = (byte) remainder(words[i]);
        }
        return bytes;
    }

    /** By long division of the 16 bits, the 8 of the beginning put in front, by 0x131. */
    private static int remainder(int word) {
        long dividend = (long) (word ^ 0xFF00) << 8;
        for (int at = 23; at >= 8; at--) {
            if ((dividend >> at & 1) != 0) {
                dividend ^= 0x131L << (at - 8);
            }
        }
        return (int) dividend;
    }

    private static final class Provider extends I2CProviderBase implements MockI2CProvider {
        private final VirtualSht3x sensor;

        Provider(VirtualSht3x sensor) {
            super(PROVIDER, "A sensor on a mock bus");
            this.sensor = sensor;
        }

        @Override
        public I2C create(I2CConfig config) {
            Line line = new Line(this, config, sensor);
            context().registry().add(line);
            return line;
        }
    }

    /** The mock gives back what was put into it, first in, first out: here, the answers. */
    private static final class Line extends MockI2C {
        private final VirtualSht3x sensor;
        private boolean isDeaf;

        Line(Provider provider, I2CConfig config, VirtualSht3x sensor) {
            super(provider, config);
            this.sensor = sensor;
        }

        @Override
        public int write(byte[] bytes, int offset, int length) {
            if (length != 2) {
                throw new Pi4JException("a command has two bytes");
            }
            raw.clear();
            byte[] answer = sensor.take((bytes[offset] & 0xFF) << 8 | bytes[offset + 1] & 0xFF);
            isDeaf = answer == null;
            if (!isDeaf && answer.length > 0) {
                super.write(answer, 0, answer.length);
            }
            return length;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) {
            if (isDeaf) {
                throw new Pi4JException("Remote I/O error");
            }
            return super.read(buffer, offset, length);
        }
    }
}
