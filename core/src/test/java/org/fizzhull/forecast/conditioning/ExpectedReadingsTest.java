package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: what is told on either side of an interval; OTHER LIBRARY: medians of the draws by Commons Math. */
class ExpectedReadingsTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Sampling FEW = new Sampling(1, 128);
    private static final Interval EXPECTED = new Interval(100, 80, 120);
    private static final Interval MASSES = new Interval(0.15, 0.14, 0.16);

    private static List<String> told(ExpectedReadings expected) {
        return expected.surprises().stream().map(Notice::code).toList();
    }

    private static List<String> fizz(double time) {
        return told(new ExpectedReadings(
                Observations.none().fizzed(TimedPiece.fizzed(time)),
                Optional.of(EXPECTED),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty()));
    }

    private static ExpectedReadings rise(double time, double risers, double floaters) {
        return new ExpectedReadings(
                Observations.none().rose(TimedPiece.rose(time)),
                Optional.empty(),
                Optional.of(EXPECTED),
                risers,
                floaters,
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void whatLiesOutsideIsASurprise() {
        assertThat(fizz(80)).isEmpty();
        assertThat(fizz(120)).isEmpty();
        assertThat(fizz(79)).containsExactly("measured-fizz-unexpected");
        assertThat(fizz(121)).containsExactly("measured-fizz-unexpected");
        assertThat(told(rise(100, 0.5, 0.2))).isEmpty();
        assertThat(told(rise(121, 0.5, 0.2))).containsExactly("measured-rise-unexpected");
        for (double mass : new double[] {0.14, 0.16, 0.139, 0.161}) {
            List<String> codes = told(new ExpectedReadings(
                    Observations.none().weighed(WeighedPiece.byHand(mass, 3e4)).held(HeldPiece.of(mass, 4)),
                    Optional.empty(),
                    Optional.empty(),
                    0,
                    0,
                    Optional.of(MASSES),
                    Optional.of(MASSES)));
            if (mass == 0.14 || mass == 0.16) {
                assertThat(codes).isEmpty();
            } else {
                assertThat(codes).containsExactly("measured-lift-unexpected", "weighed-unexpected");
            }
        }
    }

    /** One rise in forty draws is hardly expected, whatever its time; where every draw floats at once it is refused. */
    @Test
    void aRiseThatWasHardlyExpected() {
        assertThat(told(rise(100, 0.025, 0.9))).isEmpty();
        assertThat(rise(100, 0.024, 0.9).surprises())
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).contains("hardly expected"));
        assertThat(told(rise(100, 0.5, 0.999))).isEmpty();
        assertThatThrownBy(() -> rise(100, 0, 1).surprises())
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("contradiction"));
    }

    private static double[] draws(PreparedQuestion prepared, ToDoubleFunction<double[]> reading) {
        MonteCarlo run = new MonteCarlo(prepared.factors().priors(), 128, 1, Workers.CALLER);
        return run.draws(() -> reading::applyAsDouble);
    }

    private static double median(double[] draws) {
        return new Median().evaluate(draws);
    }

    @Test
    void readingsOfTheDraws() {
        PreparedQuestion prepared = PreparedQuestion.of(Question.weighed(BALL, 0.145), Factors.standard());
        TimedPiece fizzed = TimedPiece.fizzed(200).weighing(0.142);
        TimedPiece rose = TimedPiece.rose(95).weighing(0.146);
        HeldPiece held = HeldPiece.of(0.147, 4);
        ExpectedReadings expected = ExpectedReadings.of(
                prepared, Observations.none().fizzed(fizzed).rose(rose).held(held), FEW, Workers.CALLER);
        TimedVoyage first = new TimedVoyage(prepared, OptionalDouble.of(0.142));
        Interval fizz = expected.fizz().orElseThrow();
        assertThat(fizz.median()).isCloseTo(median(draws(prepared, first::fizz)), within(0.05 * fizz.median()));
        TimedVoyage second = new TimedVoyage(prepared, OptionalDouble.of(0.146));
        double[] rises = draws(prepared, second::rise);
        double[] later = Arrays.stream(rises)
                .filter(time -> time > 0 && Double.isFinite(time))
                .toArray();
        assertThat(later).hasSizeGreaterThan(5);
        assertThat(expected.risers()).isCloseTo(later.length / 128.0, within(1e-12));
        long floaters = Arrays.stream(rises).filter(time -> time == 0).count();
        assertThat(floaters).isPositive();
        assertThat(expected.floaters()).isCloseTo(floaters / 128.0, within(1e-12));
        Interval times = expected.rise().orElseThrow();
        assertThat(times.median()).isCloseTo(median(later), within(0.2 * times.median()));
        assertThat(times.high()).isLessThanOrEqualTo(Arrays.stream(later).max().orElseThrow());
        DunkReading dunk = new DunkReading(prepared, held);
        Interval lift = expected.lift().orElseThrow();
        assertThat(lift.median()).isCloseTo(median(draws(prepared, dunk::first)), within(0.002));
        assertThat(expected.mass()).isEmpty();
        // what was not measured is not expected either
        ExpectedReadings none = ExpectedReadings.of(prepared, Observations.none(), FEW, Workers.CALLER);
        assertThat(none.fizz()).isEmpty();
        assertThat(none.rise()).isEmpty();
        assertThat(none.risers()).isZero();
        assertThat(none.floaters()).isZero();
        assertThat(none.lift()).isEmpty();
        assertThat(none.surprises()).isEmpty();
    }

    @Test
    void theWeightOfAPressedPiece() {
        Making making = new Moulded.Pressed(
                Blend.of(ExampleRecipes.lemon(IngredientTable.standard())),
                3e4,
                1.6,
                MouldDimensions.Filling.usual(BALL),
                DryingPlan.none());
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        PreparedQuestion prepared = PreparedQuestion.of(Question.of(BALL, making), Factors.standard());
        PressedWeightSolver solver = new PressedWeightSolver(piece, making, BALL, prepared.factors());
        double expected = median(draws(prepared, inputs -> solver.mass(inputs, 0.5, 0.5)));
        ExpectedReadings bathed =
                ExpectedReadings.of(prepared, Observations.none().weighed(piece), FEW, Workers.CALLER);
        assertThat(bathed.mass().orElseThrow().median()).isCloseTo(expected, within(0.002));
        ExpectedReadings alone = ExpectedReadings.weighed(making, BALL, prepared.factors(), piece, FEW, Workers.CALLER);
        assertThat(alone.mass()).isEqualTo(bathed.mass());
        assertThat(alone.surprises()).isEmpty();
    }
}
