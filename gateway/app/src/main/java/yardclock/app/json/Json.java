package yardclock.app.json;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.ActKind;

import java.io.IOException;
import java.util.Locale;

/**
 * The one way records become JSON and back: property names as written in the record, enums as
 * lower-case words with hyphens, acts told apart by {@code "act"}, integers only.
 *
 * <p>Unknown fields are ignored, unknown enum words refused. The mapper is immutable and may be
 * used from any thread.
 */
public final class Json {
    private static final JsonMapper MAPPER = build();

    private Json() {}

    public static JsonMapper mapper() {
        return MAPPER;
    }

    private static JsonMapper build() {
        SimpleModule words = new SimpleModule("enum-words");
        words.addSerializer(new EnumWord());
        words.setDeserializerModifier(new EnumWords());
        JsonMapper mapper =
                JsonMapper.builder()
                        .addModule(words)
                        .addMixIn(Act.class, ActKinds.class)
                        .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                        // A deadline says all it has to say by being there.
                        .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
                        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                        .build();
        for (ActKind kind : ActKind.values()) {
            mapper.registerSubtypes(new NamedType(kind.type(), kind.word()));
        }
        mapper.getFactory()
                .setStreamReadConstraints(
                        StreamReadConstraints.builder().maxNestingDepth(32).build());
        return mapper;
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "act")
    private interface ActKinds {}

    /** How an enum's value is written, as "station-not-ready". */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static final class EnumWord extends StdSerializer<Enum<?>> {
        private static final long serialVersionUID = 1;

        EnumWord() {
            super(Enum.class, false);
        }

        @Override
        public void serialize(Enum<?> value, JsonGenerator to, SerializerProvider provider)
                throws IOException {
            to.writeString(word(value));
        }
    }

    private static final class EnumWords extends BeanDeserializerModifier {
        private static final long serialVersionUID = 1;

        @Override
        public JsonDeserializer<?> modifyEnumDeserializer(
                DeserializationConfig config,
                JavaType type,
                BeanDescription description,
                JsonDeserializer<?> deserializer) {
            Object[] values = type.getRawClass().getEnumConstants();
            return new JsonDeserializer<Object>() {
                @Override
                public Object deserialize(JsonParser from, DeserializationContext context)
                        throws IOException {
                    String text = from.getValueAsString();
                    for (Object value : values) {
                        if (word((Enum<?>) value).equals(text)) {
                            return value;
                        }
                    }
                    return context.handleWeirdStringValue(
                            type.getRawClass(), text, "no such word here");
                }
            };
        }
    }
}
