import { test, same } from "./check.js";
import * as times from "/ui/lib/times.js";

// Check values by hand, from the definition of minutes, seconds and tenths.
test("a time is shown as minutes, seconds and tenths", () => {
  same(times.minutesTenths(700_000_000), "11:40.0");
  same(times.minutesTenths(5_400_000), "0:05.4");
  same(times.minutesTenths(0), "0:00.0");
});

test("a tenth that has not passed yet is not shown", () =>
  same(times.minutesTenths(59_999_999), "0:59.9"));

test("no time is a dash", () => same(times.minutesTenths(-1), "–"));

test("a wait is shown in whole seconds and never below zero", () => {
  same(times.minutes(95.9), "1:35");
  same(times.waited(10_000_000, 9_000_000), "0:00");
});

test("a typed time is read with minutes or without, with point or comma", () => {
  same(times.parseTime("1:05.3"), 65_300_000);
  same(times.parseTime(" 65,25 "), 65_250_000);
  same(times.parseTime("12"), 12_000_000);
});

test("what is no time below an hour is refused", () => {
  for (const wrong of ["", "abc", "1:5", "1:75.0", "0", "0:00.0", "3600", "1:2:3", "-4", "1e3", "1:05.1234"]) {
    same([wrong, times.parseTime(wrong)], [wrong, null]);
  }
});

test("half an interval is rounded up, so that it never claims too much", () => {
  same(times.halfWidth(0, 400_000), "0.20");
  same(times.halfWidth(0, 5_500), "0.01");
  same(times.halfWidth(0, 2_450_000), "1.23");
});

test("a time of day is shown to the tenth and read back to the same instant", () => {
  const wall = new Date(2026, 8, 25, 10, 42, 17, 345).getTime() * 1000;
  same(times.wallTenths(wall), "10:42:17.3");
  same(times.parseWall("10:42:17.345", wall), wall);
  same(times.parseWall(" 9:05:00 ", wall), new Date(2026, 8, 25, 9, 5).getTime() * 1000);
});

test("what is no time of day is refused", () => {
  for (const wrong of ["", "10:42", "24:00:00", "10:60:00", "10:42:60", "10.42.17", "-1:00:00"]) {
    same([wrong, times.parseWall(wrong, 0)], [wrong, null]);
  }
});
