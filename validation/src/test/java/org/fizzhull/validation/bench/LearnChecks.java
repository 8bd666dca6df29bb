package org.fizzhull.validation.bench;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.learn.Learned;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Learning a bench: the fit against certified values, and what is learned against truths that were drawn from the priors. */
public final class LearnChecks extends Bindings {
    /** Binds them. */
    public LearnChecks() {
        super("learn");
        bind(
                "certified-fit",
                in -> CertifiedFits.valueOf(in.word("data").toUpperCase(Locale.ROOT))
                        .found(in.word("of")));
        Map<Integer, LearnedTruths> runs = new HashMap<>();
        bind("learned-ranks", in -> truths(runs, in).ranks(input(in)) <= in.number("at_most") ? 1 : 0);
        bind("learned-inside", in -> truths(runs, in).inside());
    }

    private static LearnedTruths truths(Map<Integer, LearnedTruths> runs, Inputs in) {
        return runs.computeIfAbsent((int) in.number("benches"), LearnedTruths::new);
    }

    private static Input input(Inputs in) {
        return Learned.Draws.named(in.word("of"));
    }
}
