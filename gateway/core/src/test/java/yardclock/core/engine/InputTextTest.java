package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text of an entry is digested: journals of before and after must say it in the same words. */
class InputTextTest {
    private static final List<Integer> STATES = List.of(1, 0, -1, 1, 0, 0, 0, 1);

    static Stream<Record> texts() {
        Input.Edge edge = new Input.Edge("gate-1", "00ff00ff00ff00ff", 17, 3, 1, 4_711);
        return Stream.of(
                edge,
                new Input.Health("u", "b", 1, 2, 3_700, -61, 5, 6_000, "1.2", 1, STATES, "aa:bb"),
                new Input.ExchangeAnswered("u", "b", "x-1", 1, 2, 3, 4),
                new Input.TabletExchange("d", "b", "x-2", 5, 6, 7, 8),
                new Entry(3, 99, edge));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void namesEveryComponentAsAnyRecordDoes(Record one) {
        String parts =
                Arrays.stream(one.getClass().getRecordComponents())
                        .map(part -> part.getName() + "=" + value(one, part))
                        .collect(Collectors.joining(", "));
        assertThat(one).hasToString(one.getClass().getSimpleName() + "[" + parts + "]");
    }

    private static Object value(Record one, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(one);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("a component that cannot be read: " + part, e);
        }
    }
}
