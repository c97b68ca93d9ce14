import { test, same } from "./check.js";
import { Outbox, OUTBOX_MAX } from "/ui/lib/outbox.js";
import { canWait, seenSplit, shownOf, withOwn } from "/ui/jobs/post-alone.js";
import { StartWatch } from "/ui/jobs/post-start.js";
import { isApart, cleanOnes } from "/ui/jobs/post-state.js";
import { acts } from "/ui/lib/acts.js";

/** A store in memory that outlives an outbox, as the disk does; it can be made to fail. */
function shelf(broken = false) {
  const kept = { waiting: [], answered: [], next: 1 };
  const or = (value) => (broken ? Promise.reject(new Error("no room")) : Promise.resolve(value));
  return {
    kept,
    waiting: () => or([...kept.waiting]),
    answered: () => or([...kept.answered]),
    keep: (entry) => or(kept.next).then((seq) => {
      kept.waiting.push({ ...entry, seq });
      return kept.next++;
    }),
    settle: (seq, refusal) => or().then(() => {
      kept.waiting = kept.waiting.filter((one) => one.seq !== seq);
      if (refusal) kept.answered.push(refusal);
    }),
    noted: (key) => or().then(() => (kept.answered = kept.answered.filter((one) => one.key !== key))),
  };
}

const press = (key) => ({ key, act: acts.tap(17, "a", "start"), wallMs: 0 });
const never = () => new Promise(() => {});
const turns = async () => {
  for (let i = 0; i < 40; i++) await Promise.resolve();
};

test("a press is on the disk before it is sent, and the next one is sent after its answer", async () => {
  const store = shelf();
  const sent = [];
  const send = ({ key }) => {
    sent.push([key, store.kept.waiting.map((one) => one.key)]);
    return new Promise((resolve) => (send.answer = resolve));
  };
  const outbox = new Outbox({ store, send });
  await outbox.take(press("k1"));
  await outbox.take(press("k2"));
  await turns();
  same(sent, [["k1", ["k1"]]]);
  send.answer({ kind: "accepted", entry: 5 });
  await turns();
  same([sent.length, sent[1][0], store.kept.waiting.map((one) => one.key)], [2, "k2", ["k2"]]);
  same(outbox.lastEntry, 5);
});

test("an outbox made anew sends what the last one did not get an answer for, under the same key", async () => {
  const store = shelf();
  const lost = new Outbox({ store, send: never });
  await lost.take(press("k1"));
  await lost.take(press("k2"));
  const sent = [];
  const outbox = new Outbox({ store, send: async ({ key }) => sent.push(key) && { kind: "accepted" } });
  await outbox.loaded;
  await turns();
  same([sent, store.kept.waiting], [["k1", "k2"], []]);
});

test("a refusal nobody stands by for stays until it is noted, also over a reload", async () => {
  const store = shelf();
  const refused = { kind: "refused", code: "already-ruled" };
  const outbox = new Outbox({ store, send: async () => refused });
  await outbox.take(press("k1"));
  await turns();
  const later = new Outbox({ store, send: never });
  await later.loaded;
  same(later.answered.map((one) => [one.key, one.answer.code]), [["k1", "already-ruled"]]);
  await later.takeNote("k1");
  same([later.answered, store.kept.answered], [[], []]);
});

test("a refusal somebody stands by for is theirs, unless a standing ruling comes with it", async () => {
  const answers = [
    { kind: "refused", code: "stopped" },
    { kind: "refused", code: "already-ruled", standing: {} },
  ];
  const outbox = new Outbox({ store: shelf(), send: async () => answers.shift() });
  const first = outbox.answerOf("k1");
  const second = outbox.answerOf("k2");
  await outbox.take(press("k1"));
  await outbox.take(press("k2"));
  same([(await first).kept, (await second).kept], [false, true]);
  same(outbox.answered.map((one) => one.key), ["k2"]);
});

test("a gateway that does not know the tablet takes nothing out", async () => {
  const outbox = new Outbox({
    store: shelf(),
    send: async () => ({ kind: "refused", code: "unknown-device" }),
  });
  await outbox.take(press("k1"));
  await turns();
  same([outbox.waiting.length, outbox.blocked], [1, "unknown-device"]);
});

test("a full outbox takes no more, and says so", async () => {
  const outbox = new Outbox({ store: shelf(), send: never });
  for (let i = 0; i < OUTBOX_MAX; i++) await outbox.take(press(`k${i}`));
  same([await outbox.take(press("one-more")), outbox.waiting.length], [false, OUTBOX_MAX]);
});

