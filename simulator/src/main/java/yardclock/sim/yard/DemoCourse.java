package yardclock.sim.yard;

import java.util.Map;
import java.util.SplittableRandom;

/** Which choreography belongs to which station of the demo day's plan. Immutable. */
public final class DemoCourse {
    private static final Map<String, Choreography> STATIONS =
            Map.of(
                    "hydrant-walk", CarryStations::hydrantWalk,
                    "mannequin-drag", CarryStations::mannequinDrag,
                    "pike-poles", CarryStations::pikePoles,
                    "low-deck", LiftStations::lowDeck,
                    "rope-bag", LiftStations::ropeBag,
                    "fan-carry", CarryStations::fanCarry,
                    "wedge-drive", LiftStations::wedgeDrive,
                    "ground-ladder", LiftStations::groundLadder,
                    "roll-up", LiftStations::rollUp);

    private DemoCourse() {}

    public static Script perform(String station, long takesMicros, SplittableRandom random) {
        return STATIONS.get(station).perform(takesMicros, random);
    }
}
