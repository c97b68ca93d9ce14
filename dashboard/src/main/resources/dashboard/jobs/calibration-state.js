// What the calibration section computes: pure.

/** Microseconds with their sign as milliseconds: −1840 → "−1.84". */
export function signedMilliseconds(micros) {
  const value = (Math.abs(micros) / 1000).toFixed(2);
  if (Number(value) === 0) return value;
  return `${micros < 0 ? "−" : "+"}${value}`;
}

/** Milliseconds without a sign, rounded up: an uncertainty must not look smaller than it is. */
export function atMostMilliseconds(micros) {
  return (Math.ceil(micros / 10) / 100).toFixed(2);
}

/** "fu-02/1" → {unit: "fu-02", number: 1}; null for nothing chosen. */
export function sensorOf(chosen) {
  const match = /^(.+)\/(\d+)$/.exec(chosen ?? "");
  return match ? { unit: match[1], number: Number(match[2]) } : null;
}

/** The sensors that can be tripped, as the choices of a list: outputs can't. */
export function tripSensors(units) {
  return units.flatMap((unit) =>
    unit.sensors
      .filter((sensor) => sensor.number <= 8)
      .map((sensor) => ({ value: `${unit.id}/${sensor.number}`, unit: unit.id, sensor })));
}

/** Whether both are chosen, of two units. */
export function mayBegin(reference, other) {
  const [first, second] = [sensorOf(reference), sensorOf(other)];
  return first !== null && second !== null && first.unit !== second.unit;
}
