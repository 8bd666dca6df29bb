package org.fizzhull.validation.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.pressing.powder.DensityScores;
import org.fizzhull.pressing.powder.Powders;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Pressing the lemon recipe into a 65 mm mould by hand, 50 kPa: one piece, and 10,000 draws of its density. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PressingSpeed {
    private static final int DRAWS = 10_000;
    private static final double PRESSURE = 50e3;

    /** Errors of the densities, then of the press: widths as in the standard priors. */
    private static final List<Prior> PRIORS = List.of(
            Priors.normal(0, 1),
            Priors.normal(0, 1),
            Priors.normal(0, 1),
            Priors.normal(0, 0.015),
            Priors.lognormal(90e3, 3),
            Priors.cutNormal(0.25, 0.08, 0, 0.9),
            Priors.lognormal(20e3, 2));

    private static final PressPredictor FORECAST = PressPredictor.standard().with(new Sampling(1, DRAWS));

    private final Sphere ball = Sphere.ofDiameter(0.065);
    private final MouldDimensions mould = MouldDimensions.of(ball, MouldDimensions.Filling.TWO_HALVES);
    private final Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private final Powders powders = Powders.of(blend);

    /** One piece with its strength and notices. */
    @Benchmark
    public Pressed onePiece() {
        return Press.of(blend).press(PRESSURE, mould);
    }

    /** Damp densities of 10,000 draws, kg/m3: powders, packing and press drawn anew each time. */
    @Benchmark
    public double[] tenThousandDraws() {
        return new MonteCarlo(PRIORS, DRAWS, 1, Workers.CALLER).draws(() -> this::dampDensity);
    }

    /** The whole forecast of 10,000 pieces: each powder's own errors, mass, pressure, strength and feel of every draw. */
    @Benchmark
    public PressForecast.PieceOut tenThousandPieces() {
        return FORECAST.piece(
                ball, new Moulded.Pressed(blend, PRESSURE, 1.6, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none()));
    }

    private double dampDensity(double[] x) {
        PressingParameters p = PressingParameters.standard();
        var drawn = new PressingParameters(
                x[4],
                x[3],
                x[5],
                x[6],
                p.wallFriction(),
                p.lateralRatio(),
                p.springBack(),
                p.pendularLimit(),
                p.capillaryLimit(),
                p.bridgeEfficiency(),
                p.roughness());
        Press press = Press.of(blend, powders.with(blend, DensityScores.shared(x[0], x[1], x[2])), drawn);
        return press.dampDensity(press.solidFraction(PRESSURE * press.meanOverTop(mould)));
    }
}
