package yardclock.app.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The gateway's own description, read from where it is served from. */
final class Description {
    final JsonNode root;
    private final SchemaRegistry registry =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final Map<String, Schema> schemas = new TreeMap<>();

    private Description(JsonNode root) {
        this.root = root;
    }

    static Description read() throws IOException {
        try (InputStream in =
                WebServer.class.getClassLoader().getResourceAsStream("yardclock/openapi.yaml")) {
            return new Description(new YAMLMapper().readTree(in));
        }
    }

    /** Each operation as {@code GET /api/plan}, with its description. */
    Map<String, JsonNode> operations() {
        Map<String, JsonNode> operations = new TreeMap<>();
        for (Map.Entry<String, JsonNode> path : root.path("paths").properties()) {
            for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
                String name = method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey();
                operations.put(name, method.getValue());
            }
        }
        return operations;
    }

    JsonNode schema(String name) {
        return root.at("/components/schemas/" + name);
    }

    /** Follows a reference to another part of the description. */
    JsonNode resolve(JsonNode node) {
        String ref = node.path("$ref").asText("");
        return ref.isEmpty() ? node : root.at(ref.substring(1));
    }

    /** What is wrong with a document by this schema; empty when nothing is. */
    List<String> faults(JsonNode schema, JsonNode document) {
        Schema compiled = schemas.computeIfAbsent(schema.toString(), text -> compile(schema));
        List<String> faults = new ArrayList<>();
        for (Error error : compiled.validate(document)) {
            faults.add(error.toString());
        }
        return faults;
    }

    /** The schema as one document of its own, with the others beside it. */
    private Schema compile(JsonNode schema) {
        ObjectNode whole = JsonNodeFactory.instance.objectNode();
        whole.setAll((ObjectNode) schema.deepCopy());
        whole.set("$defs", root.at("/components/schemas"));
        String text = whole.toString().replace("#/components/schemas/", "#/$defs/");
        return registry.getSchema(text);
    }

    static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asText()));
        return texts;
    }
}
