package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** ANALYTIC: draws made by hand, of which it can be counted what a reading settles. */
class NextMeasurementTest {
    private static final int DRAWS = 800;
    private static final double PIECE = 0.14;
    private static final PreparedQuestion POSED =
            PreparedQuestion.of(Question.weighed(Sphere.ofDiameter(0.065), PIECE), Factors.standard());

    /** Fizz times of 100 s and 1000 s are told apart by any stopwatch: with them it is known which draws float. */
    @Test
    void aReadingThatTellsAllSettlesAll() {
        MeasureNext next = next(DRAWS / 2).orElseThrow();
        assertThat(next.kind()).isEqualTo(MeasureNext.Kind.TIME_FIZZ);
        assertThat(next.settles()).isEqualTo(1);
        assertThat(next.widthAfter()).isLessThan(0.1 * next.widthBefore());
    }

    /** Of eight classes of readings one is half of this kind, half of that: it stays unsettled. */
    @Test
    void aClassOfBothKindsStaysOpen() {
        assertThat(next(DRAWS * 7 / 16).orElseThrow().settles()).isCloseTo(7 / 8.0, within(1e-12));
    }

    /** A reading that has nothing to do with floating is not proposed. */
    @Test
    void aReadingThatTellsNothingIsNone() {
        double[][] columns = columns();
        for (int i = 0; i < DRAWS; i++) {
            columns[VoyageModel.END][i] = PIECE + (i % 2 == 0 ? 0.01 : -0.01);
            columns[VoyageModel.FIZZ_TIME][i] = 100 + i / 2;
        }
        assertThat(NextMeasurement.of(POSED, Observations.none(), columns, 0.5)).isEmpty();
    }

    /**
     * By hand: half of the readings are 100 s with 3 s and 3 %, 4.24 s; half 1000 s with 30.15 s. The ends of 95 % of all are the
     * 5 and 95 % points of each half, 1.645 deviations off (tables). Margins of 10 g to both sides are 20 g wide.
     */
    @Test
    void whatIsExpectedOfTheReading() {
        MeasureNext next = next(DRAWS / 2).orElseThrow();
        assertThat(next.mass()).isEqualTo(PIECE);
        assertThat(next.expected().low()).isCloseTo(100 - 1.645 * Math.hypot(3, 3), within(1.0));
        assertThat(next.expected().high()).isCloseTo(1000 + 1.645 * Math.hypot(3, 30), within(5.0));
        assertThat(next.widthBefore()).isCloseTo(0.02, within(1e-12));
        assertThat(next.left()).isEmpty();
    }

    @Test
    void whatWasMeasuredIsNotProposed() {
        Observations seen = Observations.none().fizzed(TimedPiece.fizzed(200));
        assertThat(NextMeasurement.of(POSED, seen, halves(VoyageModel.FIZZ_TIME, 100, 1000), 0.5))
                .isEmpty();
    }

    /** Nothing is left to settle below a chance of 1 in 20 or above 19 in 20, nor in still water. */
    @Test
    void whatIsSettledNeedsNoMeasurement() {
        for (double chance : new double[] {0.049, 0.951}) {
            assertThat(NextMeasurement.of(POSED, Observations.none(), fizzing(DRAWS / 2), chance))
                    .isEmpty();
        }
        for (double chance : new double[] {0.05, 0.95}) {
            assertThat(NextMeasurement.of(POSED, Observations.none(), fizzing(DRAWS / 2), chance))
                    .isPresent();
        }
        PreparedQuestion still =
                PreparedQuestion.of(Question.still(Sphere.ofDiameter(0.065), PIECE), Factors.standard());
        assertThat(NextMeasurement.of(still, Observations.none(), fizzing(DRAWS / 2), 0.5))
                .isEmpty();
    }

    /** Scales of 2 g tell 130 g from 160 g. */
    @Test
    void aReadingUnderWater() {
        double[][] columns = halves(VoyageModel.HELD, 0.16, 0.13);
        MeasureNext next = only(columns);
        assertThat(next.kind()).isEqualTo(MeasureNext.Kind.HOLD_UNDER);
        assertThat(next.settles()).isEqualTo(1);
        // what two pieces differ by, twice, beside the 2 g of a reading
        double own =
                HeldPiece.ownLift(POSED.question().shape(), POSED.question().bath());
        double deviation = Math.sqrt(4e-6 + 2 * own * own);
        assertThat(next.expected().low()).isCloseTo(0.13 - 1.645 * deviation, within(3e-4));
        assertThat(next.expected().high()).isCloseTo(0.16 + 1.645 * deviation, within(3e-4));
        Observations seen = Observations.none().held(HeldPiece.of(0.15, 4));
        assertThat(NextMeasurement.of(POSED, seen, columns, 0.5)).isEmpty();
    }

