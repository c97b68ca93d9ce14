package yardclock.sim.people;

import yardclock.core.course.Station;
import yardclock.sim.yard.Bell;
import yardclock.sim.yard.DemoCourse;
import yardclock.sim.yard.Script;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The truth of one attempt, drawn before it begins. Immutable; depends on the day's seed, the
 * number and the course, on nothing else.
 *
 * @param scripts one a station, in the course's order
 * @param walksMicros the walk after each station but the last
 * @param toStartMicros from the call to standing at the first start
 */
public record CandidateRun(
        int number,
        List<Script> scripts,
        List<Long> walksMicros,
        long toStartMicros,
        Mishap mishap) {
    /** Shares of a person and of a station in the logarithm of a station time. */
    private static final double PERSON = 0.75;

    private static final double OCCASION = 0.661;
    private static final double SLOWING = 0.01;
    private static final double WALK_SPREAD = 0.10;
    private static final double FURTHEST = 3.0;

    public CandidateRun {
        scripts = List.copyOf(scripts);
        walksMicros = List.copyOf(walksMicros);
    }

    public static CandidateRun draw(long seed, int number, List<Station> course) {
        return draw(seed, number, course, 1.0);
    }

    /**
     * @param pace how much longer than drawn everything at the stations takes
     */
    public static CandidateRun draw(long seed, int number, List<Station> course, double pace) {
        SplittableRandom person = source(seed, number, -1);
        boolean second = person.nextDouble() < Population.SECOND_SHARE;
        Population population = second ? Population.SECOND : Population.FIRST;
        double strength = bell(person);
        Mishap mishap = mishap(person, population, course.size());
        long toStart = person.nextLong(8_000_000, 14_000_000);
        List<Script> scripts = new ArrayList<>();
        List<Long> walks = new ArrayList<>();
        for (int i = 0; i < course.size(); i++) {
            SplittableRandom here = source(seed, number, i);
            long takes = stationMicros(course.get(i), i, population, strength, here);
            long paced = Math.round(takes * pace);
            scripts.add(DemoCourse.perform(course.get(i).id(), paced, here.split()));
            walks.add(walkMicros(course.get(i), here));
        }
        return new CandidateRun(number, scripts, walks, toStart, mishap);
    }

    /** A source for one candidate at one station, whatever was drawn elsewhere. */
    static SplittableRandom source(long seed, int number, int station) {
        return new SplittableRandom(seed * 1_000_003 + number * 1_009L + station);
    }

    /** median × factor × exp(spread × (0.75 g + 0.661 u)), and 1 % more for each later station. */
    private static long stationMicros(
            Station station,
            int index,
            Population population,
            double strength,
            SplittableRandom here) {
        double effect = PERSON * strength + OCCASION * bell(here);
        double factor = population.factor() * StrictMath.exp(population.spread() * effect);
        double slowing = 1 + SLOWING * index;
        return Math.round(station.timing().medianMicros() * factor * slowing);
    }

    private static double bell(SplittableRandom random) {
        return Math.max(-FURTHEST, Math.min(FURTHEST, Bell.draw(random)));
    }

    private static long walkMicros(Station station, SplittableRandom here) {
        double factor = StrictMath.exp(WALK_SPREAD * bell(here));
        return Math.round(station.timing().walkToNextMicros() * factor);
    }

    private static Mishap mishap(SplittableRandom person, Population population, int stations) {
        Mishap mishap = Mishap.NONE;
        for (int i = stations - 1; i >= 0; i--) {
            int permille = person.nextInt(250, 750);
            if (person.nextDouble() < population.faultPerStation()) {
                mishap = new Mishap(Mishap.Kind.FAULT, i, permille);
            }
        }
        boolean givesUp = person.nextDouble() < population.giveUp();
        int where = person.nextInt(stations);
        int permille = person.nextInt(250, 750);
        return givesUp ? new Mishap(Mishap.Kind.WITHDRAWAL, where, permille) : mishap;
    }

    /** The same run with more going on at its stations. */
    public CandidateRun with(List<Script> others) {
        return new CandidateRun(number, others, walksMicros, toStartMicros, mishap);
    }

    /** From the first start to the last finish when nothing is waited for. */
    public long courseMicros() {
        long micros = scripts.get(scripts.size() - 1).finishStampMicros();
        for (int i = 0; i + 1 < scripts.size(); i++) {
            micros += scripts.get(i).finishMicros() + walksMicros.get(i);
        }
        return micros;
    }
}
