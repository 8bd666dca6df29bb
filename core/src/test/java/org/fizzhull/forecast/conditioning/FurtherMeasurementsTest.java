package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** BY HAND: -1/2 ((x - y)/s)^2 of each measurement, y of a voyage sailed in the test. */
class FurtherMeasurementsTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.142);
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(QUESTION, Factors.standard());
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final double[] MEDIANS = PREPARED.factors().medians();
    private static final TimedPiece ROSE =
            TimedPiece.rose(90).within(6).weighing(0.15).leaving(0.05);
    private static final TimedPiece FIZZED = TimedPiece.fizzed(200).within(20);
    private static final HeldPiece HELD = HeldPiece.of(0.147, 5);

    private static double of(Observations seen) {
        return FurtherMeasurements.of(PREPARED, seen).logLikelihood(MEDIANS.clone());
    }

    private static double all(Observations seen) {
        return FurtherMeasurements.all(PREPARED, seen).logLikelihood(MEDIANS.clone());
    }

    private static double square(double off) {
        return -0.5 * off * off;
    }

    private static double fizz() {
        return square((200 - new TimedVoyage(PREPARED, OptionalDouble.empty()).fizz(MEDIANS)) / 20);
    }

    private static double rise() {
        TimedVoyage voyage = new TimedVoyage(PREPARED, OptionalDouble.of(0.15));
        double time = voyage.rise(MEDIANS);
        return square((90 - time) / 6) + square((voyage.width() - 0.05) / 0.005);
    }

    private static double lift() {
        return new DunkReadings(PREPARED, List.of(HELD)).logLikelihood(MEDIANS.clone());
    }

    @Test
    void theFirstOfEachKindIsSolvedForAndTheOthersWeigh() {
        Observations none = Observations.none();
        assertThat(of(none)).isZero();
        assertThat(of(none.fizzed(FIZZED))).isZero();
        assertThat(of(none.fizzed(FIZZED).fizzed(FIZZED))).isCloseTo(fizz(), within(1e-12));
        assertThat(of(none.rose(ROSE))).isZero();
        assertThat(of(none.rose(ROSE).rose(ROSE))).isCloseTo(rise(), within(1e-12));
        assertThat(of(none.held(HELD))).isZero();
        assertThat(of(none.held(HELD).rose(ROSE))).isCloseTo(lift(), within(1e-12));
        assertThat(fizz()).isLessThan(-0.01);
        assertThat(rise()).isLessThan(-0.01);
        assertThat(lift()).isLessThan(-0.001);
    }

    @Test
    void ofWholeDrawsAllWeigh() {
        assertThat(all(Observations.none().fizzed(FIZZED).rose(ROSE).held(HELD)))
                .isCloseTo(fizz() + rise() + lift(), within(1e-12));
        // a piece that never comes up cannot have been timed
        TimedPiece heavy = TimedPiece.rose(90).weighing(0.21);
        assertThat(all(Observations.none().rose(heavy))).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** BY DEFINITION: a weighed piece weighs a whole draw by its own likelihood; a drying log by that of its course. */
    @Test
    void ofWholeDrawsPressAndLogWeighToo() {
        Moulded pressed = new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.usual(BALL), DryingPlan.none());
        PreparedQuestion made = PreparedQuestion.of(Question.of(BALL, pressed), Factors.standard());
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        double[] medians = made.factors().medians();
        double expected = new PressedWeightSolver(piece, pressed, BALL, made.factors()).logLikelihood(medians.clone());
        assertThat(FurtherMeasurements.all(made, Observations.none().weighed(piece))
                        .logLikelihood(medians.clone()))
                .isEqualTo(expected);
        assertThat(FurtherMeasurements.of(made, Observations.none().weighed(piece))
                        .logLikelihood(medians.clone()))
                .isZero();
    }

    /**
     * BY DEFINITION: the size of the mould asked about is that of the logged pieces too where they came from it, and no business of
     * pieces from another.
     */
    @Test
    void aLogOfTheSameMouldSharesItsSize() {
        DryingPlan plan = DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 2 * 86400.0)
                .plan(BALL);
        Moulded dried = new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.usual(BALL), plan);
        PreparedQuestion same = PreparedQuestion.of(Question.of(BALL, dried), Factors.standard());
        Sphere larger = Sphere.ofDiameter(0.07);
        PreparedQuestion other = PreparedQuestion.of(
                Question.of(larger, new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.usual(larger), plan)),
                Factors.standard());
        DryLog log = new DryLog(
                List.of(new DryLog.Series("A", List.of(0.0, 43200.0, 86400.0), List.of(0.15, 0.1486, 0.1481), 1e-4)));
        Observations.LoggedPieces pieces = new Observations.LoggedPieces(BALL, dried, log);
        double[] medians = same.factors().medians();
        double middle = new DriedCourse(same, pieces).logLikelihood(medians);
        assertThat(middle).isNegative();
        assertThat(new DriedCourse(other, pieces).logLikelihood(other.factors().medians()))
                .isCloseTo(middle, within(1e-9));
        double[] moved = medians.clone();
        moved[same.factors().column(Input.MOULD_SIZE)] = 2e-3;
        assertThat(new DriedCourse(same, pieces).logLikelihood(moved)).isNotCloseTo(middle, within(1e-3));
        double[] elsewhere = other.factors().medians();
        elsewhere[other.factors().column(Input.MOULD_SIZE)] = 2e-3;
        assertThat(new DriedCourse(other, pieces).logLikelihood(elsewhere)).isCloseTo(middle, within(1e-9));
        assertThat(FurtherMeasurements.of(same, Observations.none().dried(pieces))
                        .logLikelihood(medians))
                .isEqualTo(middle);
    }

    /** BY DEFINITION: of a hundred results one is written down wrongly; the spare differs from piece to piece by a normal law. */
    @Test
    void resultsWeighByTheirChance() {
        double spare = new TimedVoyage(PREPARED, OptionalDouble.of(0.141)).spare(MEDIANS);
        double below = new NormalDistribution().cumulativeProbability(spare / HeldPiece.ownLift(BALL, QUESTION.bath()));
        assertThat(of(Observations.none().dropped(DroppedPiece.of(DroppedPiece.Result.FLOATED, 0.141))))
                .isCloseTo(Math.log(0.01 + 0.98 * below), within(1e-9));
        for (DroppedPiece.Result down : List.of(DroppedPiece.Result.SANK, DroppedPiece.Result.ROSE)) {
            assertThat(all(Observations.none().dropped(DroppedPiece.of(down, 0.141))))
                    .isCloseTo(Math.log(0.01 + 0.98 * (1 - below)), within(1e-9));
        }
    }
}
