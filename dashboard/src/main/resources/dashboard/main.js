// One shell for every page: the address says whose job it is, and only that job's modules are
// loaded. They are asked for all at once: one import after the other costs a slow tablet dearly.
import { settleLook } from "./lib/look.js";

const COURSE_WORDS = ["words/of-control", "words/on-control"];
const JOBS = {
  post: [
    "jobs/post-state",
    "jobs/post-zones",
    "jobs/post-splits",
    "jobs/post-rule",
    "jobs/post-call",
    "jobs/post-lock",
    "jobs/post-link",
    "jobs/post-start",
    "jobs/post-second-clock",
    "jobs/post-alone",
    "jobs/post-waiting",
    "jobs/post-install",
    "lib/outbox",
    "lib/outbox-store",
    "lib/last-frame",
    "words/of-post",
    "words/on-gap",
    "parts/sheet",
    "parts/tray",
    "parts/fields",
  ],
  control: [
    "jobs/control-state",
    "jobs/control-next",
    "jobs/control-course",
    "jobs/control-done",
    "jobs/control-codes",
    "jobs/post-call",
    "parts/course-map",
    "parts/heat-card",
    "parts/sheet",
    "parts/stand-by",
    "parts/course-rulings",
    "parts/tray",
    "parts/fields",
    ...COURSE_WORDS,
  ],
  crew: ["parts/stand-by", ...COURSE_WORDS],
  watch: [
    "jobs/watch-state",
    "jobs/watch-told",
    "jobs/watch-moving",
    "parts/stand-by",
    "parts/course-rulings",
    "words/of-watch",
    "words/on-watch",
    ...COURSE_WORDS,
  ],
  board: COURSE_WORDS,
  bench: [
    "words/of-bench",
    "words/on-bench",
    "words/on-clocks",
    "words/on-calibration",
    "words/on-triggers",
    "words/on-proof",
    "jobs/trace-state",
    "jobs/clock-state",
    "jobs/calibration-state",
    "jobs/trigger-state",
    "jobs/proof-state",
    "jobs/bench-strip",
    "jobs/bench-unit",
    "jobs/bench-clock",
    "jobs/bench-plots",
    "jobs/bench-calibration",
    "jobs/bench-by-hand",
    "jobs/bench-triggers",
    "jobs/bench-proof",
  ],
  leaderboard: COURSE_WORDS,
  front: ["jobs/front-entry", "lib/outbox-store"],
};
const SHARED = ["parts/stations", "lib/times"];
const LOOKS = { bench: ["calibration", "plots", "proof", "triggers"], watch: ["plots"] };

/** A style sheet that only one page wears; the page is shown when it is there, or failed. */
function wear(look) {
  const link = document.createElement("link");
  Object.assign(link, { rel: "stylesheet", href: `/ui/look/${look}.css` });
  const settled = new Promise((done) => Object.assign(link, { onload: done, onerror: done }));
  document.head.append(link);
  return settled;
}

settleLook();
const name = location.pathname.replace(/^\/|\/$/g, "");
const job = Object.hasOwn(JOBS, name) ? name : "front";
const modules = [`jobs/${job}`, ...JOBS[job], ...SHARED];
const looks = (LOOKS[job] ?? []).map(wear);
await Promise.all([...looks, ...modules.map((module) => import(`./${module}.js`))]);
if (!document.body) await new Promise((ready) => addEventListener("DOMContentLoaded", ready));
document.body.append(document.createElement(`yc-${job}`));
