// A paper, fetched with this tablet's token and shown in a frame of its own, so that it prints as the
// gateway made it: the telling sheet, or a dossier.
import { html } from "lit";
import { say } from "../lib/say.js";
import { language } from "../lib/look.js";
import { read } from "../lib/ask-gateway.js";

/** A dossier plays the whole day, and another one may be under way. */
const DOSSIER_MS = 60_000;

export function sheet(page, number) {
  return paper(page, say("done.sheet"), `/api/telling/${number}`);
}

export function dossier(page, number) {
  return paper(page, say("done.dossier"), `/api/dossier/${number}?as=${language()}`, DOSSIER_MS);
}

async function paper(page, title, address, patienceMs) {
  const answer = await read(address, page.badge.token, patienceMs);
  if (!answer) return page.notes.warn(say("sheet.missing"));
  const made = await answer.text();
  const print = () => page.querySelector("iframe.sheet").contentWindow.print();
  await page.ask.put({
    title,
    body: () => html`<iframe
        class="sheet"
        title=${title}
        sandbox="allow-same-origin allow-modals"
        .srcdoc=${made}
      ></iframe>`,
    more: html`<button type="button" class="button strong" data-act="print" @click=${print}>
      ${say("sheet.print")}
    </button>`,
  });
}
