package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;

/**
 * BY DEFINITION: under the solved press scale the piece weighs what it weighed. OTHER METHOD: p(Pk) |dPk/dm| from the masses under
 * 1 % more and less; further pieces by their normal density, its deviation from the mass pressed 2 % harder and softer.
 */
class PressedWeightSolverTest {
    /** Of a normal law so much lies below one deviation (tables). */
    private static final double ONE_SIGMA = 0.8413447460685429;

    /** A slope upwards over 5 % of the pressure and one around it differ by some per cent, and so does the deviation. */
    private static final double BEND = 0.05;

    private static final double FIRM = 30e3;
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final Making BY_HAND = pressed(1.6);
    private static final Making BY_GAUGE = pressed(1.1);
    private static final Factors FACTORS = Factors.standard().asked(Question.of(BALL, BY_HAND));
    private static final int SCALE = FACTORS.column(Input.PRESS_SCALE);
    private static final Prior PRIOR = FACTORS.solved(Input.PRESS_SCALE);
    private static final WeighedPiece HAND = WeighedPiece.byHand(0.145, FIRM);
    private static final WeighedPiece GAUGE = WeighedPiece.byGauge(0.145, FIRM, 1.2);

    private static Making pressed(double spread) {
        return new Moulded.Pressed(MIX, FIRM, spread, MouldDimensions.Filling.usual(BALL), DryingPlan.none());
    }

    private static PressedWeightSolver solver(WeighedPiece piece) {
        return new PressedWeightSolver(piece, BY_HAND, BALL, FACTORS);
    }

    private static double[] inputs(Input input, double value) {
        double[] inputs = FACTORS.medians();
        inputs[FACTORS.column(input)] = value;
        return inputs;
    }

    private static double mass(WeighedPiece piece, double[] inputs) {
        return solver(piece).mass(inputs, 0.5, 0.5);
    }

    private static WeighedPiece pressedWith(double factor) {
        return WeighedPiece.byGauge(0.145, factor * FIRM, 1.2);
    }

    @Test
    void theSolvedScaleGivesTheMass() {
        for (double grams = 130; grams <= 175; grams += 5) {
            WeighedPiece piece = WeighedPiece.byGauge(grams / 1e3, FIRM, 1.2);
            double[] inputs = FACTORS.medians();
            double weight = solver(piece).solve(inputs, 0.5, 0.5, 0.5);
            if (weight == Double.NEGATIVE_INFINITY) {
                assertThat(Math.abs(grams - 150))
                        .as("as poured, or without pores")
                        .isGreaterThan(11);
                continue;
            }
            double solved = inputs[SCALE];
            assertThat(mass(piece, inputs)).isCloseTo(grams / 1e3, within(1e-9));
            double slope = (mass(piece, inputs(Input.PRESS_SCALE, 0.99 * solved))
                            - mass(piece, inputs(Input.PRESS_SCALE, 1.01 * solved)))
                    / (0.02 * solved);
            assertThat(weight).isCloseTo(PRIOR.logDensity(solved) - Math.log(slope), within(0.02));
        }
    }

    /** At the ends of what the mould holds the slope is one-sided: near the heaviest and the lightest piece that is met at all. */
    @Test
    void theEndsOfWhatThePackingGives() {
        for (double beyond : new double[] {0.1, 0.3}) {
            double met = 0.15;
            double not = beyond;
            while (Math.abs(not - met) > 1e-9) {
                double middle = (met + not) / 2;
                WeighedPiece piece = WeighedPiece.byGauge(middle, FIRM, 1.2);
                if (solver(piece).solve(FACTORS.medians(), 0.5, 0.5, 0.5) == Double.NEGATIVE_INFINITY) {
                    not = middle;
                } else {
                    met = middle;
                }
            }
            double mass = met + (0.15 - met) * 2e-3;
            WeighedPiece piece = WeighedPiece.byGauge(mass, FIRM, 1.2);
            double[] inputs = FACTORS.medians();
            double weight = solver(piece).solve(inputs, 0.5, 0.5, 0.5);
            // a thousandth of the mass further in: the other way no scale gives the mass
            double inner = mass * (beyond < 0.15 ? 1.001 : 0.999);
            double[] further = FACTORS.medians();
            solver(WeighedPiece.byGauge(inner, FIRM, 1.2)).solve(further, 0.5, 0.5, 0.5);
            double slope = (further[SCALE] - inputs[SCALE]) / (mass - inner);
            assertThat(weight).isCloseTo(PRIOR.logDensity(inputs[SCALE]) + Math.log(slope), within(1e-6));
        }
    }

