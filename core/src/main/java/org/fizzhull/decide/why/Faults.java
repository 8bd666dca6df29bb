package org.fizzhull.decide.why;

import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.powder.PressRange;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.DropBalance;

/**
 * Designs as they would be if a cause were true: the same plan with one thing gone another way. Sizes of the faults are
 * assumed, as wide as bench practice suggests (common practice, no source). A cause that cannot touch a design (a press in a
 * weighed fill, drying of a piece that was not dried) has none.
 */
final class Faults {
    /** Damp mix over that planned: the middle of 5 to 15 % more. */
    private static final double MORE_MIX = 1.10;

    /** Pressure over that planned, or under it. */
    private static final double PRESS_FACTOR = 3;
    /** Time of drying over that planned. */
    private static final double SHORTER_DRYING = 0.25;
    /** Gas capacity of a spent piece over that of a fresh one. */
    private static final double FIZZ_LEFT = 0.3;
    /** Relative humidity above that planned, 0 to 1. */
    private static final double DAMPER = 0.18;
    /** Relative humidity at most. */
    private static final double DAMPEST = 0.95;

    /** Source of a prior that stands for a fault. */
    private static final Source ASSUMED = new Source("fault", "Size of a fault, assumed", Source.Seen.ASSUMED);

    /**
     * A design with a fault.
     *
     * @param made the design as it then was pressed and dried
     * @param bathed the design as it then went into the bath: another than made only where the weight and the fizz of the
     *     finished piece are set
     * @param factors uncertain inputs with their priors, as they then were
     * @param mass weight of a piece, kg, where it is set and not computed
     */
    record Faulty(Design made, Design bathed, Factors factors, Optional<Interval> mass) {
        /** A fault that is one and the same in making and bath. */
        Faulty(Design design, Factors factors) {
            this(design, design, factors, Optional.empty());
        }
    }

    private Faults() {}

    /**
     * {@return the design with a cause at work; empty where that cause cannot touch it}
     *
     * @param cause what went another way
     * @param design the design as planned
     * @param factors uncertain inputs with their priors, as planned
     * @param planned weight of a piece as planned, kg
     * @param makeup of a piece as planned, as it goes into the bath
     */
    static Optional<Faulty> of(Cause cause, Design design, Factors factors, Interval planned, Piece.Makeup makeup) {
        try {
            Optional<Faulty> faulty = switch (cause) {
                // making: the fill, the press, the drying
                case TOO_MUCH_MIX -> filling(design, factors, MORE_MIX);
                case PRESSED_TOO_HARD -> pressed(design, factors, PRESS_FACTOR);
                case PRESSED_TOO_LIGHTLY -> pressed(design, factors, 1 / PRESS_FACTOR);
                case NOT_DRY_INSIDE -> dried(design, factors);
                case LOST_ITS_FIZZ -> spent(design, factors, planned, makeup);
                case LITTLE_CLINGING_GAS -> Optional.of(new Faulty(design, factors.scaled(Input.BUBBLE_SIZE, 0.5)));
                case MOULD_SMALLER -> smaller(design, factors);
                case WATER_SOAKED_IN -> Optional.of(new Faulty(design, factors.scaled(Input.WET_SKIN_DEPTH, 4)));
                // mix: true densities two and a half standard deviations up, half or once and a half of the liquid
                case HEAVY_POWDER ->
                    design.recipe().isEmpty()
                            ? Optional.empty()
                            : weak(design, factors, Input.GRAIN_SCORE, Priors.normal(2.5, 0.5));
                case RIM_DIPPED ->
                    design.shape().hollow().isPresent() && design.into() == Question.IntoBath.PLACED
                            ? Optional.of(new Faulty(design.put(Question.IntoBath.DROPPED), factors))
                            : Optional.empty();
                case TOO_MUCH_LIQUID -> liquid(design, factors, 1.5);
                case TOO_LITTLE_LIQUID -> liquid(design, factors, 0.5);
                case DAMP_ROOM -> damp(design, factors);
                case SOMETHING_ELSE -> Optional.of(new Faulty(design, factors));
            };
            faulty.ifPresent(f -> f.bathed().question());
            return faulty;
        } catch (Refusal refusal) {
            return Optional.empty(); // such a piece does not go into the mould
        }
    }

