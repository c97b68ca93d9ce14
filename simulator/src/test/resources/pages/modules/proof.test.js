import { test, same } from "./check.js";
import {
  countSeen, isClean, lacks, pointsByStation, signedSeconds,
} from "/ui/jobs/proof-state.js";

const points = [
  { station: "drag", point: "start", state: "seen" },
  { station: "drag", point: "finish", state: "apart" },
  { station: "poles", point: "start", state: "missing" },
];

test("points stand under their stations in order", () => {
  same(pointsByStation(points).map((one) => [one.station, one.points.length]), [
    ["drag", 2], ["poles", 1],
  ]);
});

test("only what is seen counts", () => {
  same(countSeen(points), { seen: 1, points: 3 });
  same(isClean(points), false);
  same(isClean(points.slice(0, 1)), true);
});

test("automatic minus hand keeps its sign", () => {
  same(signedSeconds(-118400), "−0.12 s");
  same(signedSeconds(31000), "+0.03 s");
  same(signedSeconds(-400), "0.00 s");
  same(signedSeconds(null), null);
});

test("a missing point says which of the two is not there", () => {
  same(lacks({ count: 1, automatic: 0, pressed: 0 }), "both");
  same(lacks({ count: 2, automatic: 1, pressed: 2 }), "sensor");
  same(lacks({ count: 1, automatic: 1, pressed: 0 }), "press");
  same(lacks({ count: 1, automatic: 1, pressed: 1 }), "time");
});
