package yardclock.app.settings;

import yardclock.core.course.CheckItem;
import yardclock.core.course.Condition;
import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.HeatRules;
import yardclock.core.course.PlanName;
import yardclock.core.course.Station;
import yardclock.core.course.SurfaceRules;
import yardclock.core.course.TimingRules;

import java.util.ArrayList;
import java.util.List;

/** Reads the plan's outermost block: its name and rules, then field units, then stations. */
final class PlanReader {
    private PlanReader() {}

    static ExamPlan read(Block plan) {
        plan.count("format", PlanLimits.FORMAT);
        PlanName name =
                new PlanName(
                        plan.id("id"),
                        (int) plan.count("version", PlanLimits.VERSION),
                        plan.text("title", PlanLimits.PLACE_NAME),
                        plan.sentence("department", PlanLimits.PLACE_NAME),
                        plan.sentence("yard", PlanLimits.PLACE_NAME));
        Block rules = plan.block("timing", "timing");
        TimingRules timing = RulesReader.timing(rules);
        DayRules day = RulesReader.day(plan.block("day", "day"));
        HeatRules heat = HeatReader.read(plan);
        List<CheckItem> startOfDay = startOfDay(plan);
        SurfaceRules surfaces = surfaces(plan);
        Wiring wiring = new Wiring();
        List<FieldUnit> units = new UnitReader(wiring).read(plan);
        List<Station> stations = new StationReader(wiring, day.startKind()).read(plan);
        checkCutOff(rules, timing, stations);
        plan.close();
        return new ExamPlan(name, timing, day, stations, units, heat, startOfDay, surfaces);
    }

    /** What noted conditions do; a plan may say nothing of it, and all is advice then. */
    private static SurfaceRules surfaces(Block plan) {
        if (!plan.has("surfaces")) {
            return SurfaceRules.ADVISORY;
        }
        Block block = plan.block("surfaces", "surfaces");
        List<Condition> holding = block.words("holdStation", Condition.class);
        if (holding.contains(Condition.DRY)) {
            block.wrong("holdStation", "a dry station is never held", "wet, ice, glare, gust");
        }
        block.close();
        return new SurfaceRules(holding);
    }

    /** The checklist of the start of the day; a plan may have none. */
    private static List<CheckItem> startOfDay(Block plan) {
        List<CheckItem> items = new ArrayList<>();
        if (!plan.has("startOfDay")) {
            return items;
        }
        UniqueNames ids = new UniqueNames();
        for (Block block : plan.blocks("startOfDay", "checkItem", PlanLimits.CHECK_ITEMS)) {
            CheckItem item = new CheckItem(block.id("id"), block.text("words", PlanLimits.WORDS));
            ids.add(block, "id", item.id());
            items.add(item);
            block.close();
        }
        return items;
    }

    /** Nobody could pass a course whose shortest plausible splits together exceed the cut-off. */
    private static void checkCutOff(Block rules, TimingRules timing, List<Station> stations) {
        long shortest =
                stations.stream().mapToLong(s -> s.timing().shortestPlausibleMicros()).sum();
        if (timing.cutOffMicros() > 0 && timing.cutOffMicros() < shortest) {
            rules.wrong(
                    "cutOff",
                    "nobody could reach this: the shortest plausible times together are longer",
                    "at least " + Durations.text(shortest));
        }
    }
}
