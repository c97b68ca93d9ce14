// What the proctor's page makes of its frame: pure, no page needed to test it.

/** Checkpoints not seen often enough yet, in the order of the plan. */
export function missing(at) {
  return at.checkpoints.filter((point) => point.seen < point.count);
}

/**
 * What the checkpoint zone is for at this moment.
 *
 * Before the station has started, a tap there marks the start by hand; then the next checkpoint
 * that was not seen; with none left it is at rest. A start just shown may still be tapped.
 */
export function markZone(at, startLingers = false) {
  if (!at.started || startLingers) return { kind: "start-hand", point: "start" };
  const [next] = missing(at);
  if (next) return { kind: "next", point: next.id, next };
  return { kind: at.checkpoints.length > 0 ? "all" : "none", point: null };
}

/** Warnings and faults so far at one station. */
export function callCount(calls, station) {
  const here = calls.filter((call) => call.station === station);
  const faults = here.filter((call) => call.fault).length;
  return { warnings: here.length - faults, faults };
}

const RULED = ["confirmed", "void", "by-hand"];

export function isRuled(split) {
  return RULED.includes(split.state);
}

export function toRule(splits) {
  return splits.filter((split) => !isRuled(split));
}

/** Clean, and not contradicted by the person's own taps: those want a reason first. */
export function cleanOnes(splits) {
  return toRule(splits).filter((split) => split.clean && !isApart(split));
}

/** Our choice: more than this between sensor and taps asks for a reason. */
const APART_MICROS = 500_000;

/** How much longer the split by the person's taps is; null when one of the two is missing. */
export function apartMicros(split) {
  if (split.splitMicros < 0 || split.handMicros < 0) return null;
  return split.handMicros - split.splitMicros;
}

export function isApart(split) {
  return Math.abs(apartMicros(split) ?? 0) > APART_MICROS;
}

/** Whether a split is still what the proctor saw when they pressed. */
export function sameSplit(before, after) {
  const seen = ["state", "clean", "splitMicros", "lowerMicros", "upperMicros"];
  return after !== undefined
    && seen.every((field) => before[field] === after[field])
    && before.standing?.entry === after.standing?.entry;
}
