package yardclock.app.records;

import yardclock.app.records.paper.Markup;

/** Builds HTML from our own tags and other people's text; the text is always escaped. */
final class Html {
    private final StringBuilder html = new StringBuilder();

    /** Our own markup, taken as it is: never hand text from outside to it. */
    Html raw(String markup) {
        html.append(markup).append('\n');
        return this;
    }

    /** An element with text in it. */
    Html element(String tag, String text) {
        return raw("<" + tag + ">" + escape(text) + "</" + tagName(tag) + ">");
    }

    private static String tagName(String tag) {
        int space = tag.indexOf(' ');
        return space < 0 ? tag : tag.substring(0, space);
    }

    /** A table row of text cells. */
    Html row(String cellTag, String... cells) {
        StringBuilder row = new StringBuilder("<tr>");
        for (String cell : cells) {
            row.append('<').append(cellTag).append('>').append(escape(cell));
            row.append("</").append(tagName(cellTag)).append('>');
        }
        return raw(row.append("</tr>").toString());
    }

    private static String escape(String text) {
        return Markup.escape(text);
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
