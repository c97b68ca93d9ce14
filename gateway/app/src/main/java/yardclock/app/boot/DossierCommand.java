package yardclock.app.boot;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.journal.JournalRefusedException;
import yardclock.app.records.paper.Language;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;

/** Writes one attempt's whole timeline with its proof, or checks such a file. */
@Command(
        name = "dossier",
        description = {
            "Writes one attempt's whole timeline as JSON, with the entries it follows from and the"
                    + " proof that they stand in the journal; or as a page to print.",
            "With --check it verifies such a file without the journal. Compare the head it prints"
                    + " with one you know from elsewhere."
        },
        mixinStandardHelpOptions = true)
final class DossierCommand implements Callable<Integer> {
    private static final int NUMBER_MAX = 99_999;
    private static final int UNREADABLE = 2;

    @Spec private CommandSpec spec;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Work work;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            description =
                    "${COMPLETION-CANDIDATES}: json holds the proof and can be checked, html is a"
                            + " page to print. With --check and html, the page of that file is"
                            + " written when it holds")
    private Form as = Form.JSON;

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description = "of the page: ${COMPLETION-CANDIDATES}")
    private Language language = Language.EN;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "where to write it; else dossier-NUMBER.json or .html here")
    private Path to;

    private enum Form {
        JSON,
        HTML
    }

    /** Make one or check one. */
    private static final class Work {
        @ArgGroup(exclusive = false)
        private Making making;

        @Option(
                names = "--check",
                paramLabel = "FILE",
                description =
                        "a dossier to verify; exit code 0 when it holds, 1 when it does not,"
                                + " 2 when it is no dossier")
        private Path check;
    }

    /** What a dossier is made from. */
    private static final class Making {
        @Option(names = "--number", required = true, description = "the candidate's number")
        private int number;

        @Option(
                names = "--journal",
                required = true,
                paramLabel = "FILE",
                description = "the day's journal, as DIR/journal.db")
        private Path journal;

        @Option(
                names = "--zone",
                paramLabel = "ZONE",
                description =
                        "the time zone to give times of day in, as America/Denver; else this"
                                + " machine's")
        private ZoneId zone = ZoneId.systemDefault();
    }

    @Override
    public Integer call() throws RefusedException {
        return work.check == null ? make(work.making) : check(work.check);
    }

    private int make(Making from) throws RefusedException {
        if (from.number < 1 || from.number > NUMBER_MAX) {
            throw new RefusedException("A number has one to five digits.");
        }
        try {
            DossierFile made = new DossierMaker(from.journal, from.zone).make(from.number);
            PrintWriter out = spec.commandLine().getOut();
            write(made, out);
            tell(made, out);
            return 0;
        } catch (JournalRefusedException e) {
            throw new RefusedException(e.getMessage(), e);
        }
    }

    private void write(DossierFile dossier, PrintWriter out) throws RefusedException {
        byte[] bytes =
                as == Form.JSON
                        ? dossier.bytes()
                        : new DossierPrint(dossier).html(language).getBytes(StandardCharsets.UTF_8);
        String ending = as == Form.JSON ? ".json" : ".html";
        Path file = to == null ? Path.of("dossier-" + dossier.number() + ending) : to;
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new RefusedException("It can't be written: " + e.getMessage(), e);
        }
        out.println("Written: " + file);
    }

    private int check(Path file) throws RefusedException {
        DossierFile read;
        try {
            read = DossierFile.read(file);
        } catch (RefusedException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return UNREADABLE;
        }
        List<String> problems = new DossierCheck(read).problems();
        if (!problems.isEmpty()) {
            problems.forEach(spec.commandLine().getErr()::println);
            return Main.REFUSED;
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                "It holds: each entry hashes as stated, the chain leads to the head, and what is"
                        + " shown follows from the entries.");
        tell(read, out);
        if (as == Form.HTML) {
            write(read, out);
        }
        return 0;
    }

    private static void tell(DossierFile dossier, PrintWriter out) {
        out.println(
                "Number "
                        + dossier.number()
                        + ", "
                        + dossier.journal().kept().size()
                        + " entries. Head: entry "
                        + dossier.journal().headEntry()
                        + ", "
                        + dossier.journal().headSha256());
        if (!dossier.isFurther()) {
            out.println(
                    "It is of the first form, which does not hold the roster: nothing shows that"
                            + " the day had this number.");
        }
        if (!dossier.dossier().differences().isEmpty()) {
            out.println(
                    "Played with the whole journal, these come out otherwise: "
                            + String.join(", ", dossier.dossier().differences()));
        }
    }
}
