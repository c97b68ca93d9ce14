/** A fresh idempotency key. Plain-HTTP pages on a LAN have no randomUUID, but random values. */
export function newKey(source = crypto) {
  if (source.randomUUID) return source.randomUUID();
  const bytes = source.getRandomValues(new Uint8Array(16));
  // RFC 9562 section 5.4: version 4 in the seventh byte, variant 10 in the ninth.
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}
