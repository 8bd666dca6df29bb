package org.fizzhull.decide.advise;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;
import org.fizzhull.recipe.change.LimitedShare;

/**
 * What a change must keep to, whatever it gains, and what to mind with it. A judgement about making, and not about health or
 * law: fragrance and the supplier's limits are kept because they are the user's own numbers, and local rules decide.
 */
final class Limits {
    /** Chance to hold out of the mould from which a piece counts as holding: it must go on to. */
    private static final double HOLDS = 0.5;

    /** Relative change of a share, or a tenth of the change of a chance, up to which it has not moved. */
    private static final double SAME = 0.01;

    private Limits() {}

    /** The first limit that a change breaks; empty where it keeps to all. */
    static Optional<Advice.Limit> broken(Design before, Advice.Appraisal now, Change change) {
        // the piece must not begin to crumble
        boolean held = now.holds().orElse(0) >= HOLDS;
        if (held && change.appraisal().holds().orElse(1) < HOLDS) {
            return Optional.of(Advice.Limit.HOLDS);
        }
        if (before.recipe().isEmpty() || change.design().recipe().isEmpty()) {
            return Optional.empty();
        }
        // the mix must stay within what fragrance and the supplier allow
        Recipe old = before.recipe().get();
        Recipe mix = change.design().recipe().get();
        if (share(mix, Role.FRAGRANCE) > share(old, Role.FRAGRANCE) * (1 + SAME)) {
            return Optional.of(Advice.Limit.FRAGRANCE);
        }
        boolean kept = LimitedShare.of(mix).stream().allMatch(LimitedShare::kept);
        return kept ? Optional.empty() : Optional.of(Advice.Limit.SUPPLIER);
    }

    /** Share of a role in the damp mix, 0 to 1. */
    private static double share(Recipe recipe, Role role) {
        double mass = 0;
        for (Recipe.Part part : recipe.parts()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        return mass / recipe.mass();
    }

    /** What to mind with a change that leads to a design, the gravest first. */
    static Optional<Change.Caution> caution(
            List<Change.Step> steps, Design changed, Advice.Appraisal now, Advice.Appraisal then) {
        for (Change.Step step : steps) {
            // what can hurt comes first: dust of foaming powder and of acid
            Optional<Role> more = more(step, changed);
            if (more.equals(Optional.of(Role.SURFACTANT))) {
                return Optional.of(Change.Caution.FOAMING_POWDER);
            }
            if (more.equals(Optional.of(Role.ACID))) {
                return Optional.of(Change.Caution.ACID_DUST);
            }
        }
        // then a piece that holds less surely, by a tenth; then the label
        if (then.holds().orElse(1) < now.holds().orElse(1) - 10 * SAME) {
            return Optional.of(Change.Caution.MAY_CRUMBLE);
        }
        for (Change.Step step : steps) {
            boolean mix = step.kind() == Change.Step.Kind.POWDER
                    || step.kind() == Change.Step.Kind.SWAP
                    || step.kind() == Change.Step.Kind.LIQUID;
            if (mix) {
                return Optional.of(Change.Caution.LABEL);
            }
        }
        return Optional.empty();
    }

    /** What kind of powder a step puts in, or more of; empty for any other step. */
    private static Optional<Role> more(Change.Step step, Design changed) {
        if (step.kind() != Change.Step.Kind.POWDER || !rises(step)) {
            return Optional.empty();
        }
        return changed.recipe()
                .flatMap(mix -> mix.part(step.subject()))
                .map(part -> part.ingredient().role());
    }

    /** Whether a step puts more in. */
    private static boolean rises(Change.Step step) {
        return step.from() instanceof Change.Step.Setting.Amount from
                && step.to() instanceof Change.Step.Setting.Amount to
                && to.si() > from.si();
    }
}
