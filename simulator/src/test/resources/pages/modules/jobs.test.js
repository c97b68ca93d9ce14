import { test, same } from "./check.js";
import * as post from "/ui/jobs/post-state.js";
import * as control from "/ui/jobs/control-state.js";
import { codeFrom, wrongEntry } from "/ui/jobs/front-entry.js";
import { newKey } from "/ui/lib/key.js";
import { reasonWords } from "/ui/parts/reasons.js";

const at = (started, ...points) => ({
  started,
  checkpoints: points.map(([id, seen, count]) => ({ id, seen, count })),
});

test("before the start the mark zone is for the start by hand", () =>
  same(post.markZone(at(false, ["a", 0, 1])), { kind: "start-hand", point: "start" }));

test("the mark zone is for the first checkpoint not seen often enough", () =>
  same(post.markZone(at(true, ["a", 1, 1], ["b", 2, 3], ["c", 0, 1])).point, "b"));

test("with every checkpoint seen, or none to see, the mark zone rests", () => {
  same(post.markZone(at(true, ["a", 1, 1])), { kind: "all", point: null });
  same(post.markZone(at(true)), { kind: "none", point: null });
});

test("calls are counted for one station", () => {
  const calls = [
    { station: "s", fault: false },
    { station: "s", fault: true },
    { station: "t", fault: true },
  ];
  same(post.callCount(calls, "s"), { warnings: 1, faults: 1 });
});

test("only clean splits that nobody ruled on are confirmed together", () => {
  const splits = [
    { station: "a", state: "confirmed", clean: true },
    { station: "b", state: "proposed", clean: true },
    { station: "c", state: "ambiguous", clean: false },
    { station: "d", state: "void", clean: true },
  ];
  same(post.cleanOnes(splits).map((split) => split.station), ["b"]);
  same(post.toRule(splits).map((split) => split.station), ["b", "c"]);
});

test("a split that moved by a microsecond is not the one that was seen", () => {
  const seen = { state: "proposed", clean: true, splitMicros: 5, lowerMicros: 4, upperMicros: 6 };
  same(post.sameSplit(seen, { ...seen }), true);
  same(post.sameSplit(seen, { ...seen, upperMicros: 7 }), false);
  same(post.sameSplit(seen, undefined), false);
});

const frame = (proposed, ...proctors) => ({
  next: { number: 5, blockers: [], proctorDevice: proposed },
  proctors: proctors.map(([device, number]) => ({ device, number })),
});

test("the chosen proctor goes along only while free, then the proposed one, then any", () => {
  same(control.chosenProctor(frame("b", ["a", 0], ["b", 0]), "a"), "a");
  same(control.chosenProctor(frame("b", ["a", 7], ["b", 0]), "a"), "b");
  same(control.chosenProctor(frame("", ["a", 7], ["b", 0]), null), "b");
  same(control.chosenProctor(frame("", ["a", 7]), "a"), "");
});

test("no free proctor stands against a release, said once", () => {
  same(control.againstRelease({ number: 5, blockers: ["stopped"] }, ""), ["stopped", "proctor-busy"]);
  same(control.againstRelease({ number: 5, blockers: ["proctor-busy"] }, ""), ["proctor-busy"]);
  same(control.againstRelease({ number: 0, blockers: ["stopped"] }, ""), []);
});

test("walkers stand before their station, the others at it", () => {
  const places = control.placesOf([
    { number: 1, phase: "walking", stationIndex: 2 },
    { number: 2, phase: "held", stationIndex: 2 },
    { number: 3, phase: "released", stationIndex: 0 },
  ]);
  same(places.get(2).to.map((one) => one.number), [1]);
  same(places.get(2).at.map((one) => one.number), [2]);
  same(places.get(0).to.map((one) => one.number), [3]);
});

test("a code is found in a link and in what was typed", () => {
  for (const text of ["#ab12cd34", "#/code=AB12CD34", "ab12-cd34", " AB12 CD34 "]) {
    same(codeFrom(text), "AB12CD34");
  }
  same(codeFrom("#%E0%A4%A"), "%E0%A4%A");
});

test("what can't be right is said before the gateway is asked", () => {
  same(wrongEntry("AB12", "Alder"), "front.code-short");
  same(wrongEntry("AB12CD34", "  "), "front.person-missing");
  same(wrongEntry("AB12CD34", "x".repeat(61)), "front.person-long");
  same(wrongEntry("AB12CD34", "x".repeat(60)), null);
});

// RFC 9562, section 5.4: version 4, variant 10.
test("a key is a random UUID also where the browser offers none", () => {
  const source = { getRandomValues: (bytes) => bytes.fill(0xff) };
  same(newKey(source), "ffffffff-ffff-4fff-bfff-ffffffffffff");
  same(newKey() === newKey(), false);
});

test("a reason code is shown in words, free words as written", () => {
  document.documentElement.lang = "es";
  same(reasonWords("weather"), "tiempo atmosférico");
  same(reasonWords("other: gate locked"), "otro: gate locked");
  document.documentElement.lang = "en";
});
