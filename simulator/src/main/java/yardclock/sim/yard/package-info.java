/**
 * The physical course: what a person's act at a station does to its sensors.
 *
 * <p>A {@link yardclock.sim.yard.Script} is one passage through one station as a list of sensor
 * changes, at offsets from the station's start; it also says which of them is the start, the
 * finish, and what the proctor sees meanwhile. Contacts chatter as contacts do. The {@link
 * yardclock.sim.yard.Yard} plays the changes on the virtual units and knows each sensor's state.
 *
 * <p>Invariant: every change alternates its sensor's state, and chatter never moves the edge that
 * the plan's rule should stamp: where the first edge counts it comes after, where the last one
 * counts it comes before.
 */
package yardclock.sim.yard;
