package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the shell and the proctor's service worker name by hand is what the modules' own imports
 * lead to: nothing is found late, kept in vain or missing from a tablet without a link.
 */
class AnnouncedModulesTest {
    private static final Pattern IMPORT =
            Pattern.compile("^(?:import|export)\\b[^;]*?\"(\\.{1,2}/[^\"]+)\";", Pattern.MULTILINE);
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");
    private static final Map<String, String> MODULES = Dashboard.modules();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "post",
                "control",
                "crew",
                "watch",
                "board",
                "bench",
                "leaderboard",
                "front"
            })
    void a_page_announces_exactly_what_its_imports_lead_to(String job) {
        Set<String> announced = announced(job);
        Set<String> needed = needed(job);
        Set<String> shared = listed(main(), "const SHARED = [");
        assertThat(union(announced, shared)).as("%s asks for all at once", job).containsAll(needed);
        assertThat(needed).as("%s asks for nothing in vain", job).containsAll(announced);
    }

    @Test
    void the_worker_keeps_the_proctors_page_whole() {
        Set<String> kept = new TreeSet<>();
        for (String address : listed(MODULES.get("post-worker.js"), "const MORE = [")) {
            kept.add(address.replaceFirst("^/ui/", "").replaceFirst("\\.js\\.js$", ".js"));
        }
        kept.remove("post.webmanifest.js");
        Set<String> needed = needed("post");
        needed.addAll(listed(main(), "const SHARED = ["));
        assertThat(kept).isEqualTo(needed);
    }

    @Test
    void what_every_page_preloads_is_used_by_a_page() {
        Set<String> used = closure("main.js");
        for (String module : MODULES.keySet()) {
            if (module.startsWith("jobs/")) {
                used.addAll(closure(module));
            }
        }
        assertThat(preloaded())
                .hasSizeGreaterThan(15)
                .allSatisfy(m -> assertThat(used).contains(m));
    }

    /** A page's words are no module's import: the shell alone asks for them. */
    private static Set<String> needed(String job) {
        Set<String> all = closure("jobs/" + job + ".js");
        for (String module : announced(job)) {
            if (module.startsWith("words/")) {
                all.addAll(closure(module));
            }
        }
        all.removeAll(preloaded());
        return all;
    }

    private static String main() {
        return MODULES.get("main.js");
    }

    /** The list of one job, its shared words taken in. */
    private static Set<String> announced(String job) {
        Set<String> all = new TreeSet<>();
        String rest = after(after(main(), "const JOBS = {"), "\n  " + job + ": ");
        String list =
                rest.substring(0, rest.startsWith("[") ? rest.indexOf(']') : rest.indexOf(','));
        all.addAll(quoted(list));
        if (list.contains("COURSE_WORDS")) {
            all.addAll(listed(main(), "const COURSE_WORDS = ["));
        }
        all.add("jobs/" + job + ".js");
        return all;
    }

    private static Set<String> listed(String source, String beginning) {
        String rest = after(source, beginning);
        return quoted(rest.substring(0, rest.indexOf(']')));
    }

    private static String after(String source, String beginning) {
        int at = source.indexOf(beginning);
        assertThat(at).as("there is no %s", beginning).isNotNegative();
        return source.substring(at + beginning.length());
    }

    private static Set<String> quoted(String list) {
        Set<String> names = new TreeSet<>();
        Matcher found = QUOTED.matcher(list);
        while (found.find()) {
            names.add(found.group(1) + ".js");
        }
        return names;
    }

    private static Set<String> preloaded() {
        Set<String> names = new TreeSet<>();
        Matcher found =
                Pattern.compile("rel=\"modulepreload\" href=\"/ui/([^\"]+)\"")
                        .matcher(StaticFiles.text("dashboard/index.html"));
        while (found.find()) {
            names.add(found.group(1));
        }
        return names;
    }

    private static Set<String> closure(String module) {
        Set<String> all = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(Set.of(module));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (all.add(next)) {
                assertThat(MODULES).as("a module that is imported").containsKey(next);
                imports(next).forEach(open::push);
            }
        }
        return all;
    }

    private static Set<String> imports(String module) {
        Set<String> all = new TreeSet<>();
        Matcher found = IMPORT.matcher(MODULES.get(module));
        while (found.find()) {
            all.add(resolved(module, found.group(1)));
        }
        return all;
    }

    private static String resolved(String from, String path) {
        String folder = from.contains("/") ? from.substring(0, from.lastIndexOf('/')) : "";
        String rest = path;
        while (rest.startsWith("../")) {
            folder = folder.contains("/") ? folder.substring(0, folder.lastIndexOf('/')) : "";
            rest = rest.substring(3);
        }
        rest = rest.startsWith("./") ? rest.substring(2) : rest;
        return folder.isEmpty() ? rest : folder + "/" + rest;
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> all = new TreeSet<>(one);
        all.addAll(other);
        return all;
    }
}
