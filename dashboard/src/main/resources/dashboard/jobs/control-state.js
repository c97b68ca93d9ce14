// What the control page makes of its frame: pure, no page needed to test it.

export function freeProctors(frame) {
  return frame.proctors.filter((proctor) => proctor.number === 0);
}

/**
 * The proctor who goes along: the one chosen here while still free, else the one the gateway
 * proposes, else the first free one, else none.
 */
export function chosenProctor(frame, wanted) {
  const free = freeProctors(frame).map((proctor) => proctor.device);
  return [wanted, frame.next.proctorDevice].find((device) => free.includes(device)) ?? free[0] ?? "";
}

/** Everything against a release, as refusal codes in their order of precedence. */
export function againstRelease(next, device) {
  if (next.number === 0) return [];
  const against = [...next.blockers];
  if (device === "" && !against.includes("proctor-busy")) against.push("proctor-busy");
  return against;
}

/** Where candidates stand on the drawn course: station index → those at it, those walking to it. */
export function placesOf(onCourse) {
  const places = new Map();
  for (const one of onCourse) {
    const place = places.get(one.stationIndex) ?? { at: [], to: [] };
    const walks = one.phase === "walking" || one.phase === "released";
    (walks ? place.to : place.at).push(one);
    places.set(one.stationIndex, place);
  }
  return places;
}
