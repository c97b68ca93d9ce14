package yardclock.app.boot;

import yardclock.app.access.Doorkeeper;
import yardclock.app.access.Rolls;
import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Answer;
import yardclock.app.lane.Feed;
import yardclock.app.lane.Lane;
import yardclock.app.lane.Troubles;
import yardclock.app.metrics.Meters;
import yardclock.app.records.DaySheet;
import yardclock.app.records.RecordsOffice;
import yardclock.app.stations.StationLink;
import yardclock.app.web.Documents;
import yardclock.app.web.Doors;
import yardclock.app.web.DossierForm;
import yardclock.app.web.GatewayState;
import yardclock.app.web.OwnCandidate;
import yardclock.app.web.WebPorts;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;

import java.io.InputStream;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.function.Supplier;

/** Joins access, records, metrics and the lane to what the HTTP side asks for. */
record WebParts(
        Lane lane,
        Feed feed,
        Troubles troubles,
        GatewayClock clock,
        Day day,
        Meters meters,
        StationLink link,
        DossierProcess dossiers) {

    WebPorts ports() {
        return new WebPorts(
                lane,
                lane,
                feed,
                troubles,
                clock,
                doors(),
                documents(),
                this::state,
                meters::scrape,
                meters::rejected);
    }

    private Doors doors() {
        Doorkeeper keeper = new Doorkeeper(lane, rolls(), clock);
        return new Doors(keeper::holder, keeper::enrol, keeper::issue);
    }

    private Rolls rolls() {
        return new Rolls() {
            @Override
            public CompletionStage<Optional<Holder>> holder(String tokenSha256) {
                return lane.ask(engine -> engine.holder(tokenSha256));
            }

            @Override
            public CompletionStage<Optional<Role>> codeRole(String codeSha256) {
                return lane.ask(engine -> engine.codeRole(codeSha256));
            }
        };
    }

    private Documents documents() {
        RecordsOffice office =
                new RecordsOffice(() -> lane.ask(this::sheet), ZoneId.systemDefault());
        return new Documents(
                () -> Optional.of(day.plan()),
                office::resultsJson,
                office::resultsCsv,
                (number, holder) -> telling(office, number, holder),
                this::dossier);
    }

    /** The number is looked up before anything is begun; what fails later is no unknown number. */
    private CompletionStage<Answer<Supplier<Optional<InputStream>>>> dossier(
            int number, DossierForm form) {
        return lane.ask(engine -> engine.attempts().stream().anyMatch(a -> a.number() == number))
                .thenApply(
                        known ->
                                known
                                        ? Answer.of(() -> dossiers.make(number, form))
                                        : Answer.refused(Refusal.UNKNOWN_NUMBER));
    }

    private CompletionStage<Answer<Supplier<String>>> telling(
            RecordsOffice office, int number, Holder holder) {
        return lane.ask(engine -> OwnCandidate.maySee(engine, now(), holder, number))
                .thenCompose(
                        may ->
                                may
                                        ? office.telling(number)
                                        : CompletableFuture.completedFuture(
                                                Answer.refused(Refusal.NOT_YOUR_CANDIDATE)));
    }

    private View now() {
        return new View(clock.now().micros(), troubles.words());
    }

    private Optional<DaySheet> sheet(Engine engine) {
        return Optional.of(
                new DaySheet(
                        day.plan(),
                        engine.results(),
                        engine.board(now()).head().heat(),
                        engine.bench(now()).proof().signed(),
                        clock.wall().epochMicros()));
    }

    private CompletionStage<GatewayState> state(boolean withDigest) {
        return withDigest
                ? lane.ask(engine -> state(engine.digest()))
                : CompletableFuture.completedFuture(state(null));
    }

    private GatewayState state(String digest) {
        long entries = lane.entries();
        return new GatewayState(
                digest,
                entries,
                entries,
                clock.speed(),
                link.isUp() ? "up" : "down",
                troubles.of("journal"));
    }
}
