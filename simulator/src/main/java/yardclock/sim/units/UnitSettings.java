package yardclock.sim.units;

import java.util.List;

/**
 * How one virtual unit is made.
 *
 * @param restStates the states of sensors 1–8 at power-on, −1 where none is wired
 * @param ratePartsPerBillion how fast its crystal runs
 * @param seed for battery, signal strength and the messages it sends twice
 */
public record UnitSettings(
        String id, List<Integer> restStates, long ratePartsPerBillion, long seed) {
    public UnitSettings {
        restStates = List.copyOf(restStates);
    }
}
