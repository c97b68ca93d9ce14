package yardclock.app.web;

import io.javalin.http.Context;

import yardclock.app.lane.Answer;
import yardclock.app.lane.Inbox.Receipt;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;
import yardclock.core.run.Ruling;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * Takes rulings from tablets and answers each after its commit, with what the rules said.
 *
 * <p>An answer that does not come in time leaves open whether the ruling was kept; sending it again
 * with the same key is always right.
 */
final class RulingDesk {
    private final Commits commits;
    private final Bodies bodies;
    private final Refusals refusals;

    RulingDesk(Commits commits, Bodies bodies, Refusals refusals) {
        this.commits = commits;
        this.bodies = bodies;
        this.refusals = refusals;
    }

    /** The answer to an accepted ruling. */
    record Accepted(boolean accepted, long entry) {}

    /** The refused side of a conflict, as the gateway had it. */
    record Mine(Act act, String device, long deviceMicros, long supersedes) {
        static Mine of(Input.Ruling ruling) {
            return new Mine(
                    ruling.act(), ruling.device(), ruling.deviceMicros(), ruling.supersedes());
        }
    }

    /**
     * The ruling that stands.
     *
     * @param state what it made of the split; empty when it decided none
     */
    record Standing(
            long entry,
            String act,
            String reason,
            String words,
            String state,
            String person,
            String role,
            String device,
            long atMicros) {
        static Standing of(Ruling ruling) {
            return new Standing(
                    ruling.entry(),
                    ruling.act(),
                    ruling.what().reason(),
                    ruling.what().words(),
                    ruling.state() == null ? "" : ruling.state().word(),
                    ruling.by().person(),
                    ruling.by().role(),
                    ruling.by().device(),
                    ruling.by().atMicros());
        }
    }

    void take(Context request) throws IOException {
        Optional<Bodies.Body> body = bodies.read(request);
        if (body.isPresent()) {
            Answer<Input.Ruling> ruling = read(body.get(), Gate.theHolder(request));
            if (ruling.isRefused()) {
                refusals.refuse(request, ruling);
            } else {
                rule(request, ruling.value());
            }
        }
    }

    private static Answer<Input.Ruling> read(Bodies.Body body, Holder holder) {
        Fields fields = new Fields(body.json());
        String key = fields.text("key", WebLimits.ID_CHARS);
        String boot = fields.optionalText("boot", WebLimits.ID_CHARS);
        long deviceMicros = fields.whole("deviceMicros", 0, WebLimits.EXACT_MAX);
        long basis = fields.whole("basis", -1, WebLimits.EXACT_MAX);
        long supersedes = fields.optionalWhole("supersedes", WebLimits.EXACT_MAX);
        List<Long> shown = fields.optionalWholes("shownMicros", WebLimits.SHOWN_MAX);
        Answer<Act> act = ActReader.read(fields.object("act"));
        if (!fields.wrong().isEmpty()) {
            return Answer.refused(WebRefusal.MALFORMED.reason(), fields.wrong());
        }
        if (act.isRefused()) {
            return Answer.refused(act.refused(), act.words());
        }
        if (!act.value().kind().allows(holder.role())) {
            return Answer.refused(Refusal.NOT_YOUR_ROLE);
        }
        return Answer.of(
                new Input.Ruling(
                        key,
                        holder.device(),
                        boot,
                        deviceMicros,
                        body.receivedMicros(),
                        basis,
                        supersedes,
                        shown,
                        act.value()));
    }

    private void rule(Context request, Input.Ruling ruling) {
        commits.keep(request, ruling)
                .ifPresent(receipt -> answer(request, ruling, verdict(receipt)));
    }

    private static Verdict verdict(Receipt receipt) {
        return receipt.outcomes().isEmpty() ? null : receipt.outcomes().get(0).verdict();
    }

    private void answer(Context request, Input.Ruling ruling, Verdict verdict) {
        if (verdict == null) {
            refusals.refuse(request, WebRefusal.ONLY_COLLECTED);
        } else if (verdict.isAccepted()) {
            Replies.json(request, new Accepted(true, verdict.entry()));
        } else if (verdict.standing() != null) {
            Standing standing = Standing.of(verdict.standing());
            refusals.conflict(request, verdict.refusal(), Mine.of(ruling), standing);
        } else if (!verdict.named().isEmpty()) {
            refusals.naming(request, verdict.refusal(), verdict.named());
        } else {
            refusals.refuse(request, verdict.refusal());
        }
    }
}
