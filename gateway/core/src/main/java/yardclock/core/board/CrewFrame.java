package yardclock.core.board;

import yardclock.core.course.Text;

import java.util.List;

/** The station crew's picture: what waits to be put back, longest first. */
public record CrewFrame(Head head, List<Reset> resets, List<StationView> stations) {

    /**
     * A station to be reset.
     *
     * @param openContacts the home contacts that are not in their place; while there are any,
     *     "ready" is refused
     */
    public record Reset(String station, Text name, long sinceMicros, List<Text> openContacts) {}
}
