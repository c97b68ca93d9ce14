package yardclock.sim.demo;

import com.fasterxml.jackson.core.type.TypeReference;

import yardclock.app.json.Json;
import yardclock.app.settings.DemoPlan;
import yardclock.app.settings.Roster;
import yardclock.core.course.RosterLine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The directory of the demo day: what the demo puts into it for the gateway, and what the gateway
 * leaves in it for the people it enrols.
 */
public final class DayFolder {
    private final Path folder;

    private DayFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * A folder for a new day.
     *
     * @param wanted where, or null for a temporary one
     * @throws DemoFailedException when there is a day in it already
     */
    public static DayFolder forNewDay(Path wanted) throws DemoFailedException {
        try {
            Path folder = wanted == null ? Files.createTempDirectory("yardclock-demo-") : wanted;
            Files.createDirectories(folder);
            DayFolder day = new DayFolder(folder.toAbsolutePath().normalize());
            if (Files.exists(day.journal())) {
                throw new DemoFailedException(
                        day.folder
                                + " holds a day already. A demo always begins a new one: give"
                                + " another --data, or look at that day with serve --data.");
            }
            return day;
        } catch (IOException e) {
            throw new DemoFailedException("The folder cannot be used: " + e.getMessage(), e);
        }
    }

    public Path path() {
        return folder;
    }

    public Path journal() {
        return folder.resolve("journal.db");
    }

    Path rosterFile() {
        return folder.resolve("demo-roster.csv");
    }

    Path gatewayLog() {
        return folder.resolve("gateway.log");
    }

    /** Writes the top of the demo roster. */
    public Roster writeRoster(int candidates) throws DemoFailedException {
        Roster roster = DemoPlan.roster().first(candidates);
        StringBuilder csv = new StringBuilder("number,name,group\n");
        for (RosterLine line : roster.lines()) {
            String name = roster.name(line.number()).orElse("");
            csv.append(line.number()).append(',').append(quoted(name)).append(',');
            csv.append(line.group()).append('\n');
        }
        try {
            Files.writeString(rosterFile(), csv);
            return roster;
        } catch (IOException e) {
            throw new DemoFailedException("The roster cannot be written: " + e.getMessage(), e);
        }
    }

    /** As RFC 4180 asks where a name has a comma or a quotation mark in it. */
    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }

    /** The gateway's first one-time codes by role. */
    Map<String, List<String>> firstCodes() throws DemoFailedException {
        return read("first-codes.json", new TypeReference<>() {});
    }

    Map<String, String> unitPasswords() throws DemoFailedException {
        return read("unit-passwords.json", new TypeReference<>() {});
    }

    private <T> T read(String name, TypeReference<T> shape) throws DemoFailedException {
        try {
            return Json.mapper().readValue(folder.resolve(name).toFile(), shape);
        } catch (IOException e) {
            throw new DemoFailedException("The gateway left no good " + name, e);
        }
    }
}
