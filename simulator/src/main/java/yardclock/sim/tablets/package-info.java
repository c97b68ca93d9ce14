/**
 * The people with tablets: proctors, coordinator and crew, over real HTTP and server-sent frames.
 *
 * <p>A {@link yardclock.sim.tablets.Tablet} holds a token, the newest frame and a queue of rulings
 * it has not been answered. What a person does follows from the frame in their hand and from what
 * they see with their own eyes, never from the truth book.
 *
 * <p>Invariant: rulings go out in the order they were made, each with one key however often it is
 * sent.
 */
package yardclock.sim.tablets;
