package yardclock.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The gateway's adapters stand side by side: each speaks to the lane, none to another, and each
 * library is known to one package. So one can be replaced, or fail, without the others.
 */
@AnalyzeClasses(packages = "yardclock.app", importOptions = DoNotIncludeTests.class)
class AppRulesTest {
    private static final List<String> ADAPTERS =
            List.of(
                    "access",
                    "broker",
                    "journal",
                    "metrics",
                    "pins",
                    "recorded",
                    "records",
                    "stations",
                    "web");
    private static final List<String> SHARED = List.of("clock", "json", "lane", "settings");

    private static final Map<String, String> HOME_OF_LIBRARY =
            Map.ofEntries(
                    Map.entry("java.sql..", "journal"),
                    Map.entry("org.sqlite..", "journal"),
                    Map.entry("org.eclipse.paho..", "stations"),
                    Map.entry("org.apache.activemq..", "broker"),
                    Map.entry("io.netty..", "broker"),
                    Map.entry("com.pi4j..", "pins"),
                    Map.entry("io.javalin..", "web"),
                    Map.entry("org.eclipse.jetty..", "web"),
                    Map.entry("io.micrometer..", "metrics"),
                    Map.entry("picocli..", "boot"),
                    Map.entry("org.apache.commons.numbers..", "records"));

    @ArchTest
    static void adapters_do_not_see_each_other(JavaClasses classes) {
        for (String adapter : ADAPTERS) {
            List<String> others = new ArrayList<>(ADAPTERS);
            others.remove(adapter);
            others.add("boot");
            check(classes, adapter, others, "only boot sees all");
        }
    }

    @ArchTest
    static void shared_packages_do_not_see_adapters(JavaClasses classes) {
        List<String> outer = new ArrayList<>(ADAPTERS);
        outer.add("boot");
        SHARED.forEach(shared -> check(classes, shared, outer, "the arrows point inwards"));
    }

    @ArchTest
    static void each_library_has_one_home(JavaClasses classes) {
        HOME_OF_LIBRARY.forEach(
                (library, home) ->
                        noClasses()
                                .that()
                                .resideOutsideOfPackage(inside(home))
                                .should()
                                .dependOnClassesThat()
                                .resideInAPackage(library)
                                .because(library + " is known to app." + home + " alone")
                                .check(classes));
    }

    @ArchTest
    static void every_package_has_a_known_duty(JavaClasses classes) {
        List<String> known = new ArrayList<>(ADAPTERS);
        known.addAll(SHARED);
        known.add("boot");
        for (JavaClass type : classes) {
            String[] parts = type.getPackageName().split("\\.", -1);
            if (parts.length < 3 || !known.contains(parts[2])) {
                throw new AssertionError(type.getName() + " is in a package of no known duty");
            }
        }
    }

    @ArchTest
    static final ArchRule only_the_clock_asks_for_the_time =
            noClasses()
                    .that()
                    .resideOutsideOfPackage(inside("clock"))
                    .should()
                    .callMethod(System.class, "nanoTime")
                    .orShould()
                    .callMethod(System.class, "currentTimeMillis")
                    .orShould()
                    .callMethod(java.time.Instant.class, "now")
                    .orShould()
                    .callMethod(java.time.LocalDate.class, "now")
                    .because("a second notion of time is how two screens come to disagree");

    @ArchTest
    static final ArchRule the_gateway_does_not_know_its_simulator =
            noClasses().should().dependOnClassesThat().resideInAPackage("yardclock.sim..");

    private static void check(
            JavaClasses classes, String from, List<String> barred, String because) {
        String[] packages = barred.stream().map(AppRulesTest::inside).toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(inside(from))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .allowEmptyShould(true)
                .because(because)
                .check(classes);
    }

    private static String inside(String name) {
        return "yardclock.app." + name + "..";
    }
}
