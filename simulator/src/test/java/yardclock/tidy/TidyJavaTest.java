package yardclock.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.Tree;

import org.junit.jupiter.api.Test;

import yardclock.tidy.JavaReader.MethodSeen;
import yardclock.tidy.JavaReader.TypeSeen;
import yardclock.tidy.Repository.Source;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The shape of our Java: short methods, few parameters, names that say something. */
class TidyJavaTest {
    private static final int METHOD_LINES_MAX = 60;
    private static final int PARAMETERS_MAX = 5;

    /** Words that name no thing of the yard; "event" already means three others. */
    private static final Pattern EMPTY_WORD =
            Pattern.compile("(Utils?|Helpers?|Managers?|Impl|DTO|Dto|Abstract|Events?)(?![a-z])");

    private static final Pattern SLEEP =
            Pattern.compile("\\bThread\\s*\\.\\s*sleep|TimeUnit\\.\\w+\\.sleep");
    private static final Pattern SWITCHED_OFF = Pattern.compile("^\\s*@Dis" + "abled\\b");

    private final List<Source> sources = Repository.here().java();
    private final JavaReader read = JavaReader.read(sources);

    @Test
    void methods_are_short() {
        assertThat(read.methods)
                .filteredOn(method -> method.lines() > METHOD_LINES_MAX)
                .extracting(method -> where(method) + " has " + method.lines() + " lines")
                .isEmpty();
    }

    @Test
    void methods_take_few_things() {
        assertThat(read.methods)
                .filteredOn(method -> method.parameters() > PARAMETERS_MAX)
                // What a library calls is shaped by the library.
                .filteredOn(method -> !method.overrides())
                .filteredOn(method -> !(method.isConstructor() && hasManyParts(method.owner())))
                .extracting(method -> where(method) + " takes " + method.parameters())
                .isEmpty();
    }

    @Test
    void type_names_say_what_the_thing_is() {
        assertThat(read.types)
                .filteredOn(type -> EMPTY_WORD.matcher(type.name()).find())
                .extracting(TidyJavaTest::where)
                .isEmpty();
    }

    @Test
    void public_types_explain_themselves() {
        assertThat(read.types)
                .filteredOn(type -> type.file().contains("/src/main/"))
                .filteredOn(type -> type.topLevelPublic() && !type.documented())
                .extracting(TidyJavaTest::where)
                .isEmpty();
    }

    @Test
    void every_package_says_its_model_and_invariant() {
        Set<String> bare = new TreeSet<>();
        for (Source source : sources) {
            if (source.name().contains("/src/main/")) {
                bare.add(folder(source));
            }
        }
        for (Source source : sources) {
            if (source.endsWith("/package-info.java") && source.text().contains("Invariant")) {
                bare.remove(folder(source));
            }
        }
        assertThat(bare).isEmpty();
    }

    @Test
    void tests_wait_on_conditions_and_never_sleep() {
        assertThat(testLinesThat(SLEEP)).isEmpty();
    }

    @Test
    void no_test_is_switched_off() {
        assertThat(testLinesThat(SWITCHED_OFF)).isEmpty();
    }

    private List<String> testLinesThat(Pattern breach) {
        return sources.stream()
                .filter(source -> source.name().contains("/src/test/"))
                .filter(source -> !source.name().contains("/tidy/"))
                .flatMap(
                        source ->
                                source.lines().stream()
                                        .filter(line -> breach.matcher(line).find())
                                        .map(line -> source.name() + ": " + line.strip()))
                .toList();
    }

    /** Records and enums list their parts in one constructor, and that is their shape. */
    private static boolean hasManyParts(Tree.Kind owner) {
        return owner == Tree.Kind.RECORD || owner == Tree.Kind.ENUM;
    }

    private static String folder(Source source) {
        return source.name().substring(0, source.name().lastIndexOf('/'));
    }

    private static String where(MethodSeen method) {
        return method.file() + ":" + method.line() + " " + method.name();
    }

    private static String where(TypeSeen type) {
        return type.file() + ":" + type.line() + " " + type.name();
    }
}
