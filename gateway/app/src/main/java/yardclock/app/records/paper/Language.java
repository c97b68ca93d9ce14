package yardclock.app.records.paper;

import yardclock.core.course.Text;

import java.util.Locale;

/** The language a page is written in. */
public enum Language {
    EN,
    ES;

    /** The one of two that is meant. */
    public String say(String en, String es) {
        return this == EN ? en : es;
    }

    public String of(Text text) {
        return say(text.en(), text.es());
    }

    /** As HTML names it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
