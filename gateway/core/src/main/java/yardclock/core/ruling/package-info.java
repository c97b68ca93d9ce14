/**
 * What people may decide, who may decide it, and why an act is refused.
 *
 * <p>Invariant: nothing is ever edited. A ruling is an input like any other, and a later one
 * supersedes an earlier one in the open.
 */
package yardclock.core.ruling;
