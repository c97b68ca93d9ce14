package yardclock.sim.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.Roster;
import yardclock.app.settings.RosterFile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

class DayFolderTest {
    @TempDir Path folder;

    @Test
    void the_whole_roster_is_written_so_that_the_gateway_reads_the_same() throws Exception {
        Roster all = DemoPlan.roster();
        DayFolder day = DayFolder.forNewDay(folder);
        day.writeRoster(all.lines().size());
        Roster read = RosterFile.read(day.rosterFile()).value();
        assertThat(read.sha256()).isEqualTo(all.sha256());
        assertThat(read.lines())
                .allMatch(line -> read.name(line.number()).equals(all.name(line.number())));
    }

    @Test
    void a_roster_can_be_cut_at_the_top() throws Exception {
        DayFolder day = DayFolder.forNewDay(folder);
        assertThat(day.writeRoster(6).lines()).hasSize(6);
        assertThat(RosterFile.read(day.rosterFile()).value().lines())
                .isEqualTo(DemoPlan.roster().lines().subList(0, 6));
    }

    @Test
    void a_folder_with_a_day_in_it_is_not_for_a_new_one() throws IOException {
        Files.writeString(folder.resolve("journal.db"), "");
        assertThatThrownBy(() -> DayFolder.forNewDay(folder))
                .isInstanceOf(DemoFailedException.class)
                .hasMessageContaining("holds a day already");
    }

    @Test
    void without_a_wish_the_day_gets_a_folder_of_its_own() throws Exception {
        Path made = DayFolder.forNewDay(null).path();
        assertThat(made).isEmptyDirectory();
        Files.delete(made);
    }
}
