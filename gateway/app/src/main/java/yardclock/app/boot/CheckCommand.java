package yardclock.app.boot;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.settings.ExamPlanFile;
import yardclock.app.settings.PlanProblems;
import yardclock.app.settings.RosterFile;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Says everything that is wrong with a plan or a roster, before the day. */
@Command(
        name = "check",
        description =
                "Reads an exam plan, a roster or both, and names every problem with its line, key"
                        + " and allowed range.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private Files files;

    /** At least one of the two. */
    private static final class Files {
        @Option(names = "--plan", paramLabel = "FILE", description = "an exam plan (YAML)")
        private Path plan;

        @Option(
                names = "--roster",
                paramLabel = "FILE",
                description = "a roster (CSV: number,name,group)")
        private Path roster;
    }

    @Override
    public Integer call() {
        boolean good = true;
        if (files.plan != null) {
            good &= report(ExamPlanFile.read(files.plan).problems());
        }
        if (files.roster != null) {
            good &= report(RosterFile.read(files.roster).problems());
        }
        return good ? 0 : Main.REFUSED;
    }

    private boolean report(PlanProblems problems) {
        PrintWriter to =
                problems.isEmpty() ? spec.commandLine().getOut() : spec.commandLine().getErr();
        to.print(problems.text());
        to.flush();
        return problems.isEmpty();
    }
}
