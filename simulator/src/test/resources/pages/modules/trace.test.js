import { test, same } from "./check.js";
import { gather, tracePath } from "/ui/jobs/trace-state.js";

const S = 1_000_000;
const edge = (seq, state, micros, sensor = 1) => ({ unit: "u", seq, sensor, state, micros });
const field = { nowMicros: 100 * S, spanMicros: 100 * S, width: 100, height: 36 };

test("edges are kept per sensor in order of time, each once", () => {
  const once = gather(new Map(), [edge(2, 0, 20 * S), edge(1, 1, 10 * S), edge(3, 1, 5 * S, 2)], 30 * S, 60 * S);
  const twice = gather(once, [edge(2, 0, 20 * S)], 31 * S, 60 * S);
  same(twice.get("u/1").map((one) => one.seq), [1, 2]);
  same(twice.get("u/2").length, 1);
});

test("an edge without a bound can't be placed", () =>
  same(gather(new Map(), [edge(1, 1, -1)], S, S).size, 0));

test("the newest opinion about an edge's instant stands", () => {
  const first = gather(new Map(), [edge(1, 1, 10 * S)], 11 * S, 60 * S);
  same(gather(first, [edge(1, 1, 10 * S + 4000)], 11 * S, 60 * S).get("u/1").length, 1);
});

test("the same number after a restart of the unit is another edge", () => {
  const first = gather(new Map(), [edge(1, 1, 10 * S)], 11 * S, 60 * S);
  same(gather(first, [edge(1, 1, 50 * S)], 51 * S, 60 * S).get("u/1").length, 2);
});

test("of what is too old only the last edge stays, for the state to begin with", () => {
  const list = [edge(1, 1, 1 * S), edge(2, 0, 2 * S), edge(3, 1, 90 * S)];
  same(gather(new Map(), list, 100 * S, 60 * S).get("u/1").map((one) => one.seq), [2, 3]);
});

test("a trace steps at its edges and runs to now", () =>
  same(tracePath([edge(1, 1, 40 * S), edge(2, 0, 60 * S)], 0, field), "M0 33H40.0V3H60.0V33H100"));

test("a window begins in the state of the edge before it", () =>
  same(tracePath([edge(1, 1, -20 * S), edge(2, 0, 50 * S)], 0, field), "M0 3H50.0V33H100"));

test("without an edge the reported state is drawn, and nothing while unknown", () => {
  same(tracePath([], 1, field), "M0 3H100");
  same(tracePath([], -1, field), "");
});
