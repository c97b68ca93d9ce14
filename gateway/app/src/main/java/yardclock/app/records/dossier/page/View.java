package yardclock.app.records.dossier.page;

import yardclock.app.records.dossier.Further;
import yardclock.app.records.dossier.Timeline;
import yardclock.app.records.dossier.Timeline.MarkLine;
import yardclock.app.records.paper.Language;
import yardclock.app.records.paper.Markup;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.Criterion;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;

import java.util.List;

/** How the plan's ids, instants and marks are called on a page of one language. */
final class View {
    final Contents contents;
    final Language language;
    final Instants instants;

    View(Contents contents, Language language) {
        this.contents = contents;
        this.language = language;
        this.instants = new Instants(further().walls(), contents.zone());
    }

    String say(String en, String es) {
        return language.say(en, es);
    }

    ExamPlan plan() {
        return contents.plan();
    }

    Timeline timeline() {
        return contents.timeline();
    }

    Further further() {
        return contents.timeline().further();
    }

    /** A station's name; a unit's id stays as it is. */
    String station(String id) {
        return plan().station(id).map(Station::name).map(language::of).orElse(id);
    }

    String point(String station, String point) {
        return switch (point) {
            case "start" -> say("start", "salida");
            case "finish" -> say("finish", "llegada");
            default ->
                    plan().station(station)
                            .flatMap(s -> s.checkpoint(point))
                            .map(Checkpoint::name)
                            .map(language::of)
                            .orElse(point);
        };
    }

    String criterion(String station, String criterion) {
        return plan().station(station)
                .flatMap(s -> s.criterion(criterion))
                .map(Criterion::words)
                .map(language::of)
                .orElse(criterion);
    }

    Markup entry(long entry) {
        return entry < 0 ? Markup.text("–") : Markup.text(Long.toString(entry));
    }

    /** An instant in its first line, its limits below. */
    Markup instant(long micros, long lowerMicros, long upperMicros) {
        return micros < 0
                ? Markup.text(say("no time", "sin hora"))
                : Markup.lines(
                        Markup.text(instants.at(micros)),
                        Markup.small(instants.between(lowerMicros, upperMicros)));
    }

    Markup mark(MarkLine mark) {
        if (mark == null) {
            return Markup.text("–");
        }
        return Markup.lines(
                instant(mark.micros(), mark.lowerMicros(), mark.upperMicros()),
                Markup.small(source(mark.source()) + ofEntry(mark.entry())));
    }

    private String ofEntry(long entry) {
        return entry < 0 ? "" : say(", entry ", ", entrada ") + entry;
    }

    private String source(String source) {
        return switch (source) {
            case "automatic" -> say("by a sensor", "por un sensor");
            case "button" ->
                    say("by a person on a wired button", "por una persona, en un botón fijo");
            case "tap" -> say("by a person on a tablet", "por una persona, en una tableta");
            case "ruled" -> say("by a ruling", "por una decisión");
            default -> source;
        };
    }

    String entries(List<Long> entries) {
        return String.join(", ", entries.stream().map(String::valueOf).toList());
    }
}
