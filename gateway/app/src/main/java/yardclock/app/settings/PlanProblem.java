package yardclock.app.settings;

/**
 * One thing that is wrong in a plan or roster file, said so that the person who wrote the file can
 * put it right.
 *
 * @param line from 1; 0 when the file as a whole is meant
 * @param key where in the file, as {@code stations[low-deck].finish.staysFor}; empty for the file
 * @param wrong what is wrong, as a sentence without a full stop
 * @param allowed the range or the words that would do; empty when the first part says it all
 */
public record PlanProblem(String file, int line, String key, String wrong, String allowed) {

    /** One line of readable text. */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        text.append(": ");
        if (!key.isEmpty()) {
            text.append(key).append(": ");
        }
        text.append(wrong).append('.');
        if (!allowed.isEmpty()) {
            text.append(" Allowed: ").append(allowed).append('.');
        }
        return text.toString();
    }
}
