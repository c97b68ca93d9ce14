// What the proof run's card computes: pure.

export const SHAPES = { seen: "✓", missing: "–", apart: "≠" };

/** Points under their stations, in the order they came in. */
export function pointsByStation(points) {
  const stations = new Map();
  for (const point of points) {
    if (!stations.has(point.station)) stations.set(point.station, []);
    stations.get(point.station).push(point);
  }
  return [...stations].map(([station, itsPoints]) => ({ station, points: itsPoints }));
}

/** How many points are seen, of all. */
export function countSeen(points) {
  return { seen: points.filter(({ state }) => state === "seen").length, points: points.length };
}

export function isClean(points) {
  return points.every(({ state }) => state === "seen");
}

/** Automatic minus hand: −118400 → "−0.12 s"; null for what was not compared. */
export function signedSeconds(micros) {
  if (micros === null) return null;
  const value = (Math.abs(micros) / 1e6).toFixed(2);
  const sign = micros < 0 ? "−" : "+";
  return Number(value) === 0 ? "0.00 s" : `${sign}${value} s`;
}

/** What is not there: "sensor", "press", "both", or "time" for a press without one. */
export function lacks({ count, automatic, pressed }) {
  if (automatic < count && pressed < count) return "both";
  if (automatic < count) return "sensor";
  return pressed < count ? "press" : "time";
}
