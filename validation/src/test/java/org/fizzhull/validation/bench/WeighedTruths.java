package org.fizzhull.validation.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.conditioning.PressedWeightSolver;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.model.PressModel;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.numeric.Normal;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.pressing.powder.MixingRoom;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Draws;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Statistics;

/**
 * 200 benches drawn from the priors by plain random numbers: each presses balls of 65 mm of one mix firmly by hand, weighs
 * some of them, true to 0.5 g, and presses the next one, a little harder or softer as hands do. How wide is what is said of
 * that one's weight, and how often does it lie in the 95 % interval?
 */
public final class WeighedTruths {
    private static final int TRUTHS = 200;
    private static final Sampling DRAWS = new Sampling(1, 512);
    private static final Sampling USUAL = Sampling.standard();
    private static final double SCALE = 0.5e-3;
    private static final double PRESSURE = PressWord.FIRM.pressure();
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private final Making making;
    private final Factors factors;
    private final SplittableRandom random = new SplittableRandom(5);
    private final double spread;
    private int inside;
    private boolean refused;

    /** @param weighed how many pieces of each bench are weighed */
    public WeighedTruths(int weighed) {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        making = new Moulded.Pressed(
                blend, PRESSURE, WeighedPiece.HAND, MouldDimensions.Filling.usual(BALL), DryingPlan.none());
        factors = PressModel.factors(Factors.standard(), BALL, making);
        PressedWeightSolver scale = new PressedWeightSolver(WeighedPiece.byHand(0.15, PRESSURE), making, BALL, factors);
        PressModel model = model(1);
        int repeat = factors.column(Input.PRESS_REPEAT);
        double[] spreads = new double[TRUTHS];
        for (int i = 0; i < TRUTHS; i++) {
            double[] bench = factors.priors().stream().mapToDouble(this::value).toArray();
            List<WeighedPiece> seen = new ArrayList<>();
            for (int k = 0; k < weighed; k++) {
                double mass = scale.mass(bench, 0.5, uniform()) + SCALE * Normal.quantile(uniform());
                seen.add(WeighedPiece.byHand(mass, PRESSURE));
            }
            bench[repeat] = value(factors.priors().get(repeat));
            double next = model.at(bench);
            double[] said = said(seen);
            spreads[i] = Math.sqrt(Statistics.variance(said, Statistics.mean(said))) / Statistics.quantile(said, 0.5);
            inside += !refused && next >= Statistics.quantile(said, 0.025) && next <= Statistics.quantile(said, 0.975)
                    ? 1
                    : 0;
            refused = false;
        }
        spread = 100 * Statistics.quantile(Statistics.sorted(spreads), 0.5);
    }

    /** Standard deviation of the next weight over its median, median of the benches, %. */
    public double spread() {
        return spread;
    }

    /** How many next pieces lie inside. */
    public int inside() {
        return inside;
    }

    /**
     * Sorted draws of the next weight, kg. Rare readings leave too few of few draws: these are drawn as a command does. Where
     * even those are too few the bench counts as not narrowed and its next piece as not inside.
     */
    private double[] said(List<WeighedPiece> seen) {
        try {
            return said(seen, DRAWS);
        } catch (Refusal few) {
            try {
                return said(seen, USUAL);
            } catch (Refusal farOut) {
                refused = true;
                return said(List.of(), DRAWS);
            }
        }
    }

    private double[] said(List<WeighedPiece> seen, Sampling sampling) {
        Draws draws = seen.isEmpty()
                ? new MonteCarlo(
                        factors.priors(), factors.columns(), sampling.samples(), sampling.seed(), Workers.CALLER)
                : Conditioned.pressed(
                                making,
                                BALL,
                                factors,
                                seen.get(0).and(seen.subList(1, seen.size())),
                                sampling,
                                Workers.CALLER)
                        .posterior()
                        .orElseThrow();
        return Statistics.sorted(draws.draws(() -> model(sampling.samples())));
    }

    private PressModel model(int rows) {
        return new PressModel(making, BALL, factors, MixingRoom.standard(), new double[PressModel.WIDTH][rows]);
    }

    private double value(Prior prior) {
        return prior.quantile(uniform());
    }

    private double uniform() {
        return random.nextDouble(1e-12, 1);
    }
}
