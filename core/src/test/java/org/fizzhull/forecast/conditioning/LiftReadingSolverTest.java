package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;

/**
 * BY DEFINITION: with the solved size the scale shows what it showed. OTHER METHOD: score and slope of the weight -z^2/2 - ln(dR/dz)
 * from the cumulative prior and a straight line through the readings a twentieth of a deviation to both sides.
 */
class LiftReadingSolverTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.142);
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(QUESTION, Factors.standard());
    private static final Factors FACTORS = PREPARED.factors();
    private static final int BUBBLE = FACTORS.column(Input.BUBBLE_SIZE);
    private static final Prior PRIOR = FACTORS.solved(Input.BUBBLE_SIZE);
    /** In the middle of the choices the plume is felt and the next piece is like this one. */
    private static final double LIKE = 0.5;

    private final DunkReadings dunk = new DunkReadings(PREPARED, List.of(HeldPiece.of(0.147, 5)));
    private final LiftReadingSolver solver = LiftReadingSolver.of(dunk, FACTORS);

    private double reading(double[] inputs, double score, boolean felt) {
        double[] at = inputs.clone();
        at[BUBBLE] = PRIOR.quantile(NORMAL.cumulativeProbability(score));
        return dunk.reading(at, felt);
    }

    @Test
    void theSolvedSizeShowsTheReading() {
        SplittableRandom random = new SplittableRandom(3);
        int met = 0;
        for (int i = 0; i < 40; i++) {
            double[] inputs = SomeInputs.of(FACTORS, random);
            double before = inputs[BUBBLE];
            solver.measure(0.5, LIKE);
            double weight = solver.solve(inputs, false);
            if (weight == Double.NEGATIVE_INFINITY) {
                assertThat(inputs[BUBBLE]).isEqualTo(before);
                // no score within four deviations shows so much, or so little
                assertThat((reading(inputs, -4, true) - 0.147) * (reading(inputs, 4, true) - 0.147))
                        .isGreaterThan(-1e-6);
                continue;
            }
            met++;
            assertThat(dunk.reading(inputs, true)).isCloseTo(0.147, within(1e-7));
            double score = NORMAL.inverseCumulativeProbability(PRIOR.cumulative(inputs[BUBBLE]));
            double slope = (reading(inputs, score + 0.05, true) - reading(inputs, score - 0.05, true)) / 0.1;
            assertThat(weight).isCloseTo(-0.5 * score * score - Math.log(slope), within(5e-3));
        }
        assertThat(met).isGreaterThan(20);
        assertThat(solver.column()).isEqualTo(BUBBLE);
    }

    /** Tables: 84.134 % lies below one deviation. The deviation of the reading is that of the dunk. */
    @Test
    void theErrorOfTheReadingIsDrawn() {
        solver.measure(0.8413447460685429, LIKE);
        double[] inputs = FACTORS.medians();
        solver.solve(inputs, false);
        assertThat(dunk.reading(inputs, true)).isCloseTo(0.147 + dunk.deviation(), within(1e-7));
    }

    /**
     * BY DEFINITION: below 0.05 and above 0.95 of the choice the scale does not feel the plume. What is left of the choice, 1/2 at
     * those borders, 1/4 at 0.025 and 3/4 at 0.975, says how the next piece differs, in quantiles of a normal law (tables).
     */
    @Test
    void oneOfTenScalesFeelsNoPlume() {
        double[] felt = solved(LIKE);
        for (double choice : new double[] {0.0499999, 0.9500001}) {
            double[] not = solved(choice);
            assertThat(dunk.reading(not, false)).isCloseTo(0.147, within(1e-7));
            assertThat(not[BUBBLE]).isNotCloseTo(felt[BUBBLE], within(1e-3 * felt[BUBBLE]));
            double own = (choice < 0.5 ? -1 : 1) * 0.6744897501960817 * dunk.own();
            double[] next = solved(choice < 0.5 ? 0.025 : 0.975);
            assertThat(dunk.spare(next) - dunk.spare(not)).isCloseTo(own, within(0.1 * Math.abs(own)));
        }
    }

    private double[] solved(double choice) {
        double[] inputs = FACTORS.medians();
        solver.measure(0.5, choice);
        assertThat(solver.solve(inputs, false)).isFinite();
        return inputs;
    }

    /**
     * BY DEFINITION: 1/4 of what is left of the choice is 0.6745 deviations (tables) of what two pieces of one mould differ by: so
     * much less the next piece has to spare than one like that in the bowl, to the bend of the spare over that way.
     */
    @Test
    void theNextPieceDiffersByWhatIsItsOwn() {
        double[] like = solved(LIKE);
        double weight = solver.solve(FACTORS.medians(), false);
        for (double part : new double[] {0.25, 0.75}) {
            double[] next = FACTORS.medians();
            solver.measure(0.5, 0.05 + 0.9 * part);
            assertThat(solver.solve(next, false)).isCloseTo(weight, within(1e-12));
            double own = (part < 0.5 ? -1 : 1) * 0.6744897501960817 * dunk.own();
            assertThat(dunk.spare(next) - dunk.spare(like)).isCloseTo(own, within(0.1 * Math.abs(own)));
        }
    }

    /** BY DEFINITION: how several readings lie around their mean weighs the draw beside the mean that is solved for. */
    @Test
    void severalReadingsWeighByHowTheyLie() {
        HeldPiece read = HeldPiece.of(0.150, 2).then(0.142, 4);
        DunkReadings several = new DunkReadings(PREPARED, List.of(read));
        LiftReadingSolver mean = LiftReadingSolver.of(several, FACTORS);
        double[] inputs = FACTORS.medians();
        mean.measure(0.5, LIKE);
        double weight = mean.solve(inputs, false);
        assertThat(several.reading(inputs, true)).isCloseTo(several.shown(), within(1e-7));
        double score = NORMAL.inverseCumulativeProbability(PRIOR.cumulative(inputs[BUBBLE]));
        double[] above = inputs.clone();
        above[BUBBLE] = PRIOR.quantile(NORMAL.cumulativeProbability(score + 0.05));
        double[] below = inputs.clone();
        below[BUBBLE] = PRIOR.quantile(NORMAL.cumulativeProbability(score - 0.05));
        double slope = (several.reading(above, true) - several.reading(below, true)) / 0.1;
        double rest = several.logRest(inputs, true);
        assertThat(rest).isLessThan(-1);
        assertThat(weight).isCloseTo(-0.5 * score * score - Math.log(slope) + rest, within(5e-3));
    }

    @Test
    void whatNoPieceShowsIsMetByNoSize() {
        DunkReadings none = new DunkReadings(PREPARED, List.of(HeldPiece.of(0.03, 5)));
        LiftReadingSolver never = LiftReadingSolver.of(none, FACTORS);
        never.measure(0.5, LIKE);
        double[] inputs = FACTORS.medians();
        assertThat(never.solve(inputs, false)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(inputs).containsExactly(FACTORS.medians());
    }

    /** By hand: 1 mm of a ball of 65 mm is 6.6 g of water, more than its gas; 0.2 mm is 1.3 g, less. */
    @Test
    void whatMovesTheReadingMoreIsSolved() {
        PreparedQuestion nominal = PreparedQuestion.of(QUESTION.measured(Measured.NOMINAL), Factors.standard());
        Factors factors = nominal.factors();
        DunkReadings bowls = new DunkReadings(nominal, List.of(HeldPiece.of(0.147, 5)));
        LiftReadingSolver size = LiftReadingSolver.of(bowls, factors);
        assertThat(size.column()).isEqualTo(factors.column(Input.MOULD_SIZE));
        double[] inputs = factors.medians();
        size.measure(0.5, LIKE);
        assertThat(size.solve(inputs, false)).isFinite();
        assertThat(bowls.reading(inputs, true)).isCloseTo(0.147, within(1e-7));
        Factors exact = Factors.standard().without(Input.MOULD_SIZE);
        PreparedQuestion known = PreparedQuestion.of(QUESTION, exact);
        LiftReadingSolver bubble =
                LiftReadingSolver.of(new DunkReadings(known, List.of(HeldPiece.of(0.147, 5))), known.factors());
        assertThat(bubble.column()).isEqualTo(known.factors().column(Input.BUBBLE_SIZE));
    }
}
