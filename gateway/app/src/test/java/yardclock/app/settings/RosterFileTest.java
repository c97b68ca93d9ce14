package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.core.course.RosterLine;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;

/** Rosters as spreadsheets write them. */
class RosterFileTest {
    @Test
    void numbersNamesAndGroupsComeInTheOrderOfTheFile() {
        Roster roster = read("number,name,group\n12,Gravel Kettle,2\n7,Marble Compass,1\n").value();
        assertThat(roster.lines()).containsExactly(new RosterLine(12, 2), new RosterLine(7, 1));
        assertThat(roster.name(7)).contains("Marble Compass");
    }

    @Test
    void marksLineEndsBlanksAndQuotesOfSpreadsheetsAreTolerated() {
        String text =
                "\uFEFFnumber,name,group\r\n"
                        + " 1 , \"Kettle, Gravel\",1\r\n"
                        + "\r\n"
                        + "2,\"The \"\"Old\"\" Harbor\",1\r\n"
                        + "3,Piñón,2";
        Roster roster = read(text).value();
        assertThat(roster.lines()).hasSize(3);
        assertThat(roster.name(1)).contains("Kettle, Gravel");
        assertThat(roster.name(2)).contains("The \"Old\" Harbor");
        assertThat(roster.name(3)).contains("Piñón");
    }

    @Test
    void aNumberThatStandsTwiceNamesBothLines() {
        assertThat(read("number,name,group\n4,A B,1\n5,C D,1\n4,E F,2\n").problems().text())
                .isEqualTo(
                        "roster.csv is refused: 1 problem.\n"
                                + "roster.csv:4: number: number 4 stands on line 2 already."
                                + " Allowed: each number once.\n");
    }

    @Test
    void allMistakesAreNamedTogetherWithTheirLines() {
        String text =
                "number,name,group\n"
                        + "0,Gravel Kettle,1\n"
                        + "10000,Gravel Meadow,1\n"
                        + "x,Gravel Harbor,0\n"
                        + "5,,1\n"
                        + "6,"
                        + "k".repeat(81)
                        + ",1\n"
                        + "7,Gravel Thimble\n"
                        + "8,Gravel Lantern,1,extra\n"
                        + "9,Gravel Compass,100\n"
                        + "10,\"two\nlines\",1\n"
                        + "5,Zinc Compass,1\n";
        assertThat(PlanFolder.found(read(text).problems()))
                .containsExactly(
                        "line 2, number",
                        "line 3, number",
                        "line 4, number",
                        "line 4, group",
                        "line 5, name",
                        "line 6, name",
                        "line 7",
                        "line 8",
                        "line 9, group",
                        "line 10, name",
                        "line 12, number");
    }

    @Test
    void aMissingHeaderOrAnotherSeparatorIsSaid() {
        assertThat(read("1,Gravel Kettle,1\n2,Zinc Kettle,1\n").problems().text())
                .contains("roster.csv:1: the first line is not the header.")
                .contains("Allowed: number,name,group.");
        assertThat(read("number;name;group\n1;Gravel Kettle;1\n").problems().text())
                .contains("parted by semicolons");
    }

    @Test
    void anEmptyRosterIsRefused() {
        assertThat(read("").problems().text()).contains("the file is empty");
        assertThat(read("number,name,group\n\n").problems().text()).contains("no candidate");
    }

    @Test
    void moreLinesThanADayCanHoldAreRefusedOnce() {
        StringBuilder text = new StringBuilder("number,name,group\n");
        for (int i = 1; i <= 500; i++) {
            text.append(i).append(",Gravel Kettle,1\n");
        }
        assertThat(read(text.toString()).value().lines()).hasSize(500);
        text.append("501,Gravel Kettle,1\n502,Gravel Kettle,1\n");
        assertThat(PlanFolder.found(read(text.toString()).problems())).containsExactly("line 502");
    }

    @Test
    void aQuoteThatNeverEndsIsRefused() {
        assertThat(read("number,name,group\n1,\"Gravel,1\n2,Zinc,1\n").isRefused()).isTrue();
    }

    @Test
    void textThatIsNotUtf8IsRefusedWithItsLine() {
        byte[] latin = "number,name,group\n1,Piñón,1\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(RosterFile.read(latin, "roster.csv").problems().text())
                .contains("roster.csv:2: a character here is not UTF-8");
    }

    @Test
    void aMissingFileIsSaidToBeMissing(@TempDir Path folder) {
        assertThat(RosterFile.read(folder.resolve("none.csv")).problems().text())
                .contains("there is no such file");
    }

    @Test
    void noNameStandsInWhatTheRosterSaysOfItselfOrInItsProblems() {
        Roster roster = read("number,name,group\n1,Gravel Kettle,1\n").value();
        assertThat(roster.toString()).doesNotContain("Gravel");
        assertThat(roster.lines().toString()).doesNotContain("Gravel");
        String text = "number,name,group\n1,Gravel Kettle,0\n1,Gravel Kettle\n1,Gravel\u0007,1\n";
        assertThat(read(text).problems().text()).doesNotContain("Gravel");
    }

    @Test
    void theHashIsAboutNumbersAndGroupsInTheirOrderAndNotAboutNames() {
        String hash = read("number,name,group\n1,Gravel,1\n2,Zinc,1\n").value().sha256();
        assertThat(read("number,name,group\n1,Grovel,1\n2,Zinc,1\n").value().sha256())
                .isEqualTo(hash);
        assertThat(read("number,name,group\n2,Zinc,1\n1,Gravel,1\n").value().sha256())
                .isNotEqualTo(hash);
    }

    @Test
    void theFirstCandidatesKeepTheirNumbersAndNames() {
        Roster six = DemoPlan.roster().first(6);
        assertThat(six.lines()).isEqualTo(DemoPlan.roster().lines().subList(0, 6));
        assertThat(six.name(6)).isEqualTo(DemoPlan.roster().name(6));
        assertThat(six.name(7)).isEmpty();
        assertThat(DemoPlan.roster().first(1_000).lines()).hasSize(96);
    }

    @Test
    void aDamagedRosterIsReadOrRefusedButNeverBreaksTheReader() {
        long seed = 88_013;
        Random random = new Random(seed);
        byte[] whole = "number,name,group\n1,\"A, B\",1\n2,C,1\n".getBytes(StandardCharsets.UTF_8);
        for (int round = 0; round < 2_000; round++) {
            byte[] bytes = whole.clone();
            for (int i = 0; i <= random.nextInt(3); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(128);
            }
            Reading<Roster> reading = RosterFile.read(bytes, "roster.csv");
            assertThat(reading.problems().isEmpty())
                    .as("seed %d, round %d", seed, round)
                    .isEqualTo(!reading.isRefused());
        }
    }

    private static Reading<Roster> read(String text) {
        return RosterFile.read(text.getBytes(StandardCharsets.UTF_8), "roster.csv");
    }
}
