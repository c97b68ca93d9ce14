// Who this tablet is: one token per role, kept until the role is given back. A browser may hold
// several roles (a demo on one machine does); each page takes the first one it can use.
import { keep } from "./look.js";

export const ROLES = ["coordinator", "safety", "proctor", "crew", "technician"];

/** The page each role works on; the others may open more. */
export const HOME = {
  coordinator: "/control",
  safety: "/watch",
  proctor: "/post",
  crew: "/crew",
  technician: "/bench",
};

export function badge(role) {
  const token = keep.get(`yc-token-${role}`);
  if (!token) return null;
  return { role, token, ...parse(keep.get(`yc-who-${role}`)) };
}

/** The badge a page works with: the one asked for in the address, else the first it may use. */
export function badgeFor(roles, wanted = new URLSearchParams(location.search).get("as")) {
  const order = roles.includes(wanted) ? [wanted, ...roles] : roles;
  return order.map(badge).find(Boolean) ?? null;
}

export function wear({ token, device, role }, person) {
  keep.set(`yc-token-${role}`, token);
  keep.set(`yc-who-${role}`, JSON.stringify({ device, person }));
}

export function giveBack(role) {
  keep.set(`yc-token-${role}`, null);
  keep.set(`yc-who-${role}`, null);
}

function parse(text) {
  try {
    return JSON.parse(text) ?? {};
  } catch {
    return {};
  }
}
