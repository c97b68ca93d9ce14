package yardclock.sim.units;

/**
 * A unit's radio and broker session. Opened and closed on the stage; {@link #publish} may be called
 * from any thread.
 *
 * <p>A link connects by itself, again and again in real time, and tells its {@link Receiver}. What
 * is published while it is down is not sent and not kept: keeping is the unit's own job.
 */
public interface UnitLink {
    void open(Receiver receiver);

    /**
     * Hands a message to the broker's client.
     *
     * @param handed run on the stage when the broker has it; not run when the link breaks before
     * @return false when it was not taken
     */
    boolean publish(Message message, Runnable handed);

    /** Breaks off without a word, as a board whose power is cut or which walks out of range. */
    void breakOff();

    void close();

    /** One message under the unit's own root, as {@code edges}. */
    record Message(String name, byte[] payload, int qos, boolean retained) {}

    /** What a link tells its unit. */
    interface Receiver {
        /** On the stage. */
        void up();

        /** On the stage. */
        void down();

        /** On the link's own thread, the moment a message is there. */
        void arrived(String name, byte[] payload);
    }
}
