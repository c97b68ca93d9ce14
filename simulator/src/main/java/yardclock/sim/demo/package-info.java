/**
 * The demo day: a gateway in a process of its own, and a yard full of simulated people beside it.
 *
 * <p>A {@link yardclock.sim.demo.SimulatedDay} is everybody and everything outside the gateway; it
 * knows the gateway by two addresses and two files. {@link yardclock.sim.demo.GatewayProcess} is
 * the gateway; {@link yardclock.sim.demo.Demo} puts both together and tells a person what goes on.
 *
 * <p>Invariant: whatever ends the demo, the gateway's process ends too.
 */
package yardclock.sim.demo;
