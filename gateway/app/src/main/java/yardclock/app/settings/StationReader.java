package yardclock.app.settings;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.Criterion;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.DayRules.StartKind;
import yardclock.core.course.Station;
import yardclock.core.course.StationTiming;
import yardclock.core.course.Trigger;
import yardclock.core.readiness.Surfaces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the stations in the order of the course. */
final class StationReader {
    private static final List<String> TAKEN = List.of("start", "finish");

    private final ContactReader contacts;
    private final TriggerReader triggers;

    /** What a note of the ground can be about beside a station. */
    private static final Set<String> SPOTS = Set.of(Surfaces.YARD, Surfaces.CLIMB);

    StationReader(Wiring wiring, StartKind startKind) {
        this.contacts = new ContactReader(wiring);
        this.triggers = new TriggerReader(wiring, contacts, startKind);
    }

    List<Station> read(Block plan) {
        UniqueNames ids = new UniqueNames();
        List<Station> stations = new ArrayList<>();
        for (Block block : plan.blocks("stations", "station", PlanLimits.STATIONS)) {
            Station station = station(block, stations.isEmpty());
            ids.add(block, "id", station.id());
            if (SPOTS.contains(station.id())) {
                block.wrong(
                        "id", "yard and climb are taken: notes of the ground name them", "another");
            }
            stations.add(station);
        }
        return stations;
    }

    private Station station(Block block, boolean isFirst) {
        String id = block.id("id");
        StationTiming timing = timing(block.block("timing", "stationTiming"));
        TriggerReader.Role startRole =
                isFirst ? TriggerReader.Role.FIRST_START : TriggerReader.Role.START;
        Trigger start = triggers.read(block.block("start", "trigger"), startRole, List.of());
        List<String> seen = new ArrayList<>();
        List<Checkpoint> checkpoints = checkpoints(block, seen);
        Block finishBlock = block.block("finish", "trigger");
        Trigger finish = triggers.read(finishBlock, TriggerReader.Role.FINISH, seen);
        Station station =
                new Station(
                        id,
                        block.text("name", PlanLimits.NAME),
                        block.text("task", PlanLimits.WORDS),
                        timing,
                        start,
                        checkpoints,
                        finish,
                        criteria(block),
                        contacts.home(
                                block.blocks("homeContacts", "contact", PlanLimits.HOME_CONTACTS)));
        block.close();
        return station;
    }

    private static StationTiming timing(Block block) {
        StationTiming timing =
                new StationTiming(
                        block.time("median", PlanLimits.MEDIAN),
                        block.time("shortest", PlanLimits.PLAUSIBLE),
                        block.time("longest", PlanLimits.PLAUSIBLE),
                        block.time("reset", PlanLimits.RESET),
                        block.time("walkToNext", PlanLimits.WALK));
        long median = timing.medianMicros();
        if (median > 0 && timing.shortestPlausibleMicros() > median) {
            block.wrong(
                    "shortest",
                    "this is longer than the median",
                    "at most " + Durations.text(median));
        }
        if (timing.longestPlausibleMicros() > 0 && timing.longestPlausibleMicros() < median) {
            block.wrong(
                    "longest",
                    "this is shorter than the median",
                    "at least " + Durations.text(median));
        }
        block.close();
        return timing;
    }

    /** Reads the checkpoints and adds their ids, in order, to those later triggers may name. */
    private List<Checkpoint> checkpoints(Block station, List<String> seen) {
        UniqueNames ids = new UniqueNames();
        List<Checkpoint> checkpoints = new ArrayList<>();
        for (Block block : station.blocks("checkpoints", "checkpoint", PlanLimits.CHECKPOINTS)) {
            String id = block.id("id");
            ids.add(block, "id", id);
            if (TAKEN.contains(id)) {
                block.wrong("id", "start and finish are taken", Value.ID_FORM);
            }
            checkpoints.add(checkpoint(block, id, seen));
            seen.add(id);
            block.close();
        }
        return checkpoints;
    }

    private Checkpoint checkpoint(Block block, String id, List<String> seen) {
        int count = (int) block.count("count", PlanLimits.TIMES_SEEN, 1);
        Block place = block.block("trigger", "trigger");
        Trigger trigger = triggers.read(place, TriggerReader.Role.CHECKPOINT, seen);
        int contacts = trigger.contacts().size();
        if (trigger.combination() == Combination.ANY_OF && contacts > 0 && count > contacts) {
            String wrong = "any-of counts each of its contacts once, and there are " + contacts;
            block.wrong("count", wrong, "1 to " + contacts);
        }
        return new Checkpoint(id, block.text("name", PlanLimits.NAME), count, trigger);
    }

    private static List<Criterion> criteria(Block station) {
        UniqueNames ids = new UniqueNames();
        List<Criterion> criteria = new ArrayList<>();
        for (Block block : station.blocks("criteria", "criterion", PlanLimits.CRITERIA)) {
            String id = block.id("id");
            ids.add(block, "id", id);
            Optional<CriterionKind> kind = block.word("kind", CriterionKind.class);
            int warnings = (int) block.count("warnings", PlanLimits.WARNINGS, 0);
            if (warnings > 0 && kind.isPresent() && kind.get() != CriterionKind.PROHIBITED) {
                block.wrong("warnings", "only a prohibited act can have warnings", "leave it out");
            }
            criteria.add(
                    new Criterion(
                            id,
                            kind.orElse(CriterionKind.ADVISED),
                            block.text("words", PlanLimits.WORDS),
                            warnings));
            block.close();
        }
        return criteria;
    }
}
