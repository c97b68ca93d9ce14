// Microseconds to words and back. Whole numbers only: a displayed tenth is cut, never rounded up,
// because a time that has not passed yet must not be shown.
const SECOND = 1_000_000;

/** 700_000_000 → "11:40.0"; a negative number is "no time" and gives a dash. */
export function minutesTenths(micros) {
  if (micros < 0) return "–";
  const tenths = Math.floor(micros / 100_000);
  return `${minutes(Math.floor(tenths / 10))}.${tenths % 10}`;
}

/** 95_400_000 → "1:35": for waits and ages, where tenths only flicker. */
export function minutes(seconds) {
  const whole = Math.max(0, Math.floor(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

export function waited(fromMicros, nowMicros) {
  return minutes((nowMicros - fromMicros) / SECOND);
}

/** "1:35.4" or "95.4" → microseconds; null when it is not a time below an hour. */
export function parseTime(text) {
  const match = /^(?:(\d{1,2}):)?(\d{1,4})(?:[.,](\d{1,3}))?$/.exec(text.trim());
  if (!match) return null;
  const [, mins, secs, fraction = ""] = match;
  if (mins !== undefined && (secs.length !== 2 || Number(secs) > 59)) return null;
  const micros =
    (Number(mins ?? 0) * 60 + Number(secs)) * SECOND + Number(fraction.padEnd(6, "0"));
  return micros > 0 && micros < 3600 * SECOND ? micros : null;
}

/** Half the width of an interval as "0.20", in seconds; two digits, rounded up to be honest. */
export function halfWidth(lowerMicros, upperMicros) {
  const hundredths = Math.ceil((upperMicros - lowerMicros) / 2 / 10_000);
  return `${Math.floor(hundredths / 100)}.${String(hundredths % 100).padStart(2, "0")}`;
}

/** Microseconds as milliseconds with one digit, for clock figures. */
export function milliseconds(micros) {
  return (micros / 1000).toFixed(1);
}

/** A wall-clock instant as hours and minutes of this tablet's own zone, 24 h. */
export function wallClock(wallMicros) {
  const at = new Date(wallMicros / 1000);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}

/** A wall-clock instant to the tenth, as "10:42:17.3", of this tablet's own zone; cut, not rounded. */
export function wallTenths(wallMicros) {
  const at = new Date(wallMicros / 1000);
  return `${wallClock(wallMicros)}:${String(at.getSeconds()).padStart(2, "0")}.${
    Math.floor(at.getMilliseconds() / 100)}`;
}

/** "10:42:17.3" of the day that `wallMicros` lies in, as wall microseconds; null when it is none. */
export function parseWall(text, wallMicros) {
  const match = /^(\d{1,2}):(\d{2}):(\d{2})(?:[.,](\d{1,3}))?$/.exec(text.trim());
  if (!match) return null;
  const [hours, mins, secs] = match.slice(1, 4).map(Number);
  if (hours > 23 || mins > 59 || secs > 59) return null;
  const at = new Date(wallMicros / 1000);
  at.setHours(hours, mins, secs, Number((match[4] ?? "").padEnd(3, "0")));
  return at.getTime() * 1000;
}
