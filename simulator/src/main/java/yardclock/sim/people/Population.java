package yardclock.sim.people;

/**
 * One of the two populations candidates are drawn from. Figures: exam-day simulation model of this
 * project, assumption, no source; the share is our choice.
 *
 * @param factor on the station's median
 * @param spread standard deviation of the logarithm of a station time
 * @param faultPerStation probability of a fault on a criterion at each station
 * @param giveUp probability of withdrawing or being stopped on the course
 */
record Population(double factor, double spread, double faultPerStation, double giveUp) {
    static final Population FIRST = new Population(1.00, 0.18, 0.005, 0.010);
    static final Population SECOND = new Population(1.20, 0.20, 0.008, 0.025);
    static final double SECOND_SHARE = 0.25;
}
