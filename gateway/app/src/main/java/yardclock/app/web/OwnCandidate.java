package yardclock.app.web;

import yardclock.core.board.PostFrame;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;
import yardclock.core.ruling.Devices.Holder;
import yardclock.core.ruling.Role;

/** Whose result someone may see: a proctor's, only that of the candidate on their own page. */
public final class OwnCandidate {
    private OwnCandidate() {}

    /** Whether this person may see this number's result now; asked on the lane's thread. */
    public static boolean maySee(Engine engine, View view, Holder holder, int number) {
        if (holder.role() != Role.PROCTOR) {
            return true;
        }
        PostFrame.Candidate own = engine.post(view, holder.device()).candidate();
        return own != null && own.number() == number;
    }
}
