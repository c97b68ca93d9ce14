package yardclock.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.lane.Answer;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

class TellingSheetTest {
    private final RecordsOffice office =
            new RecordsOffice(
                    () -> CompletableFuture.completedFuture(Optional.of(SampleDay.day())),
                    ZoneOffset.UTC);

    private Answer<Supplier<String>> sheet(int number) {
        return office.telling(number).toCompletableFuture().getNow(null);
    }

    @Test
    void theSheetSaysWhatTheCandidateMustBeTold() {
        String sheet = sheet(12).value().get();
        assertThat(sheet)
                .contains("Result of number 12")
                .contains("Resultado del número 12")
                .contains("11:40.0")
                .contains("11:39.900 … 11:40.200")
                .contains(
                        "18.2 ms clocks + 0.8 ms reading + 1.0 ms sensor response + 280.0 ms by"
                                + " hand")
                .contains("18.2 ms relojes")
                .contains("11:39.950: within the timing uncertainty")
                .contains("within the timing uncertainty of the cut-off")
                .contains("dentro de la incertidumbre")
                .contains("≤ 11:40.0")
                .contains("Hydrant walk")
                .contains("57.1", "57.4")
                .contains("fault · falta")
                .contains("wet, glare", "mojado, deslumbramiento")
                .contains("84.6 °F")
                .contains("how to appeal and until when")
                .contains("cómo apelar")
                .contains("Received, not agreed")
                .contains("2026-09-21");
    }

    @Test
    void theSheetPrintsTheProofRunsThatWereSigned() {
        assertThat(sheet(12).value().get())
                .contains("Proof run of the equipment", "Recorrido de prueba del equipo")
                .contains(
                        "Whole course, 11:26, signed by Ada Example, Ben Example: 21/21 points"
                                + " seen, largest automatic − hand −0.12 s")
                .contains("Todo el recorrido, 11:26, firmado por Ada Example, Ben Example: 21/21")
                .contains("Hydrant walk, 11:26, signed by Ada Example, Ben Example: 2/3")
                .doesNotContain("No proof run of the whole course");
    }

    @Test
    void aSheetWithoutAProofRunSaysSo() {
        DaySheet day = SampleDay.day();
        DaySheet bare =
                new DaySheet(day.frozen(), day.results(), day.heat(), List.of(), day.wallMicros());
        assertThat(TellingSheet.of(bare, bare.results().get(0), ZoneOffset.UTC))
                .contains("No proof run of the whole course was signed before this sheet.")
                .contains("no se firmó ninguno de todo el recorrido");
    }

    @Test
    void textFromOutsideIsOnlyEverText() {
        String sheet = sheet(12).value().get();
        assertThat(sheet)
                .doesNotContain("<b>")
                .doesNotContain("<script")
                .contains("=1+2, &quot;so&quot; &lt;b&gt;&amp;&#39;");
    }

    @Test
    void thereIsASheetOnlyOnceThereIsSomethingToTell() {
        assertThat(sheet(13).refused()).isEqualTo("not-done");
        assertThat(sheet(99).refused()).isEqualTo("unknown-number");
    }

    @Test
    void withoutAPlanThereAreNoDocuments() {
        RecordsOffice early =
                new RecordsOffice(
                        () -> CompletableFuture.completedFuture(Optional.empty()), ZoneOffset.UTC);
        assertThat(early.resultsJson().toCompletableFuture().getNow(null).refused())
                .isEqualTo("no-plan");
    }
}
