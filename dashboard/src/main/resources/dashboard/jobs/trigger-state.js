// What the card of triggers computes: pure.

/** As the plan has them; what an act gives for those that a trigger has none of is 0. */
const GUARDS = [
  "lockout", "staysFor", "clearFor", "stoodFor", "minBlock", "mergeGap", "within", "spacing",
];

/** Triggers under their stations, in the order they came in. */
export function byStation(triggers) {
  const stations = new Map();
  for (const trigger of triggers) {
    const { station: id, stationName: name } = trigger;
    if (!stations.has(id)) stations.set(id, { id, name, triggers: [] });
    stations.get(id).triggers.push(trigger);
  }
  return [...stations.values()];
}

/** A trigger's name among the others, for buttons and drafts. */
export function nameOf({ station, point }) {
  return `${station}-${point}`;
}

/** 1_500_000 → "1.5 s", 40_000 → "40 ms": no digit that says nothing, none that is left out. */
export function length(micros) {
  return micros >= 1_000_000 ? `${micros / 1_000_000} s` : `${micros / 1000} ms`;
}

/** Microseconds as they are typed: milliseconds without a unit. */
export function typedLength(micros) {
  return String(micros / 1000);
}

/** "1500", "0.5" or "0,5" milliseconds → microseconds; null when it is no such time. */
export function parseLength(typed) {
  const match = /^(\d{1,7})(?:[.,](\d{1,3}))?$/.exec((typed ?? "").trim());
  return match ? Number(match[1]) * 1000 + Number((match[2] ?? "").padEnd(3, "0")) : null;
}

/** The guards of a trigger as typed values, before anybody typed. */
export function asTyped(guards) {
  return Object.fromEntries(guards.map(({ guard, micros }) => [guard, typedLength(micros)]));
}

/**
 * What is wrong with typed values: {guard, why} of the first that is, `why` one of "no-time" and
 * "beyond"; null when every one is a time within its limits.
 */
export function firstWrong(guards, typed) {
  for (const one of guards) {
    const micros = parseLength(typed[one.guard]);
    if (micros === null) return { ...one, why: "no-time" };
    const isAsBefore = micros === one.micros;
    if (!isAsBefore && (micros < one.leastMicros || micros > one.mostMicros)) {
      return { ...one, why: "beyond" };
    }
  }
  return null;
}

/** Whether every value is what is in force. */
export function isAsBefore(guards, typed) {
  return guards.every(({ guard, micros }) => parseLength(typed[guard]) === micros);
}

/** All guards as the gateway reads them: {lockoutMicros, …}. */
export function allMicros(typed) {
  return Object.fromEntries(
    GUARDS.map((guard) => [`${guard}Micros`, parseLength(typed[guard]) ?? 0]),
  );
}

/** A split or a difference to the millisecond, as "47.300 s". */
export function seconds(micros) {
  return `${(micros / 1_000_000).toFixed(3)} s`;
}

/** By how much an instant or a split is other: "+0.800 s"; empty where it is not, or one is none. */
export function moved(beforeMicros, afterMicros) {
  const by = Math.round((afterMicros - beforeMicros) / 1000);
  if (beforeMicros < 0 || afterMicros < 0 || by === 0) return "";
  return `${by > 0 ? "+" : "−"}${(Math.abs(by) / 1000).toFixed(3)} s`;
}

/** Turns of which nothing can be said, gathered by the reason: [{why, numbers}]. */
export function byWhy(turns) {
  const gathered = new Map();
  for (const { number, why } of turns) {
    gathered.set(why, [...(gathered.get(why) ?? []), number]);
  }
  return [...gathered].map(([why, numbers]) => ({ why, numbers }));
}
