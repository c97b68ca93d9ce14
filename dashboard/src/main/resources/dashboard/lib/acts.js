// The acts as the gateway reads them, every field present. One line an act, so that a misspelt
// field has one place to be found.
export const acts = {
  release: (number, proctorDevice) => ({ act: "release", number, proctorDevice }),
  giveStart: (number) => ({ act: "give-start", number }),
  tap: (number, station, point) => ({ act: "tap", number, station, point }),
  call: (number, station, criterion, fault) => ({
    act: "call", number, station, criterion, fault, words: "",
  }),
  confirm: (number, station) => ({ act: "confirm", number, station }),
  chooseReading: (number, station, reading) => ({ act: "choose-reading", number, station, reading }),
  voidSplit: (number, station, reason, words) => ({
    act: "void-split", number, station, reason, words,
  }),
  handTime: (number, station, splitMicros, reason, words) => ({
    act: "hand-time", number, station, splitMicros, reason, words,
  }),
  holdCandidate: (number, reason, words) => ({ act: "hold-candidate", number, reason, words }),
  resumeCandidate: (number) => ({ act: "resume-candidate", number }),
  holdCourse: (reason, words) => ({ act: "hold-course", reason, words }),
  resumeCourse: () => ({ act: "resume-course" }),
  stopAll: () => ({ act: "stop-all", words: "" }),
  restart: () => ({ act: "restart" }),
  stationReady: (station) => ({ act: "station-ready", station }),
  withdraw: (number, words) => ({ act: "withdraw", number, words }),
  noShow: (number) => ({ act: "no-show", number }),
  tell: (number) => ({ act: "tell", number }),
  handOver: (number, proctorDevice) => ({ act: "hand-over", number, proctorDevice }),
  identify: (unit, seconds) => ({ act: "identify", unit, seconds }),
  beginCalibration: (referenceUnit, referenceSensor, unit, sensor) => ({
    act: "begin-calibration", referenceUnit, referenceSensor, unit, sensor,
  }),
  endCalibration: (accept) => ({ act: "end-calibration", accept }),
  confirmClean: (number) => ({ act: "confirm-clean", number }),
  strike: ({ unit, boot, seq }, reason, words) => ({
    act: "strike", unit, boot, seq, reason, words,
  }),
  assign: ({ unit, boot, seq }, { number, station, point }, reason, words) => ({
    act: "assign", unit, boot, seq, number, station, point, reason, words,
  }),
  addMark: ({ number, station, point, atMicros }, reason, words) => ({
    act: "add-mark", number, station, point, atMicros, reason, words,
  }),
  withdrawRuling: (number, station, entry, words) => ({
    act: "withdraw-ruling", number, station, entry, words,
  }),
  equipmentFault: (number, station, words) => ({ act: "equipment-fault", number, station, words }),
  stopOne: (number, reason, words) => ({ act: "stop-one", number, reason, words }),
  acknowledgeHeat: () => ({ act: "acknowledge-heat" }),
  handReading: (centiCelsius, centiPercent, globeCentiCelsius, instrument) => ({
    act: "hand-reading", centiCelsius, centiPercent, globeCentiCelsius, instrument,
  }),
  lightningSeen: () => ({ act: "lightning-seen" }),
  gustRead: (millimetresPerSecond) => ({ act: "gust-read", millimetresPerSecond }),
  teamAway: (team, words) => ({ act: "team-away", team, words }),
  teamBack: (team, words) => ({ act: "team-back", team, words }),
  runAgain: (number, reason, words) => ({ act: "run-again", number, reason, words }),
  runStationAgain: (number, station, reason, words) => ({
    act: "run-station-again", number, station, reason, words,
  }),
  swapOrder: (number, otherNumber, reason, words) => ({
    act: "swap-order", number, otherNumber, reason, words,
  }),
  adjustTrigger: ({ station, point, adjustment }, micros, words) => ({
    act: "adjust-trigger", station, point, adjustment, ...micros, words,
  }),
  beginProofRun: (station, why) => ({ act: "begin-proof-run", station, why }),
  proofTap: (station, point) => ({ act: "proof-tap", station, point }),
  proofSignal: () => ({ act: "proof-signal" }),
  signProofRun: (words) => ({ act: "sign-proof-run", words }),
  endProofRun: (words) => ({ act: "end-proof-run", words }),
  goOnByHand: (station, reason, words) => ({ act: "go-on-by-hand", station, reason, words }),
  note: (number, words) => ({ act: "note", number, words }),
};

/** The reasons of the gateway's closed list that make sense for each ruling, likeliest first. */
export const reasonsFor = {
  void: [
    "sensor-tripped-by-other", "sensor-failed", "required-act-not-done", "equipment-fault", "other",
  ],
  hand: ["sensor-failed", "sensor-tripped-by-other", "equipment-fault", "other"],
  holdOne: ["equipment-fault", "medical", "station-not-ready", "course-blocked", "other"],
  strike: ["sensor-tripped-by-other", "sensor-failed", "equipment-fault", "other"],
  assign: ["sensor-tripped-by-other", "sensor-failed", "other"],
  addMark: ["sensor-failed", "sensor-tripped-by-other", "equipment-fault", "other"],
  stopOne: ["medical", "weather", "equipment-fault", "course-blocked", "staffing", "other"],
  byHand: ["sensor-failed", "equipment-fault", "staffing", "other"],
  runAgain: ["equipment-fault", "course-blocked", "staffing", "sensor-failed", "weather", "other"],
  holdAll: ["weather", "medical", "staffing", "course-blocked", "equipment-fault", "other"],
};
