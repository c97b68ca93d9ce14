import { test, same } from "./check.js";
import {
  atMostMilliseconds, mayBegin, sensorOf, signedMilliseconds, tripSensors,
} from "/ui/jobs/calibration-state.js";

test("a difference keeps its sign", () => {
  same(signedMilliseconds(-1840), "−1.84");
  same(signedMilliseconds(1840), "+1.84");
  same(signedMilliseconds(-4), "0.00");
});

test("an uncertainty is rounded up", () => {
  same(atMostMilliseconds(52), "0.06");
  same(atMostMilliseconds(50), "0.05");
  same(atMostMilliseconds(0), "0.00");
});

test("a chosen sensor is a unit and a number", () => {
  same(sensorOf("fu-02/1"), { unit: "fu-02", number: 1 });
  same(sensorOf(""), null);
});

test("two sensors of two units can be compared, and no others", () => {
  same(mayBegin("fu-02/1", "fu-08/2"), true);
  same(mayBegin("fu-02/1", "fu-02/2"), false);
  same(mayBegin("fu-02/1", ""), false);
});

test("outputs can't be tripped", () => {
  const sensors = [{ number: 1 }, { number: 8 }, { number: 9 }];
  same(tripSensors([{ id: "fu-01", sensors }]).map((one) => one.value), ["fu-01/1", "fu-01/8"]);
});
