package yardclock.app.settings;

import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorRef;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which sensors the plan's field units have, as far as the file was read. For one reading. */
final class Wiring {
    private static final Pattern REF = Pattern.compile("([a-z0-9-]{1,24})/(\\d{1,2})");
    static final String REF_FORM = "unit/number, as fu-02/1";

    private final Map<SensorRef, SensorKind> sensors = new TreeMap<>();

    void add(SensorRef ref, SensorKind kind) {
        sensors.put(ref, kind);
    }

    Optional<SensorKind> kind(SensorRef ref) {
        return Optional.ofNullable(sensors.get(ref));
    }

    /** The declared sensor a key names; empty after a problem. */
    Optional<SensorRef> ref(Block block, String key) {
        Optional<Value> value = block.value(key, REF_FORM);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        String text = value.get().text();
        Matcher matcher = REF.matcher(text);
        if (!matcher.matches()) {
            block.wrong(key, "\"" + text + "\" names no sensor", REF_FORM);
            return Optional.empty();
        }
        SensorRef ref = new SensorRef(matcher.group(1), Integer.parseInt(matcher.group(2)));
        if (!sensors.containsKey(ref)) {
            block.wrong(key, "no field unit has a sensor " + ref, declared(ref.unit()));
            return Optional.empty();
        }
        return Optional.of(ref);
    }

    private String declared(String unit) {
        String ofUnit =
                sensors.keySet().stream()
                        .filter(ref -> ref.unit().equals(unit))
                        .map(SensorRef::toString)
                        .collect(Collectors.joining(", "));
        return ofUnit.isEmpty() ? "a sensor listed under fieldUnits" : ofUnit;
    }
}
