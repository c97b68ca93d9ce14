package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.StationTiming;
import yardclock.core.course.Text;

/** Makes the split of a turn. Pure. */
public final class Splits {
    private static final Text NO_START = new Text("the start was not seen", "no se vio la salida");
    private static final Text INTERRUPTED =
            new Text(
                    "the gateway's clock was interrupted; give the time by hand",
                    "el reloj de la central se interrumpió; indique el tiempo a mano");
    private static final Text NO_FINISH =
            new Text("the finish was not seen", "no se vio la llegada");
    private static final Text UNTIMED =
            new Text(
                    "no time: this tablet's clock was never compared",
                    "sin tiempo: el reloj de esta tableta nunca se comparó");
    private static final Text BY_TAP =
            new Text(
                    "the sensor saw no finish; the proctor's tap stands in",
                    "el sensor no vio la llegada; vale el toque del supervisor");
    private static final Text BY_BUTTON =
            new Text(
                    "the sensor saw no finish; the press on the named button stands in",
                    "el sensor no vio la llegada; vale la pulsación del botón previsto");
    private static final Text LATE =
            new Text(
                    "late readings disagree; look at them before ruling",
                    "lecturas tardías no coinciden; revíselas antes de decidir");
    private static final Text DISAGREE =
            new Text(
                    "the sensor and the proctor's tap disagree",
                    "el sensor y el toque del supervisor no coinciden");
    private static final Text START_BY_TAP =
            new Text(
                    "the sensor saw no start; the proctor's tap stands in",
                    "el sensor no vio la salida; vale el toque del supervisor");
    private static final Text ALONE =
            new Text(
                    "the sensor alone is not enough: the tap is awaited, or a contact was not seen"
                            + " to move",
                    "el sensor solo no basta: se espera el toque, o no se vio moverse un"
                            + " contacto");
    private static final Text ASSIGNED =
            new Text(
                    "a passage was assigned by a ruling; look at it",
                    "un paso se asignó por una decisión; mírelo");
    private static final Text AMBIGUOUS =
            new Text(
                    "more than one reading is plausible; choose one",
                    "hay más de una lectura plausible; elija una");
    private static final Text RESTARTED =
            new Text(
                    "the gateway restarted in between; the interval says how well the time is"
                            + " known",
                    "la central se reinició entretanto; el intervalo dice con qué certeza se conoce"
                            + " el tiempo");
    private static final Text UNDER_WAY =
            new Text(
                    "a field unit of this station may still hold readings of that time",
                    "una unidad de esta estación puede tener aún lecturas de ese momento");
    private static final Text UNLIKELY =
            new Text(
                    "outside the plausible time of this station",
                    "fuera del tiempo plausible de esta estación");

    private static final Text UNUSUAL =
            new Text(
                    "far from what is usual at this station today",
                    "lejos de lo habitual en esta estación hoy");

    private Splits() {}

    public static Split of(Turn turn) {
        Mark start = turn.start();
        Mark finish = turn.finish();
        boolean seen = start != null && finish != null && turn.isFinished();
        boolean complete = !turn.times.isInterrupted() && (seen || turn.isRuled());
        SplitState state = state(turn, complete);
        if (state == SplitState.VOID || start == null || finish == null || !complete) {
            return new Split(
                    turn.station.id(),
                    state,
                    SplitLabel.LOOK,
                    -1,
                    -1,
                    -1,
                    automatic(turn),
                    turn.times.handMicros(),
                    why(turn));
        }
        Elapsed elapsed = turn.times.elapsed();
        return new Split(
                turn.station.id(),
                state,
                label(turn),
                elapsed.micros(),
                Math.max(0, elapsed.lowerMicros()),
                Math.max(0, elapsed.upperMicros()),
                automatic(turn),
                turn.times.handMicros(),
                why(turn));
    }

    private static SplitLabel label(Turn turn) {
        Text problem = problem(turn);
        if (problem != null) {
            return problem.equals(AMBIGUOUS) ? SplitLabel.AMBIGUOUS : SplitLabel.LOOK;
        }
        return turn.isProvisional() ? SplitLabel.PROVISIONAL : SplitLabel.CLEAN;
    }

    private static SplitState state(Turn turn, boolean complete) {
        if (turn.isRuled()) {
            return turn.ruled();
        }
        if (!complete) {
            return SplitState.INCOMPLETE;
        }
        return turn.isAmbiguous() ? SplitState.AMBIGUOUS : SplitState.PROPOSED;
    }

    private static long automatic(Turn turn) {
        Mark start = turn.derivedStart();
        Mark finish = turn.derivedFinish();
        boolean both = start != null && finish != null;
        both &= !turn.finishByFallback() && turn.times.derived() != null;
        return both && start.source() != Mark.Source.TAP && finish.source() != Mark.Source.TAP
                ? turn.times.derived().micros()
                : -1;
    }

    private static Text why(Turn turn) {
        Text problem = problem(turn);
        if (problem == null) {
            return turn.isProvisional() ? UNDER_WAY : turn.station.finish().words();
        }
        return problem;
    }

    /** What speaks against confirming, the weightiest first; null for a clean split. */
    private static Text problem(Turn turn) {
        if (turn.times.isInterrupted()) {
            return INTERRUPTED;
        }
        if (turn.start() == null) {
            return Untimed.isStart(turn) ? UNTIMED : NO_START;
        }
        if (turn.finish() == null || !turn.isFinished() && !turn.isRuled()) {
            return Untimed.isFinish(turn) ? UNTIMED : NO_FINISH;
        }
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            if (!turn.isSeen(checkpoint)) {
                return new Text(
                        "not seen: " + checkpoint.name().en(),
                        "no visto: " + checkpoint.name().es());
            }
        }
        if (Untimed.isCheckpoint(turn)) {
            return UNTIMED;
        }
        if (turn.disagrees()) {
            return DISAGREE;
        }
        if (turn.finishByFallback()) {
            return turn.finish().source() == Mark.Source.BUTTON ? BY_BUTTON : BY_TAP;
        }
        if (turn.hasLateEvidence()) {
            return LATE;
        }
        if (turn.isAmbiguous()) {
            return AMBIGUOUS;
        }
        if (!turn.assigned.isNone()) {
            return ASSIGNED;
        }
        if (!turn.isClear()) {
            boolean isByTap = turn.start().source() == Mark.Source.TAP;
            return isByTap ? START_BY_TAP : ALONE;
        }
        if (turn.times.isOverRestart()) {
            return RESTARTED;
        }
        return unlikely(turn);
    }

    private static Text unlikely(Turn turn) {
        StationTiming timing = turn.station.timing();
        long micros = turn.times.elapsed().micros();
        boolean isPlausible =
                micros >= timing.shortestPlausibleMicros()
                        && micros <= timing.longestPlausibleMicros();
        if (!isPlausible) {
            return UNLIKELY;
        }
        return turn.usual == null || turn.usual.holds(micros) ? null : UNUSUAL;
    }
}
