package yardclock.core;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/**
 * Two machines that read one journal must come to one state. These rules keep out of the core
 * whatever differs from run to run, machine to machine or country to country.
 */
@AnalyzeClasses(packages = "yardclock.core", importOptions = DoNotIncludeTests.class)
class CoreRulesTest {
    private static final Pattern ALLOWED =
            Pattern.compile(
                    "yardclock\\.core\\..*|java\\.(lang|lang\\.annotation|lang\\.invoke"
                            + "|lang\\.runtime|math|nio\\.charset|security|time|util"
                            + "|util\\.function|util\\.stream)\\.[^.]+");

    /** Types whose iteration order, value or effect is not a function of the inputs. */
    private static final List<String> BANNED =
            List.of(
                    "java.lang.Thread",
                    "java.lang.ThreadLocal",
                    "java.lang.Process",
                    "java.lang.ProcessBuilder",
                    "java.lang.Runtime",
                    "java.security.SecureRandom",
                    "java.time.Clock",
                    "java.util.HashMap",
                    "java.util.HashSet",
                    "java.util.Hashtable",
                    "java.util.IdentityHashMap",
                    "java.util.WeakHashMap",
                    "java.util.Scanner",
                    "java.util.SplittableRandom",
                    "java.util.Timer");

    @ArchTest
    static final ArchRule uses_nothing_but_plain_java =
            classes()
                    .should()
                    .onlyDependOnClassesThat(
                            describe("plain Java", type -> ALLOWED.matcher(name(type)).matches()))
                    .because("input and output, threads and libraries belong to the gateway's app");

    @ArchTest
    static final ArchRule keeps_no_type_that_differs_from_run_to_run =
            noClasses()
                    .should()
                    .dependOnClassesThat(
                            describe("that differ by run", type -> BANNED.contains(name(type))))
                    .because(
                            "a replay must give the same digest: use TreeMap, LinkedHashMap, List");

    @ArchTest
    static final ArchRule asks_no_clock =
            noCall("asks a clock", "java\\.time\\..*", "now").because("time is in the input");

    @ArchTest
    static final ArchRule asks_the_system_nothing =
            noCall("asks the system", "java\\.lang\\.System", "(?!arraycopy).*")
                    .because("time is in the input, settings are in the plan");

    @ArchTest
    static final ArchRule makes_no_set_or_map_of_random_order =
            noCall(
                            "makes a collection of salted order",
                            "java\\.util\\.(Set|Map)",
                            "of|copyOf|ofEntries")
                    .because("their order changes from one run of the machine to the next");

    @ArchTest
    static final ArchRule collects_into_no_hash_table =
            noCall(
                            "collects into a hash table",
                            "java\\.util\\.stream\\.Collectors",
                            "toSet|toUnmodifiableSet|toUnmodifiableMap|to.*ConcurrentMap")
                    .because("their order is not promised");

    @ArchTest
    static final ArchRule names_the_map_it_collects_into =
            noClasses()
                    .should()
                    .callCodeUnitWhere(
                            target(
                                    describe(
                                            "collects into a map of no promised order",
                                            CoreRulesTest::collectsWithoutAMap)))
                    .because("toMap and groupingBy take the map's supplier last or in the middle");

    @ArchTest
    static final ArchRule streams_in_order =
            noCall("streams in parallel", "java\\.util\\..*", "parallel|parallelStream|unordered")
                    .because("order is the point");

    @ArchTest
    static final ArchRule draws_no_lots =
            noCall("draws lots", "java\\.(lang\\.Math|util\\.UUID)", "random|randomUUID")
                    .because("nothing here may depend on chance");

    @ArchTest
    static final ArchRule seeds_what_is_random =
            noClasses().should().callConstructor(Random.class).because("a seed must be an input");

    @ArchTest
    static final ArchRule takes_no_default_place =
            noCall("takes the default", "java\\.(util|time)\\..*", "getDefault|systemDefault")
                    .because("the machine's country must not matter");

    @ArchTest
    static final ArchRule formats_with_a_stated_locale =
            noClasses()
                    .should()
                    .callCodeUnitWhere(
                            target(
                                    describe(
                                            "formats in the default locale",
                                            CoreRulesTest::formatsInDefaultLocale)))
                    .because("digits and capitals differ by country: pass Locale.ROOT");

    @ArchTest
    static final ArchRule stores_no_fractions =
            fields().that(outliveOneEstimate())
                    .should()
                    .notHaveRawType(float.class)
                    .andShould()
                    .notHaveRawType(double.class)
                    .andShould()
                    .notHaveRawType(Float.class)
                    .andShould()
                    .notHaveRawType(Double.class)
                    .because("stored and compared quantities are whole; times are microseconds");

    /**
     * The working figures of the clock and of the heat formulas are fractions; they are rounded
     * once, into a {@code Stamp} or a {@code HeatFigures}.
     */
    private static DescribedPredicate<JavaField> outliveOneEstimate() {
        return describe(
                "outlive one estimate",
                field ->
                        !List.of("yardclock.core.time", "yardclock.core.heat")
                                        .contains(field.getOwner().getPackageName())
                                || field.getOwner().getModifiers().contains(JavaModifier.PUBLIC));
    }

    @ArchTest
    static final ArchRule packages_form_no_cycle =
            slices().matching("yardclock.core.(*)..").should().beFreeOfCycles();

    private static ArchRule noCall(String what, String ownerPattern, String methodPattern) {
        Pattern owner = Pattern.compile(ownerPattern);
        Pattern method = Pattern.compile(methodPattern);
        DescribedPredicate<JavaCall<?>> call =
                target(
                        describe(
                                what,
                                called ->
                                        owner.matcher(called.getOwner().getName()).matches()
                                                && method.matcher(called.getName()).matches()));
        return noClasses().should().callCodeUnitWhere(call);
    }

    private static boolean collectsWithoutAMap(CodeUnitCallTarget called) {
        if (!called.getOwner().isEquivalentTo(java.util.stream.Collectors.class)) {
            return false;
        }
        int parameters = called.getRawParameterTypes().size();
        return called.getName().equals("toMap") && parameters < 4
                || called.getName().equals("groupingBy") && parameters < 3;
    }

    private static boolean formatsInDefaultLocale(CodeUnitCallTarget called) {
        if (!called.getOwner().isEquivalentTo(String.class)) {
            return false;
        }
        List<String> localeless =
                Arrays.asList("format", "formatted", "toLowerCase", "toUpperCase");
        return localeless.contains(called.getName())
                && called.getRawParameterTypes().stream()
                        .noneMatch(type -> type.getSimpleName().equals("Locale"));
    }

    private static String name(JavaClass type) {
        JavaClass base = type;
        while (base.isArray()) {
            base = base.getComponentType();
        }
        return base.isPrimitive() ? "java.lang.void" : base.getName();
    }
}
