package org.fizzhull.decide;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.recipe.Part;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;

/** What a change must keep to, whatever it gains. */
final class Limits {
    /** A piece that held with at least this chance must go on to. */
    private static final double HOLDS = 0.5;

    /** Below this gain or loss a chance or a share has not moved. */
    private static final double SAME = 0.01;

    private Limits() {}

    /** Whether a change keeps to all limits. */
    static boolean kept(Design before, Appraisal now, Change change) {
        boolean held = now.holds().orElse(0) >= HOLDS;
        if (held && change.appraisal().holds().orElse(1) < HOLDS) {
            return false;
        }
        if (before.recipe().isEmpty() || change.design().recipe().isEmpty()) {
            return true;
        }
        Recipe old = before.recipe().get();
        Recipe mix = change.design().recipe().get();
        return share(mix, Role.FRAGRANCE) <= share(old, Role.FRAGRANCE) * (1 + SAME) && withinOwnLimits(mix);
    }

    private static double share(Recipe recipe, Role role) {
        double mass = 0;
        for (Part part : recipe.wet()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        for (Part part : recipe.dry()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        return mass / recipe.mass();
    }

    private static boolean withinOwnLimits(Recipe recipe) {
        for (Map.Entry<String, Double> limit : recipe.limits().entrySet()) {
            Optional<Part> part = recipe.part(limit.getKey());
            if (part.isPresent() && part.get().mass() / recipe.mass() > limit.getValue() * (1 + SAME)) {
                return false;
            }
        }
        return true;
    }

    /** What to mind with a change, the gravest first. */
    static Optional<Change.Caution> caution(List<Step> steps, Appraisal now, Appraisal then) {
        for (Step step : steps) {
            if (step.kind() == Step.Kind.POWDER && rises(step) && step.subject().equals("slsa")) {
                return Optional.of(Change.Caution.FOAMING_POWDER);
            }
            if (step.kind() == Step.Kind.POWDER && rises(step) && step.subject().equals("citric acid")) {
                return Optional.of(Change.Caution.ACID_DUST);
            }
        }
        if (then.holds().orElse(1) < now.holds().orElse(1) - 10 * SAME) {
            return Optional.of(Change.Caution.MAY_CRUMBLE);
        }
        for (Step step : steps) {
            boolean mix =
                    step.kind() == Step.Kind.POWDER || step.kind() == Step.Kind.SWAP || step.kind() == Step.Kind.LIQUID;
            if (mix) {
                return Optional.of(Change.Caution.LABEL);
            }
        }
        return Optional.empty();
    }

    private static boolean rises(Step step) {
        return step.from() instanceof Step.Setting.Amount from
                && step.to() instanceof Step.Setting.Amount to
                && to.si() > from.si();
    }
}