    /** A heavier piece that comes up after 100 s, or never: what is expected is of those that come up, their width too. */
    @Test
    void theRiseOfAHeavierPiece() {
        double[][] columns = halves(VoyageModel.HEAVIER_RISE, 100, Double.POSITIVE_INFINITY);
        for (int i = 0; i < DRAWS; i++) {
            columns[VoyageModel.HEAVIER_LEFT][i] = 0.04;
        }
        MeasureNext next = only(columns);
        assertThat(next.kind()).isEqualTo(MeasureNext.Kind.TIME_RISE);
        assertThat(next.mass()).isEqualTo(POSED.heavier());
        double deviation = Math.hypot(4, 5);
        assertThat(next.expected().median()).isCloseTo(100, within(0.5));
        assertThat(next.expected().low()).isCloseTo(100 - 1.96 * deviation, within(1.0));
        assertThat(next.expected().high()).isCloseTo(100 + 1.96 * deviation, within(1.0));
        assertThat(next.left().orElseThrow()).isEqualTo(0.04);
        Observations seen = Observations.none().rose(TimedPiece.rose(95).weighing(0.15));
        assertThat(NextMeasurement.of(POSED, seen, columns, 0.5)).isEmpty();
        // a rise at once shows no time
        double[][] once = halves(VoyageModel.HEAVIER_RISE, 0, 100);
        MeasureNext up = only(once);
        assertThat(up.expected().low()).isGreaterThan(80);
        assertThat(up.settles()).isEqualTo(1);
    }

    /** A mould 1 mm larger floats what one 1 mm smaller sinks: water in it tells that, where it was not weighed already. */
    @Test
    void waterInTheMould() {
        double[][] columns = halves(VoyageModel.SIZE_ERROR, 1e-3, -1e-3);
        assertThat(only(columns).kind()).isEqualTo(MeasureNext.Kind.WEIGH_WATER);
        // 1 g of water is 0.15 mm of a ball of 65 mm
        assertThat(only(columns).expected().high()).isCloseTo(1e-3 + 1.645 * 0.15e-3, within(2e-5));
        PreparedQuestion known = PreparedQuestion.of(POSED.question().measured(Measured.WATER), Factors.standard());
        assertThat(NextMeasurement.of(known, Observations.none(), columns, 0.5)).isEmpty();
    }

    /** A piece from the press, on scales of a gram: its weight is that of the middle draw. */
    @Test
    void theWeightOfAPressedPiece() {
        Sphere ball = Sphere.ofDiameter(0.065);
        Moulded pressed = new Moulded.Pressed(
                Blend.of(ExampleRecipes.lemon(IngredientTable.standard())),
                3e4,
                1.6,
                MouldDimensions.Filling.usual(ball),
                DryingPlan.none());
        PreparedQuestion question = PreparedQuestion.of(Question.of(ball, pressed), Factors.standard());
        double[][] columns = halves(VoyageModel.MEAN, 0.13, 0.15);
        for (int i = 0; i < DRAWS; i++) {
            columns[VoyageModel.END][i] = 0.14;
            columns[VoyageModel.MASS][i] = 0.1 + 1e-4 * i;
        }
        MeasureNext next =
                NextMeasurement.of(question, Observations.none(), columns, 0.5).orElseThrow();
        assertThat(next.kind()).isEqualTo(MeasureNext.Kind.WEIGH_PRESSED);
        assertThat(next.mass()).isCloseTo(0.14, within(1e-4));
        assertThat(next.expected().low()).isCloseTo(0.13 - 1.645 * 0.5e-3, within(1e-4));
        Observations seen = Observations.none().weighed(WeighedPiece.byHand(0.14, 3e4));
        assertThat(NextMeasurement.of(question, seen, columns, 0.5)).isEmpty();
        // a piece on the scale is weighed already
        assertThat(NextMeasurement.of(POSED, Observations.none(), columns, 0.5)).isEmpty();
    }

    /** Of two that settle all, the one that leaves the smaller width is named: 2 g of 60 g against 3 s of 20 s. */
    @Test
    void theSharperOneIsNamed() {
        double[][] columns = halves(VoyageModel.FIZZ_TIME, 100, 108);
        assertThat(only(columns).kind()).isEqualTo(MeasureNext.Kind.TIME_FIZZ);
        for (int i = 0; i < DRAWS; i++) {
            columns[VoyageModel.HELD][i] = i % 2 == 0 ? 0.16 : 0.1;
        }
        assertThat(only(columns).kind()).isEqualTo(MeasureNext.Kind.HOLD_UNDER);
        assertThat(only(columns).widthAfter()).isLessThan(0.002);
    }

    private static MeasureNext only(double[][] columns) {
        return NextMeasurement.of(POSED, Observations.none(), columns, 0.5).orElseThrow();
    }

    /** Every other draw floats and shows one value in a column, the rest sink and show another. */
    private static double[][] halves(int column, double floating, double sinking) {
        double[][] columns = columns();
        for (int i = 0; i < DRAWS; i++) {
            columns[VoyageModel.END][i] = PIECE + (i % 2 == 0 ? 0.01 : -0.01);
            columns[column][i] = i % 2 == 0 ? floating : sinking;
        }
        return columns;
    }

    /** So many draws float and fizz for 100 s; the others sink and fizz for 1000 s. */
    private static Optional<MeasureNext> next(int floating) {
        return NextMeasurement.of(POSED, Observations.none(), fizzing(floating), floating / (double) DRAWS);
    }

    private static double[][] fizzing(int floating) {
        double[][] columns = columns();
        for (int i = 0; i < DRAWS; i++) {
            boolean floats = i < floating;
            columns[VoyageModel.END][i] = PIECE + (floats ? 0.01 : -0.01);
            columns[VoyageModel.FIZZ_TIME][i] = floats ? 100 : 1000;
        }
        return columns;
    }

    private static double[][] columns() {
        double[][] columns = new double[VoyageModel.CRITICAL_WIDTH][DRAWS];
        Arrays.fill(columns[VoyageModel.MEAN], PIECE);
        Arrays.fill(columns[VoyageModel.HELD], 0.15);
        return columns;
    }
}
