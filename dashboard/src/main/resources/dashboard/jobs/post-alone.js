// What the proctor's page can say without the gateway: the last frame, carried on by this tablet's
// own presses. Pure, so that it can be tested with frames written by hand.
//
// It concludes nothing else. Whether a sensor made a start or a finish meanwhile, whether somebody
// held or stopped, is not known here, and the page says so.

/** A horn that sounds minutes late, or a stop that comes late, would do harm: now or not at all. */
const NOW_OR_NEVER = ["give-start", "stop-all", "stop-one", "identify"];

export function canWait(act) {
  return !NOW_OR_NEVER.includes(act.act);
}

/** The candidate as far as the last frame and the presses since then tell, oldest first. */
export function withOwn(candidate, acts) {
  return acts
    .filter((act) => act.act === "strike" || act.number === candidate.number)
    .reduce((before, act) => (AFTER[act.act] ?? ((same) => same))(before, act), candidate);
}

const AFTER = {
  "tap": tapped,
  "call": called,
  "hold-candidate": (one) => ({ ...one, phase: "held", heldIn: one.phase }),
  "resume-candidate": (one) => ({ ...one, phase: one.heldIn ?? onWay(one.station) }),
  "withdraw": (one) => ({ ...one, phase: "gone" }),
  "tell": (one) => ({ ...one, told: true }),
  "confirm": ruled,
  "choose-reading": ruled,
  "void-split": ruled,
  "hand-time": ruled,
  "strike": ruled,
  "add-mark": ruled,
  "assign": ruled,
  "withdraw-ruling": ruled,
  "equipment-fault": (one) => ({ ...one, phase: "held", heldIn: one.phase }),
};

function onWay(station) {
  return station?.started ? "at-station" : "walking";
}

function tapped(one, { station, point }) {
  const at = one.station;
  if (at?.id !== station) return one;
  if (point === "finish") return onward(one);
  // A checkpoint before any start known here: a sensor saw the start, or will not have to.
  const checkpoints = at.checkpoints.map((each) =>
    each.id === point ? { ...each, seen: Math.min(each.count, each.seen + 1) } : each);
  return { ...one, phase: "at-station", startsAgain: false, station: { ...at, started: true, checkpoints } };
}

/** The stations lie ahead in course order; after the last one only the gateway can go on. */
function onward(one) {
  const [next, ...ahead] = one.ahead;
  if (!next) return { ...one, phase: "through", station: null, ahead: [] };
  return { ...one, phase: "walking", station: next, ahead };
}

function called(one, { station, criterion, fault }) {
  const calls = [...one.calls, { station, criterion, fault }];
  if (one.station?.id !== station) return { ...one, calls };
  const criteria = one.station.criteria.map((each) => each.id !== criterion ? each : {
    ...each,
    warnings: each.warnings + (fault ? 0 : 1),
    faults: each.faults + (fault ? 1 : 0),
  });
  return { ...one, calls, station: { ...one.station, criteria } };
}

function ruled(one, act) {
  const splits = one.splits.map((split) => isOn(act, split) ? { ...split, waits: true } : split);
  return { ...one, splits };
}

/** A strike names a passage instead of the station. */
function isOn(act, split) {
  return act.act === "strike"
    ? split.marks.some(({ edge }) => edge && ["unit", "boot", "seq"].every((key) => edge[key] === act[key]))
    : split.station === act.station;
}

/** What an act is about, in words of both languages, as the person saw them at the press. */
export function aboutOf(act, candidate) {
  const stations = [candidate?.station, ...(candidate?.ahead ?? []), ...(candidate?.splits ?? [])];
  const place = seenSplit(act, candidate)
    ?? stations.find((each) => (each?.id ?? each?.station) === act.station && each);
  const things = [...(place?.checkpoints ?? []), ...(place?.criteria ?? [])];
  const thing = things.find((each) => each.id === (act.point ?? act.criterion));
  return { station: place?.name ?? null, thing: thing?.name ?? thing?.words ?? null };
}

/** The split an act rules on, as it was on the screen; null for acts that are no such ruling. */
export function seenSplit(act, candidate) {
  if (AFTER[act.act] !== ruled) return null;
  return candidate?.splits.find((split) => isOn(act, split)) ?? null;
}

/** What a ruling says of the screen it was made on: what stood there, and every time shown. */
export function shownOf(seen) {
  if (!seen) return {};
  const times = seen.readings?.length > 0 ? seen.readings : [seen];
  return {
    supersedes: seen.standing?.entry ?? -1,
    shownMicros: times.map((each) => each.splitMicros),
  };
}
