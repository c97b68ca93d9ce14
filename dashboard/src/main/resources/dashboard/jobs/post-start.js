// How long the marking zone still means "start" after a sensor's start was shown: a person's tap comes
// about a tenth of a second late, and must not become a tap for what comes next. Pure: times come in.
export const LINGERS_MS = 2000;

export class StartWatch {
  #of = "";
  #seenMs = -Infinity;
  #started = false;
  #tapped = false;

  /**
   * Looks at a station of a candidate.
   *
   * @param of what names both
   * @returns whether a tap now is still one for the start
   */
  lingers(of, started, nowMs) {
    // A page that was just opened on a station under way saw nothing begin.
    if (of !== this.#of) this.#begin(of, started);
    if (started && !this.#started) this.#seenMs = nowMs;
    this.#started = started;
    return started && !this.#tapped && nowMs - this.#seenMs < LINGERS_MS;
  }

  /** The person's own start tap was made: the next one is for the next thing. */
  tapped() {
    this.#tapped = true;
  }

  #begin(of, started) {
    this.#of = of;
    this.#started = started;
    this.#seenMs = -Infinity;
    this.#tapped = false;
  }
}
