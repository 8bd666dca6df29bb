package org.fizzhull.decide.advise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.decide.Design;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;
import org.fizzhull.shape.Shape;

/**
 * What a kitchen can change about a design, as {@link Adjustment}s:
 *
 * <ul>
 * <li>weight: less mix, a lighter press, or a lighter finished piece;
 * <li>mix: less of a liquid or a powder, starch in its place, more starch, foaming powder (sodium lauryl sulfoacetate) or acid;
 * <li>drying: days longer, drier air;
 * <li>mould: another size or kind; a hollow shape set down instead of dropped.
 * </ul>
 *
 * <p>Nothing that is locked is touched; fragrance, colour and foaming liquids are never put in, since their limits are a matter
 * of skin and law and not of floating.
 */
final class Adjustments {
    /** No powder that does not fizz goes in beyond this share of the powders. */
    private static final double MOST_FILLER = 0.3;

    /** Largest share of the powders that foaming powder may come to (common practice, no source). */
    private static final double MOST_FOAM = 0.1;

    /** Share of a liquid that may be taken out (assumed). */
    private static final double LEAST_LIQUID = 0.5;

    private final Design design;
    /** Table from which starch, foaming powder and acid are taken. */
    private final IngredientTable table;
    /** Names of ingredients that stay as they are. */
    private final Set<String> locked;
    /** Levers so far. */
    private final Adviser.KitchenSteps steps;

    private final double liquidGrams;
    private final double powderGrams;
    private final List<Adjustment> adjustments = new ArrayList<>();

    private Adjustments(Design design, IngredientTable table, Set<String> locked, Adviser.KitchenSteps steps) {
        this.design = design;
        this.table = table;
        this.locked = locked;
        this.steps = steps;
        liquidGrams = Units.inGrams(steps.weight());
        powderGrams = Units.inGrams(steps.powder());
    }

    /**
     * {@return all that can be changed about a design}
     *
     * @param design the design as it is
     * @param table table from which starch, foaming powder and acid are taken
     * @param locked names of ingredients that stay as they are
     * @param steps in which the kitchen changes things
     * @param ofItsMould whether what was measured tells of this mould alone: then no other is tried
     */
    static List<Adjustment> of(
            Design design, IngredientTable table, Set<String> locked, Adviser.KitchenSteps steps, boolean ofItsMould) {
        Adjustments all = new Adjustments(design, table, locked, steps);
        all.filling();
        all.mix();
        all.drying();
        all.mould(ofItsMould);
        all.adjustments.removeIf(adjustment -> adjustment.levels() < 1);
        return all.adjustments;
    }

    /** Less weight, or a lighter press. */
    private void filling() {
        if (design.filling() instanceof Design.Filling.Fill fill) {
            adjustments.add(new WeightAdjustment(fill.mass(), steps.weight()));
        } else if (design.filling() instanceof Design.Filling.Finished finished) {
            adjustments.add(new WeightAdjustment(finished.mass(), steps.weight()));
        } else if (design.filling() instanceof Design.Filling.Press press) {
            adjustments.add(new PressAdjustment(press.pressure()));
        }
    }

    /**
     * Less of a liquid or a powder, starch in its place, more starch, foaming powder or acid. A finished piece has no mix that could
     * still be changed.
     */
    private void mix() {
        if (design.recipe().isEmpty() || design.filling() instanceof Design.Filling.Finished) {
            return;
        }
        Recipe recipe = design.recipe().get();
        // liquids: less of each, to a half
        for (Recipe.Part part : recipe.wet()) {
            if (takesOut(part)) {
                int levels = (int) Math.min(10, LEAST_LIQUID * part.mass() * 1e3 / liquidGrams);
                adjustments.add(new PartAdjustment(
                        table, Change.Step.Kind.LIQUID, part.ingredient(), -liquidGrams, levels, Optional.empty(), 1));
            }
        }
        // powders: less of each, or starch in its place
        Ingredient starch = table.require("corn starch").ingredient();
        for (Recipe.Part part : recipe.dry()) {
            if (takesOut(part)) {
                int levels = (int) Math.ceil(part.mass() * 1e3 / powderGrams - 1e-9);
                adjustments.add(powder(part.ingredient(), -powderGrams, levels));
                if (!part.ingredient().name().equals(starch.name()) && free(starch.name())) {
                    adjustments.add(new PartAdjustment(
                            table,
                            Change.Step.Kind.SWAP,
                            part.ingredient(),
                            -powderGrams,
                            levels,
                            Optional.of(starch),
                            2));
                }
            }
        }
        // what may be put in
        more(recipe, starch, MOST_FILLER);
        more(recipe, table.require("slsa").ingredient(), MOST_FOAM);
        acid(recipe);
    }

