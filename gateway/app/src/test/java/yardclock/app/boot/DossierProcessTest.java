package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.web.DossierForm;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.stream.Stream;

/** What becomes of a dossier's process, with the shell in the program's place. */
@Timeout(60)
class DossierProcessTest {
    private static final DossierProcess.Bounds AMPLE =
            new DossierProcess.Bounds(Duration.ofSeconds(50), 0);

    @TempDir private Path directory;

    @TempDir private Path elsewhere;

    private DossierProcess running(List<String> program, DossierProcess.Bounds bounds) {
        return new DossierProcess(directory, ZoneOffset.UTC, program, bounds);
    }

    /** Runs until it is ended, and is known by the file it looks at. */
    private DossierProcess endless(DossierProcess.Bounds bounds) throws IOException {
        Path still = elsewhere.resolve("still");
        Files.writeString(still, "");
        return running(List.of("sh", "-c", "exec tail -f \"$0\"", still.toString()), bounds);
    }

    private List<ProcessHandle> alive() {
        return ProcessHandle.current()
                .children()
                .filter(ProcessHandle::isAlive)
                .filter(one -> one.info().commandLine().orElse("").contains("" + elsewhere))
                .toList();
    }

    /** Its arguments, a line each, as the file it was told to write. */
    private DossierProcess telling() {
        String script =
                "for one; do case $p in --to) file=$one;; esac; p=$one; done;"
                        + " printf '%s\\n' \"$@\" > \"$file\"";
        return running(List.of("sh", "-c", script, "sh"), AMPLE);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.toList();
        }
    }

    private static String text(Optional<InputStream> made) throws IOException {
        try (InputStream in = made.orElseThrow()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theFormGoesOnAsTheCommandsOptions() throws Exception {
        try (DossierProcess dossiers = telling()) {
            assertThat(text(dossiers.make(12, DossierForm.JSON)).lines())
                    .containsSequence("--number", "12")
                    .containsSequence("--journal", directory.resolve("journal.db").toString())
                    .containsSequence("--zone", "Z")
                    .containsSequence("--as", "json");
            assertThat(text(dossiers.make(12, DossierForm.ES)).lines())
                    .containsSequence("--as", "html")
                    .containsSequence("--language", "es");
        }
        assertThat(files()).isEmpty();
    }

    @Test
    void theNextOneIsMadeWhenTheLastOneIsHandedOut() throws Exception {
        try (DossierProcess dossiers = telling()) {
            Optional<InputStream> first = dossiers.make(12, DossierForm.JSON);
            assertThat(files()).as("the open file has no name any more").isEmpty();
            assertThat(dossiers.make(12, DossierForm.JSON)).isEmpty();
            first.orElseThrow().close();
            try (InputStream second = dossiers.make(12, DossierForm.EN).orElseThrow()) {
                first.orElseThrow().close();
                assertThat(dossiers.make(12, DossierForm.JSON))
                        .as("the first one closed twice frees nothing twice")
                        .isEmpty();
                assertThat(second.read()).isPositive();
            }
        }
    }

    @Test
    void aProcessThatFailsLeavesNothingAndLetsTheNextOneIn() throws Exception {
        try (DossierProcess dossiers = running(List.of("sh", "-c", "exit 7"), AMPLE)) {
            for (int i = 0; i < 2; i++) {
                assertThatThrownBy(() -> dossiers.make(12, DossierForm.JSON))
                        .isInstanceOf(UncheckedIOException.class)
                        .hasStackTraceContaining("ended with 7");
            }
        }
        try (DossierProcess none = running(List.of("/nowhere/java"), AMPLE)) {
            assertThatThrownBy(() -> none.make(12, DossierForm.JSON))
                    .isInstanceOf(UncheckedIOException.class);
        }
        assertThat(files()).isEmpty();
    }

    @Test
    void oneThatTakesTooLongIsEnded() throws Exception {
        var soon = new DossierProcess.Bounds(Duration.ofMillis(100), 0);
        try (DossierProcess dossiers = endless(soon)) {
            assertThatThrownBy(() -> dossiers.make(12, DossierForm.JSON))
                    .hasStackTraceContaining("not done after");
        }
        await().until(() -> alive().isEmpty());
        assertThat(files()).isEmpty();
    }

    @Test
    void noneIsBegunOnADiskThatIsNearlyFull() throws Exception {
        var more = new DossierProcess.Bounds(Duration.ofSeconds(50), Long.MAX_VALUE);
        try (DossierProcess dossiers = running(List.of("sh", "-c", "exit 0"), more)) {
            assertThatThrownBy(() -> dossiers.make(12, DossierForm.JSON))
                    .hasStackTraceContaining("bytes free");
        }
        assertThat(files()).isEmpty();
    }

    @Test
    void aStopEndsTheOneThatIsBeingMadeAndBeginsNoOther() throws Exception {
        DossierProcess dossiers = endless(AMPLE);
        CompletionStage<Optional<InputStream>> making =
                CompletableFuture.supplyAsync(() -> dossiers.make(12, DossierForm.JSON));
        await().until(() -> !alive().isEmpty());
        dossiers.close();
        assertThatThrownBy(() -> making.toCompletableFuture().join())
                .isInstanceOf(CompletionException.class)
                .hasRootCauseInstanceOf(IOException.class);
        assertThatThrownBy(() -> dossiers.make(12, DossierForm.JSON))
                .hasStackTraceContaining("the gateway stops");
        assertThat(files()).isEmpty();
    }

    /** Linux: what proc(5) says of oom_score_adj, which a child takes over from its parent. */
    @Test
    void itGoesBeforeTheGatewayWhenMemoryIsShort() throws Exception {
        DossierProcess dossiers = endless(AMPLE);
        var unused = CompletableFuture.supplyAsync(() -> dossiers.make(12, DossierForm.JSON));
        await().until(() -> !alive().isEmpty());
        Path score = Path.of("/proc", "" + alive().get(0).pid(), "oom_score_adj");
        await().untilAsserted(() -> assertThat(Files.readString(score).strip()).isEqualTo("500"));
        assertThat(Files.readString(Path.of("/proc/self/oom_score_adj")).strip())
                .as("the gateway's own stays")
                .isNotEqualTo("500");
        dossiers.close();
    }

    @Test
    void whatAnEarlierGatewayLeftBehindIsSweptAway() throws Exception {
        Files.writeString(directory.resolve("dossier-123.part"), "half of one");
        Files.writeString(directory.resolve("dossier-123.json"), "somebody's own");
        endless(AMPLE).close();
        assertThat(files()).containsExactly(directory.resolve("dossier-123.json"));
    }
}
