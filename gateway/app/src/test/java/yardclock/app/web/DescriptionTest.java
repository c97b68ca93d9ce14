package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import yardclock.core.board.BenchFrame;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.ClockSheet;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.course.Condition;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.GuardTimes;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Team;
import yardclock.core.result.OutcomeKind;
import yardclock.core.ruling.ActKind;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Role;
import yardclock.core.run.Rejudged;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The description says what the table and the records say, no less and no more. */
class DescriptionTest {
    private static WebBench bench;
    private static Description description;

    @BeforeAll
    static void open() throws IOException {
        bench = new WebBench();
        description = Description.read();
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    @Test
    void everyRouteIsDescribedWithItsRolesAndNothingElseIs() {
        Map<String, String> served = new TreeMap<>();
        for (Route route : bench.server.routes()) {
            String path = route.path().replace('<', '{').replace('>', '}');
            served.put(
                    route.method().name() + " " + path,
                    words(route.permits().stream().map(Permit::name).toList()));
        }
        Map<String, String> described = new TreeMap<>();
        description
                .operations()
                .forEach((name, it) -> described.put(name, roles(it.path("x-roles"))));
        assertThat(described).isEqualTo(served);
    }

    @Test
    void theDescriptionItselfIsServed() throws Exception {
        var answer = bench.get("/openapi.yaml", null);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).startsWith("openapi: 3.1.0");
    }

    @Test
    void everyReferenceLeadsSomewhereAndEverySchemaIsUsed() {
        TreeSet<String> used = new TreeSet<>();
        for (JsonNode ref : description.root.findValues("$ref")) {
            used.add(ref.asText());
            assertThat(description.root.at(ref.asText().substring(1)).isMissingNode())
                    .as(ref.asText())
                    .isFalse();
        }
        List<String> idle = new ArrayList<>();
        description
                .root
                .at("/components/schemas")
                .fieldNames()
                .forEachRemaining(
                        name -> {
                            if (!used.contains("#/components/schemas/" + name)) {
                                idle.add(name);
                            }
                        });
        assertThat(idle).isEmpty();
    }

    @Test
    void everyActIsDescribedWithItsFieldsAndRoles() {
        List<String> refs = new ArrayList<>();
        description.schema("Act").path("oneOf").forEach(ref -> refs.add(ref.path("$ref").asText()));
        assertThat(refs).hasSameSizeAs(ActKind.values());
        for (ActKind kind : ActKind.values()) {
            JsonNode act = description.schema(kind.type().getSimpleName());
            assertThat(act.at("/properties/act/const").asText()).isEqualTo(kind.word());
            assertThat(names(act)).isEqualTo(fields(kind.type(), "act"));
            TreeSet<String> required = fields(kind.type(), "act");
            required.remove("words");
            assertThat(new TreeSet<>(Description.texts(act.path("required")))).isEqualTo(required);
            List<String> roles =
                    Arrays.stream(Role.values()).filter(kind::allows).map(Role::name).toList();
            assertThat(roles(act.path("x-roles"))).as(kind.word()).isEqualTo(words(roles));
        }
    }

    @Test
    void closedListsHaveTheSameWords() {
        assertThat(wordsOf("Role")).isEqualTo(words(Role.values()));
        assertThat(wordsOf("Reason")).isEqualTo(words(Reason.values()));
        assertThat(wordsOf("Team")).isEqualTo(words(Team.values()));
        assertThat(wordsOf("Ground")).isEqualTo(words(Ground.values()));
        assertThat(wordsOf("Condition")).isEqualTo(words(Condition.values()));
        assertThat(wordsOf("FeedKind"))
                .isEqualTo(
                        words(
                                Arrays.stream(FactKind.values())
                                        .filter(FactKind::onFeed)
                                        .toArray(FactKind[]::new)));
        TreeSet<String> outcomes = words(OutcomeKind.values());
        outcomes.add("");
        assertThat(wordsOf("OutcomeWord")).isEqualTo(outcomes);
    }

