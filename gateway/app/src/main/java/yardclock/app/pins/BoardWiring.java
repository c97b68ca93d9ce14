package yardclock.app.pins;

import java.util.ArrayList;
import java.util.List;

/**
 * What is wired to the gateway's own board.
 *
 * @param pins sensors on GPIO lines, or null for none
 * @param climates climate sensors on I²C, each as a unit of its own
 */
public record BoardWiring(PinMap pins, List<ClimateWiring> climates) {
    public static final BoardWiring NONE = new BoardWiring(null, List.of());

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

    public boolean isEmpty() {
        return pins == null && climates.isEmpty();
    }
}