    /** Tables: with the error of the scale at one deviation the true mass is half a gram more. */
    @Test
    void theErrorOfTheScaleIsDrawn() {
        double[] inputs = FACTORS.medians();
        solver(GAUGE).solve(inputs, ONE_SIGMA, 0.5, 0.5);
        assertThat(mass(GAUGE, inputs)).isCloseTo(0.145 + 0.5e-3, within(1e-8));
    }

    /** BY DEFINITION: a press one deviation harder is one of 1.2 times the pressure, or of the repeat of a gauge, 1.05. */
    @Test
    void thePressureOfThePieceIsDrawn() {
        double[] medians = FACTORS.medians();
        PressedWeightSolver solver = solver(GAUGE);
        assertThat(solver.mass(medians, ONE_SIGMA, 0.5)).isCloseTo(mass(pressedWith(1.2), medians), within(1e-9));
        assertThat(solver.mass(medians, 0.5, ONE_SIGMA)).isCloseTo(mass(pressedWith(1.05), medians), within(1e-9));
        double[] drawn = FACTORS.medians();
        solver.solve(drawn, 0.5, ONE_SIGMA, ONE_SIGMA);
        assertThat(mass(pressedWith(1.2 * 1.05), drawn)).isCloseTo(0.145, within(1e-8));
    }

    /** BY DEFINITION: one hand has one factor over the word for it; with another press the piece has a factor of its own. */
    @Test
    void oneHandPressesAllPieces() {
        double[] harder = inputs(Input.PRESS, 1.3);
        double[] medians = FACTORS.medians();
        assertThat(solver(HAND).mass(harder, 0.9, 0.5)).isCloseTo(mass(pressedWith(1.3), medians), within(1e-9));
        PressedWeightSolver other = new PressedWeightSolver(HAND, BY_GAUGE, BALL, FACTORS);
        assertThat(other.mass(harder, ONE_SIGMA, 0.5)).isCloseTo(mass(pressedWith(1.6), medians), within(1e-9));
        assertThat(solver(GAUGE).mass(harder, 0.5, 0.5)).isCloseTo(mass(GAUGE, medians), within(1e-15));
    }

    /** ANALYTIC: a ball 0.5 mm larger across holds ((65.5/65)^3 - 1) more; another mould has an error of its own. */
    @Test
    void theMouldAskedAboutHasOneSize() {
        double[] larger = inputs(Input.MOULD_SIZE, 0.5e-3);
        double ratio = Math.pow(65.5 / 65, 3);
        double mass = mass(GAUGE, FACTORS.medians());
        assertThat(mass(GAUGE, larger)).isCloseTo(mass * ratio, within(1e-9));
        solver(GAUGE).solve(larger, 0.5, 0.5, 0.5);
        assertThat(mass(GAUGE, larger)).isCloseTo(0.145, within(1e-8));
        WeighedPiece elsewhere = GAUGE.in(BALL);
        double[] inputs = inputs(Input.MOULD_SIZE, 0.5e-3);
        assertThat(mass(elsewhere, inputs)).isCloseTo(mass, within(1e-9));
        // calipers leave 0.2 mm of a ball across open, 3 x 0.2/65 of its volume
        solver(elsewhere).solve(inputs, ONE_SIGMA, 0.5, 0.5);
        double deviation = Math.hypot(0.5e-3, 0.145 * 3 * 0.2 / 65);
        assertThat(mass(elsewhere, inputs)).isCloseTo(0.145 + deviation, within(1e-8));
    }

    /** ln of a normal density of a piece, less its constant, with what the press differs by from one piece to the next. */
    private static double density(WeighedPiece piece, double[] inputs, double ratio, double own, double mould) {
        double expected = mass(at(piece, ratio), inputs);
        double slope =
                (mass(at(piece, 1.02 * ratio), inputs) - mass(at(piece, ratio / 1.02), inputs)) / (2 * Math.log(1.02));
        double deviation = Math.hypot(Math.hypot(piece.deviation(), mould * piece.dampMass()), slope * own);
        double away = (piece.dampMass() - expected) / deviation;
        return -0.5 * away * away - Math.log(deviation);
    }

    private static WeighedPiece at(WeighedPiece piece, double ratio) {
        WeighedPiece press = WeighedPiece.byGauge(piece.dampMass(), piece.pressure() * ratio, 1.2);
        return piece.shape().map(press::in).orElse(press);
    }

