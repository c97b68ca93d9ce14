// What the safety officer's page reckons from a frame; no document, no words.

/** Tenths of °F as "84.4"; hundredths of °C as "28.7". */
export const deci = (value) => (value / 10).toFixed(1);
export const centi = (value) => (value / 100).toFixed(1);

/** "28.7" → 2870; null when it is no number with at most two digits after the point. */
export function parseCenti(text) {
  const match = /^(-?)(\d{1,3})(?:[.,](\d{1,2}))?$/.exec((text ?? "").trim());
  if (!match) return null;
  const [, sign, whole, fraction = ""] = match;
  const value = Number(whole) * 100 + Number(fraction.padEnd(2, "0"));
  return sign ? -value : value;
}

/** Whole microseconds as minutes begun. */
export const minutesOf = (micros) => Math.max(0, Math.ceil(micros / 60_000_000));

/**
 * The day's heat index as paths in a field of 1000 × 1000, with the bounds of the levels in it;
 * null while there are not two readings. Nothing is drawn across a gap of more than an hour.
 */
export function dayPicture(day, boundsDeciF) {
  if (day.length < 2) return null;
  const values = day.flatMap((one) => [one.indexDeciF, one.indexHighDeciF]);
  const low = Math.floor(Math.min(...values, boundsDeciF[0] - 20) / 50) * 50;
  const high = Math.ceil((Math.max(...values, boundsDeciF[0]) + 20) / 50) * 50;
  const from = day[0].atMicros;
  const span = Math.max(1, day[day.length - 1].atMicros - from);
  const x = (one) => Math.round(((one.atMicros - from) / span) * 1000);
  const y = (value) => Math.round(1000 - ((value - low) / (high - low)) * 1000);
  return {
    low,
    high,
    spanMicros: span,
    line: path(day, x, (one) => y(one.indexDeciF)),
    upper: path(day, x, (one) => y(one.indexHighDeciF)),
    bounds: boundsDeciF
      .map((value, index) => ({ level: index + 1, value, y: y(value) }))
      .filter((bound) => bound.value < high),
  };
}

const GAP_MICROS = 3_600_000_000;

function path(day, x, y) {
  let last = -Infinity;
  return day.map((one) => {
    const to = one.atMicros - last > GAP_MICROS ? "M" : "L";
    last = one.atMicros;
    return `${to}${x(one)} ${y(one)}`;
  }).join("");
}
