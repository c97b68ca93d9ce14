// Press-and-hold: an act that a wet sleeve or a stumble must not set off. Finger, pen, mouse or a
// held Enter or Space key count alike; letting go early does nothing.
export const HOLD_MS = 600;

export class Hold {
  /** @param onHeld what a full hold does; @param onChange called when pressing begins or ends */
  constructor(onHeld, onChange) {
    this.onHeld = onHeld;
    this.onChange = onChange;
    this.pressing = false;
  }

  begin = () => {
    if (this.pressing) return;
    this.pressing = true;
    this.timer = setTimeout(() => {
      this.end();
      this.onHeld();
    }, HOLD_MS);
    this.onChange();
  };

  end = () => {
    if (!this.pressing) return;
    this.pressing = false;
    clearTimeout(this.timer);
    this.onChange();
  };

  keyDown = (press) => {
    if (press.key !== "Enter" && press.key !== " ") return;
    press.preventDefault();
    if (!press.repeat) this.begin();
  };

  keyUp = (press) => {
    if (press.key === "Enter" || press.key === " ") this.end();
  };
}