    /** Whether a kitchen could do with less of it: not of what gives the gas, the scent, or keeps oil in the water. */
    private boolean takesOut(Recipe.Part part) {
        Role role = part.ingredient().role();
        boolean needed = role == Role.BICARBONATE
                || role == Role.CARBONATE
                || role == Role.ACID
                || role == Role.FRAGRANCE
                || role == Role.EMULSIFIER;
        return !needed && free(part.ingredient().name());
    }

    /** Whether an ingredient may be changed. */
    private boolean free(String name) {
        return !locked.contains(name);
    }

    /** More of a powder, up to a share of all powders. */
    private void more(Recipe recipe, Ingredient powder, double most) {
        if (!free(powder.name())) {
            return;
        }
        double room = most * recipe.dryMass() - PartAdjustment.mass(recipe, powder);
        adjustments.add(powder(powder, powderGrams, (int) (room * 1e3 / powderGrams)));
    }

    /** More citric acid where the mix is short of acid, up to what its bicarbonate can use, so that the bath never turns sour. */
    private void acid(Recipe recipe) {
        Ingredient citric = table.require("citric acid").ingredient();
        double base = groups(recipe, Property.BICARBONATE_GROUPS) + 2 * groups(recipe, Property.CARBONATE_GROUPS);
        double short0 = base - groups(recipe, Property.ACID_GROUPS);
        double grams = short0 / citric.molesPerKilogram(Property.ACID_GROUPS) * 1e3;
        if (free(citric.name()) && grams >= powderGrams) {
            adjustments.add(powder(citric, powderGrams, (int) (grams / powderGrams)));
        }
    }

    /** Moles of a group in one mix. */
    private static double groups(Recipe recipe, Property groups) {
        double moles = 0;
        for (Recipe.Part part : recipe.parts()) {
            moles += part.mass() * part.ingredient().molesPerKilogram(groups);
        }
        return moles;
    }

    /** So many grams a level of a powder, more or less. */
    private Adjustment powder(Ingredient ingredient, double grams, int levels) {
        return new PartAdjustment(table, Change.Step.Kind.POWDER, ingredient, grams, levels, Optional.empty(), 1);
    }

    /** Longer, or in drier air; a finished piece has dried. */
    private void drying() {
        if (design.drying().isPresent() && !(design.filling() instanceof Design.Filling.Finished)) {
            adjustments.add(new DryingAdjustment(
                    Change.Step.Kind.DRYING_TIME, design.drying().get()));
            adjustments.add(new DryingAdjustment(
                    Change.Step.Kind.ROOM_HUMIDITY, design.drying().get()));
        }
    }

    /** Set down open side up; a mould of another size or kind. */
    private void mould(boolean ofItsMould) {
        if (design.shape().hollow().isPresent() && design.into() != Question.IntoBath.PLACED) {
            adjustments.add(new IntoBathAdjustment());
        }
        Shape shape = design.shape();
        if (ofItsMould || design.filling() instanceof Design.Filling.Finished || shape != shape.bare()) {
            return; // a finished piece is out of its mould; what a mould carries was made for it
        }
        adjustments.add(new MouldAdjustment(Change.Step.Kind.MOULD_SIZE, MouldSizes.others(shape, steps.mould())));
        adjustments.add(new MouldAdjustment(Change.Step.Kind.MOULD_SIZE, MouldSizes.others(shape, -steps.mould())));
        for (Shape other : MouldSizes.otherKinds(shape)) {
            adjustments.add(new MouldAdjustment(Change.Step.Kind.MOULD_KIND, List.of(other)));
        }
    }
}
