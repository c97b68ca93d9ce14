package yardclock.core.engine;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.intake.AnswerRefusal;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;

import java.util.List;

/**
 * Everything that can reach the engine. Inputs are raw: what a unit or a person said, unjudged.
 * They are journalled first and applied after; the journal's rows are exactly these records.
 *
 * <p>The frequent ones write their text themselves, letter for letter as any record does: it is
 * digested with every entry, and a record's own way of writing it parses a format each time.
 *
 * <p>Ticks are microseconds since a unit's boot; names ending in {@code Micros} are microseconds of
 * gateway time unless they say otherwise. Ids are strings, nothing is a fraction.
 */
public sealed interface Input {
    InputKind kind();

    /**
     * The gateway started. Gateway time goes on unbroken over a restart on the same boot of the
     * same machine; otherwise {@code continuous} is false and a new time line begins, not before
     * the last entry's time. How far it is ahead of the old one only field units and tablets that
     * ran on can say.
     *
     * @param wallMicros the wall clock at this entry's gateway time
     * @param speed exam time per real time: 1 outside demonstrations
     * @param monotonicMicros the machine's monotonic clock at this entry's gateway time
     */
    record Epoch(
            String machineBoot,
            String process,
            long wallMicros,
            long monotonicMicros,
            int speed,
            boolean continuous,
            String rulesVersion)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.EPOCH;
        }
    }

    /**
     * Somebody or something set the machine's wall clock. What is shown as time of day changes from
     * here on; no elapsed time does.
     *
     * @param atMicros gateway time at which the wall clock was read
     * @param wallMicros what it read
     * @param stepMicros how far it was set forward; below zero, back
     */
    record WallStepped(long atMicros, long wallMicros, long stepMicros) implements Input {
        @Override
        public InputKind kind() {
            return InputKind.WALL_STEPPED;
        }
    }

    /** The exam plan was loaded and frozen for the day. */
    record PlanFrozen(ExamPlan plan, String sha256) implements Input {
        @Override
        public InputKind kind() {
            return InputKind.PLAN;
        }
    }

    /** The roster was loaded, in its order. */
    record RosterFrozen(List<RosterLine> lines, String sha256) implements Input {
        public RosterFrozen {
            lines = List.copyOf(lines);
        }

        @Override
        public InputKind kind() {
            return InputKind.ROSTER;
        }
    }

    /** One raw change of a sensor. */
    record Edge(String unit, String boot, long seq, int sensor, int state, long tick)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.EDGE;
        }

        @Override
        public String toString() {
            return "Edge[unit="
                    + unit
                    + ", boot="
                    + boot
                    + ", seq="
                    + seq
                    + ", sensor="
                    + sensor
                    + ", state="
                    + state
                    + ", tick="
                    + tick
                    + ']';
        }
    }

    /**
     * A field unit's sign of life.
     *
     * @param nextSeq the sequence number its next edge will have
     * @param sensorStates the present state of sensors 1–8, in order; −1 where none is wired
     * @param accessPoint the access point its radio is at; empty on a wire, from a unit that does
     *     not say, and in journals from before units could say
     */
    record Health(
            String unit,
            String boot,
            long tick,
            long nextSeq,
            int batteryMillivolts,
            int rssiDbm,
            int bufferFill,
            long lowestFreeMemory,
            String firmware,
            int contract,
            List<Integer> sensorStates,
            String accessPoint)
            implements Input {
        public Health {
            accessPoint = accessPoint == null ? "" : accessPoint;
            sensorStates = List.copyOf(sensorStates);
        }

        @Override
        public InputKind kind() {
            return InputKind.HEALTH;
        }

        @Override
        public String toString() {
            return "Health[unit="
                    + unit
                    + ", boot="
                    + boot
                    + ", tick="
                    + tick
                    + ", nextSeq="
                    + nextSeq
                    + ", batteryMillivolts="
                    + batteryMillivolts
                    + ", rssiDbm="
                    + rssiDbm
                    + ", bufferFill="
                    + bufferFill
                    + ", lowestFreeMemory="
                    + lowestFreeMemory
                    + ", firmware="
                    + firmware
                    + ", contract="
                    + contract
                    + ", sensorStates="
                    + sensorStates
                    + ", accessPoint="
                    + accessPoint
                    + ']';
        }
    }

    /** The broker delivered a unit's last will. */
    record UnitDown(String unit) implements Input {
        @Override
        public InputKind kind() {
            return InputKind.UNIT_DOWN;
        }
    }

    /** A unit answered a clock exchange. */
    record ExchangeAnswered(
            String unit,
            String boot,
            String id,
            long gatewaySentMicros,
            long unitReceivedTick,
            long unitSentTick,
            long gatewayReceivedMicros)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.EXCHANGE;
        }

        @Override
        public String toString() {
            return "ExchangeAnswered[unit="
                    + unit
                    + ", boot="
                    + boot
                    + ", id="
                    + id
                    + ", gatewaySentMicros="
                    + gatewaySentMicros
                    + ", unitReceivedTick="
                    + unitReceivedTick
                    + ", unitSentTick="
                    + unitSentTick
                    + ", gatewayReceivedMicros="
                    + gatewayReceivedMicros
                    + ']';
        }
    }

    /**
     * A unit's answers to clock exchanges that could not be one half of an exchange.
     *
     * @param id the newest one's id, as the unit sent it
     * @param count how many for this reason since the last such entry of the unit, at least 1
     */
    record AnswerRefused(String unit, String boot, String id, AnswerRefusal why, long count)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.ANSWER_REFUSED;
        }
    }

    /**
     * A tablet answered a clock exchange. Its ticks are microseconds of exam time since the boot:
     * since its page was loaded, came back into view, or found that its clock had jumped.
     */
    record TabletExchange(
            String device,
            String boot,
            String id,
            long gatewaySentMicros,
            long tabletReceivedTick,
            long tabletSentTick,
            long gatewayReceivedMicros)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.TABLET_EXCHANGE;
        }

        @Override
        public String toString() {
            return "TabletExchange[device="
                    + device
                    + ", boot="
                    + boot
                    + ", id="
                    + id
                    + ", gatewaySentMicros="
                    + gatewaySentMicros
                    + ", tabletReceivedTick="
                    + tabletReceivedTick
                    + ", tabletSentTick="
                    + tabletSentTick
                    + ", gatewayReceivedMicros="
                    + gatewayReceivedMicros
                    + ']';
        }
    }

    /**
     * A climate reading; absent quantities are null.
     *
     * @param boot which start of the unit {@code tick} counts from; empty from a unit that does not
     *     say, and in journals from before units could say
     */
    record Climate(
            String source,
            int centiCelsius,
            int centiPercent,
            Integer globeCentiCelsius,
            Integer windMillimetresPerSecond,
            Integer solarWattsPerSquareMetre,
            long tick,
            String boot)
            implements Input {
        public Climate {
            boot = boot == null ? "" : boot;
        }

        /** A reading of a unit that does not say since when its tick counts. */
        public Climate(
                String source,
                int centiCelsius,
                int centiPercent,
                Integer globeCentiCelsius,
                Integer windMillimetresPerSecond,
                Integer solarWattsPerSquareMetre,
                long tick) {
            this(
                    source,
                    centiCelsius,
                    centiPercent,
                    globeCentiCelsius,
                    windMillimetresPerSecond,
                    solarWattsPerSquareMetre,
                    tick,
                    "");
        }

        @Override
        public InputKind kind() {
            return InputKind.CLIMATE;
        }
    }

    /**
     * A one-time code was made. Only its hash is kept.
     *
     * @param issuer the device that asked for it, or empty for the gateway's own first codes
     */
    record CodeIssued(String codeSha256, Role role, String issuer) implements Input {
        @Override
        public InputKind kind() {
            return InputKind.CODE;
        }
    }

    /** A device used a code and carries a token from now on. Only the hashes are kept. */
    record Enrolled(String device, String person, Role role, String codeSha256, String tokenSha256)
            implements Input {
        @Override
        public InputKind kind() {
            return InputKind.ENROLMENT;
        }
    }

    /**
     * A person's decision, or a tap.
     *
     * @param key the tablet's idempotency key; the same key again changes nothing and gives the
     *     first answer
     * @param boot which start of the tablet's clock {@code deviceMicros} counts from; empty when it
     *     has none, and in journals of before tablets' clocks were compared
     * @param deviceMicros the tablet's own clock at the press, or 0 when it has none
     * @param receivedMicros gateway time when the request's last byte was in
     * @param basis the revision of the attempt that was on the screen, or −1
     * @param supersedes the entry of the ruling that stood on this split as shown, −1 when none
     *     did, and in journals of before rulings could be superseded
     * @param shownMicros the split that was on the screen, all its readings, best first
     */
    record Ruling(
            String key,
            String device,
            String boot,
            long deviceMicros,
            long receivedMicros,
            long basis,
            Long supersedes,
            List<Long> shownMicros,
            Act act)
            implements Input {
        public Ruling {
            boot = boot == null ? "" : boot;
            supersedes = supersedes == null ? Long.valueOf(-1) : supersedes;
            shownMicros = shownMicros == null ? List.of() : List.copyOf(shownMicros);
        }

        /** A ruling that supersedes none and says nothing of a split that was shown. */
        public Ruling(
                String key,
                String device,
                String boot,
                long deviceMicros,
                long receivedMicros,
                long basis,
                Act act) {
            this(key, device, boot, deviceMicros, receivedMicros, basis, -1L, List.of(), act);
        }

        @Override
        public InputKind kind() {
            return InputKind.RULING;
        }
    }

    /** A unit reports which settings are in force. */
    record SettingsApplied(String unit, int version, String refused) implements Input {
        @Override
        public InputKind kind() {
            return InputKind.SETTINGS_APPLIED;
        }
    }

    /** The earliest deadline the engine had named has passed. */
    record Deadline() implements Input {
        @Override
        public InputKind kind() {
            return InputKind.DEADLINE;
        }
    }
}
