package yardclock.sim.yard;

import java.util.SplittableRandom;

/** What one station's sensors go through when somebody does it in a given time. */
@FunctionalInterface
interface Choreography {
    /**
     * @param takesMicros from the station's start to the candidate's finish, in exam time
     * @param random the only source of the small differences between two passages
     */
    Script perform(long takesMicros, SplittableRandom random);
}
