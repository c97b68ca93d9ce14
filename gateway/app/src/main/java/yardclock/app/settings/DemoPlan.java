package yardclock.app.settings;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The bundled exam plan QB-3 of an invented department, and its roster of invented names. They are
 * read through the same door as anybody's files.
 */
public final class DemoPlan {
    private static final String FOLDER = "/yardclock/demo/";

    private DemoPlan() {}

    public static LoadedPlan plan() {
        return ExamPlanFile.read(planBytes(), "plan.yaml").value();
    }

    public static Roster roster() {
        return RosterFile.read(bytes("roster.csv"), "roster.csv").value();
    }

    static byte[] planBytes() {
        return bytes("plan.yaml");
    }

    private static byte[] bytes(String name) {
        try (InputStream from = DemoPlan.class.getResourceAsStream(FOLDER + name)) {
            if (from == null) {
                throw new IllegalStateException("the demo's " + name + " is not in this build");
            }
            return from.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
