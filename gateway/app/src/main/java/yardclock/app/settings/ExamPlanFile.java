package yardclock.app.settings;

import yardclock.core.course.ExamPlan;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads an exam plan from its YAML file: the whole plan, or every problem of it. Stateless; any
 * thread may call it.
 */
public final class ExamPlanFile {
    private ExamPlanFile() {}

    public static Reading<LoadedPlan> read(Path path) {
        Findings findings = new Findings(path.toString());
        Optional<byte[]> bytes = SourceFile.bytes(path, findings);
        return bytes.isPresent()
                ? read(bytes.get(), findings)
                : Reading.refused(findings.problems());
    }

    /**
     * Reads a plan that is in memory already.
     *
     * @param name what problems call the file
     */
    public static Reading<LoadedPlan> read(byte[] bytes, String name) {
        return read(bytes, new Findings(name));
    }

    static Reading<LoadedPlan> read(byte[] bytes, Findings findings) {
        Optional<ExamPlan> plan =
                SourceFile.text(bytes, findings)
                        .flatMap(text -> new YamlSource(findings).root(text))
                        .map(node -> PlanReader.read(new Block(node, "plan", findings)));
        if (findings.isEmpty() && plan.isPresent()) {
            return Reading.of(new LoadedPlan(plan.get(), bytes), findings.file());
        }
        return Reading.refused(findings.problems());
    }
}
