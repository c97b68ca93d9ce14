/**
 * Candidates' ways through the course: turns at stations, marks, splits, occupancy.
 *
 * <p>A station has turns, one after the other; a turn collects edges from the moment its station
 * was ready, and belongs to nobody until a start was seen. Then it is the next candidate's in
 * course order. Whatever an edge adds, the turn is judged anew from all its edges.
 *
 * <p>Invariant: every passage is assigned, unassigned or struck: never two of these.
 */
package yardclock.core.run;
