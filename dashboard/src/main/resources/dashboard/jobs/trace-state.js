// Edges gathered from frames into one trace per sensor, as a logic analyser draws them: pure.
//
// A frame carries only the newest edges, so the page keeps what it has seen for as long as the
// strip is long. Instants are gateway time; an edge without a bound yet can't be placed and waits.

const KEPT_PER_SENSOR = 2000;

/** @returns a new map "unit/sensor" → edges in order of time, at most `spanMicros` old */
export function gather(traces, edges, nowMicros, spanMicros) {
  const next = new Map(traces);
  for (const edge of edges) {
    if (edge.micros < 0) continue;
    const name = `${edge.unit}/${edge.sensor}`;
    const known = next.get(name) ?? [];
    next.set(name, place(known, edge));
  }
  for (const [name, list] of next) next.set(name, trim(list, nowMicros - spanMicros));
  return next;
}

function place(known, edge) {
  const same = (one) => one.seq === edge.seq && Math.abs(one.micros - edge.micros) < 1e6;
  if (known.some((one) => same(one) && one.micros === edge.micros)) return known;
  // The clock estimate may move an edge a little: the newest opinion stands.
  return [...known.filter((one) => !same(one)), edge].sort((a, b) => a.micros - b.micros);
}

/** The last edge before the window stays: it says which state the window begins with. */
function trim(list, fromMicros) {
  const first = list.findIndex((edge) => edge.micros >= fromMicros);
  const keepFrom = first < 0 ? list.length - 1 : Math.max(0, first - 1);
  return keepFrom > 0 || list.length > KEPT_PER_SENSOR
    ? list.slice(Math.max(keepFrom, list.length - KEPT_PER_SENSOR))
    : list;
}

/**
 * The trace as an SVG path over a field `width` × `height`, now at the right edge.
 *
 * @param presentState the state the unit's health reported, for a sensor without a known edge
 */
export function tracePath(edges, presentState, { nowMicros, spanMicros, width, height }) {
  const fromMicros = nowMicros - spanMicros;
  const x = (micros) =>
    ((Math.min(Math.max(micros, fromMicros), nowMicros) - fromMicros) / spanMicros) * width;
  const y = (state) => (state === 1 ? 3 : height - 3);
  if (edges.length === 0) {
    return presentState < 0 ? "" : `M0 ${y(presentState)}H${width}`;
  }
  const older = edges.findLast((edge) => edge.micros <= fromMicros);
  let path = `M0 ${y(older ? older.state : 1 - edges[0].state)}`;
  for (const edge of edges) {
    if (edge.micros > fromMicros) path += `H${x(edge.micros).toFixed(1)}V${y(edge.state)}`;
  }
  return `${path}H${width}`;
}
