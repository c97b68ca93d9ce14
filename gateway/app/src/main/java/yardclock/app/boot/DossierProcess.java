package yardclock.app.boot;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.journal.JournalFile;
import yardclock.app.web.DossierForm;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Makes dossiers of the day that runs, each by this program's own {@code dossier} command in a
 * process of its own: whatever it needs of memory, the gateway's heap does not know of it.
 *
 * <p>One at a time, from its start until its file is handed out. The file lies beside the journal
 * and has no name any more once it is opened. Any thread; the one that asks waits.
 */
final class DossierProcess implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DossierProcess.class);

    private static final String PREFIX = "dossier-";
    private static final String ENDING = ".part";

    /** Of POSIX; where it is missing the process runs as everybody else does. */
    private static final Path NICE = Path.of("/usr/bin/nice");

    /** Of -1000 to 1000: among the first to be ended when the machine's memory is short. */
    private static final String FIRST_TO_GO = "500";

    private final Path directory;
    private final ZoneId zone;
    private final List<String> program;
    private final Bounds bounds;
    private final Semaphore one = new Semaphore(1);
    private Process running;
    private boolean closed;

    /**
     * What one dossier may take.
     *
     * @param spareBytes the journal's disk must have so much free, or none is begun
     */
    record Bounds(Duration time, long spareBytes) {
        /** A day of 88 candidates takes seconds; a full disk would end the day. */
        static final Bounds USUAL = new Bounds(Duration.ofSeconds(120), 2L * DossierFile.BYTES_MAX);
    }

    /** Makes them by the program that runs, from the journal in this day's directory. */
    static DossierProcess in(Path directory, ZoneId zone) {
        return new DossierProcess(directory, zone, ownProgram(), Bounds.USUAL);
    }

    /**
     * @param program how it is begun; the options of the {@code dossier} command are put after it
     */
    DossierProcess(Path directory, ZoneId zone, List<String> program, Bounds bounds) {
        this.directory = directory;
        this.zone = zone;
        this.program = List.copyOf(program);
        this.bounds = bounds;
        sweep();
    }

    private static List<String> ownProgram() {
        List<String> program = new ArrayList<>();
        if (Files.isExecutable(NICE)) {
            program.addAll(List.of(NICE.toString(), "-n", "19"));
        }
        program.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        program.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:+ExitOnOutOfMemoryError"));
        program.addAll(List.of("-cp", System.getProperty("java.class.path")));
        program.addAll(List.of(Main.class.getName(), "dossier"));
        return program;
    }

    /** What a gateway left behind that was ended in the middle of one. */
    private void sweep() {
        try (DirectoryStream<Path> left =
                Files.newDirectoryStream(directory, PREFIX + "*" + ENDING)) {
            for (Path file : left) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            LOG.warn("An unfinished dossier of an earlier run is left in {}", directory, e);
        }
    }

    /**
     * A dossier, to be read once and closed; empty while another one is made or handed out.
     *
     * @throws UncheckedIOException when it could not be made
     */
    Optional<InputStream> make(int number, DossierForm form) {
        if (!one.tryAcquire()) {
            return Optional.empty();
        }
        Optional<InputStream> made = Optional.empty();
        try {
            made = Optional.of(new HandedOut(made(number, form), one));
            return made;
        } catch (IOException e) {
            throw new UncheckedIOException("no dossier of number " + number + " was made", e);
        } finally {
            if (made.isEmpty()) {
                one.release();
            }
        }
    }

    private InputStream made(int number, DossierForm form) throws IOException {
        long free = Files.getFileStore(directory).getUsableSpace();
        if (free < bounds.spareBytes()) {
            throw new IOException("the journal's disk has only " + free + " bytes free");
        }
        Path file = Files.createTempFile(directory, PREFIX, ENDING);
        try {
            run(options(number, form, file));
            return Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    private List<String> options(int number, DossierForm form, Path file) {
        List<String> options = new ArrayList<>();
        options.addAll(List.of("--number", Integer.toString(number)));
        options.addAll(List.of("--journal", directory.resolve(JournalFile.NAME).toString()));
        options.addAll(List.of("--zone", zone.getId(), "--to", file.toString()));
        if (form == DossierForm.JSON) {
            options.addAll(List.of("--as", "json"));
        } else {
            options.addAll(List.of("--as", "html", "--language", form.word()));
        }
        return options;
    }

    private void run(List<String> options) throws IOException {
        Process process = start(options);
        try {
            if (!process.waitFor(bounds.time().toMillis(), TimeUnit.MILLISECONDS)) {
                throw new IOException("it was not done after " + bounds.time().toSeconds() + " s");
            }
            if (process.exitValue() != 0) {
                throw new IOException("its process ended with " + process.exitValue());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("nobody waits for it any more", e);
        } finally {
            process.destroyForcibly();
        }
    }

    /** What it has to say goes where the gateway's own log goes. */
    private synchronized Process start(List<String> options) throws IOException {
        if (closed) {
            throw new IOException("the gateway stops");
        }
        List<String> command = new ArrayList<>(program);
        command.addAll(options);
        running =
                new ProcessBuilder(command)
                        .redirectOutput(Redirect.DISCARD)
                        .redirectError(Redirect.INHERIT)
                        .start();
        running.getOutputStream().close();
        giveUpProtection(running);
        return running;
    }

    /** The service keeps the gateway alive when memory is short; that is not meant for this one. */
    private static void giveUpProtection(Process process) {
        Path score = Path.of("/proc", Long.toString(process.pid()), "oom_score_adj");
        try {
            Files.writeString(score, FIRST_TO_GO, StandardOpenOption.WRITE);
        } catch (IOException e) {
            LOG.debug("A dossier's process stays as protected as the gateway", e);
        }
    }

    /** Ends one that is being made; none is begun any more. */
    @Override
    public synchronized void close() {
        closed = true;
        if (running != null) {
            running.destroyForcibly();
        }
    }

    /** A dossier's file on its way out; the next one may be made when it is closed. */
    private static final class HandedOut extends FilterInputStream {
        private final Semaphore place;
        private final AtomicBoolean held = new AtomicBoolean(true);

        HandedOut(InputStream file, Semaphore place) {
            super(file);
            this.place = place;
        }

        @Override
        public void close() throws IOException {
            try {
                super.close();
            } finally {
                if (held.getAndSet(false)) {
                    place.release();
                }
            }
        }
    }
}