    @Test
    void everyFrameAndThePlanAndTheFeedHaveTheFieldsOfTheirRecords() {
        Map<String, Class<?>> seen = new HashMap<>();
        compare("ControlFrame", ControlFrame.class, seen);
        compare("PostFrame", PostFrame.class, seen);
        compare("CrewFrame", CrewFrame.class, seen);
        compare("BoardFrame", BoardFrame.class, seen);
        compare("LeaderboardFrame", LeaderboardFrame.class, seen);
        compare("BenchFrame", BenchFrame.class, seen);
        compare("ClockSheet", ClockSheet.class, seen);
        compare("Rejudged", Rejudged.class, seen);
        compareFields(
                "RejudgeQuestion", GuardTimes.class, fields(GuardTimes.class, "station", "point"));
        compare("FeedItem", yardclock.app.lane.Feed.Item.class, seen);
        compare("GatewayState", GatewayState.class, seen);
        compare("ClockMessage", TabletExchanges.ClockMessage.class, seen);
        compare("ClockCompared", TabletClockDesk.Compared.class, seen);
        compare("ClockWanted", TabletClockDesk.Wanted.class, seen);
        compareFields("Fact", Fact.class, fields(Fact.class));
        compareFields("PlanSheet", ExamPlan.class, fields(ExamPlan.class, "sha256"));
        for (RecordComponent component : ExamPlan.class.getRecordComponents()) {
            follow(description.schema("PlanSheet"), component, seen);
        }
        assertThat(seen).hasSizeGreaterThan(35);
    }

    private static void compare(String schema, Class<?> record, Map<String, Class<?>> seen) {
        if (seen.put(schema, record) != null) {
            return;
        }
        compareFields(schema, record, fields(record));
        for (RecordComponent component : record.getRecordComponents()) {
            follow(description.schema(schema), component, seen);
        }
    }

    private static void compareFields(String schema, Class<?> record, TreeSet<String> fields) {
        JsonNode described = description.schema(schema);
        assertThat(names(described)).as(schema + " and " + record).isEqualTo(fields);
        TreeSet<String> required = new TreeSet<>(Description.texts(described.path("required")));
        if (!schema.equals("GatewayState")) {
            assertThat(required).as(schema + "'s required").isEqualTo(fields);
        }
    }

    /** Goes from a field's schema to that of the record it holds, through lists and "or null". */
    private static void follow(
            JsonNode owner, RecordComponent component, Map<String, Class<?>> seen) {
        JsonNode field = owner.path("properties").path(component.getName());
        Class<?> type = component.getType();
        if (type == List.class) {
            field = field.path("items");
            type =
                    (Class<?>)
                            ((java.lang.reflect.ParameterizedType) component.getGenericType())
                                    .getActualTypeArguments()[0];
        }
        if (field.has("oneOf")) {
            field = field.path("oneOf").path(1);
        }
        String ref = field.path("$ref").asText("");
        String name = ref.substring(ref.lastIndexOf('/') + 1);
        if (type.isRecord()) {
            compare(name, type, seen);
        } else if (type.isEnum() && !name.equals("FeedKind")) {
            JsonNode list = name.isEmpty() ? field : description.schema(name);
            assertThat(new TreeSet<>(Description.texts(list.path("enum"))))
                    .as(component.toString())
                    .isEqualTo(words((Enum<?>[]) type.getEnumConstants()));
        } else {
            JsonNode scalar = name.isEmpty() ? field : description.schema(name);
            assertThat(scalar.path("type").asText(name))
                    .as(component.toString())
                    .isIn(kind(type), name);
        }
    }

    private static String kind(Class<?> type) {
        if (type == boolean.class) {
            return "boolean";
        }
        return type == String.class || type.isEnum() ? "string" : "integer";
    }

    private static TreeSet<String> names(JsonNode schema) {
        TreeSet<String> names = new TreeSet<>();
        schema.path("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static TreeSet<String> fields(Class<?> record, String... more) {
        TreeSet<String> fields = new TreeSet<>(Arrays.asList(more));
        for (RecordComponent component : record.getRecordComponents()) {
            fields.add(component.getName());
        }
        return fields;
    }

    private static TreeSet<String> wordsOf(String schema) {
        return new TreeSet<>(Description.texts(description.schema(schema).path("enum")));
    }

    private static TreeSet<String> words(Enum<?>[] values) {
        return Arrays.stream(values)
                .map(value -> word(value.name()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String words(List<String> names) {
        return names.stream().map(DescriptionTest::word).sorted().toList().toString();
    }

    private static String roles(JsonNode list) {
        return Description.texts(list).stream().sorted().toList().toString();
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
