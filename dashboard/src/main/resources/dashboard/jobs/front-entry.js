// Checks of what is typed on the front page, before it costs a question to the gateway.
const CODE_LENGTH = 8;
const PERSON_MAX = 60;

/** The code in "#AB12CD34", "#/code=ab12cd34" or as typed with spaces and hyphens. */
export function codeFrom(text) {
  const bare = decode(text).replace(/^#/, "").replace(/^.*code=/, "");
  return bare.replace(/[\s-]/g, "").toUpperCase().slice(0, 16);
}

/** The key of what is wrong with the entry, or null. */
export function wrongEntry(code, person) {
  if (codeFrom(code).length !== CODE_LENGTH) return "front.code-short";
  const name = person.trim();
  if (name.length === 0) return "front.person-missing";
  return name.length > PERSON_MAX ? "front.person-long" : null;
}

function decode(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
