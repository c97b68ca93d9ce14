package yardclock.app.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.InputKind;

/** Inputs as the text that stands in a row, and back. */
final class Bodies {
    private Bodies() {}

    static String write(Input input) {
        try {
            return Json.mapper().writeValueAsString(input);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an input must have a JSON form: " + input, e);
        }
    }

    static Entry read(Row row) throws JournalRefusedException {
        try {
            Input input = Json.mapper().readValue(row.body(), type(InputKind.of(row.kind())));
            return new Entry(row.entry(), row.gatewayMicros(), input);
        } catch (JsonProcessingException | IllegalArgumentException e) {
            throw new JournalRefusedException(
                    "Entry " + row.entry() + " can't be read by this version: " + e.getMessage(),
                    e);
        }
    }

    /** The fields of a row's input as they stand there, whatever the kind. */
    static ObjectNode fields(Row row) throws JournalRefusedException {
        try {
            return (ObjectNode) Json.mapper().readTree(row.body());
        } catch (JsonProcessingException | ClassCastException e) {
            throw new JournalRefusedException(
                    "Entry " + row.entry() + " holds no object: " + e.getMessage(), e);
        }
    }

    // A switch over every kind, so that a new kind of input is remembered here.
    private static Class<? extends Input> type(InputKind kind) {
        return switch (kind) {
            case EPOCH -> Input.Epoch.class;
            case WALL_STEPPED -> Input.WallStepped.class;
            case PLAN -> Input.PlanFrozen.class;
            case ROSTER -> Input.RosterFrozen.class;
            case EDGE -> Input.Edge.class;
            case HEALTH -> Input.Health.class;
            case UNIT_DOWN -> Input.UnitDown.class;
            case EXCHANGE -> Input.ExchangeAnswered.class;
            case ANSWER_REFUSED -> Input.AnswerRefused.class;
            case TABLET_EXCHANGE -> Input.TabletExchange.class;
            case CLIMATE -> Input.Climate.class;
            case CODE -> Input.CodeIssued.class;
            case ENROLMENT -> Input.Enrolled.class;
            case RULING -> Input.Ruling.class;
            case SETTINGS_APPLIED -> Input.SettingsApplied.class;
            case DEADLINE -> Input.Deadline.class;
        };
    }
}
