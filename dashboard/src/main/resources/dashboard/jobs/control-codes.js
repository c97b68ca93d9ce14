// One-time codes for further tablets. A code is shown once, here, and nowhere else.
import { html, nothing } from "lit";
import { say } from "../lib/say.js";
import { newCode } from "../lib/ask-gateway.js";
import { ROLES } from "../lib/badge.js";

export function codeMaker(page) {
  return html`<section aria-labelledby="codes">
    <h2 id="codes">${say("control.codes")}</h2>
    <div class="row">${ROLES.map((role) => page.button(
      `code-${role}`,
      say("control.new-code", { role: say(`role.${role}`) }),
      () => make(page, role),
    ))}</div>
    ${page.madeCode ? made(page.madeCode) : nothing}
  </section>`;
}

function made({ role, code }) {
  return html`<div class="card" role="status">
    <p>${say("control.code-is", { role: say(`role.${role}`) })}</p>
    <p class="code-shown">${code}</p>
    <p>${say("control.code-where", { address: `${location.origin}/enrol#${code}` })}</p>
  </div>`;
}

async function make(page, role) {
  const name = `code-${role}`;
  if (page.pending.has(name)) return;
  page.pending.add(name);
  const answer = await newCode(page.badge.token, role);
  page.pending.delete(name);
  if (answer.kind === "accepted") page.madeCode = { role, code: answer.code };
  else page.notes.answer(answer);
  page.requestUpdate();
}
