import { test, same } from "./check.js";
import {
  allMicros, asTyped, byStation, byWhy, firstWrong, isAsBefore, length, moved, parseLength,
} from "/ui/jobs/trigger-state.js";

const CLEAR = { guard: "clearFor", micros: 1_500_000, leastMicros: 1, mostMicros: 30_000_000 };
const BLOCK = { guard: "minBlock", micros: 0, leastMicros: 0, mostMicros: 5_000_000 };

test("a length is said in the unit that suits it, with every digit it has", () => {
  same(length(1_500_000), "1.5 s");
  same(length(600_000_000), "600 s");
  same(length(90_000), "90 ms");
  same(length(1), "0.001 ms");
  same(length(0), "0 ms");
});

test("typed milliseconds are read to the microsecond, with a point or a comma", () => {
  same(parseLength("1500"), 1_500_000);
  same(parseLength(" 0,001 "), 1);
  same(parseLength("12.5"), 12_500);
});

test("what is no time in milliseconds is not guessed at", () => {
  for (const typed of ["", "-1", "1 s", "1.0005", "1e3", "12345678", undefined]) {
    same(parseLength(typed), null);
  }
});

test("what was typed for every length in force is that length again", () => {
  for (const micros of [0, 1, 999, 40_000, 1_500_000, 600_000_000]) {
    const guards = [{ ...BLOCK, micros }];
    same(isAsBefore(guards, asTyped(guards)), true);
  }
});

test("the first value that is no time or beyond its limits is named", () => {
  const guards = [CLEAR, BLOCK];
  same(firstWrong(guards, { clearFor: "1500", minBlock: "5000" }), null);
  same(firstWrong(guards, { clearFor: "0", minBlock: "x" }).why, "beyond");
  same(firstWrong(guards, { clearFor: "1500", minBlock: "5000.001" }).guard, "minBlock");
  same(firstWrong(guards, { clearFor: "soon", minBlock: "0" }).why, "no-time");
});

test("a value in force stays possible, whatever the limits", () => {
  same(firstWrong([{ ...BLOCK, micros: 9_000_000 }], { minBlock: "9000" }), null);
});

test("an act names every guard, those a trigger has none of as 0", () => {
  same(allMicros({ clearFor: "2000", minBlock: "40", words: "wind", choice: null }), {
    lockoutMicros: 0, staysForMicros: 0, clearForMicros: 2_000_000, stoodForMicros: 0,
    minBlockMicros: 40_000, mergeGapMicros: 0, withinMicros: 0, spacingMicros: 0,
  });
});

test("triggers stand under their stations, in the order of the course", () => {
  const at = (station, point) => ({ station, stationName: { en: station }, point });
  const found = byStation([at("drag", "start"), at("drag", "finish"), at("fan", "start")]);
  same(found.map((one) => [one.id, one.triggers.length]), [["drag", 2], ["fan", 1]]);
});

test("what moved says by how much and where to, to the millisecond", () => {
  same(moved(47_312_000, 47_824_400), "+0.512 s");
  same(moved(1_201_400_000, 1_200_888_000), "−0.512 s");
  same(moved(5, 400), "");
  same(moved(-1, 400_000), "");
  same(moved(400_000, -1), "");
});

test("numbers of which nothing can be said stand under their reason", () => {
  const turns = [{ number: 3, why: "ended" }, { number: 4, why: "not-over" }, { number: 5, why: "ended" }];
  same(byWhy(turns), [{ why: "ended", numbers: [3, 5] }, { why: "not-over", numbers: [4] }]);
});
