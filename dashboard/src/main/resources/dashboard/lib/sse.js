// Takes a text/event-stream apart, chunk by chunk, as the HTML standard's section 9.2.6 orders it:
// fields until an empty line, comments ignored, several data lines joined by a line feed.

/**
 * @param onMessage called with {event, id, data}
 * @returns a function that takes the next piece of text
 */
export function sseReader(onMessage) {
  let rest = "";
  let event = "";
  let id = "";
  let data = [];

  function line(text) {
    if (text === "") return finish();
    if (text.startsWith(":")) return;
    const colon = text.indexOf(":");
    const field = colon < 0 ? text : text.slice(0, colon);
    const value = colon < 0 ? "" : text.slice(colon + 1).replace(/^ /, "");
    if (field === "data") data.push(value);
    else if (field === "event") event = value;
    else if (field === "id") id = value;
  }

  function finish() {
    if (data.length > 0) onMessage({ event: event || "message", id, data: data.join("\n") });
    event = "";
    data = [];
  }

  return (chunk) => {
    rest += chunk;
    // A carriage return at the very end may be half of a pair: it waits for the next chunk.
    const lines = rest.split(/\r\n|\n|\r(?!$)/);
    rest = lines.pop();
    lines.forEach(line);
  };
}
