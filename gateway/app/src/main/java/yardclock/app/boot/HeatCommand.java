package yardclock.app.boot;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.json.Json;
import yardclock.core.heat.HeatFigures;
import yardclock.core.heat.Measured;
import yardclock.core.heat.Sky;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;

/** Reckons one reading of heat, by the core's own formulas, and prints what follows as JSON. */
@Command(
        name = "heat",
        description = {
            "Reckons heat index, wet bulb, WBGT, limits and level from one reading and prints one"
                    + " JSON object. By the best method the given instruments allow; the method is"
                    + " printed with the value.",
            "It advises: local codes and medical direction decide."
        },
        mixinStandardHelpOptions = true)
final class HeatCommand implements Callable<Integer> {
    /** Enough for any reading, and nothing that could grow when it is written out. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,6}(\\.\\d{1,9})?");

    private static final BigDecimal FREEZING_F = BigDecimal.valueOf(32);
    private static final BigDecimal DEGREES_F_PER_C = new BigDecimal("1.8");

    @Spec private CommandSpec spec;

    @Option(names = "--temperature", required = true, paramLabel = "C", description = "of the air")
    private String temperature;

    @Option(names = "--humidity", required = true, paramLabel = "PCT", description = "relative")
    private String humidity;

    @Option(names = "--globe", paramLabel = "C", description = "globe temperature")
    private String globe;

    @Option(names = "--natural-wet-bulb", paramLabel = "C", description = "beside a globe")
    private String naturalWetBulb;

    @Option(names = "--wind", paramLabel = "MS", description = "at 2 m above ground, m/s")
    private String wind;

    @Option(
            names = "--solar",
            paramLabel = "WM2",
            description =
                    "sunlight on a level surface; without a globe it needs wind, --when, --lat and"
                            + " --lon")
    private String solar;

    @Option(
            names = "--when",
            paramLabel = "ISO",
            description = "as 2024-07-15T13:00:00-05:00, for the sun's place")
    private String when;

    @Option(names = "--lat", paramLabel = "D", description = "degrees north")
    private String latitude;

    @Option(names = "--lon", paramLabel = "D", description = "degrees east")
    private String longitude;

    @Option(names = "--pressure", paramLabel = "HPA", description = "of the air")
    private String pressure;

    @Option(names = "--work", paramLabel = "W", description = "metabolic rate, else 415")
    private String work;

    @Option(
            names = "--sky",
            paramLabel = "SKY",
            description =
                    "sun, clouds or shade: what the sun does where nothing measures it; sun and"
                            + " clouds give a range")
    private String sky;

    @Option(names = "--fahrenheit", description = "the temperatures are given in °F")
    private boolean isFahrenheit;

    @Override
    public Integer call() throws RefusedException, JsonProcessingException {
        Measured measured =
                new Measured(
                        temperature("--temperature", temperature),
                        number("--humidity", humidity),
                        temperature("--globe", globe),
                        temperature("--natural-wet-bulb", naturalWetBulb),
                        number("--wind", wind),
                        number("--solar", solar),
                        place(),
                        number("--pressure", pressure),
                        number("--work", work),
                        sky());
        List<String> wrong = measured.wrong();
        if (!wrong.isEmpty()) {
            throw new RefusedException(String.join(" ", wrong));
        }
        ObjectWriter writer = Json.mapper().writer();
        spec.commandLine().getOut().println(writer.writeValueAsString(HeatFigures.of(measured)));
        return 0;
    }

    private Sky sky() throws RefusedException {
        if (sky == null) {
            return null;
        }
        return Arrays.stream(Sky.values())
                .filter(one -> one.name().equalsIgnoreCase(sky))
                .findFirst()
                .orElseThrow(
                        () ->
                                new RefusedException(
                                        "--sky " + sky + " is none of sun, clouds and shade."));
    }

    private Measured.Place place() throws RefusedException {
        if (when == null && latitude == null && longitude == null) {
            return null;
        }
        if (when == null || latitude == null || longitude == null) {
            throw new RefusedException("--when, --lat and --lon go together.");
        }
        return new Measured.Place(
                epochSecond(), number("--lat", latitude), number("--lon", longitude));
    }

    private long epochSecond() throws RefusedException {
        try {
            return OffsetDateTime.parse(when).toEpochSecond();
        } catch (DateTimeException e) {
            String example = "2024-07-15T13:00:00-05:00";
            throw new RefusedException(
                    "--when " + when + " is no time with its offset, as " + example + '.', e);
        }
    }

    private BigDecimal temperature(String name, String text) throws RefusedException {
        BigDecimal given = number(name, text);
        return given == null || !isFahrenheit
                ? given
                : given.subtract(FREEZING_F).divide(DEGREES_F_PER_C, MathContext.DECIMAL64);
    }

    private static BigDecimal number(String name, String text) throws RefusedException {
        if (text == null) {
            return null;
        }
        if (!NUMBER.matcher(text).matches()) {
            throw new RefusedException(name + ' ' + text + " is no plain number, as 31.5.");
        }
        return new BigDecimal(text);
    }
}
