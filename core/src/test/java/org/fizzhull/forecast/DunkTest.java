package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.List;
import java.util.SplittableRandom;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.PreparedQuestion;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Statistics;
import org.fizzhull.voyage.HeldUnder;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A piece held wholly under in a bowl on a tared scale, and what its reading does to the forecast of the next one. */
class DunkTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Question ASKED = Question.weighed(BALL, grams(142));
    private static final Sampling DRAWS = new Sampling(1, 1024);
    private static final double SECONDS = 5;

    private static final List<Input> OWN = List.of(Input.SCALE, Input.MOULD_SIZE, Input.BATH_TEMPERATURE);

    /**
     * ANALYTIC (Archimedes): what does not fizz, soak or dissolve shows the mass of water it displaces, whatever it weighs,
     * by 4/3 pi r^3 and the density of the bath.
     */
    @Test
    void withoutFizzTheScaleShowsTheDisplacedWater() {
        FizzParameters slow = new FizzParameters(1e-7, 0, 0, 0, 1e-7, 1e-9, 0, 0.65);
        Bath bath = Bath.at(Units.celsius(38));
        HeldUnder bowl = new HeldUnder(VoyageForm.of(BALL, Release.DROPPED), bath);
        double displaced = bath.density() * 4 / 3 * Math.PI * Math.pow(millimetres(32.5), 3);
        for (double mass : new double[] {120, 142, 170}) {
            Piece piece = new Piece(BALL, grams(mass), new Makeup(2000, 5));
            Launch launch = Launch.of(piece, bath, slow, new VoyageParameters(0, 0));
            // a tenth of a gram: at the slowest speed that is believed some of it still goes
            assertThat(bowl.reading(launch, SECONDS, true)).isCloseTo(displaced, within(grams(0.2)));
        }
    }

    /** By definition of the reading: at the drop, with nothing gone, it is the weight before and what is to spare. */
    @Test
    void theReadingIsTheWeightAndWhatIsToSpare() {
        PreparedQuestion posed = PreparedQuestion.of(ASKED, Factors.standard());
        DropModel drop = new DropModel(posed);
        double[] inputs = posed.factors().medians();
        double spare = drop.at(inputs);
        HeldUnder bowl = new HeldUnder(posed.form(), ASKED.bath());
        // the layer is full to 0.3 % after 6 s; what is lost by then is looked at by taking two times
        double six = drop.held(bowl, 6, true);
        double seven = drop.held(bowl, 7, true);
        assertThat(six - 6 * (seven - six)).isCloseTo(grams(142) + spare, within(grams(0.6)));
    }

    /** By definition: a reading that was expected anyway leaves the middle, and narrows. */
    @Test
    void anExpectedReadingNarrows() {
        Forecast before = FloatPredictor.standard().with(DRAWS).forecast(ASKED);
        double reading = grams(142) + before.spareAtDrop().median();
        Forecast after = knowing(Observations.none().held(HeldPiece.of(reading, SECONDS)));
        assertThat(width(after.critical().interval()))
                .isLessThan(0.6 * width(before.critical().interval()));
        assertThat(after.notices()).extracting(Notice::code).contains("measured-lift-as");
        assertThat(after.narrowing().orElseThrow().effectiveDraws().orElseThrow())
                .isGreaterThan(400);
    }

    /** Two readings tell more than one; beside a rise time the lift still counts. */
    @Test
    void severalMeasurementsTellMore() {
        HeldPiece held = HeldPiece.of(grams(148), SECONDS);
        double one = width(knowing(Observations.none().held(held)).spareAtDrop());
        double two = width(knowing(Observations.none().held(held).held(held)).spareAtDrop());
        assertThat(two).isLessThan(one);
        TimedPiece rose = TimedPiece.rose(95).weighing(grams(150)).leaving(millimetres(50));
        double rise = width(knowing(Observations.none().rose(rose)).spareAtDrop());
        double both = width(knowing(Observations.none()
                        .rose(rose)
                        .held(HeldPiece.of(grams(149), SECONDS).weighing(grams(150))))
                .spareAtDrop());
        assertThat(both).isLessThan(rise);
        double times =
                width(knowing(Observations.none().fizzed(TimedPiece.fizzed(250)).fizzed(TimedPiece.fizzed(240)))
                        .fizzTime()
                        .orElseThrow());
        double time = width(knowing(Observations.none().fizzed(TimedPiece.fizzed(250)))
                .fizzTime()
                .orElseThrow());
        assertThat(times).isLessThan(0.9 * time);
    }

    @Test
    void whatNoPieceShowsIsRefused() {
        assertThatThrownBy(() -> HeldPiece.of(0, SECONDS)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> HeldPiece.of(grams(150), 0)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> HeldPiece.of(grams(150), 45)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> knowing(Observations.none().held(HeldPiece.of(grams(15), SECONDS))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hardly any");
    }

    /** Few truths in every build; the table of 200 is in the proof runs. */
    @Test
    void theNextPieceIsNarrowedAndCovered() {
        Simulation few = new Simulation(24);
        assertThat(few.narrowed()).isLessThan(0.6);
        // 24 truths, each inside with 0.95: fewer than 19 happen with a chance below 0.002 (binomial)
        assertThat(few.inside).isGreaterThanOrEqualTo(19);
    }

    /**
     * OTHER PROGRAM: an independent simulation, not kept, with wider priors and a better known size: 29.4 g before, 0.31 of
     * it with 2 g of error. Ours cannot reach that: 2 g of the reading and 1.3 g of each of the two sizes (calipers) make
     * 2.8 g or a width of 11 g, of 24 g before. Coverage: 200 times 0.95, three standard deviations of the binomial below.
     */
    @Test
    @Tag("proof")
    void twoHundredTruths() {
        Simulation many = new Simulation(200);
        System.out.println("dunk: before " + many.before + " after " + many.after + " inside " + many.inside
                + " least effective " + many.leastEffective);
        assertThat(many.narrowed()).isBetween(0.4, 0.6);
        assertThat(many.inside).isGreaterThanOrEqualTo((int) (200 * 0.95 - 3 * Math.sqrt(200 * 0.95 * 0.05)));
        assertThat(many.leastEffective).isGreaterThan(24);
    }

    private static Forecast knowing(Observations seen) {
        return FloatPredictor.standard().with(DRAWS).with(seen).forecast(ASKED);
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }

    /** Benches drawn from the prior, each with one dunked piece and a next one of its own scale, size and bath. */
    private static final class Simulation {
        private static final double ERROR = 1.5e-3;

        private final double before;
        private final double after;
        private int inside;
        private double leastEffective = Double.POSITIVE_INFINITY;

        Simulation(int truths) {
            PreparedQuestion posed = PreparedQuestion.of(ASKED, Factors.standard());
            Factors factors = posed.factors();
            DropModel drop = new DropModel(posed);
            HeldUnder bowl = new HeldUnder(posed.form(), ASKED.bath());
            SplittableRandom random = new SplittableRandom(17);
            double[] widths = new double[truths];
            for (int i = 0; i < truths; i++) {
                double[] bench = drawn(factors, random);
                drop.at(bench);
                double reading = drop.held(bowl, SECONDS, random.nextDouble() < HeldPiece.PLUME_FELT)
                        + ERROR * Normal.quantile(random.nextDouble());
                double[] next = drawn(factors, random);
                for (int k = 0; k < next.length; k++) {
                    next[k] = own(factors, k) ? next[k] : bench[k];
                }
                double spare = drop.at(next);
                Forecast forecast = knowing(Observations.none().held(HeldPiece.of(reading, SECONDS)));
                widths[i] = width(forecast.critical().interval());
                inside += spare >= forecast.spareAtDrop().low()
                                && spare <= forecast.spareAtDrop().high()
                        ? 1
                        : 0;
                leastEffective = Math.min(
                        leastEffective,
                        forecast.narrowing().orElseThrow().effectiveDraws().orElseThrow());
            }
            before = width(FloatPredictor.standard()
                    .with(DRAWS)
                    .forecast(ASKED)
                    .critical()
                    .interval());
            // of some readings the lowest critical weight is that of a piece that soaks and sinks later: a long tail
            after = Statistics.quantile(Statistics.sorted(widths), 0.5);
        }

        double narrowed() {
            return after / before;
        }

        private static boolean own(Factors factors, int column) {
            return OWN.stream().anyMatch(input -> factors.column(input) == column);
        }

        private static double[] drawn(Factors factors, SplittableRandom random) {
            List<Prior> priors = factors.priors();
            double[] inputs = new double[priors.size()];
            for (int k = 0; k < inputs.length; k++) {
                inputs[k] = priors.get(k).quantile(random.nextDouble(1e-12, 1));
            }
            return inputs;
        }
    }
}
