package yardclock.app.boot;

import yardclock.app.journal.JournalRefusedException;
import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Play;
import yardclock.app.records.dossier.Timeline;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks a dossier against itself: its chain, and what follows from the entries it holds. */
record DossierCheck(DossierFile file) {

    /** All that is wrong with it, in plain words; empty when it holds. */
    List<String> problems() {
        Optional<String> broken = file.journal().problem();
        if (broken.isPresent()) {
            return List.of(broken.get());
        }
        List<String> problems = new ArrayList<>();
        try {
            List<Entry> entries = file.journal().entries();
            if (file.isFurther()) {
                rostered(entries, problems);
                played(Play.ofPart(entries, file.number()), problems);
            } else {
                played(Play.ofFirstVersion(entries, file.number()), problems);
            }
        } catch (JournalRefusedException e) {
            problems.add(e.getMessage());
        } catch (RuntimeException e) {
            problems.add("Its entries can't be played by this version of the rules: " + e);
        }
        return problems;
    }

    /** Without this a made-up number would pass as a candidate of whom nothing is known. */
    private void rostered(List<Entry> entries, List<String> problems) {
        Optional<Input.RosterFrozen> roster =
                entries.stream()
                        .map(Entry::input)
                        .filter(Input.RosterFrozen.class::isInstance)
                        .map(Input.RosterFrozen.class::cast)
                        .findFirst();
        if (roster.isEmpty()) {
            problems.add(
                    "The day's roster is not among its entries, so its number proves nothing.");
        } else if (roster.get().lines().stream().noneMatch(l -> l.number() == file.number())) {
            problems.add("The day's roster has no number " + file.number() + ".");
        }
    }

    private void played(Timeline again, List<String> problems) {
        if (!again.made().rulesVersion().equals(Engine.RULES_VERSION)) {
            problems.add(
                    "The day ran by version "
                            + again.made().rulesVersion()
                            + " of the rules; this program knows version "
                            + Engine.RULES_VERSION
                            + " only.");
        }
        for (String section : Dossier.differences(file.dossier().timeline(), again)) {
            problems.add(
                    "What the dossier shows under \""
                            + section
                            + "\" is not what follows from its entries.");
        }
    }
}
