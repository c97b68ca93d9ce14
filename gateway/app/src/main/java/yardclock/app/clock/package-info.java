/** The only place that asks the operating system for the time. */
package yardclock.app.clock;
