package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.course.DayRules.ProofRule;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Plan files as people write them: each mistake has a file that says where it is. */
class ExamPlanFileTest {
    static Stream<Path> refused() throws IOException {
        return PlanFolder.files("refused");
    }

    static Stream<Path> good() throws IOException {
        return PlanFolder.files("good");
    }

    @ParameterizedTest
    @MethodSource("refused")
    void eachMistakeIsRefusedAtItsLineAndKeyAndNothingElse(Path file) throws IOException {
        Reading<LoadedPlan> reading = ExamPlanFile.read(file);
        assertThat(reading.isRefused()).isTrue();
        assertThat(PlanFolder.found(reading.problems()))
                .as(reading.problems().text())
                .containsExactlyElementsOf(PlanFolder.announced(file));
        assertThat(reading.problems().list()).allSatisfy(p -> assertThat(p.wrong()).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("good")
    void aPlanWrittenInAnotherMannerIsReadAlike(Path file) {
        Reading<LoadedPlan> reading = ExamPlanFile.read(file);
        assertThat(reading.problems().text()).endsWith("no problems found.\n");
        ExamPlan plan = reading.value().plan();
        assertThat(plan.name().id()).isEqualTo("small");
        assertThat(plan.timing().cutOffMicros()).isEqualTo(180_000_000L);
        assertThat(plan.stations()).extracting(Station::id).containsExactly("walk", "drag");
        assertThat(plan.station("drag").orElseThrow().task().en()).isEqualTo("Drag it over");
    }

    @Test
    void aProofRunIsAdvisedUnlessThePlanRequiresIt() {
        String text = new String(DemoPlan.planBytes(), StandardCharsets.UTF_8);
        assertThat(DemoPlan.plan().plan().day().proofRun()).isEqualTo(ProofRule.ADVISED);
        String key = "  workWatts: 415 ";
        String required = text.replace(key, "  proofRun: required\n" + key);
        assertThat(read(required).value().plan().day().proofRun()).isEqualTo(ProofRule.REQUIRED);
        String other = text.replace(key, "  proofRun: maybe\n" + key);
        assertThat(read(other).problems().text()).contains("advised", "required");
    }

    @Test
    void theHashIsOverTheBytesOfTheFile(@TempDir Path folder) throws IOException {
        byte[] bytes = DemoPlan.planBytes();
        Path file = Files.write(folder.resolve("plan.yaml"), bytes);
        LoadedPlan loaded = ExamPlanFile.read(file).value();
        assertThat(loaded.sha256()).isEqualTo(DemoPlan.plan().sha256()).hasSize(64);
        assertThat(loaded.bytes()).isEqualTo(bytes);
        bytes[bytes.length - 1] = ' ';
        assertThat(ExamPlanFile.read(bytes, "plan.yaml").value().sha256())
                .isNotEqualTo(loaded.sha256());
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreNoMistakes() {
        String text = new String(DemoPlan.planBytes(), StandardCharsets.UTF_8);
        assertThat(read("\uFEFF" + text.replace("\n", "\r\n")).value().plan())
                .isEqualTo(DemoPlan.plan().plan());
    }

    @Test
    void linesAreCountedRightAfterWindowsLineEnds() {
        String text = new String(DemoPlan.planBytes(), StandardCharsets.UTF_8);
        String broken = text.replace("version: 1 ", "version: 0 ").replace("\n", "\r\n");
        int line = text.substring(0, text.indexOf("version: 1 ")).split("\n", -1).length;
        assertThat(PlanFolder.found(read(broken).problems()))
                .containsExactly("line " + line + ", version");
    }

    @Test
    void aFileThatIsMissingIsSaidToBeMissing(@TempDir Path folder) {
        Path file = folder.resolve("no-such-plan.yaml");
        assertThat(ExamPlanFile.read(file).problems().text())
                .isEqualTo(
                        file + " is refused: 1 problem.\n" + file + ": there is no such file.\n");
        assertThat(ExamPlanFile.read(folder).isRefused()).isTrue();
    }

    @Test
    void anEmptyFileIsNoPlan() {
        assertThat(read("").isRefused()).isTrue();
        assertThat(read("# only a comment\n").isRefused()).isTrue();
        assertThat(read("\u0000").isRefused()).isTrue();
    }

    @Test
    void aFileOverTheSizeLimitIsRefusedUnread() {
        String padding = "#".repeat((int) PlanLimits.FILE_BYTES.max());
        String text = new String(DemoPlan.planBytes(), StandardCharsets.UTF_8) + padding;
        assertThat(read(text).problems().text()).contains("too large").contains("262144 bytes");
    }

    @Test
    void aCharacterThatIsNotUtf8IsShownWithItsLine() {
        byte[] latin = "format: 1\ndepartment: Pi\u00f1on\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(ExamPlanFile.read(latin, "latin.yaml").problems().text())
                .contains("latin.yaml:2: a character here is not UTF-8");
    }

    @Test
    void aHopelessFileGivesABoundedListOfProblems() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 2_000; i++) {
            text.append("key").append(i).append(": x\n");
        }
        PlanProblems problems = read(text.toString()).problems();
        assertThat(problems.list()).hasSize(200);
        assertThat(problems.more()).isPositive();
        assertThat(problems.text()).endsWith(" more.\n");
    }

    private static Reading<LoadedPlan> read(String text) {
        return ExamPlanFile.read(text.getBytes(StandardCharsets.UTF_8), "plan.yaml");
    }
}
