package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.recipe.Batch;
import org.fizzhull.recipe.Ingredient;
import org.fizzhull.recipe.MixingStep;
import org.fizzhull.recipe.Role;

/** A batch as a page for the bench: what to weigh in, the order of mixing with boxes to tick, what it needs and costs. */
public final class BatchText {
    private static final double DUSTY = 2.0;
    private static final double FLAMMABLE = 100e-6;

    private BatchText() {}

    /** The sentence and the cautions. */
    public static String brief(BatchPlan plan) {
        return Table.paragraph(sentence(plan)) + cautions(plan);
    }

    /** The whole page. */
    public static String of(BatchPlan plan) {
        Batch batch = plan.batch();
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(plan)));
        out.append('\n').append(batch.mixes() == 1 ? "Weigh in\n" : "Weigh in for each mix\n");
        Table amounts = new Table();
        for (Batch.Line line : batch.lines()) {
            amounts.row(line.ingredient().name(), weighed(line.mass()) + ", that is " + line.spoons());
        }
        out.append(amounts).append("\nOrder of mixing\n");
        for (MixingStep step : plan.steps()) {
            String names = step.ingredients().isEmpty() ? "" : ": " + String.join(", ", step.ingredients());
            out.append("  [ ] ");
            Table.hanging(out, 6, step.text() + names + '.');
            if (!step.caution().isEmpty()) {
                Table.indented(out, 6, "Caution: " + step.caution());
            }
            if (step.mayStop()) {
                out.append("      -- you may stop here --\n");
            }
        }
        out.append("  [ ] ");
        Table.hanging(
                out,
                6,
                "Press " + batch.piecesPerMix() + (batch.piecesPerMix() == 1 ? " piece of " : " pieces of ")
                        + Say.grams(plan.piece().dampMass()) + " each, and lay them apart on the rack.");
        out.append("\nIt takes\n").append(needs(plan)).append('\n');
        for (Notice notice : plan.notices()) {
            out.append(Table.paragraph("Note: " + notice.text()));
        }
        return out.append(cautions(plan)).toString();
    }

    private static String sentence(BatchPlan plan) {
        Batch batch = plan.batch();
        String spares = batch.sparePieces() == 1 ? "1 spare" : batch.sparePieces() + " spares";
        String mixes = batch.mixes() == 1
                ? "make one mix of " + kilograms(batch.mixMass())
                : "make " + batch.mixes() + " mixes of " + kilograms(batch.mixMass());
        return "For " + plan.pieces() + (plan.pieces() == 1 ? " piece and " : " pieces and ") + spares + ", " + mixes
                + hurry(plan.workingTime(), batch.mixes()) + '.';
    }

    private static String hurry(double seconds, int mixes) {
        String it = mixes == 1 ? "it" : "each";
        if (Double.isInfinite(seconds)) {
            return "; nothing hurries you";
        } else if (seconds < 60) {
            return ": " + it + " must be pressed at once";
        } else if (seconds > 4 * 3600) {
            return "; press " + it + " within the hour to be sure";
        }
        return ": " + it + " must be pressed within about " + Decimals.text(seconds / 60, 1) + Say.UNIT + "minutes";
    }

    private static Table needs(BatchPlan plan) {
        Batch batch = plan.batch();
        Table table = new Table();
        double side = Math.sqrt(plan.rackArea()) * 100;
        table.row(
                "rack",
                Decimals.text(plan.rackArea(), 2) + " m2, such as " + Say.whole(side) + " x " + Say.whole(side)
                        + " cm, two fingers between pieces");
        table.row("in all", kilograms(batch.totalMass()) + " with what sticks to the bowl");
        List<String> buy = new ArrayList<>();
        for (Batch.Line line : batch.lines()) {
            if (line.packs() > 0) {
                buy.add(line.packs()
                        + (line.packs() == 1 ? " pack of " : " packs of ")
                        + line.ingredient().name());
            }
        }
        if (!buy.isEmpty()) {
            table.row("to buy", String.join(", ", buy));
        }
        batch.costEach()
                .ifPresent(cost -> table.row(
                        "a piece costs", Decimals.text(Math.rint(cost * 100) / 100, 6) + " of your own money"));
        String allergens = allergens(plan);
        if (!allergens.isEmpty()) {
            table.row("allergens", allergens);
        }
        return table;
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

    private static String cautions(BatchPlan plan) {
        Batch batch = plan.batch();
        StringBuilder out = new StringBuilder();
        out.append(Table.paragraph(
                "Caution: weigh acid in moving air, with mask and goggles. Never close the bowl with a tight lid, never"
                        + " stack damp pieces in closed boxes."));
        if (batch.totalMass() > DUSTY) {
            out.append(Table.paragraph("Caution: so much powder dusts: work outdoors or with extraction."));
        }
        double alcohol = 0;
        boolean scented = false;
        for (Batch.Line line : batch.lines()) {
            Role role = line.ingredient().role();
            alcohol += role == Role.ALCOHOL ? line.volume() * batch.mixes() : 0;
            scented |= role == Role.FRAGRANCE;
        }
        if (alcohol > FLAMMABLE) {
            out.append(Table.paragraph("Caution: that much alcohol in one room can burn: no flame, open windows."));
        }
        if (scented && plan.recipe().limits().isEmpty()) {
            out.append(
                    Table.paragraph(
                            "Caution: how much scent is allowed stands on the supplier's sheet; this program does not know it."));
        }
        return out.toString();
    }

    /** What a person reads off a kitchen scale. */
    private static String weighed(double kilograms) {
        double g = inGrams(kilograms);
        return (g < 50 ? Say.tenths(g) : Say.whole(g)) + Say.UNIT + "g";
    }

    private static String kilograms(double kilograms) {
        return kilograms < 1
                ? Say.whole(inGrams(kilograms)) + Say.UNIT + "g"
                : Decimals.text(kilograms, 3) + Say.UNIT + "kg";
    }
}
