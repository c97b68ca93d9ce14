package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.List;

/** Walks through edges in time order and finds the moments of one combination. Used once. */
final class Moments {
    private final Trigger trigger;
    private final List<TimedEdge> edges;
    private final long fromMicros;

    /** The latest edge of each contact's sensor; of a sensor that stands twice, at the first. */
    private final TimedEdge[] last;

    private final List<Moment> found = new ArrayList<>();
    private int reached;
    private long firstContactMicros;

    Moments(Trigger trigger, List<TimedEdge> edges, long fromMicros) {
        this.trigger = trigger;
        this.edges = edges;
        this.fromMicros = fromMicros;
        this.last = new TimedEdge[trigger.contacts().size()];
    }

    List<Moment> find() {
        for (int i = 0; i < edges.size(); i++) {
            TimedEdge edge = edges.get(i);
            int place = placeOf(edge.sensor());
            TimedEdge before = last[place];
            if (before != null && before.state() == edge.state()) {
                continue;
            }
            last[place] = edge;
            if (edge.stamp().micros() >= fromMicros && completes(edge)) {
                found.add(new Moment(edge, i, otherStateMicros(edge, before)));
            }
        }
        return found;
    }

    private int placeOf(SensorRef sensor) {
        int place = 0;
        while (!trigger.contacts().get(place).sensor().equals(sensor)) {
            place++;
        }
        return place;
    }

    private static long otherStateMicros(TimedEdge edge, TimedEdge before) {
        return before == null ? Moment.SINCE_EVER : edge.stamp().micros() - before.stamp().micros();
    }

    private boolean completes(TimedEdge edge) {
        return switch (trigger.combination()) {
            case SINGLE, ANY_OF, SIGNAL, JUDGED -> anyOf(edge);
            case ALL_OF -> allOf(edge);
            case SEQUENCE -> inOrder(edge, Long.MAX_VALUE);
            case DIRECTION -> inOrder(edge, trigger.guards().withinMicros());
        };
    }

    private boolean anyOf(TimedEdge edge) {
        for (Contact contact : trigger.contacts()) {
            if (matches(contact, edge)) {
                return true;
            }
        }
        return false;
    }

    private boolean allOf(TimedEdge edge) {
        return anyOf(edge) && trigger.contacts().stream().allMatch(this::isReached);
    }

    /**
     * A contact out of turn begins the order anew if it is the first one; others are ignored. A
     * direction begins only while its other contacts are at rest: who comes the wrong way holds the
     * far beam when the near one is cut, and a trailing arm must not turn them round.
     */
    private boolean inOrder(TimedEdge edge, long withinMicros) {
        List<Contact> contacts = trigger.contacts();
        long at = edge.stamp().micros();
        if (reached > 0 && at - firstContactMicros > withinMicros) {
            reached = 0;
        }
        boolean isFirst = matches(contacts.get(0), edge) && mayBegin(contacts);
        if (reached > 0 && matches(contacts.get(reached), edge)) {
            reached++;
        } else if (isFirst) {
            firstContactMicros = at;
            reached = 1;
        }
        if (reached < contacts.size()) {
            return false;
        }
        reached = 0;
        return true;
    }

    private boolean mayBegin(List<Contact> contacts) {
        return trigger.combination() != Combination.DIRECTION
                || contacts.stream().skip(1).noneMatch(this::isReached);
    }

    private boolean isReached(Contact contact) {
        TimedEdge latest = last[placeOf(contact.sensor())];
        return latest != null && latest.state() == contact.state();
    }

    private static boolean matches(Contact contact, TimedEdge edge) {
        return contact.sensor().equals(edge.sensor()) && contact.state() == edge.state();
    }
}
