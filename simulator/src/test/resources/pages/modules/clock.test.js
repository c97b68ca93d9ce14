import { test, same } from "./check.js";
import { legsPicture, legsInFigures, roundUp, steadinessPicture } from "/ui/jobs/clock-state.js";

const S = 1_000_000;
const exchange = (age, downMicros, upMicros) => ({ ageMicros: age * S, downMicros, upMicros });
const limits = (age, lowerMicros, upperMicros) => ({ ageMicros: age * S, lowerMicros, upperMicros });
const trace = {
  exchanges: [exchange(100, -2000, 90_000), exchange(50, -30_000, 1500)],
  envelope: [limits(100, -4000, 4000), limits(0, -3000, 3000)],
};

test("axes end at round numbers", () =>
  same([0.8, 1, 1.2, 3, 7, 10, 1100, 20_000].map(roundUp), [1, 1, 2, 5, 10, 10, 2000, 20_000]));

test("the envelope leaves room for the legs beside it, now lies at the right", () => {
  const picture = legsPicture(trace);
  same(picture.reachMicros, 10_000);
  same(picture.spanMicros, 100 * S);
  same(picture.band, "M0 300L1000 350L1000 650L0 700Z");
});

test("a leg beyond the picture is drawn at its edge, on its own side", () => {
  const picture = legsPicture(trace);
  same([picture.downs, picture.ups], ["M0 600h0", "M500 425h0"]);
  same([picture.beyond, picture.beyondCount], ["M500 1000h0M0 0h0", 2]);
});

test("a clock compared once has a picture too", () => {
  const picture = legsPicture({ exchanges: [exchange(0, -900, 900)], envelope: [limits(0, -1100, 1100)] });
  same([picture.spanMicros, picture.reachMicros], [30 * S, 5000]);
});

test("the quickest leg of each way is told", () =>
  same(legsInFigures(trace), {
    count: 2, lowerMicros: -3000, upperMicros: 3000, downMicros: 2000, upMicros: 1500,
  }));

test("steadiness lies on logarithmic axes between whole decades", () => {
  const picture = steadinessPicture([
    { spanMicros: 10 * S, partsPerBillion: 10_000 },
    { spanMicros: 20 * S, partsPerBillion: 1_000 },
  ]);
  same(picture.decades.map((one) => one.partsPerBillion), [10_000, 1_000]);
  same(picture.line, "M250 0L750 1000");
  same(picture.spans.map((one) => one.seconds), [10, 20]);
});

test("one span alone gives no picture, and a perfect clock gives one", () => {
  same(steadinessPicture([{ spanMicros: S, partsPerBillion: 5 }]), null);
  const perfect = steadinessPicture([1, 2].map((s) => ({ spanMicros: s * S, partsPerBillion: 0 })));
  same(perfect.decades.length, 2);
});
