package yardclock.sim.clockbench;

import yardclock.app.recorded.Dating;
import yardclock.app.recorded.Recording;
import yardclock.core.time.Agreement;
import yardclock.core.time.Correction;
import yardclock.core.time.Stamp;
import yardclock.core.time.Trips;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A simulated hour in which each unit but the first is calibrated against the first, one after the
 * other: trips of both at once, some of them botched. What comes after is judged.
 *
 * <p>Each sitting is judged by the rules of the gateway with the exchanges that were back shortly
 * after its last trip; when it is refused then, the technician asks again a little later, and
 * begins anew once. A unit refused twice stays uncorrected.
 */
final class CalibratedHour {
    private static final double FROM_SECONDS = 300;
    private static final double EVERY_SECONDS = 6;
    private static final int TRIPS = 26;
    private static final int BOTCHED_EVERY = 11;

    /** When the technician asks, and asks again. */
    private static final long[] ASKED_AFTER_MICROS = {5_000_000, 60_000_000, 160_000_000};

    private final SimulatedHour hour;
    private final int firstTrip;
    private final Recording whole;
    private final List<Optional<Correction>> corrections = new ArrayList<>();
    private final Judgeable all;
    private double seconds = FROM_SECONDS;
    private int sittings;
    private int refused;

    CalibratedHour(Weather weather, long seed, Crystals crystals) {
        hour = SimulatedHour.hour(weather, seed, crystals.slowest(), crystals.fastest());
        firstTrip = hour.edges();
        corrections.add(Optional.empty());
        for (int unit = 1; unit < SimulatedHour.UNITS; unit++) {
            Optional<Correction> accepted = sitting(unit);
            corrections.add(accepted.isPresent() ? accepted : sitting(unit));
        }
        all = hour.judgeable();
        whole = all.recording();
    }

    /** Trips of the reference and of one unit; the edges of both, by turns. */
    private List<Recording.EdgeRow> trips(int unit) {
        Random random = hour.random();
        int from = hour.edges();
        for (int n = 0; n < TRIPS; n++) {
            seconds += EVERY_SECONDS * Draws.between(random, 0.7, 1.3);
            boolean botched = n % BOTCHED_EVERY == BOTCHED_EVERY / 2;
            hour.trip(0, seconds);
            hour.trip(unit, botched ? seconds + Draws.between(random, 0.03, 0.13) : seconds);
        }
        List<Recording.EdgeRow> edges = hour.judgeable().recording().edges();
        return edges.subList(from, edges.size());
    }

    private Optional<Correction> sitting(int unit) {
        sittings++;
        List<Recording.EdgeRow> edges = trips(unit);
        long last =
                edges.stream()
                        .mapToLong(Recording.EdgeRow::gatewayArrivalMicros)
                        .max()
                        .orElseThrow();
        for (long later : ASKED_AFTER_MICROS) {
            Optional<Correction> accepted = asked(edges, last + later);
            if (accepted.isPresent()) {
                return accepted;
            }
        }
        refused++;
        seconds += ASKED_AFTER_MICROS[ASKED_AFTER_MICROS.length - 1] / 1e6;
        return Optional.empty();
    }

    /** What a sitting comes to with the exchanges that were back at an instant. */
    private Optional<Correction> asked(List<Recording.EdgeRow> edges, long atMicros) {
        List<Recording.ExchangeRow> back =
                hour.judgeable().recording().exchanges().stream()
                        .filter(row -> row.gatewayReceivedMicros() <= atMicros)
                        .toList();
        Recording sitting = new Recording(back, edges);
        List<Optional<Stamp>> stamps = new Dating(sitting, Dating.Mode.LIVE).stamps();
        Agreement stamped = agreement(stamps);
        Agreement best = agreement(new Dating(sitting, Dating.Mode.FINAL).stamps());
        if (best.objection(stamped).isPresent()) {
            return Optional.empty();
        }
        long spread = stamped.spreadMicros();
        takeAsReference(Correction.of(0, spread, usualWidth(stamps, 0)));
        return Optional.of(Correction.of(-best.medianMicros(), spread, usualWidth(stamps, 1)));
    }

    private static Agreement agreement(List<Optional<Stamp>> stamps) {
        return Agreement.of(Trips.pairs(every(stamps, 0), every(stamps, 1)), 0);
    }

    private static List<Stamp> every(List<Optional<Stamp>> stamps, int side) {
        List<Stamp> of = new ArrayList<>();
        for (int i = side; i < stamps.size(); i += 2) {
            stamps.get(i).ifPresent(of::add);
        }
        return of;
    }

    private static long usualWidth(List<Optional<Stamp>> stamps, int side) {
        long[] widths =
                every(stamps, side).stream().mapToLong(Stamp::widthMicros).sorted().toArray();
        return widths[widths.length / 2];
    }

    /**
     * The reference is moved by nothing, and declared as wide as the widest measured against it.
     */
    private void takeAsReference(Correction candidate) {
        boolean isWider =
                corrections
                        .get(0)
                        .filter(so -> so.declaredMicros() >= candidate.declaredMicros())
                        .isEmpty();
        if (isWider) {
            corrections.set(0, Optional.of(candidate));
        }
    }

    /** Sittings the rules refused. */
    int refused() {
        return refused;
    }

    int sittings() {
        return sittings;
    }

    /** The places of the edges that came after the last sitting. */
    private List<Integer> after() {
        long end = all.truthMicros().get(all.truthMicros().size() - 1);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < firstTrip; i++) {
            if (all.truthMicros().get(i) > end) {
                places.add(i);
            }
        }
        return places;
    }

    /** Those edges and their truth. */
    Judgeable judged() {
        List<Recording.EdgeRow> edges = after().stream().map(whole.edges()::get).toList();
        List<Long> truths = after().stream().map(all.truthMicros()::get).toList();
        return new Judgeable(new Recording(whole.exchanges(), edges), truths);
    }

    /** Their stamps by exchanges alone. */
    List<Optional<Stamp>> plain(Method method) {
        List<Optional<Stamp>> stamps = method.stamps(whole);
        return after().stream().map(stamps::get).toList();
    }

    /** The same, corrected; of units whose sitting was refused as they were. */
    List<Optional<Stamp>> corrected(List<Optional<Stamp>> plain) {
        return each(plain, Correction::applied);
    }

    /** The declared intervals of corrected stamps; where there is none, the guaranteed ones. */
    List<Optional<Stamp>> declared(List<Optional<Stamp>> corrected) {
        return each(corrected, Correction::declared);
    }

    private interface Change {
        Stamp of(Correction correction, Stamp stamp);
    }

    private List<Optional<Stamp>> each(List<Optional<Stamp>> stamps, Change change) {
        List<Recording.EdgeRow> edges = judged().recording().edges();
        List<Optional<Stamp>> changed = new ArrayList<>();
        for (int i = 0; i < stamps.size(); i++) {
            int unit = Integer.parseInt(edges.get(i).station().substring(1)) - 1;
            Optional<Correction> correction = corrections.get(unit);
            changed.add(stamps.get(i).map(s -> correction.map(c -> change.of(c, s)).orElse(s)));
        }
        return changed;
    }
}
