package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import yardclock.core.course.RosterLine;
import yardclock.core.intake.AnswerRefusal;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.List;

/** The digest: the same for the same entries, another for any other entry. */
class DigestTest {
    @Test
    void two_engines_that_took_the_same_entries_agree_at_every_entry() {
        Engine one = new Engine();
        Engine two = new Engine();
        for (Entry entry : journal()) {
            assertThat(two.apply(entry)).isEqualTo(one.apply(entry));
            assertThat(two.digest()).as("entry %d", entry.number()).isEqualTo(one.digest());
        }
        assertThat(one.digest()).matches("[0-9a-f]{64}");
    }

    @Test
    void asking_for_frames_results_and_digests_changes_nothing() {
        Engine asked = new Engine();
        Engine left = new Engine();
        for (Entry entry : journal()) {
            asked.apply(entry);
            left.apply(entry);
            if (asked.plan().isPresent()) {
                Engine.View view = new Engine.View(entry.gatewayMicros() + 77, List.of("disk"));
                asked.control(view);
                asked.post(view, "proctor1");
                asked.bench(view);
                asked.board(view);
                asked.results();
                asked.standing();
            }
            asked.digest();
        }
        assertThat(asked.digest()).isEqualTo(left.digest());
    }

    @ParameterizedTest
    @EnumSource(InputKind.class)
    void any_other_input_gives_another_digest(InputKind kind) {
        List<Entry> journal = journal();
        String digest = digestOf(journal);
        int changed = 0;
        for (int i = 0; i < journal.size(); i++) {
            Entry entry = journal.get(i);
            if (entry.input().kind() == kind && changed < 10) {
                List<Entry> other = new ArrayList<>(journal);
                other.set(
                        i, new Entry(entry.number(), entry.gatewayMicros(), other(entry.input())));
                assertThat(digestOf(other)).as("entry %s", entry).isNotEqualTo(digest);
                other.set(i, new Entry(entry.number(), entry.gatewayMicros() + 1, entry.input()));
                assertThat(digestOf(other)).as("later %s", entry).isNotEqualTo(digest);
                changed++;
            }
        }
        assertThat(changed).as("there is such an entry").isPositive();
    }

    private static Input other(Input input) {
        return switch (input.kind()) {
            case EPOCH -> {
                Input.Epoch e = (Input.Epoch) input;
                yield new Input.Epoch("m2", e.process(), e.wallMicros(), 0, 1, false, "1");
            }
            case WALL_STEPPED -> new Input.WallStepped(1, 2, 3);
            case PLAN -> new Input.PlanFrozen(((Input.PlanFrozen) input).plan(), "other-sha");
            case ROSTER -> new Input.RosterFrozen(List.of(new RosterLine(101, 7)), "roster-sha");
            case EDGE -> {
                Input.Edge e = (Input.Edge) input;
                yield new Input.Edge(
                        e.unit(), e.boot(), e.seq(), e.sensor(), e.state(), e.tick() + 1);
            }
            case HEALTH -> {
                Input.Health h = (Input.Health) input;
                yield new Input.Health(
                        h.unit(),
                        h.boot(),
                        h.tick(),
                        h.nextSeq(),
                        h.batteryMillivolts(),
                        h.rssiDbm(),
                        h.bufferFill(),
                        h.lowestFreeMemory() - 1,
                        h.firmware(),
                        h.contract(),
                        h.sensorStates(),
                        h.accessPoint());
            }
            case UNIT_DOWN -> new Input.UnitDown("u6");
            case ANSWER_REFUSED -> {
                Input.AnswerRefused r = (Input.AnswerRefused) input;
                yield new Input.AnswerRefused(r.unit(), r.boot(), r.id(), r.why(), r.count() + 1);
            }
            case EXCHANGE -> {
                Input.ExchangeAnswered x = (Input.ExchangeAnswered) input;
                yield new Input.ExchangeAnswered(
                        x.unit(),
                        x.boot(),
                        x.id() + "-other",
                        x.gatewaySentMicros(),
                        x.unitReceivedTick(),
                        x.unitSentTick(),
                        x.gatewayReceivedMicros());
            }
            case TABLET_EXCHANGE -> otherExchange((Input.TabletExchange) input);
            case CLIMATE -> new Input.Climate("u7", 2_501, 4_000, null, null, null, 5);
            case CODE -> new Input.CodeIssued("other-code", Role.CREW, "");
            case ENROLMENT -> new Input.Enrolled("d", "Someone", Role.CREW, "c", "t");
            case RULING -> {
                Input.Ruling r = (Input.Ruling) input;
                Act other = new Act.Note(0, "something else");
                yield new Input.Ruling(
                        r.key(), r.device(), r.boot(), 0, r.receivedMicros(), r.basis(), other);
            }
            case SETTINGS_APPLIED -> new Input.SettingsApplied("u1", 3, "sensor 4");
            case DEADLINE -> new Input.UnitDown("u9");
        };
    }

    private static Input otherExchange(Input.TabletExchange x) {
        return new Input.TabletExchange(
                x.device(),
                x.boot(),
                x.id(),
                x.gatewaySentMicros() - 1,
                x.tabletReceivedTick(),
                x.tabletSentTick(),
                x.gatewayReceivedMicros());
    }

    private static String digestOf(List<Entry> journal) {
        Engine engine = new Engine();
        journal.forEach(engine::apply);
        return engine.digest();
    }

    /** A short day with every kind of input. */
    private static List<Entry> journal() {
        Yard yard = Yard.open(new TestPlan().make());
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk").after(5);
        walk.station("drag");
        yard.health("u1");
        yard.take(new Input.UnitDown("u5"));
        yard.take(new Input.AnswerRefused("u1", "b", "x1", AnswerRefusal.LATE, 1));
        yard.take(new Input.WallStepped(1, 1_700_000_900_000_000L, 900_000_000L));
        yard.take(new Input.Climate("u7", 2_500, 4_000, null, null, null, 5));
        yard.take(new Input.SettingsApplied("u1", 3, ""));
        yard.ok("proctor1", new Act.Note(101, "wet grass"));
        yard.ok("proctor1", new Act.HoldCandidate(101, Reason.WEATHER, "rain"));
        yard.after(30);
        return yard.journal();
    }
}
