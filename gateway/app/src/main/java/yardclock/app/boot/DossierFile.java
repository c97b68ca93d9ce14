package yardclock.app.boot;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.journal.Excerpt;
import yardclock.app.journal.JournalReader;
import yardclock.app.journal.JournalRefusedException;
import yardclock.app.json.Json;
import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Inclusion;
import yardclock.app.records.dossier.Play;
import yardclock.app.records.dossier.Timeline;
import yardclock.core.engine.Engine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dossier with the part of the journal it follows from, as it is written to a file.
 *
 * @param yardclockDossier the version of this form
 */
record DossierFile(int yardclockDossier, int number, Dossier dossier, Excerpt journal) {
    static final int VERSION = 1;

    /** A day of 200,000 entries, all but few left out, takes about 10 MiB. */
    static final int BYTES_MAX = 64 * 1024 * 1024;

    /** Plays the journal twice: whole, to know what belongs to the number, and that part alone. */
    static DossierFile make(Path file, int number)
            throws JournalRefusedException, RefusedException {
        Play whole = new Play(number);
        Excerpt excerpt;
        try (JournalReader reader = JournalReader.open(file)) {
            reader.entries(whole::take);
            if (whole.timeline().standing() == null) {
                throw new RefusedException("The journal knows no number " + number + ".");
            }
            excerpt = reader.excerpt(Inclusion.of(whole));
        }
        Timeline shown = Play.ofPart(excerpt.entries(), number);
        List<String> differences = Dossier.differences(whole.timeline(), shown);
        return new DossierFile(VERSION, number, new Dossier(shown, differences), excerpt);
    }

    byte[] bytes() {
        try {
            return Json.mapper().writeValueAsBytes(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a dossier must have a JSON form", e);
        }
    }

    /** Reads a file that anybody may have written. */
    static DossierFile read(Path file) throws RefusedException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(BYTES_MAX + 1);
        } catch (IOException e) {
            throw new RefusedException("There is no dossier to be read at " + file + ".", e);
        }
        if (bytes.length > BYTES_MAX) {
            throw new RefusedException(file + " is larger than a dossier can be (64 MiB).");
        }
        try {
            DossierFile read = Json.mapper().readValue(bytes, DossierFile.class);
            if (read == null || !read.isWhole()) {
                throw new RefusedException(file + " is no dossier: a part of it is missing.");
            }
            return read;
        } catch (IOException | IllegalArgumentException | NullPointerException e) {
            throw new RefusedException(file + " is no dossier: it can't be read as one.", e);
        }
    }

    private boolean isWhole() {
        return yardclockDossier == VERSION
                && dossier != null
                && dossier.timeline() != null
                && journal != null;
    }

    /** All that is wrong with it, in plain words; empty when it holds. */
    List<String> problems() {
        Optional<String> broken = journal.problem();
        if (broken.isPresent()) {
            return List.of(broken.get());
        }
        List<String> problems = new ArrayList<>();
        try {
            Timeline again = Play.ofPart(journal.entries(), number);
            if (!again.made().rulesVersion().equals(Engine.RULES_VERSION)) {
                problems.add(
                        "The day ran by version "
                                + again.made().rulesVersion()
                                + " of the rules; this program knows version "
                                + Engine.RULES_VERSION
                                + " only.");
            }
            for (String section : Dossier.differences(dossier.timeline(), again)) {
                problems.add(
                        "What the dossier shows under \""
                                + section
                                + "\" is not what follows from its entries.");
            }
        } catch (JournalRefusedException e) {
            problems.add(e.getMessage());
        } catch (RuntimeException e) {
            problems.add("Its entries can't be played by this version of the rules: " + e);
        }
        return problems;
    }
}
