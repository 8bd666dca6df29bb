package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Design;

/**
 * A proposal: one step or two, and what comes of them. Immutable.
 *
 * @param steps what is done, one or two, in order
 * @param design the changed design
 * @param effort how much of a nuisance it is, on the scale of {@link Adjustment#effort}; only the order counts
 * @param appraisal how the changed design does, asked anew with all draws
 * @param reachesGoal whether its chance is that of the goal or more
 * @param caution the gravest thing to mind; empty for nothing beyond the usual
 */
public record Change(
        List<Step> steps,
        Design design,
        double effort,
        Appraisal appraisal,
        boolean reachesGoal,
        Optional<Caution> caution) {
    /**
     * Copies the list.
     *
     * @param steps what is done, one or two, in order
     * @param design the changed design
     * @param effort how much of a nuisance it is; only the order counts
     * @param appraisal how the changed design does, asked anew with all draws
     * @param reachesGoal whether its chance is that of the goal or more
     * @param caution the gravest thing to mind; empty for nothing beyond the usual
     */
    public Change {
        steps = List.copyOf(steps);
    }

    /** What to mind with a change. */
    public enum Caution {
        /** Foaming powder: its dust irritates, and it makes the bath slippery. */
        FOAMING_POWDER("Its dust irritates: wear a mask; the bath becomes slippery"),
        /** Acid: its dust irritates eyes and airways. */
        ACID_DUST("Its dust irritates eyes and airways: wear a mask and goggles"),
        /** It may crumble with less liquid or a lighter press. */
        MAY_CRUMBLE("It may crumble: press one and look"),
        /** The label names what is in it: a changed mix needs a changed label, and local rules may ask for more. */
        LABEL("The label changes with the mix");

        /** The caution for people, without its full stop. */
        private final String words;

        Caution(String words) {
            this.words = words;
        }

        /** {@return the caution for people, without its full stop} */
        public String words() {
            return words;
        }
    }
}
