package org.fizzhull.cli.making;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.Rack;
import org.fizzhull.cli.drying.DriedText;
import org.fizzhull.cli.floating.FloatText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.Price;
import org.fizzhull.recipe.Role;

/** What a batch takes beside work: rack, powders in all, bags, money; and the cautions of so much of it. */
public final class BatchNeeds {
    private static final double DUSTY = 2.0;
    private static final double FLAMMABLE = 100e-6;

    private BatchNeeds() {}

    /** Rows of a label and a text. */
    public static List<String[]> rows(BatchPlan plan) {
        Batch batch = plan.batch();
        List<String[]> rows = new ArrayList<>();
        row(rows, "holds", PressText.shares(plan.piece()));
        row(rows, "in the bath", FloatText.sentence(plan.floating()));
        row(rows, "rack", rack(plan));
        List<String> all = new ArrayList<>();
        List<String> buy = new ArrayList<>();
        for (Batch.Line line : batch.lines()) {
            String name = line.ingredient().name();
            all.add(kilograms(line.mass() * batch.mixes()) + ' ' + name);
            Price price = plan.recipe().prices().get(name);
            if (price != null) {
                buy.add(line.packs() + "" + NumberText.UNIT + 'x' + NumberText.UNIT + kilograms(price.pack()) + ' '
                        + name);
            }
        }
        String total = kilograms(batch.totalMass()) + " with what sticks to the bowl";
        row(rows, "in all", batch.mixes() == 1 ? total : total + ": " + String.join(", ", all));
        for (BatchPlan.Extra extra : plan.extras()) {
            row(
                    rows,
                    "besides",
                    batch.allPieces() + "" + NumberText.UNIT + "x" + NumberText.UNIT + weighed(extra.mass()) + ' '
                            + extra.name() + ", " + kilograms(extra.mass() * batch.allPieces()) + " in all");
        }
        if (!buy.isEmpty()) {
            row(rows, "to buy", String.join(", ", buy));
        }
        batch.costEach()
                .ifPresent(cost ->
                        row(rows, "cost", cost(cost, plan) + ", for what goes in, spares and what sticks to the bowl"));
        String allergens = allergens(plan);
        if (!allergens.isEmpty()) {
            row(rows, "allergens", allergens);
        }
        plan.dried().ifPresent(dried -> DriedText.rows(dried).forEach(told -> row(rows, told[0], told[1])));
        return rows;
    }

    /** What a piece costs and all of them do. */
    static String cost(double each, BatchPlan plan) {
        return NumberText.money(each) + " a piece, " + NumberText.money(each * plan.pieces())
                + " in all, in the money of your prices";
    }

    /** The rack in words: the one that the picture draws. */
    public static String rack(BatchPlan plan) {
        Rack rack = plan.rack();
        return NumberText.whole(100 * rack.length()) + NumberText.UNIT + "cm x " + NumberText.whole(100 * rack.width())
                + NumberText.UNIT + "cm, " + rack.columns() + " in a row, two fingers between pieces";
    }

    /** Whole sentences, in the order of the work. */
    public static List<String> cautions(BatchPlan plan) {
        Batch batch = plan.batch();
        List<String> cautions = new ArrayList<>();
        List<String> dusts = new ArrayList<>();
        for (Role role : List.of(Role.ACID, Role.SURFACTANT)) {
            if (batch.lines().stream().anyMatch(line -> line.ingredient().role() == role)) {
                dusts.add(role == Role.ACID ? "acid" : "foaming powder");
            }
        }
        String lid = "Never close the bowl with a tight lid, never stack damp pieces in closed boxes.";
        if (!dusts.isEmpty()) {
            cautions.add("Weigh " + String.join(" and ", dusts) + " in moving air, with mask and goggles. " + lid);
        }
        if (batch.totalMass() > DUSTY) {
            cautions.add("So much powder dusts: work outdoors or with extraction.");
        }
        double alcohol = 0;
        boolean scented = false;
        for (Batch.Line line : batch.lines()) {
            Role role = line.ingredient().role();
            alcohol += role == Role.ALCOHOL ? line.volume() * batch.mixes() : 0;
            scented |= role == Role.FRAGRANCE;
        }
        if (alcohol > FLAMMABLE) {
            cautions.add("That much alcohol in one room can burn: no flame, open windows.");
        }
        if (scented && plan.recipe().limits().isEmpty()) {
            cautions.add("How much scent is allowed stands on the supplier's sheet; this program does not know it.");
        }
        return cautions;
    }

    /** Grams, from a kilogram on kilograms. */
    static String kilograms(double kilograms) {
        return kilograms < 0.9995 ? weighed(kilograms) : Decimals.text(kilograms, 3) + NumberText.UNIT + "kg";
    }

    /** What a person reads off a kitchen scale. */
    public static String weighed(double kilograms) {
        double g = inGrams(kilograms);
        return (g < 50 ? NumberText.tenths(g) : NumberText.whole(g)) + NumberText.UNIT + "g";
    }

    private static void row(List<String[]> rows, String label, String text) {
        rows.add(new String[] {label, text});
    }

    private static String allergens(BatchPlan plan) {
        List<String> named = new ArrayList<>();
        for (Batch.Line line : plan.batch().lines()) {
            Ingredient ingredient = line.ingredient();
            if (!ingredient.allergen().isEmpty()) {
                named.add(ingredient.allergen() + " (" + ingredient.name() + ')');
            }
        }
        return String.join(", ", named);
    }
}