    /** A smaller mould; empty for a piece of which four standard deviations of that would leave nothing. */
    private static Optional<Faulty> smaller(Design design, Factors factors) {
        Shape shape = design.shape();
        double spread = Cause.MOULD_SMALLER.sizeSpread();
        double least = -(Cause.SMALLER + 4 * spread);
        return DropBalance.volumeRatio(shape.surface(), shape.volume(), least) > 0
                ? weak(design, factors, Input.MOULD_SIZE, Priors.normal(-Cause.SMALLER, spread))
                : Optional.empty();
    }

    /** More mix, to a gram, in a weighed fill. */
    private static Optional<Faulty> filling(Design design, Factors factors, double factor) {
        if (design.filling() instanceof Design.Filling.Fill fill) {
            Design more =
                    design.filled(new Design.Filling.Fill(Math.rint(1e3 * factor * fill.mass()) / 1e3, fill.hand()));
            return Optional.of(new Faulty(more, factors));
        }
        return Optional.empty();
    }

    /** Another pressure in a press; empty where no press has it. */
    private static Optional<Faulty> pressed(Design design, Factors factors, double factor) {
        if (design.filling() instanceof Design.Filling.Press press && PressRange.takes(factor * press.pressure())) {
            Design.Filling other = new Design.Filling.Press(factor * press.pressure(), press.spread(), press.halves());
            return Optional.of(new Faulty(design.filled(other), factors));
        }
        return Optional.empty();
    }

    /** A shorter time in the open. */
    private static Optional<Faulty> dried(Design design, Factors factors) {
        if (design.drying().isEmpty() || design.filling() instanceof Design.Filling.Finished) {
            return Optional.empty();
        }
        DryingConditions dry = design.drying().get();
        return Optional.of(new Faulty(design.dried(dry.openFor(SHORTER_DRYING * dry.open())), factors));
    }

    /** A finished piece of the planned weight, with all that is in it, that has lost most of its gas. */
    private static Optional<Faulty> spent(Design design, Factors factors, Interval planned, Piece.Makeup makeup) {
        Piece.Makeup left =
                new Piece.Makeup(makeup.trueDensity(), FIZZ_LEFT * makeup.gasCapacity(), makeup.additives());
        Design.Filling finished = design.filling() instanceof Design.Filling.Finished f
                ? new Design.Filling.Finished(f.mass(), f.hand(), Optional.of(left))
                : new Design.Filling.Finished(planned.median(), hand(planned), Optional.of(left));
        return Optional.of(new Faulty(design, design.filled(finished), factors, Optional.of(planned)));
    }

    /** Spread of a weight around its median. */
    private static Optional<Prior> hand(Interval mass) {
        double deviation = Normals.deviation(mass);
        return deviation > 0 ? Optional.of(Priors.normal(0, deviation)) : Optional.empty();
    }

    /** The plan with another prior of one uncertain input. */
    private static Optional<Faulty> weak(Design design, Factors factors, Input input, Prior prior) {
        return Optional.of(new Faulty(design, factors.with(new Factor(input, prior, ASSUMED))));
    }

    /** The plan with all liquids times a factor. */
    private static Optional<Faulty> liquid(Design design, Factors factors, double factor) {
        if (design.recipe().isEmpty()
                || design.recipe().get().wet().isEmpty()
                || design.filling() instanceof Design.Filling.Finished) {
            return Optional.empty();
        }
        Recipe recipe = design.recipe().get();
        List<Recipe.Part> wet = recipe.wet().stream()
                .map(part -> new Recipe.Part(part.ingredient(), factor * part.mass(), part.sigma()))
                .toList();
        return Optional.of(new Faulty(design.of(recipe.withLines(recipe.dry(), wet)), factors));
    }

    /** Drying in damper air. */
    private static Optional<Faulty> damp(Design design, Factors factors) {
        if (design.drying().isEmpty() || design.filling() instanceof Design.Filling.Finished) {
            return Optional.empty();
        }
        DryingConditions dry = design.drying().get();
        RoomAir air = dry.air().withHumidity(Math.min(DAMPEST, dry.air().humidity() + DAMPER));
        return Optional.of(new Faulty(design.dried(dry.in(air)), factors));
    }
}