    @Test
    void furtherPiecesWeighTheDraw() {
        double gauge = Math.hypot(Math.log(1.05), Math.log(1.2));
        double again = Math.log(1.15);
        WeighedPiece lighter = WeighedPiece.byGauge(0.143, 20e3, 1.2);
        double[] inputs = inputs(Input.PRESS, 1.1);
        double alone = solver(GAUGE).solve(inputs, 0.5, 0.5, 0.5);
        double[] both = inputs(Input.PRESS, 1.1);
        double weight = solver(GAUGE.and(lighter)).solve(both, 0.5, 0.5, 0.5);
        assertThat(both).containsExactly(inputs);
        assertThat(weight - alone).isCloseTo(density(lighter, inputs, 1, gauge, 0), within(BEND));
        // one hand: the factor of its word is shared, and what is left is one press against the next
        WeighedPiece soft = WeighedPiece.byHand(0.143, 20e3);
        double[] hand = inputs(Input.PRESS, 1.1);
        double first = solver(HAND).solve(hand, 0.5, 0.5, 0.5);
        double with = solver(HAND.and(soft)).solve(inputs(Input.PRESS, 1.1), 0.5, 0.5, 0.5);
        assertThat(with - first).isCloseTo(density(soft, hand, 1.1, again, 0), within(BEND));
        // the same hand, and a press of its own for the piece asked about: the factor is that of the first piece
        double[] own = FACTORS.medians();
        double one = new PressedWeightSolver(HAND, BY_GAUGE, BALL, FACTORS).solve(own, 0.5, 0.7, 0.5);
        double two = new PressedWeightSolver(HAND.and(soft), BY_GAUGE, BALL, FACTORS)
                .solve(FACTORS.medians(), 0.5, 0.7, 0.5);
        double factor = Math.pow(1.6, 0.5244005127080407); // 70 % of a normal law lies below 0.5244 (tables)
        assertThat(two - one).isCloseTo(density(soft, own, factor, again, 0), within(BEND));
        // a hand beside a gauge has nothing in common with it
        double gauged = solver(GAUGE.and(soft)).solve(inputs(Input.PRESS, 1.1), 0.5, 0.5, 0.5);
        double alien = Math.hypot(again, Math.log(1.6));
        assertThat(gauged - alone).isCloseTo(density(soft, inputs, 1, alien, 0), within(BEND));
        // another mould has its own error of size
        WeighedPiece elsewhere = lighter.in(BALL);
        double moulds = solver(GAUGE.and(elsewhere)).solve(inputs(Input.PRESS, 1.1), 0.5, 0.5, 0.5);
        assertThat(moulds - alone).isCloseTo(density(elsewhere, inputs, 1, gauge, 3 * 0.2 / 65), within(BEND));
    }

    @Test
    void whereNothingIsSolvedAllPiecesWeigh() {
        double gauge = Math.hypot(Math.log(1.05), Math.log(1.2));
        WeighedPiece lighter = WeighedPiece.byGauge(0.143, 20e3, 1.2);
        double[] inputs = inputs(Input.MOULD_SIZE, 0.2e-3);
        double[] kept = inputs.clone();
        double both = density(GAUGE, inputs, 1, gauge, 0) + density(lighter, inputs, 1, gauge, 0);
        assertThat(solver(GAUGE.and(lighter)).logLikelihood(inputs)).isCloseTo(both, within(2 * BEND));
        assertThat(solver(GAUGE).logLikelihood(inputs)).isCloseTo(density(GAUGE, inputs, 1, gauge, 0), within(BEND));
        assertThat(inputs).containsExactly(kept);
    }

    @Test
    void noScaleGivesWhatNoMouldHolds() {
        for (double mass : new double[] {0.03, 0.4}) {
            WeighedPiece piece = WeighedPiece.byGauge(mass, FIRM, 1.2);
            double[] inputs = FACTORS.medians();
            assertThat(solver(piece).solve(inputs, 0.5, 0.5, 0.5)).isEqualTo(Double.NEGATIVE_INFINITY);
            assertThat(inputs).containsExactly(FACTORS.medians());
        }
    }

    /** What a filled piece was filled into is the mould of the weighed one. */
    @Test
    void theMouldIsThatOfTheFill() {
        Making filled = new Moulded.Filled(MIX, 0.14, Optional.empty(), DryingPlan.none());
        assertThat(new PressedWeightSolver(GAUGE, filled, BALL, FACTORS).mass(FACTORS.medians(), 0.5, 0.5))
                .isCloseTo(mass(GAUGE, FACTORS.medians()), within(0.02 * 0.145));
    }
}