test("where the browser keeps nothing a press is still sent, and the page knows", async () => {
  const sent = [];
  const outbox = new Outbox({
    store: shelf(true),
    send: async ({ key }) => sent.push(key) && { kind: "accepted" },
  });
  await outbox.take(press("k1"));
  await turns();
  same([sent, outbox.durable, outbox.waiting], [["k1"], false, []]);
});

test("stop and the start signal are now or never; a tap can wait", () =>
  same([acts.stopAll(), acts.giveStart(17), acts.tap(17, "a", "finish")].map(canWait), [
    false, false, true,
  ]));

const station = (id, started) => ({
  id,
  started,
  checkpoints: [{ id: "post", seen: 0, count: 2 }],
  criteria: [{ id: "run", warnings: 1, faults: 0 }],
});
const seventeen = {
  number: 17,
  phase: "at-station",
  station: station("a", true),
  ahead: [station("b", false)],
  calls: [],
  splits: [],
};

test("own presses lead along the course, and never beyond what the frame knows of it", () => {
  const on = withOwn(seventeen, [acts.tap(17, "a", "finish")]);
  same([on.phase, on.station.id, on.station.started], ["walking", "b", false]);
  const through = withOwn(on, [acts.tap(17, "b", "start"), acts.tap(17, "b", "finish")]);
  same([through.phase, through.station], ["through", null]);
  same(withOwn(through, [acts.tap(17, "b", "finish")]).phase, "through");
});

test("a press for another station or another candidate changes nothing", () => {
  same(withOwn(seventeen, [acts.tap(17, "b", "finish")]), seventeen);
  same(withOwn(seventeen, [acts.tap(18, "a", "finish")]), seventeen);
});

test("own checkpoints and calls are counted, up to what is asked for", () => {
  const tap = acts.tap(17, "a", "post");
  const on = withOwn(seventeen, [tap, tap, tap, acts.call(17, "a", "run", true)]);
  same([on.station.checkpoints[0].seen, on.station.criteria[0].faults, on.calls.length], [2, 1, 1]);
});

test("a hold by this tablet shows, and going on leads back", () => {
  const held = withOwn(seventeen, [acts.holdCandidate(17, "medical", "")]);
  const on = withOwn(held, [acts.resumeCandidate(17)]);
  same([held.phase, on.phase], ["held", "at-station"]);
});

test("the start lingers for two seconds after a sensor's start was shown", () => {
  const watch = new StartWatch();
  watch.lingers("17/a", false, 0);
  same([1000, 2900, 3000].map((ms) => watch.lingers("17/a", true, ms)), [true, true, false]);
});

test("the start lingers no longer once it was tapped, nor on a page that did not see it begin", () => {
  const tapped = new StartWatch();
  tapped.lingers("17/a", false, 0);
  tapped.tapped();
  same(tapped.lingers("17/a", true, 100), false);
  same(new StartWatch().lingers("17/a", true, 0), false);
});

test("sensors and taps more than half a second apart ask for a reason", () => {
  const split = (handMicros) => ({ state: "proposed", clean: true, splitMicros: 5_000_000, handMicros });
  same([-1, 5_500_000, 5_500_001, 4_499_999].map((micros) => isApart(split(micros))), [
    false, false, true, true,
  ]);
  same(cleanOnes([split(5_500_001)]), []);
});

const passage = { unit: "fu-01", boot: "b", seq: 4 };
const ruledOn = {
  number: 17,
  splits: [
    { station: "a", splitMicros: 7, readings: [], marks: [{ edge: passage }, { edge: null }], standing: { entry: 9 } },
    { station: "b", splitMicros: 5, readings: [{ splitMicros: 5 }, { splitMicros: 6 }], marks: [] },
  ],
};

test("a strike waits at the split that rests on the passage", () => {
  const waits = withOwn(ruledOn, [acts.strike(passage, "other", "")]).splits.map((one) => one.waits === true);
  same(waits, [true, false]);
  same(seenSplit(acts.strike({ ...passage, seq: 5 }, "other", ""), ruledOn), null);
});

test("a ruling says what stood on the screen and every time that was shown", () => {
  same(shownOf(seenSplit(acts.confirm(17, "a"), ruledOn)), { supersedes: 9, shownMicros: [7] });
  same(shownOf(seenSplit(acts.chooseReading(17, "b", 1), ruledOn)), { supersedes: -1, shownMicros: [5, 6] });
  same(shownOf(seenSplit(acts.tap(17, "b", "finish"), ruledOn)), {});
});

test("stopping a candidate can't wait", () => same(canWait(acts.stopOne(17, "medical", "")), false));
