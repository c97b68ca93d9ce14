package yardclock.app.boot;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import yardclock.app.pins.BoardWiring;
import yardclock.app.pins.ClimateWiring;
import yardclock.app.pins.OutputMap;
import yardclock.app.pins.PinMap;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

/** Runs the gateway until it is told to stop. */
@Command(
        name = "serve",
        description = {
            "Runs the gateway of one exam day: pages for the staff, a broker for the field units,"
                    + " and the journal.",
            "Stop it with Ctrl-C or SIGTERM. Started again with the same --data it goes on where it"
                    + " was."
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ServeCommand implements Callable<Integer> {
    private static final int SPEED_MAX = 60;

    @Spec private CommandSpec spec;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            defaultValue = "data",
            description = "the day's directory (default: ./data); the journal is DIR/journal.db")
    private Path data;

    @Option(
            names = "--http",
            paramLabel = "HOST:PORT",
            defaultValue = "127.0.0.1:8470",
            description = "where the pages are (default: ${DEFAULT-VALUE})")
    private HostPort http;

    @Option(
            names = "--mqtt",
            paramLabel = "HOST:PORT",
            defaultValue = "127.0.0.1:18830",
            description = "where the embedded broker listens (default: ${DEFAULT-VALUE})")
    private HostPort mqtt;

    @Option(
            names = "--broker",
            paramLabel = "BROKER",
            defaultValue = ServeSettings.EMBEDDED,
            description = "embedded (the default), tcp://HOST:PORT or ssl://HOST:PORT")
    private String broker;

    @Option(
            names = "--plan",
            paramLabel = "FILE",
            description = "the exam plan (YAML; default: the bundled demo plan)")
    private Path plan;

    @Option(
            names = "--roster",
            paramLabel = "FILE",
            description = "the roster (CSV: number,name,group; default: the bundled demo roster)")
    private Path roster;

    @Option(
            names = "--tls-keystore",
            paramLabel = "FILE",
            description =
                    "serve pages encrypted, with the key and certificate in this PKCS #12 file")
    private Path tlsKeystore;

    @Option(
            names = "--tls-password-file",
            paramLabel = "FILE",
            description = "a file with that key store's password, readable by its owner only")
    private Path tlsPassword;

    @Option(
            names = "--insecure-lan",
            description =
                    "allow pages over the network, unencrypted: only on a network of your own")
    private boolean insecureLan;

    @Option(
            names = "--pins",
            paramLabel = "UNIT:SENSOR=LINE",
            description =
                    "sensors wired to this board itself, as fu-12:1=17,2=27 (GPIO lines); the plan"
                            + " must know the unit")
    private PinMap pins;

    @Option(
            names = "--climate",
            paramLabel = "UNIT[:bus=N,address=0x44,every=S]",
            description =
                    "a climate sensor of the SHT3x class on this board's I2C bus, as"
                            + " fu-12:bus=1,address=0x44,every=60; once for each sensor, each as a"
                            + " field unit of its own that the plan knows")
    private List<ClimateWiring> climates = List.of();

    @Option(
            names = "--outputs",
            paramLabel = "JOB=LINE",
            description =
                    "lamps, horn and dead-man on this board's GPIO lines, as"
                            + " pulse=5,run=6,release=13,heat=19,quiet=26; all but the pulse may be"
                            + " left out")
    private OutputMap outputs;

    @Option(names = "--speed", paramLabel = "N", defaultValue = "1", hidden = true)
    private int speed;

    @Override
    public Integer call() throws Exception {
        if (speed < 1 || speed > SPEED_MAX) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--speed takes a whole number from 1 to " + SPEED_MAX);
        }
        if ((tlsKeystore == null) != (tlsPassword == null)) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--tls-keystore and --tls-password-file go together");
        }
        TlsFiles tls = tlsKeystore == null ? null : new TlsFiles(tlsKeystore, tlsPassword);
        return new Serving(spec.commandLine().getOut())
                .run(
                        new ServeSettings(
                                data,
                                http,
                                mqtt,
                                broker,
                                tls,
                                insecureLan,
                                plan,
                                roster,
                                speed,
                                wiring()));
    }

    private BoardWiring wiring() {
        try {
            return new BoardWiring(pins, climates, outputs);
        } catch (IllegalArgumentException e) {
            throw new CommandLine.ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }
}
