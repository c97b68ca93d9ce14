// What a page says to the gateway. Every answer is a value: accepted, refused with a code, or
// unsent. Nothing is thrown, so a page can't forget to show it.
import { newKey } from "./key.js";
import { ownClock } from "./own-clock.js";

const PATIENCE_MS = 4000;
const AGAIN_MS = 400;

/** Refusals of a moment: the same act under the same key is worth another try. */
const MOMENTARY = ["busy", "no-answer"];

/** Whether nobody answered for the gateway, or only to say that it could not see to it. */
export function isLost({ kind, code }) {
  return kind === "unsent" || MOMENTARY.includes(code);
}

/**
 * Sends one act until it is answered or patience ends. Each try carries the same key, so that an
 * act whose answer was lost is never done twice. Call it from the press: its time is read now.
 *
 * @param patienceMs how long it may take in all; a stop gets one second and a single try
 */
export async function rule(
  token,
  act,
  { basis = -1, patienceMs = PATIENCE_MS, tries = 9, key = newKey() } = {},
) {
  const body = { key, ...ownClock.press(), basis, act };
  const until = performance.now() + patienceMs;
  for (let left = tries; ; left--) {
    const answer = await post("/api/rulings", body, token, until - performance.now());
    if (!isLost(answer) || left <= 1 || performance.now() + AGAIN_MS >= until) return answer;
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
  }
}

/** Sends a press that was made before, once; its body was written down at the press. */
export function deliver(token, body) {
  return post("/api/rulings", body, token, PATIENCE_MS);
}

export function enrol(code, person) {
  return post("/api/enrol", { code, person }, null, PATIENCE_MS);
}

/** The answer to a question to this tablet's clock. */
export function answerClock(token, answer) {
  return post("/api/clock", answer, token, PATIENCE_MS);
}

/** Asks to be asked, after this tablet's clock has started anew. */
export function wantClock(token) {
  return post("/api/clock-wanted", {}, token, PATIENCE_MS);
}

export function newCode(token, role) {
  return post("/api/codes", { role }, token, PATIENCE_MS);
}

/** What other guards of a trigger would have found today; nothing is done by asking. */
export function rejudge(token, question) {
  return post("/api/bench/rejudge", question, token, PATIENCE_MS);
}

/** Anything staff may read; the caller gets the response, or null when it could not be had. */
export async function read(address, token, patienceMs = PATIENCE_MS) {
  try {
    const answer = await fetch(address, {
      headers: { Authorization: `Bearer ${token}` },
      signal: AbortSignal.timeout(patienceMs),
    });
    return answer.ok ? answer : null;
  } catch {
    return null;
  }
}

async function post(address, body, token, patienceMs) {
  const headers = { "Content-Type": "application/json" };
  if (token) headers.Authorization = `Bearer ${token}`;
  try {
    const answer = await fetch(address, {
      method: "POST",
      headers,
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(Math.max(1, Math.ceil(patienceMs))),
    });
    const said = await answer.json().catch(() => ({}));
    if (answer.ok) return { kind: "accepted", ...said };
    const { refused, ...rest } = said;
    return { kind: "refused", code: refused ?? `http-${answer.status}`, ...rest };
  } catch {
    return { kind: "unsent" };
  }
}
