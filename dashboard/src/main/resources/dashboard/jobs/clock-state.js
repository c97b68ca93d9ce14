// A clock's picture in the measures of its plots: pure.
//
// Fields are 1000 wide and 1000 high, stretched to whatever place there is; y grows downwards.
// Legs: time on x with now at the right, microseconds above the fitted line on y. Steadiness: both
// axes logarithmic, spans doubling on x, so that they lie evenly.

const FIELD = 1000;
const SPAN_LEAST_MICROS = 30e6;
const REACH_LEAST_MICROS = 1000;

/** How far the envelope's place is from the border: the legs beside it must be seen as well. */
const ROOM = 2.5;

export function legsPicture({ exchanges, envelope }) {
  const ages = [...exchanges, ...envelope].map((one) => one.ageMicros);
  const spanMicros = Math.max(SPAN_LEAST_MICROS, ...ages);
  const widest = Math.max(...envelope.flatMap((one) => [-one.lowerMicros, one.upperMicros]), 0);
  const reachMicros = roundUp(Math.max(ROOM * widest, REACH_LEAST_MICROS));
  const x = (ageMicros) => Math.round(FIELD * (1 - ageMicros / spanMicros));
  const y = (micros) => Math.round((FIELD / 2) * (1 - clamp(micros / reachMicros)));
  const spot = (age, micros) => `M${x(age)} ${y(micros)}h0`;
  const inside = (micros) => Math.abs(micros) <= reachMicros;
  const downs = exchanges.map((one) => [one.ageMicros, one.downMicros]);
  const ups = exchanges.map((one) => [one.ageMicros, one.upMicros]);
  const beyond = [...downs, ...ups].filter(([, micros]) => !inside(micros));
  const path = (legs) => legs.filter(([, micros]) => inside(micros)).map((leg) => spot(...leg)).join("");
  return {
    spanMicros,
    reachMicros,
    band: bandPath(envelope, x, y),
    downs: path(downs),
    ups: path(ups),
    beyond: beyond.map((leg) => spot(...leg)).join(""),
    beyondCount: beyond.length,
  };
}

function bandPath(envelope, x, y) {
  if (envelope.length === 0) return "";
  const upper = envelope.map((one) => `${x(one.ageMicros)} ${y(one.upperMicros)}`);
  const lower = envelope.map((one) => `${x(one.ageMicros)} ${y(one.lowerMicros)}`).reverse();
  return `M${[...upper, ...lower].join("L")}Z`;
}

function clamp(part) {
  return Math.min(1, Math.max(-1, part));
}

/** The next of 1, 2, 5, 10, 20 … */
export function roundUp(value) {
  const decade = 10 ** Math.floor(Math.log10(value));
  return [1, 2, 5, 10].map((step) => step * decade).find((step) => step >= value * (1 - 1e-9));
}

/** @returns null with fewer than two spans: a point alone says nothing of a slope */
export function steadinessPicture(steadiness) {
  if (steadiness.length < 2) return null;
  const logs = steadiness.map((one) => Math.log10(Math.max(1, one.partsPerBillion)));
  const low = Math.floor(Math.min(...logs) + 1e-9);
  const high = Math.max(low + 1, Math.ceil(Math.max(...logs) - 1e-9));
  const x = (index) => Math.round((FIELD * (index + 0.5)) / steadiness.length);
  const y = (log) => Math.round((FIELD * (high - log)) / (high - low));
  const points = logs.map((log, index) => [x(index), y(log)]);
  const decades = [];
  for (let decade = high; decade >= low; decade--) {
    decades.push({ partsPerBillion: 10 ** decade, y: y(decade) });
  }
  return {
    line: `M${points.map((point) => point.join(" ")).join("L")}`,
    spots: points.map(([px, py]) => `M${px} ${py}h0`).join(""),
    decades,
    spans: steadiness.map((one, index) => ({ seconds: one.spanMicros / 1e6, x: x(index) })),
  };
}

/** What the picture of the legs says, for those who don't see it. */
export function legsInFigures({ exchanges, envelope }) {
  const last = envelope.at(-1);
  return {
    count: exchanges.length,
    lowerMicros: last?.lowerMicros ?? 0,
    upperMicros: last?.upperMicros ?? 0,
    downMicros: Math.min(...exchanges.map((one) => Math.abs(one.downMicros))),
    upMicros: Math.min(...exchanges.map((one) => Math.abs(one.upMicros))),
  };
}
