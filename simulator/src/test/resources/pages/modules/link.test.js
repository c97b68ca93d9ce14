import { test, same } from "./check.js";
import * as link from "/ui/lib/link.js";
import { sseReader } from "/ui/lib/sse.js";
import { backoffMs } from "/ui/lib/stream.js";
import { examNow, wallAt } from "/ui/lib/exam-clock.js";

const head = { frame: 1, gatewayMicros: 1_000_000, wallMicros: 50_000_000, speed: 10 };

test("a link that was never heard is not old", () =>
  same(link.isStale(link.noLink(0), 60_000), false));

test("data is old from three seconds without a byte on", () => {
  const heard = link.heard(link.noLink(0), 1000);
  same([link.isStale(heard, 3999), link.isStale(heard, 4000)], [false, true]);
});

test("a sign of life keeps data fresh without a frame", () => {
  const framed = link.framed(link.noLink(0), { head }, 0);
  same(link.isStale(link.heard(framed, 2500), 4000), false);
});

test("a lost link keeps the last picture and its age goes on", () => {
  const lost = link.lost(link.framed(link.noLink(0), { head }, 1000));
  same([lost.phase, lost.frame.head.frame, link.ageSeconds(lost, 8400)], ["lost", 1, 7]);
});

test("a refusal says whether the badge or the role is the trouble", () => {
  same(link.refused(link.noLink(0), 401).phase, "not-enrolled");
  same(link.refused(link.noLink(0), 403).phase, "wrong-role");
});

test("exam time runs on at the exam's speed between frames", () => {
  same(examNow(head, 0, 500), 6_000_000);
  same(examNow(head, 500, 0), 1_000_000);
});

test("the wall clock runs in real time at any speed", () =>
  same(wallAt(head, 21_000_000), 52_000_000));

// HTML Standard, section 9.2.6, "Interpreting an event stream".
test("a stream is read whatever the pieces it comes in", () => {
  const text = "event: frame\nid: 7\ndata: {\"a\":\ndata: 1}\n\n: alive\n\nevent: reset\r\ndata:x\r\n\r\n";
  for (let size = 1; size <= text.length; size++) {
    const got = [];
    const take = sseReader((message) => got.push(message));
    for (let at = 0; at < text.length; at += size) take(text.slice(at, at + size));
    same([size, got], [size, [
      { event: "frame", id: "7", data: "{\"a\":\n1}" },
      { event: "reset", id: "7", data: "x" },
    ]]);
  }
});

test("a comment alone is no message", () => {
  const got = [];
  sseReader((message) => got.push(message))(": alive\n\n\n");
  same(got, []);
});

test("the wait before another attempt grows to a limit and is spread", () => {
  same([0, 1, 2, 9].map((attempt) => backoffMs(attempt, () => 0.5)), [300, 600, 1200, 4000]);
  same([backoffMs(0, () => 0), backoffMs(0, () => 1)], [240, 360]);
});
