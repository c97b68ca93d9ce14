/**
 * A whole exam day in virtual time: the gateway's own rules, lane and decoding, with twins of what
 * is around them at its interfaces: broker and radio, journal, clock, tablets.
 *
 * <p>One thread plays everything in the order of its instants, so a seed gives one day, and a day
 * takes seconds.
 *
 * <p>Invariant: what is between a sensor and a ruling's answer is the gateway's own code; a twin
 * decides nothing.
 */
package yardclock.sim.twin;
