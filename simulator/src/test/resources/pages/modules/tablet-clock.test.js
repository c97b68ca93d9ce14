import { test, same } from "./check.js";
import * as clocks from "/ui/lib/tablet-clock.js";
import { OwnClock } from "/ui/lib/own-clock.js";

/** A clock on times written by hand. */
function own() {
  const at = { now: 1000, wall: 500_000 };
  let boots = 0;
  const clock = new OwnClock({
    now: () => at.now,
    wall: () => at.wall,
    newId: () => `boot-${++boots}`,
  });
  const pass = (ms, wallMs = ms) => {
    at.now += ms;
    at.wall += wallMs;
  };
  return { clock, pass };
}

const taken = (answers) => (answer) => {
  answers.push(answer);
  return Promise.resolve({ kind: "accepted", compared: true });
};

test("ticks are whole microseconds since the start, at the exam's speed", () => {
  same(clocks.tickAt(clocks.newClock("a", 1000, 0), 1000.1234), 123);
  same(clocks.tickAt(clocks.newClock("a", 1000, 0, 30), 1001), 30_000);
  same(clocks.tickAt(clocks.newClock("a", 1000, 0), 999), 0);
});

test("a press carries its boot and its tick", () => {
  const { clock, pass } = own();
  pass(2500);
  same(clock.press(), { boot: "boot-1", deviceMicros: 2_500_000 });
});

test("a jump of more than 50 ms between the two clocks is a new boot, forwards or back", () => {
  const { clock, pass } = own();
  let wanted = 0;
  clock.onBoot = () => wanted++;
  pass(1000, 1050);
  same([clock.press().boot, wanted], ["boot-1", 0]);
  pass(1000, 1051);
  same([clock.press(), wanted], [{ boot: "boot-2", deviceMicros: 0 }, 1]);
  pass(1000, -5000);
  same([clock.press().boot, wanted], ["boot-3", 2]);
});

test("clocks that drift apart slowly are no jump", () => {
  const { clock, pass } = own();
  for (let i = 0; i < 100; i++) {
    pass(5000, 5010);
    clock.press();
  }
  same(clock.press().boot, "boot-1");
});

test("a question is answered with when it came and when the answer went", async () => {
  const { clock, pass } = own();
  const answers = [];
  pass(100);
  const heard = clock.now();
  const answering = clock.answer({ id: "q7", speed: 1 }, heard, taken(answers));
  pass(7);
  await answering;
  same(answers, [{ id: "q7", boot: "boot-1", received: 101_000, sent: 107_000 }]);
});

test("a boot that began while the answer waited sends none", async () => {
  const { clock } = own();
  const answers = [];
  const answering = clock.answer({ id: "q1", speed: 1 }, clock.now(), taken(answers));
  clock.restart();
  await answering;
  same(answers, []);
});

test("another speed is another boot, and is never answered too early", async () => {
  const { clock } = own();
  const answers = [];
  await clock.answer({ id: "q1", speed: 6 }, clock.now() - 50, taken(answers));
  same(answers, [{ id: "q1", boot: "boot-2", received: 0, sent: 0 }]);
});

test("a clock is said to be without time only until its own boot was compared", async () => {
  const { clock, pass } = own();
  pass(2999);
  same(clock.isTimeless(), false);
  pass(1);
  same(clock.isTimeless(), true);
  await clock.answer({ id: "q1", speed: 1 }, clock.now(), taken([]));
  same(clock.isTimeless(), false);
  clock.restart();
  pass(3000);
  same(clock.isTimeless(), true);
});

test("an exchange of an earlier boot compares nothing", () =>
  same(clocks.compared(clocks.newClock("b", 0, 0), "a").compared, false));
