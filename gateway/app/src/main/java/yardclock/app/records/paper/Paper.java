package yardclock.app.records.paper;

import java.util.List;

/** A page as it grows, from top to bottom. One thread. */
public final class Paper {
    private final Language language;
    private final StringBuilder html = new StringBuilder(64 * 1024);

    /**
     * @param footing stands at the foot of each printed page, beside its number
     */
    public Paper(Language language, String title, String footing) {
        this.language = language;
        html.append("<!doctype html>\n<html lang=\"").append(language.code()).append("\"><head>");
        html.append("<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\"");
        html.append(" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n");
        html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        put("title", title);
        html.append("<style>\n").append(PaperStyle.STYLE);
        html.append(PaperStyle.footing(footing)).append("</style>\n</head><body><main>\n");
    }

    private Paper put(String tag, String text) {
        return put(tag, Markup.text(text));
    }

    private Paper put(String tag, Markup text) {
        html.append('<').append(tag).append('>').append(text.html());
        html.append("</").append(tag).append(">\n");
        return this;
    }

    public Language language() {
        return language;
    }

    /** In the page's language. */
    public String say(String en, String es) {
        return language.say(en, es);
    }

    public Paper title(String text) {
        return put("h1", text);
    }

    public Paper section(String text) {
        return put("h2", text);
    }

    public Paper part(String text) {
        return put("h3", text);
    }

    public Paper paragraph(String text) {
        return put("p", text);
    }

    public Paper paragraph(Markup text) {
        return put("p", text);
    }

    /** Set apart from the rest, because it limits what the rest says. */
    public Paper caution(List<String> paragraphs) {
        html.append("<div class=\"caution\">\n");
        paragraphs.forEach(this::paragraph);
        html.append("</div>\n");
        return this;
    }

    public Paper list(List<String> points) {
        html.append("<ul>\n");
        points.forEach(point -> put("li", point));
        html.append("</ul>\n");
        return this;
    }

    public Paper steps(List<Markup> steps) {
        html.append("<ol>\n");
        steps.forEach(step -> put("li", step));
        html.append("</ol>\n");
        return this;
    }

    /** Names and their values, two a row. */
    public Paper facts(List<Fact> facts) {
        html.append("<table class=\"facts\"><tbody>\n");
        for (Fact fact : facts) {
            html.append("<tr><th scope=\"row\">").append(Markup.escape(fact.name()));
            html.append("</th><td>").append(fact.value().html()).append("</td></tr>\n");
        }
        html.append("</tbody></table>\n");
        return this;
    }

    /** A name and its value. */
    public record Fact(String name, Markup value) {}

    /**
     * A table that scrolls by itself on a narrow screen; its heading stands again on each printed
     * page.
     *
     * @param name what it holds, for those who can't see it
     */
    public Paper table(String name, List<String> heads, List<List<Markup>> rows) {
        html.append("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"");
        html.append(Markup.escape(name)).append("\"><table>\n<thead><tr>");
        for (String head : heads) {
            html.append("<th scope=\"col\">").append(Markup.escape(head)).append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (List<Markup> row : rows) {
            html.append("<tr>");
            row.forEach(cell -> html.append("<td>").append(cell.html()).append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</tbody></table></div>\n");
        return this;
    }

    /** The whole page. */
    public String html() {
        return html + "</main></body></html>\n";
    }
}
