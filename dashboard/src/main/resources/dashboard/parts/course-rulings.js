// Hold, resume and restart of the whole course, each for the role that may.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";
import { acts, reasonsFor } from "../lib/acts.js";

export function courseRulings(page, { course }) {
  const leads = page.badge.role === "coordinator";
  if (course === "stopped") {
    return leads
      ? html`<p class="large">${say("control.restart-who")}</p>`
      : page.button("restart", say("control.restart"), () => restart(page), { kind: "strong wide" });
  }
  if (course === "running") {
    return page.button("hold-course", say("control.hold"), () => hold(page), { kind: "wide" });
  }
  if (!leads) return nothing;
  return page.button(
    "resume-course",
    say("control.resume"),
    () => page.act("resume-course", acts.resumeCourse(), { quiet: true }),
    { kind: "strong wide" },
  );
}

async function hold(page) {
  const answer = await page.ask.put({
    title: say("control.hold-title"),
    choices: reasonsFor.holdAll.map((reason) => [reason, say(`reason.${reason}`)]),
    words: true,
    yes: say("control.hold-do"),
  });
  if (!answer) return;
  page.act("hold-course", acts.holdCourse(answer.choice, answer.words), { quiet: true });
}

async function restart(page) {
  const answer = await page.ask.put({
    title: say("control.restart-title"),
    yes: say("control.restart-do"),
  });
  if (answer) page.act("restart", acts.restart(), { quiet: true });
}
