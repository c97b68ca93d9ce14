/**
 * The gateway's HTTP side: pages, requests from tablets, and live streams to them.
 *
 * <p>{@link yardclock.app.web.Routes} is the one table of everything that can be asked for, each
 * line with the permits that open it; a request passes the host check, then the gate, then its
 * handler. Handlers wait on their own request thread for the lane's answer, so the lane's thread
 * never writes to a socket. Live streams hold no thread: {@link yardclock.app.web.LiveStreams}
 * takes frames from the lane, writes each one down once, and one pump thread writes the shared
 * bytes to every tablet that can take them.
 *
 * <p>Invariant: what is not in the table with its permits is refused, and a tablet that does not
 * read costs nobody else anything.
 */
package yardclock.app.web;
