package org.fizzhull.cli.making;

import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingStep;
import org.fizzhull.cli.drying.DriedText;
import org.fizzhull.cli.text.Json;
import org.fizzhull.evidence.Notice;
import org.fizzhull.pressing.Feel;

/** A batch as the {@code batch} object: masses, volumes and spoons of one mix; cost and packs of all. */
public final class BatchJson {
    private BatchJson() {}

    /** Writes the object and returns its notices. */
    public static List<Notice> write(OutputStream out, BatchPlan plan) {
        Batch batch = plan.batch();
        List<Notice> notices = new ArrayList<>(plan.notices());
        if (plan.dried().isEmpty()) {
            notices.add(new Notice(
                    "not-dried", "dried_mass_g and ready_after_h are null: no air and no drying time were given."));
        }
        if (plan.dried().isPresent() && plan.dried().get().ready().isEmpty()) {
            notices.add(DriedText.NOT_READY);
        }
        if (batch.costEach().isEmpty()) {
            notices.add(new Notice("no-prices", "cost_each is null: the recipe has no prices."));
        }
        if (plan.floatsToTheEnd().isEmpty()) {
            notices.add(new Notice("central-values", "floats_to_the_end is null: nothing was drawn."));
        }
        boolean endless = Double.isInfinite(plan.pressed().workingTime());
        if (endless) {
            notices.add(new Notice("no-reaction", "working_time_min is null: without water or gas nothing runs off."));
        }
        try (Json json = Json.open(out, "batch")) {
            json.whole("seed", plan.sampling().seed())
                    .whole("samples", plan.sampling().samples())
                    .text("recipe", plan.recipe().name())
                    .text("shape", plan.shape().text())
                    .whole("pieces", plan.pieces())
                    .number("damp_mass_g", inGrams(plan.dampMass()))
                    .text("feel", plan.piece().likeliest().words())
                    .whole("mixes", batch.mixes())
                    .whole("pieces_per_mix", batch.piecesPerMix())
                    .number("mix_g", inGrams(batch.mixMass()));
            if (endless) {
                json.nothing("working_time_min");
            } else {
                json.number("working_time_min", plan.pressed().workingTime() / 60);
            }
            steps(json, plan.steps());
            ingredients(json, batch);
            json.array("extras");
            for (BatchPlan.Extra extra : plan.extras()) {
                json.object()
                        .text("name", extra.name())
                        .number("each_g", inGrams(extra.mass()))
                        .number("all_g", inGrams(extra.mass() * batch.allPieces()))
                        .end();
            }
            json.endArray();
            json.number("total_g", inGrams(batch.totalMass()))
                    .number(
                            "liquid_percent",
                            100 * plan.recipe().wetMass() / plan.recipe().mass())
                    .whole("spare_pieces", batch.sparePieces())
                    .number("rack_area_m2", plan.rack().area())
                    .number("rack_length_cm", 100 * plan.rack().length())
                    .number("rack_width_cm", 100 * plan.rack().width());
            json.object("feel_share");
            for (Feel feel : Feel.values()) {
                json.number(feel.words().replace(' ', '_'), plan.piece().feel().getOrDefault(feel, 0.0));
            }
            json.end().number("floats_to_the_end", plan.floatsToTheEnd());
            DriedText.json(json, plan.dried());
            json.number("cost_each", batch.costEach()).notices(notices);
        }
        return notices;
    }

    private static void ingredients(Json json, Batch batch) {
        json.array("ingredients");
        for (Batch.Line line : batch.lines()) {
            json.object()
                    .text("name", line.ingredient().name())
                    .number("mass_g", inGrams(line.mass()))
                    .number("volume_mL", inCubicCentimetres(line.volume()))
                    .text("spoons", line.spoons())
                    .number("cost", line.cost())
                    .number("all_mixes_g", inGrams(line.mass() * batch.mixes()));
            if (line.packs() > 0) {
                json.whole("packs", line.packs());
            } else {
                json.nothing("packs");
            }
            json.text(
                            "allergen",
                            line.ingredient().allergen().isEmpty()
                                    ? null
                                    : line.ingredient().allergen())
                    .end();
        }
        json.endArray();
    }

    private static void steps(Json json, List<MixingStep> steps) {
        json.array("steps");
        for (MixingStep step : steps) {
            json.object()
                    .text("text", step.text())
                    .texts("ingredients", step.ingredients())
                    .text("caution", step.caution().isEmpty() ? null : step.caution())
                    .flag("may_stop", step.mayStop())
                    .end();
        }
        json.endArray();
    }
}
