package yardclock.sim.demo;

/** The demo cannot go on; the message is a sentence for the person who started it. */
public final class DemoFailedException extends Exception {
    private static final long serialVersionUID = 1;

    public DemoFailedException(String sentence) {
        super(sentence);
    }

    public DemoFailedException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
