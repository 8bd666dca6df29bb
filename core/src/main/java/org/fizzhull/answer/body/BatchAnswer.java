package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingStep;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.check.Given;

/**
 * A batch as the object of the command {@code batch}: masses, volumes and spoons of one mix; order of mixing; cost and packs
 * of all mixes; rack; what a piece weighs, feels and does in the bath. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code feel}, {@code feel_share}, {@code working_time_min}, {@code dried_mass_g}: as in {@link PressAnswer}
 * <li>{@code pieces_per_mix}, {@code mix_g}: pieces and damp mass of one mix, with what sticks to the bowl
 * <li>{@code steps}: {@code text}, {@code ingredients}, {@code caution}, {@code may_stop} (whether the work may wait there)
 * <li>{@code ingredients}: masses, {@code volume_mL} and {@code spoons} are of one mix; {@code all_mixes_g}, {@code cost} and
 *     {@code packs} (to be bought) of all; {@code allergen} is what a label must name
 * <li>{@code extras}: toppings and the like that are no part of the mix, {@code each_g} on one piece, {@code all_g} on all
 * <li>{@code rack_length_cm}, {@code rack_width_cm}: with gaps of two fingers
 * </ul>
 *
 * <p>Immutable.
 *
 * @param plan mixes and forecasts of one order
 * @param warnings what a maker must know before weighing in, in words
 */
public record BatchAnswer(BatchPlan plan, List<Notice> warnings) implements AnswerBody {
    /**
     * Copies the list.
     *
     * @param plan mixes and forecasts of one order
     * @param warnings what a maker must know before weighing in, in words
     */
    public BatchAnswer {
        Given.all("plan, warnings", plan, warnings);
        warnings = List.copyOf(warnings);
    }

    /**
     * {@return the answer to a question, without warnings in words; {@code feel} and {@code feel_share} say the same}
     *
     * @param plan mixes and forecasts of one order
     */
    public static BatchAnswer of(BatchPlan plan) {
        return new BatchAnswer(plan, List.of());
    }

    @Override
    public String command() {
        return "batch";
    }

    @Override
    public void keys(AnswerWriter to) {
        Batch batch = plan.batch();
        to.draws(plan.sampling())
                .text("recipe", plan.recipe().name())
                .text("shape", plan.shape().text())
                .whole("pieces", plan.pieces())
                .number("damp_mass_g", inGrams(plan.dampMass()))
                .text("feel", plan.piece().likeliest().words())
                .whole("mixes", batch.mixes())
                .whole("pieces_per_mix", batch.piecesPerMix())
                .number("mix_g", inGrams(batch.mixMass()));
        PressAnswer.workingTime(to, plan.pressed());
        steps(to, plan.steps());
        ingredients(to, batch);
        to.objects(
                "extras",
                plan.extras(),
                extra -> to.text("name", extra.name())
                        .number("each_g", inGrams(extra.mass()))
                        .number("all_g", inGrams(extra.mass() * batch.allPieces())));
        to.number("total_g", inGrams(batch.totalMass()))
                .number(
                        "liquid_percent",
                        100 * plan.recipe().wetMass() / plan.recipe().mass())
                .whole("spare_pieces", batch.sparePieces())
                .number("rack_area_m2", plan.rack().area())
                .number("rack_length_cm", 100 * plan.rack().length())
                .number("rack_width_cm", 100 * plan.rack().width());
        PressAnswer.feel(to, plan.piece());
        to.number("floats_to_the_end", plan.floatsToTheEnd());
        DriedKeys.write(to, plan.dried());
        to.number("cost_each", batch.costEach());
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        Batch batch = plan.batch();
        List<Notice> notices = new ArrayList<>(plan.notices(warnings));
        if (plan.dried().isEmpty()) {
            notices.add(new Notice(
                    "not-dried", "dried_mass_g and ready_after_h are null: no air and no drying time were given."));
        }
        if (plan.dried().isPresent() && plan.dried().get().ready().isEmpty()) {
            notices.add(DriedKeys.NOT_READY);
        }
        if (batch.costEach().isEmpty()) {
            notices.add(new Notice("no-prices", "cost_each is null: the recipe has no prices."));
        }
        if (plan.floatsToTheEnd().isEmpty()) {
            notices.add(new Notice("central-values", "floats_to_the_end is null: nothing was drawn."));
        }
        if (Double.isInfinite(plan.pressed().workingTime())) {
            notices.add(new Notice("no-reaction", "working_time_min is null: without water or gas nothing runs off."));
        }
        return notices;
    }

    /** Lines of the plan: masses of one mix in g and of all mixes, cost and packs of all. */
    private static void ingredients(AnswerWriter to, Batch batch) {
        to.objects(
                "ingredients",
                batch.lines(),
                line -> to.text("name", line.ingredient().name())
                        .number("mass_g", inGrams(line.mass()))
                        .number("volume_mL", inCubicCentimetres(line.volume()))
                        .text("spoons", line.spoons())
                        .number("cost", line.cost())
                        .number("all_mixes_g", inGrams(line.mass() * batch.mixes()))
                        .whole("packs", line.packs() > 0 ? OptionalInt.of(line.packs()) : OptionalInt.empty())
                        .filled("allergen", line.ingredient().allergen()));
    }

    /** Order of mixing, with cautions where the ingredient is handled. */
    private static void steps(AnswerWriter to, List<MixingStep> steps) {
        to.objects(
                "steps",
                steps,
                step -> to.text("text", step.text())
                        .texts("ingredients", step.ingredients())
                        .filled("caution", step.caution())
                        .flag("may_stop", step.mayStop()));
    }
}
