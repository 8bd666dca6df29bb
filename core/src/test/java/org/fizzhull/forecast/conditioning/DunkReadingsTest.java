package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.LiftReading;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.HeldUnder;
import org.junit.jupiter.api.Test;

/**
 * OTHER LIBRARY: the density of all readings by the multivariate normal distribution of Commons Math, with the covariance put
 * together here: of the readings, of two pieces of one mould, and of one deviation of scale and bath (JCGM 101:2008).
 */
class DunkReadingsTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.142);
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(QUESTION, Factors.standard());
    private static final Factors FACTORS = PREPARED.factors();
    private static final double OWN = HeldPiece.ownLift(BALL, QUESTION.bath());
    /** Of a normal law so much lies below one deviation (tables). */
    private static final double ONE_SIGMA = 0.8413447460685429;

    private static final HeldPiece FIRST =
            HeldPiece.of(0.147, 2).then(0.1465, 4).within(0.003);
    private static final HeldPiece SECOND = HeldPiece.of(0.144, 5).weighing(0.139);

    /** What a scale shows of a piece at one of its readings. */
    private static double held(HeldPiece piece, int reading, double[] inputs, boolean felt) {
        Question question =
                piece.mass().isPresent() ? QUESTION.weighing(piece.mass().getAsDouble()) : QUESTION;
        DropModel drop = new DropModel(PREPARED.ask(question));
        drop.at(inputs);
        return new HeldUnder(PREPARED.form(), QUESTION.bath())
                .reading(drop.launch(), piece.readings().get(reading).seconds(), felt);
    }

    private static RealMatrix covariance(HeldPiece piece) {
        int n = piece.readings().size();
        double[][] all = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                all[i][j] = piece.covariance(i, j) + OWN * OWN;
                for (Input input : new Input[] {Input.SCALE, Input.BATH_TEMPERATURE}) {
                    double[] moved = FACTORS.medians();
                    int column = FACTORS.column(input);
                    moved[column] = FACTORS.priors().get(column).quantile(ONE_SIGMA);
                    all[i][j] += (held(piece, i, moved, true) - held(piece, i, FACTORS.medians(), true))
                            * (held(piece, j, moved, true) - held(piece, j, FACTORS.medians(), true));
                }
            }
        }
        return new Array2DRowRealMatrix(all);
    }

    @Test
    void oneReadingHasNothingBesideItsMean() {
        DunkReadings one = new DunkReadings(PREPARED, List.of(SECOND));
        assertThat(one.shown()).isCloseTo(0.144, within(1e-15));
        assertThat(one.own()).isEqualTo(OWN);
        assertThat(one.deviation()).isCloseTo(Math.sqrt(covariance(SECOND).getEntry(0, 0)), within(1e-9));
        assertThat(one.logRest(FACTORS.medians(), true)).isZero();
        assertThat(one.reading(FACTORS.medians(), true))
                .isCloseTo(held(SECOND, 0, FACTORS.medians(), true), within(1e-15));
        assertThat(one.reading(FACTORS.medians(), false))
                .isCloseTo(held(SECOND, 0, FACTORS.medians(), false), within(1e-15));
        double spare = new DropModel(PREPARED.ask(QUESTION.weighing(0.139))).at(FACTORS.medians());
        assertThat(one.spare(FACTORS.medians())).isCloseTo(spare, within(1e-15));
    }

    /** The dunked piece has its own error of scale and bath: those of the draw are not those of its reading. */
    @Test
    void scaleAndBathOfADrawAreNotThoseOfTheDunk() {
        DunkReading dunk = new DunkReading(PREPARED, SECOND);
        double[] moved = FACTORS.medians();
        moved[FACTORS.column(Input.SCALE)] = 4e-4;
        moved[FACTORS.column(Input.BATH_TEMPERATURE)] = 2;
        double[] kept = moved.clone();
        assertThat(dunk.first(moved)).isCloseTo(held(SECOND, 0, FACTORS.medians(), true), within(1e-15));
        assertThat(moved).containsExactly(kept);
    }

    @Test
    void readingsOfTwoPiecesByTheirJointDensity() {
        RealMatrix first = covariance(FIRST);
        RealMatrix all = new Array2DRowRealMatrix(3, 3);
        all.setSubMatrix(first.getData(), 0, 0);
        all.setEntry(2, 2, covariance(SECOND).getEntry(0, 0));
        RealMatrix precision = new LUDecomposition(all).getSolver().getInverse();
        double[] shown = {0.147, 0.1465, 0.144};
        double sum = 0;
        double mean = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                sum += precision.getEntry(i, j);
                mean += precision.getEntry(i, j) * shown[i];
            }
        }
        mean /= sum;
        DunkReadings dunks = new DunkReadings(PREPARED, List.of(FIRST, SECOND));
        assertThat(dunks.shown()).isCloseTo(mean, within(1e-12));
        assertThat(dunks.deviation()).isCloseTo(1 / Math.sqrt(sum), within(1e-10));
        double[] inputs = FACTORS.medians();
        inputs[FACTORS.column(Input.BUBBLE_SIZE)] *= 1.3;
        double likelihood = 0;
        for (boolean felt : new boolean[] {true, false}) {
            double[] made = {held(FIRST, 0, inputs, felt), held(FIRST, 1, inputs, felt), held(SECOND, 0, inputs, felt)};
            // the joint density of all readings is that of their mean times that of the rest
            double whole = Math.log(density(made, all, shown) / density(shown, all, shown));
            double expected = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    expected += precision.getEntry(i, j) * made[i] / sum;
                }
            }
            assertThat(dunks.reading(inputs, felt)).isCloseTo(expected, within(1e-12));
            double ofMean = -0.5 * sum * (mean - expected) * (mean - expected);
            assertThat(dunks.logRest(inputs, felt)).isCloseTo(whole - ofMean, within(1e-9));
            // the next piece differs by its own beside the error of the mean
            double next = -0.5 * Math.pow(mean - expected, 2) / (1 / sum + OWN * OWN) + whole - ofMean;
            likelihood += (felt ? 0.9 : 0.1) * Math.exp(next);
        }
        assertThat(dunks.logLikelihood(inputs)).isCloseTo(Math.log(likelihood), within(1e-9));
    }

    private static double density(double[] mean, RealMatrix covariance, double[] at) {
        return new MultivariateNormalDistribution(mean, covariance.getData()).density(at);
    }

    /** BY DEFINITION: of a known reading the better one counts by its variance, 4 of 1 and 4. */
    @Test
    void theBetterReadingCountsMore() {
        HeldPiece sharp = new HeldPiece(List.of(new LiftReading(0.15, 0.02, 5)), FIRST.mass());
        HeldPiece blunt = new HeldPiece(List.of(new LiftReading(0.14, 0.04, 5)), FIRST.mass());
        // against 20 and 40 g what else is in the covariance is below 1 %
        assertThat(new DunkReadings(PREPARED, List.of(sharp, blunt)).shown())
                .isCloseTo(0.8 * 0.15 + 0.2 * 0.14, within(1e-4));
    }
}
