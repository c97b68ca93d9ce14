// One shell for every page: the address says whose job it is, and only that job's module is
// loaded. Language and look are settled before anything is drawn.
import { settleLook } from "./lib/look.js";

const JOBS = ["post", "control", "crew", "board", "bench", "leaderboard"];

settleLook();
const name = location.pathname.replace(/^\/|\/$/g, "");
const job = JOBS.includes(name) ? name : "front";
await import(`./jobs/${job}.js`);
if (!document.body) await new Promise((ready) => addEventListener("DOMContentLoaded", ready));
document.body.append(document.createElement(`yc-${job}`));
