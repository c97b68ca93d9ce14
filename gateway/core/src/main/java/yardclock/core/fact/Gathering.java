package yardclock.core.fact;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the rules put what they conclude and ask for while one entry is applied. One a entry, used
 * by the lane's thread only.
 */
public final class Gathering {
    private final List<Fact> facts = new ArrayList<>();
    private final List<Effect> effects = new ArrayList<>();

    public void conclude(Fact fact) {
        facts.add(fact);
    }

    public void ask(Effect effect) {
        effects.add(effect);
    }

    public List<Fact> facts() {
        return facts;
    }

    public List<Effect> effects() {
        return effects;
    }
}
