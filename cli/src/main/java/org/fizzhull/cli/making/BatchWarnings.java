package org.fizzhull.cli.making;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.evidence.Notice;
import org.fizzhull.pressing.Pressed;

/** How the pieces of a batch come out of the mould, where that is in doubt. */
final class BatchWarnings {
    /** Below this chance to hold, one piece is pressed before the rest is weighed in. */
    private static final double SURE = 0.9;

    private BatchWarnings() {}

    /** What of the piece a maker must know before weighing in; that a mix does not fizz stands in the first sentence. */
    static List<Notice> of(BatchPlan plan) {
        double dry = plan.pressed().blend().dryMass();
        return of(
                plan,
                " For " + NumberText.grams(dry) + " of powder: "
                        + PressText.liquid(
                                plan.pressed().window(), dry, plan.dried().isPresent()) + '.');
    }

    /** The same without how much liquid holds. */
    static List<Notice> brief(BatchPlan plan) {
        return of(plan, "");
    }

    private static List<Notice> of(BatchPlan plan, String liquid) {
        List<Notice> warnings = new ArrayList<>();
        Pressed.Feel feel = plan.piece().likeliest();
        double holds = plan.piece().feel().getOrDefault(Pressed.Feel.HOLDS, 0.0);
        if (feel != Pressed.Feel.HOLDS) {
            warnings.add(new Notice(
                    feel == Pressed.Feel.CRUMBLES ? "crumbles" : "too-wet",
                    (feel == Pressed.Feel.CRUMBLES
                                    ? "Pressed so, a piece will more likely crumble than hold."
                                    : "This mix is more likely too wet than right.")
                            + liquid));
        } else if (holds < SURE) {
            warnings.add(new Notice(
                    "trial-first",
                    "Whether this mix holds is not sure: " + NumberText.ofHundred(holds)
                            + " of 100 such mixes do. Press one piece of a small mix before you weigh in the rest."
                            + liquid));
        }
        return warnings;
    }

    /** All that the reader must know. */
    static List<Notice> all(BatchPlan plan) {
        return plan.notices(of(plan));
    }
}
