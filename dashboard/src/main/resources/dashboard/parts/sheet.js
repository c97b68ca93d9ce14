// The telling sheet, fetched with this tablet's token and shown in a frame of its own, so that it
// prints as the gateway made it.
import { html } from "lit";
import { say } from "../lib/say.js";
import { read } from "../lib/ask-gateway.js";

export async function sheet(page, number) {
  const answer = await read(`/api/telling/${number}`, page.badge.token);
  if (!answer) return page.notes.warn(say("sheet.missing"));
  const made = await answer.text();
  const print = () => page.querySelector("iframe.sheet").contentWindow.print();
  await page.ask.put({
    title: say("done.sheet"),
    body: () => html`<iframe
        class="sheet"
        title=${say("done.sheet")}
        sandbox="allow-same-origin allow-modals"
        .srcdoc=${made}
      ></iframe>`,
    more: html`<button type="button" class="button strong" data-act="print" @click=${print}>
      ${say("sheet.print")}
    </button>`,
  });
}
