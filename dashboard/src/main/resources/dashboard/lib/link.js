// What a page knows of its link: pure, so that it can be tested with times written by hand.
// `heardMs` is the last byte of any kind; a kept-alive comment proves the link as well as a frame.
export const STALE_MS = 3000;

export function noLink(nowMs) {
  return { phase: "opening", heardMs: nowMs, frame: null, framedMs: nowMs, everHeard: false };
}

export function heard(link, nowMs) {
  return { ...link, phase: "live", heardMs: nowMs, everHeard: true };
}

/** One stream is open at a time and keeps its order, so the newest message is the newest frame. */
export function framed(link, frame, nowMs) {
  return { ...heard(link, nowMs), frame, framedMs: nowMs };
}

/** A frame kept from before the page was loaded: shown as old as it is. */
export function recalled(link, frame, ageMs, nowMs) {
  if (link.frame) return link;
  const thenMs = nowMs - Math.max(STALE_MS, ageMs);
  return { ...link, frame, framedMs: thenMs, heardMs: thenMs, everHeard: true };
}

export function lost(link) {
  return { ...link, phase: "lost" };
}

export function refused(link, status) {
  return { ...link, phase: status === 403 ? "wrong-role" : "not-enrolled" };
}

export function ageSeconds(link, nowMs) {
  return Math.max(0, Math.floor((nowMs - link.heardMs) / 1000));
}

/** Old from three seconds without a byte on; a page that never heard anything is not "old". */
export function isStale(link, nowMs) {
  return link.everHeard && nowMs - link.heardMs >= STALE_MS;
}
