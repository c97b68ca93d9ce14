// A tablet's own clock as the gateway compares it: pure, so that it can be tested with times written
// by hand. Ticks are whole microseconds of the steady clock since a start that has a name, its boot.
// In a demonstration that runs at a speed they run as fast as the exam does.

/** The wall clock and the steady one part by this much when the tablet slept, or was set. */
export const SHIFT_MS = 50;

/** A page that was just opened compares its clock within a second; only then is it worth saying. */
export const GRACE_MS = 3000;

export function newClock(boot, nowMs, wallMs, speed = 1) {
  return { boot, startedMs: nowMs, wallAheadMs: wallMs - nowMs, speed, compared: false };
}

/** Whether one of the two clocks jumped since the last look: the ticks may not count evenly. */
export function hasShifted(clock, nowMs, wallMs) {
  return Math.abs(wallMs - nowMs - clock.wallAheadMs) > SHIFT_MS;
}

/** After a look that found no jump: what drifts apart slowly is no jump either. */
export function looked(clock, nowMs, wallMs) {
  return { ...clock, wallAheadMs: wallMs - nowMs };
}

export function tickAt(clock, nowMs) {
  return Math.max(0, Math.round((nowMs - clock.startedMs) * 1000 * clock.speed));
}

/** The gateway has taken an exchange of this boot; of an earlier one it says nothing. */
export function compared(clock, boot) {
  return clock.boot === boot ? { ...clock, compared: true } : clock;
}

/** Whether presses made now have no time, and have had none for long enough to say so. */
export function isTimeless(clock, nowMs) {
  return !clock.compared && nowMs - clock.startedMs >= GRACE_MS;
}
