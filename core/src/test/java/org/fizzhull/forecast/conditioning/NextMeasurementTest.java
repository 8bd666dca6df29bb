package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
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

    /** So many draws float and fizz for 100 s; the others sink and fizz for 1000 s. */
    private static Optional<MeasureNext> next(int floating) {
        double[][] columns = columns();
        for (int i = 0; i < DRAWS; i++) {
            boolean floats = i < floating;
            columns[VoyageModel.END][i] = PIECE + (floats ? 0.01 : -0.01);
            columns[VoyageModel.FIZZ_TIME][i] = floats ? 100 : 1000;
        }
        return NextMeasurement.of(POSED, Observations.none(), columns, floating / (double) DRAWS);
    }

    private static double[][] columns() {
        double[][] columns = new double[VoyageModel.CRITICAL_WIDTH][DRAWS];
        java.util.Arrays.fill(columns[VoyageModel.MEAN], PIECE);
        java.util.Arrays.fill(columns[VoyageModel.HELD], 0.15);
        return columns;
    }
}
