/**
 * What leaves the gateway for people to keep: results as JSON and CSV, and the sheet a candidate is
 * told their result from.
 *
 * <p>Everything here is drawn from results the engine concluded and from the frozen plan; times are
 * shown as the plan rounds them, in integer arithmetic. Text from outside is escaped for the format
 * it goes into.
 *
 * <p>Invariant: a document never computes a result, it only writes one down.
 */
package yardclock.app.records;
