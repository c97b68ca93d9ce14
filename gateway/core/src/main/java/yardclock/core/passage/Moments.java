package yardclock.core.passage;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.Arrays;
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

    /** The places of the edges at which the contacts of an order were reached. */
    private final int[] places;

    /** The place of each contact's latest edge. */
    private final int[] lastPlaces;

    Moments(Trigger trigger, List<TimedEdge> edges, long fromMicros) {
        this.trigger = trigger;
        this.edges = edges;
        this.fromMicros = fromMicros;
        this.last = new TimedEdge[trigger.contacts().size()];
        this.places = new int[last.length];
        this.lastPlaces = new int[last.length];
    }

    List<Moment> find() {
        boolean[] tooShort = tooShort();
        for (int i = 0; i < edges.size(); i++) {
            TimedEdge edge = edges.get(i);
            if (tooShort[i]) {
                continue;
            }
            int place = placeOf(edge.sensor());
            TimedEdge before = last[place];
            if (before != null && before.state() == edge.state()) {
                continue;
            }
            int placeBefore = lastPlaces[place];
            last[place] = edge;
            lastPlaces[place] = i;
            if (edge.stamp().micros() >= fromMicros && completes(edge, i)) {
                found.add(moment(i, before, placeBefore));
            }
        }
        return found;
    }

    private Moment moment(int i, TimedEdge before, int placeBefore) {
        TimedEdge edge = edges.get(i);
        int stamping = i;
        int first = trigger.endsBlock() && before != null ? placeBefore : i;
        switch (trigger.combination()) {
            case SEQUENCE -> first = places[0];
            case DIRECTION -> {
                first = places[0];
                int named = trigger.guards().stampContact();
                stamping = named == 0 ? i : places[named - 1];
            }
            case ALL_OF, COINCIDENCE -> first = Arrays.stream(lastPlaces).min().orElse(i);
            default -> {}
        }
        return new Moment(edges.get(stamping), stamping, first, i, otherStateMicros(edge, before));
    }

    /**
     * The edges of blocks that do not count. In a direction they must not stand for the one who
     * comes through: what flies ahead cuts the far beam, and who carries it would begin no order
     * any more.
     */
    private boolean[] tooShort() {
        boolean[] tooShort = new boolean[edges.size()];
        long least = trigger.guards().minBlockMicros();
        if (trigger.combination() != Combination.DIRECTION || least == 0) {
            return tooShort;
        }
        int[] begun = new int[last.length];
        Arrays.fill(begun, -1);
        for (int i = 0; i < edges.size(); i++) {
            int place = placeOf(edges.get(i).sensor());
            boolean isIn = edges.get(i).state() == trigger.contacts().get(place).state();
            int from = begun[place];
            if (isIn) {
                begun[place] = from < 0 ? i : from;
                continue;
            }
            if (from >= 0) {
                long lasted = edges.get(i).stamp().micros() - edges.get(from).stamp().micros();
                tooShort[from] = lasted < least;
                tooShort[i] = lasted < least;
            }
            begun[place] = -1;
        }
        return tooShort;
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

    private boolean completes(TimedEdge edge, int place) {
        return switch (trigger.combination()) {
            case SINGLE, ANY_OF, SIGNAL, JUDGED -> anyOf(edge);
            case ALL_OF -> allOf(edge);
            case COINCIDENCE -> allOf(edge) && isWithin(edge);
            case SEQUENCE -> inOrder(edge, place, Long.MAX_VALUE);
            case DIRECTION -> inOrder(edge, place, trigger.guards().withinMicros());
        };
    }

    /** Whether the contacts before it were reached no longer ago than the guard says. */
    private boolean isWithin(TimedEdge edge) {
        long within = trigger.guards().withinMicros();
        return within == 0
                || Arrays.stream(last)
                        .allMatch(l -> edge.stamp().micros() - l.stamp().micros() <= within);
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
    private boolean inOrder(TimedEdge edge, int place, long withinMicros) {
        List<Contact> contacts = trigger.contacts();
        long at = edge.stamp().micros();
        if (reached > 0 && at - firstContactMicros > withinMicros) {
            reached = 0;
        }
        boolean isFirst = matches(contacts.get(0), edge) && mayBegin(contacts);
        if (reached > 0 && matches(contacts.get(reached), edge)) {
            places[reached++] = place;
        } else if (isFirst) {
            firstContactMicros = at;
            places[0] = place;
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
