// One shell for every page: the address says whose job it is, and only that job's modules are
// loaded. They are asked for all at once: one import after the other costs a slow tablet dearly.
import { settleLook } from "./lib/look.js";

const JOBS = {
  post: ["jobs/post-state", "jobs/post-zones", "jobs/post-splits", "jobs/post-call", "jobs/post-lock"],
  control: ["jobs/control-state", "jobs/control-next", "jobs/control-course", "jobs/control-done"],
  crew: [],
  board: [],
  bench: [
    "jobs/trace-state",
    "jobs/clock-state",
    "jobs/calibration-state",
    "jobs/bench-strip",
    "jobs/bench-unit",
    "jobs/bench-clock",
    "jobs/bench-plots",
    "jobs/bench-calibration",
  ],
  leaderboard: [],
  front: ["jobs/front-entry"],
};
const SHARED = ["parts/stations", "lib/times"];

settleLook();
const name = location.pathname.replace(/^\/|\/$/g, "");
const job = Object.hasOwn(JOBS, name) ? name : "front";
const modules = [`jobs/${job}`, ...JOBS[job], ...SHARED];
await Promise.all(modules.map((module) => import(`./${module}.js`)));
if (!document.body) await new Promise((ready) => addEventListener("DOMContentLoaded", ready));
document.body.append(document.createElement(`yc-${job}`));
