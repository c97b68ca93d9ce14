package yardclock.app.pins;

import java.util.ArrayList;
import java.util.List;

/**
 * What is wired to the gateway's own board.
 *
 * @param pins sensors on GPIO lines, or null for none
 * @param climates climate sensors on I²C, each as a unit of its own
 * @param outputs lamps, horn and dead-man on GPIO lines, or null for none
 */
public record BoardWiring(PinMap pins, List<ClimateWiring> climates, OutputMap outputs) {
    public static final BoardWiring NONE = new BoardWiring(null, List.of(), null);

    /** The header's own I²C pins, which the board's bus 1 takes. */
    private static final List<Integer> LINES_OF_BUS_1 = List.of(2, 3);

    /** Two places of one unit could not be told apart, and one sensor is read by one. */
    public BoardWiring {
        climates = List.copyOf(climates);
        List<ClimateWiring> before = new ArrayList<>();
        for (ClimateWiring climate : climates) {
            for (ClimateWiring other : before) {
                check(climate, other);
            }
            before.add(climate);
        }
        if (outputs != null && pins != null) {
            outputs.requireFree(pins.lineOfSensor().values(), "a sensor's");
        }
        boolean hasBus1 = climates.stream().anyMatch(climate -> climate.bus() == 1);
        if (hasBus1) {
            checkBus1(pins, outputs);
        }
    }

    private static void checkBus1(PinMap pins, OutputMap outputs) {
        if (outputs != null) {
            outputs.requireFree(LINES_OF_BUS_1, "I2C bus 1's");
        }
        for (int line : LINES_OF_BUS_1) {
            if (pins != null && pins.lineOfSensor().containsValue(line)) {
                throw new IllegalArgumentException(
                        "line " + line + " is both a sensor's and I2C bus 1's");
            }
        }
    }

    private static void check(ClimateWiring climate, ClimateWiring other) {
        if (climate.unit().equals(other.unit())) {
            throw new IllegalArgumentException(
                    "two climate sensors speak as " + climate.unit() + ": each needs its own unit");
        }
        if (climate.isAtPlaceOf(other)) {
            throw new IllegalArgumentException(
                    "the " + climate.words() + " and that of " + other.unit() + " are one sensor");
        }
    }
}
