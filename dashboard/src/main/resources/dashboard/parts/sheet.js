// A paper, fetched with this tablet's token. The telling sheet and a dossier are shown in a frame of
// their own, so that they print as the gateway made them; a dossier can also be kept as the file that
// is checked off-line. Whose button is pressed is pending under the name given until it is there.
import { html } from "lit";
import { say } from "../lib/say.js";
import { language } from "../lib/look.js";
import { read } from "../lib/ask-gateway.js";

/** The gateway plays the whole day for a dossier, for 120 s at most. */
const DOSSIER_MS = 130_000;

/** Time for the browser to take a file over; common practice, no source. */
const TAKEN_OVER_MS = 60_000;

export async function sheet(page, number) {
  const made = await fetched(page, `sheet-${number}`, `/api/telling/${number}`);
  if (made) await show(page, say("done.sheet"), made);
}

export async function dossier(page, number) {
  const address = `/api/dossier/${number}?as=${language()}`;
  const made = await fetched(page, `dossier-${number}`, address, DOSSIER_MS);
  if (made) await show(page, say("done.dossier"), made);
}

export async function dossierFile(page, number) {
  const address = `/api/dossier/${number}?as=json`;
  const made = await fetched(page, `dossier-file-${number}`, address, DOSSIER_MS);
  if (!made) return;
  const href = URL.createObjectURL(made);
  Object.assign(document.createElement("a"), { href, download: `dossier-${number}.json` }).click();
  setTimeout(() => URL.revokeObjectURL(href), TAKEN_OVER_MS);
}

/** The paper as a blob; null when it could not be had, which the person has been told. */
async function fetched(page, name, address, patienceMs) {
  if (page.pending.has(name)) return null;
  page.pending.add(name);
  page.requestUpdate();
  const answer = await read(address, page.badge.token, patienceMs);
  const made = answer ? await answer.blob().catch(() => null) : null;
  page.pending.delete(name);
  page.requestUpdate();
  if (!made) page.notes.warn(say("sheet.missing"));
  return made;
}

async function show(page, title, made) {
  const text = await made.text();
  const print = () => page.querySelector("iframe.sheet").contentWindow.print();
  await page.ask.put({
    title,
    body: () => html`<iframe
        class="sheet"
        title=${title}
        sandbox="allow-same-origin allow-modals"
        .srcdoc=${text}
      ></iframe>`,
    more: html`<button type="button" class="button strong" data-act="print" @click=${print}>
      ${say("sheet.print")}
    </button>`,
  });
}
