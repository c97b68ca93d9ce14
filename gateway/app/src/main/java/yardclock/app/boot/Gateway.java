package yardclock.app.boot;

import yardclock.app.access.FirstCodes;
import yardclock.app.broker.EmbeddedBroker;
import yardclock.app.broker.UnitPasswords;
import yardclock.app.clock.Anchor;
import yardclock.app.clock.Machine;
import yardclock.app.clock.SystemGatewayClock;
import yardclock.app.clock.WallWatch;
import yardclock.app.journal.JournalFile;
import yardclock.app.journal.JournalRefusedException;
import yardclock.app.lane.FeedRing;
import yardclock.app.lane.Lane;
import yardclock.app.lane.LaneParts;
import yardclock.app.lane.LaneSinks;
import yardclock.app.lane.LiveState;
import yardclock.app.lane.Opening;
import yardclock.app.lane.Troubles;
import yardclock.app.metrics.Meters;
import yardclock.app.stations.LinkSettings;
import yardclock.app.stations.StationLink;
import yardclock.app.web.Certificate;
import yardclock.app.web.WebAddress;
import yardclock.app.web.WebServer;
import yardclock.core.course.FieldUnit;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * One running gateway, put together by hand.
 *
 * <p>Started and closed by one thread at a time. Starting reads the journal first, then runs the
 * lane, then opens the broker, the pages and the link to the units, in this order, so that nothing
 * can come in before there is somebody to keep it. Closing goes the other way round.
 */
public final class Gateway implements AutoCloseable {
    private static final Duration LINK_PATIENCE = Duration.ofSeconds(30);

    private final ServeSettings settings;
    private final Path directory;
    private final StopOrder parts = new StopOrder();
    private final FeedRing feed = new FeedRing();
    private final Troubles troubles = new Troubles();
    private final Meters meters = new Meters();
    private final DayMemory memory = new DayMemory();
    private final LiveState state = new LiveState(feed, troubles);
    private final Machine machine;
    private JournalFile journal;
    private Day day;
    private SystemGatewayClock clock;
    private WallWatch wallWatch;
    private Lane lane;
    private UnitPasswords passwords;
    private StationLink link;
    private Certificate certificate;
    private WebServer web;

    private Gateway(ServeSettings settings, Path directory, Machine machine) {
        this.settings = settings;
        this.machine = machine;
        this.directory = directory;
    }

    /**
     * Starts a gateway, or refuses with one sentence and leaves nothing running.
     *
     * @param dead called when the gateway can't go on by a fault of its own; it must then be closed
     */
    public static Gateway start(ServeSettings settings, Consumer<Throwable> dead)
            throws RefusedException {
        return start(settings, Machine.here(), dead);
    }

    /** The same on a machine of the caller's: another boot, another wall clock. */
    static Gateway start(ServeSettings settings, Machine machine, Consumer<Throwable> dead)
            throws RefusedException {
        settings.check();
        Path directory = DataDirectory.prepare(settings.data());
        Gateway gateway = new Gateway(settings, directory, machine);
        boolean started = false;
        try {
            gateway.open(dead);
            started = true;
            return gateway;
        } catch (JournalRefusedException | IOException e) {
            throw new RefusedException(e.getMessage(), e);
        } finally {
            if (!started) {
                gateway.close();
            }
        }
    }

    private void open(Consumer<Throwable> dead)
            throws RefusedException, JournalRefusedException, IOException {
        certificate = settings.tls() == null ? null : settings.tls().read();
        readJournal();
        day = Day.of(settings, memory);
        Opening opening = opening();
        lane = new Lane(new LaneParts(clock, journal, state, troubles));
        passwords = UnitPasswords.in(directory, unitIds());
        link = new StationLink(linkSettings(), day.plan().plan(), lane, clock, troubles);
        RejectedMessages rejected = new RejectedMessages(link.rejections());
        HostPort at = settings.http();
        WebAddress address = new WebAddress(at.host(), at.port(), certificate);
        DossierProcess dossiers = DossierProcess.in(directory, ZoneId.systemDefault());
        web = new WebServer(webParts(dossiers).ports(), address, rejected::sentences);

        meters.laneDepth(lane::depth);
        meters.tablets(web.live()::open);
        rejected.countIn(meters);
        Board board = new Board(settings.board(), day.plan().plan(), lane, clock, troubles);
        lane.start(new LaneSinks(link, board.frames(web.live()), meters), opening, dead);
        parts.add("lane", lane);
        parts.add("wall clock", new WallClockRounds(wallWatch, lane)).start();
        board.start(parts, meters);
        startBroker();
        parts.add("link to the field units", link).start();
        parts.add("web server", web);
        // Closed before the pages: a request that waits for one must not hold the stop up.
        parts.add("dossier process", dossiers);
        startWeb();
        awaitUnitsLink();
        board.startOutputs(parts);
        var unused = lane.ask(Engine::standing).thenAccept(link::release);
    }

