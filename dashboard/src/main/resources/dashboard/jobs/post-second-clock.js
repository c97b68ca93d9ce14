// The proctor's taps as a second clock beside the sensors: both times side by side, and a reason when
// they are too far apart for a hand. What counts is not decided by it; the reason goes to the journal
// as a note before the confirmation.
import { html, nothing } from "lit";
import { say, text } from "../lib/say.js";
import { acts } from "../lib/acts.js";
import { minutesTenths } from "../lib/times.js";
import { apartMicros, isApart, isRuled } from "./post-state.js";

const WHYS = ["tap-late", "tap-early", "looked-away", "sensor-doubtful", "other"];

/** "+0.7" or "-0.7", in seconds. */
function apart(split) {
  const tenths = Math.round(apartMicros(split) / 100_000);
  return `${tenths < 0 ? "-" : "+"}${Math.floor(Math.abs(tenths) / 10)}.${Math.abs(tenths) % 10}`;
}

export function secondClock(split) {
  if (split.handMicros < 0) return nothing;
  const time = minutesTenths(split.handMicros);
  if (apartMicros(split) === null) return html`<p>${say("splits.hand", { time })}</p>`;
  const asks = isApart(split) && !isRuled(split);
  return html`<p data-apart=${asks}>${asks ? html`<span aria-hidden="true">! </span>` : nothing}${say(
    asks ? "splits.hand-asks" : "splits.hand-beside", { time, apart: apart(split) },
  )}</p>`;
}

/** Confirms what was seen; first asks why, when sensor and taps are apart. */
export async function confirmOne(page, candidate, split) {
  const { number, revision } = candidate;
  if (isApart(split)) {
    const why = await page.ask.put({
      title: say("apart.title", { station: text(split.name), apart: apart(split) }),
      choices: WHYS.map((each) => [each, say(`apart.${each}`)]),
      words: true,
      yes: say("splits.confirm"),
    });
    if (!why) return;
    const words = `${split.station}: taps ${apart(split)} s from the sensors: ${why.choice}`;
    const note = acts.note(number, why.words ? `${words}: ${why.words}` : words);
    const noted = await page.act(`note-${split.station}`, note, { quiet: true });
    if (!["accepted", "waits"].includes(noted?.kind)) return;
  }
  page.act(`confirm-${split.station}`, acts.confirm(number, split.station), {
    basis: revision,
    quiet: true,
    seen: split,
  });
}
