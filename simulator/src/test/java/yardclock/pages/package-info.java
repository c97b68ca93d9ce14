/**
 * The pages in a real Chromium.
 *
 * <p>{@code PageServer} stands in for the gateway where a page must be shown in a state that is
 * hard to bring about: it serves the very files of the dashboard and frames made from the real
 * records. Invariant: what is measured here is what the gateway serves, byte for byte.
 */
package yardclock.pages;
