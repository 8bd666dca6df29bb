package org.fizzhull.answer.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingStep;
import org.fizzhull.batch.Rack;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;

/**
 * Everything {@code batch} answers: the mixes and what becomes of their pieces. Weight, feel and time to press are those of
 * {@code press}, the bath is that of {@code float} (38 C), the drying that of {@code dry}: each worked out by the same
 * predictor from the same draws, so that the commands agree. Immutable.
 *
 * @param recipe the recipe, with its changes
 * @param shape form of the mould, with toppings and what is pressed in
 * @param pieces number of pieces wanted
 * @param pressed the mix under the press, with the piece
 * @param floating the piece in the bath
 * @param batch mixes, spares and cost
 * @param steps order of mixing
 * @param dried what a piece becomes by drying; empty where no drying was asked for
 * @param sampling seed and number of draws
 */
public record BatchPlan(
        Recipe recipe,
        Shape shape,
        int pieces,
        PressForecast pressed,
        Forecast floating,
        Batch batch,
        List<MixingStep> steps,
        Optional<DryForecast> dried,
        Sampling sampling) {

    /**
     * Copies the list.
     *
     * @param recipe the recipe, with its changes
     * @param shape form of the mould, with toppings and what is pressed in
     * @param pieces number of pieces wanted
     * @param pressed the mix under the press, with the piece
     * @param floating the piece in the bath
     * @param batch mixes, spares and cost
     * @param steps order of mixing
     * @param dried what a piece becomes by drying; empty where no drying was asked for
     * @param sampling seed and number of draws
     */
    public BatchPlan {
        Given.all(
                "recipe, shape, pressed, floating, batch, steps, dried, sampling",
                recipe,
                shape,
                pressed,
                floating,
                batch,
                steps,
                dried,
                sampling);
        steps = List.copyOf(steps);
    }

    /**
     * What goes on or into each piece beside the mix.
     *
     * @param name name for the list, such as {@code petals on top}
     * @param mass on one piece, kg
     */
    public record Extra(String name, double mass) {}

    /** {@return the damp piece as it comes out of the mould} */
    public PressForecast.PieceOut piece() {
        return pressed.piece().orElseThrow();
    }

    /** {@return the mass of one damp piece without toppings and crystals, kg: the median that {@code press} tells} */
    public double dampMass() {
        return piece().dampMass().median();
    }

    /** {@return the rack on which all pieces dry, spares included} */
    public Rack rack() {
        return Rack.of(
                batch.allPieces(), shape.extents().length(), shape.extents().width());
    }

    /** {@return toppings, things pressed in and the crystals of a hollow, in that order; empty for a plain piece} */
    public List<Extra> extras() {
        List<Extra> extras = new ArrayList<>();
        if (shape instanceof Loaded loaded) {
            for (Topping topping : loaded.toppings()) {
                extras.add(new Extra(topping.name() + " on top", topping.mass()));
            }
            for (Loaded.Held held : loaded.held()) {
                extras.add(new Extra("thing pressed in", held.thing().mass()));
            }
        }
        double crystals = shape.bare().insetMass();
        if (crystals > 0) {
            extras.add(new Extra("crystals for the hollow", crystals));
        }
        return extras;
    }

    /** {@return the chance that a piece floats to the end, as {@code float} tells it; empty where nothing was drawn} */
    public OptionalDouble floatsToTheEnd() {
        return floating.probability().stream()
                .mapToDouble(Probability::floatsToTheEnd)
                .findFirst();
    }

    /** {@return whether the damp mix fizzes at all, or, where it does, whether the piece does that it becomes} */
    public Effervescence effervescence() {
        Effervescence fresh = Effervescence.of(pressed.blend().moles());
        return fresh.fizzes() ? floating.effervescence().orElse(fresh) : fresh;
    }

    /**
     * {@return what the reader must know of mix, press, batch and drying}
     *
     * @param warnings how the piece comes out of the mould, in words
     */
    public List<Notice> notices(List<Notice> warnings) {
        List<Notice> notices = new ArrayList<>();
        effervescence().notice().ifPresent(notices::add);
        notices.addAll(warnings);
        notices.addAll(piece().central().notices());
        notices.addAll(batch.notices());
        dried.ifPresent(forecast -> DriedKeys.addNotices(notices, forecast));
        Notice.addNew(notices, recipe.notices());
        return notices;
    }
}