    private void readJournal() throws JournalRefusedException {
        journal =
                JournalFile.open(
                        directory,
                        entry -> {
                            memory.note(entry);
                            state.apply(entry);
                        });
        parts.add("journal", journal);
        state.settle(journal);
    }

    private Opening opening() throws RefusedException, IOException {
        Anchor anchor = anchor();
        clock = new SystemGatewayClock(machine, anchor);
        wallWatch = new WallWatch(machine, clock, anchor);
        List<Input> inputs = new ArrayList<>();
        inputs.add(epoch(anchor));
        if (memory.plan().isEmpty()) {
            inputs.add(day.plan());
            inputs.add(day.roster());
            inputs.addAll(FirstCodes.in(directory).inputs());
        }
        return new Opening(anchor.gatewayMicros(), inputs);
    }

    private Anchor anchor() throws RefusedException {
        if (memory.anchor().isEmpty()) {
            return Anchor.first(machine, settings.speed());
        }
        Anchor earlier = memory.anchor().get();
        if (earlier.speed() != settings.speed()) {
            throw new RefusedException(
                    "This day runs at speed "
                            + earlier.speed()
                            + " and can't go on at speed "
                            + settings.speed()
                            + ". Choose another --data directory.");
        }
        return Anchor.after(earlier, memory.lastMicros(), machine);
    }

    private static Input.Epoch epoch(Anchor anchor) {
        return new Input.Epoch(
                anchor.machineBoot(),
                UUID.randomUUID().toString(),
                anchor.wallMicros(),
                anchor.monotonicMicros(),
                anchor.speed(),
                anchor.continuous(),
                Engine.RULES_VERSION);
    }

    private List<String> unitIds() {
        return day.plan().plan().fieldUnits().stream().map(FieldUnit::id).toList();
    }

    private LinkSettings linkSettings() {
        String uri = settings.hasOwnBroker() ? "tcp://" + settings.mqtt() : settings.broker();
        return LinkSettings.of(uri, UnitPasswords.GATEWAY, passwords.of(UnitPasswords.GATEWAY));
    }

    private void startBroker() throws IOException {
        if (settings.hasOwnBroker()) {
            EmbeddedBroker broker =
                    new EmbeddedBroker(
                            directory.resolve("broker"),
                            settings.mqtt().host(),
                            settings.mqtt().port(),
                            passwords);
            parts.add("broker", broker).start();
        }
    }

    /** The broker is our own, so it takes a moment at most; one of others may be away for long. */
    private void awaitUnitsLink() throws RefusedException {
        try {
            if (settings.hasOwnBroker() && !link.awaitUp(LINK_PATIENCE)) {
                throw new RefusedException("The gateway can't reach its own broker.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new RefusedException("The start was interrupted.", e);
        }
    }

    private WebParts webParts(DossierProcess dossiers) {
        return new WebParts(lane, feed, troubles, clock, day, meters, link, dossiers);
    }

    private void startWeb() throws RefusedException {
        try {
            web.start();
        } catch (RuntimeException e) {
            throw new RefusedException(
                    "Pages can't be served at " + settings.http() + ": " + e.getMessage(), e);
        }
    }

    /** The port of the pages, also when any free one was asked for. */
    public int httpPort() {
        return web.port();
    }

    /** What the operator is told at the start. */
    Announcement announcement() {
        return new Announcement(
                settings, directory, web.port(), certificate, memory.plan().isEmpty());
    }

    /** Stops in order: streams and pages, units, lane, broker, journal. */
    @Override
    public void close() {
        parts.closeAll();
    }
}
