package yardclock.app.records.paper;

import java.util.ArrayList;
import java.util.List;

/** A piece of a page whose text is escaped. There is no way to make one of raw markup. */
public final class Markup {
    private final String html;

    private Markup(String html) {
        this.html = html;
    }

    public static Markup text(String text) {
        return new Markup(escape(text));
    }

    public static Markup strong(String text) {
        return within("strong", text);
    }

    public static Markup small(String text) {
        return within("small", text);
    }

    /** What does not hold any more. */
    public static Markup gone(String text) {
        return within("s", text);
    }

    /** What a machine wrote: hashes, ids. */
    public static Markup code(String text) {
        return within("code", text);
    }

    private static Markup within(String tag, String text) {
        return new Markup("<" + tag + ">" + escape(text) + "</" + tag + ">");
    }

    /** One below the other; empty ones are left out. */
    public static Markup lines(List<Markup> lines) {
        List<String> said = new ArrayList<>();
        lines.stream().map(line -> line.html).filter(line -> !line.isEmpty()).forEach(said::add);
        return new Markup(String.join("<br>", said));
    }

    public static Markup lines(Markup... lines) {
        return lines(List.of(lines));
    }

    /** One after the other, with a space between. */
    public static Markup joined(Markup one, Markup other) {
        return new Markup(one.html + " " + other.html);
    }

    String html() {
        return html;
    }

    /**
     * Text with nothing in it that HTML would take for its own. Control characters, and those that
     * turn the direction of what follows them, are shown as a replacement character.
     */
    public static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(isTricky(c) ? '\uFFFD' : c);
            }
        }
        return escaped.toString();
    }

    private static boolean isTricky(char c) {
        boolean isControl = Character.isISOControl(c) && c != '\n' && c != '\t';
        return isControl || c >= '\u202A' && c <= '\u202E' || c >= '\u2066' && c <= '\u2069';
    }
}
