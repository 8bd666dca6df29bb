package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.numeric.Normal;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.HeldUnder;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;

/**
 * A piece held wholly under in a bowl on a tared scale, and what its reading does to the forecast of the next one. How far it
 * narrows and how often the truth lies inside is in the check rows {@code dunk-width} and {@code dunk-inside}.
 */
class DunkTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Question ASKED = Question.weighed(BALL, grams(142));
    private static final Sampling DRAWS = new Sampling(1, 1024);
    private static final double SECONDS = 5;

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
            Piece piece = new Piece(BALL, grams(mass), new Piece.Makeup(2000, 5));
            Launch launch = Launch.of(piece, bath, slow, new VoyageParameters(0, 0));
            // a tenth of a gram: at the slowest speed that is believed some of it still goes
            assertThat(bowl.reading(launch, SECONDS, true)).isCloseTo(displaced, within(grams(0.2)));
        }
    }

    /** By definition of the reading: at the drop, with nothing gone, it is the weight before and what is to spare. */
    @Test
    void theReadingIsTheWeightAndWhatIsToSpare() {
        PreparedQuestion prepared = PreparedQuestion.of(ASKED, Factors.standard());
        DropModel drop = new DropModel(prepared);
        double[] inputs = prepared.factors().medians();
        double spare = drop.at(inputs);
        HeldUnder bowl = new HeldUnder(prepared.form(), ASKED.bath());
        // the layer is full to 0.3 % after 6 s; what is lost by then is looked at by taking two times
        double six = bowl.reading(drop.launch(), 6, true);
        double seven = bowl.reading(drop.launch(), 7, true);
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

    /** By definition: of a mould whose size is badly known the dunked piece has the size that the next one will have. */
    @Test
    void theMouldIsTheSameForTheNextPiece() {
        Question nominal = ASKED.measured(Measured.NOMINAL);
        FloatPredictor plain = FloatPredictor.standard().with(DRAWS);
        double before = width(plain.forecast(nominal).spareAtDrop());
        Observations seen = Observations.none().held(HeldPiece.of(grams(146), SECONDS));
        Forecast after = plain.with(seen).forecast(nominal);
        assertThat(width(after.spareAtDrop())).isLessThan(0.5 * before);
        assertThat(after.narrowing().orElseThrow().effectiveDraws().orElseThrow())
                .isGreaterThan(700);
    }

    /**
     * By definition (sufficient statistic of normal readings): readings around one mean say what the mean says with an error
     * smaller by the root of their number, so that the widths differ by draws alone; and their order does not matter.
     */
    @Test
    void readingsAroundAMeanSayWhatTheMeanSays() {
        HeldPiece low = HeldPiece.of(grams(145), SECONDS);
        HeldPiece high = HeldPiece.of(grams(147), SECONDS);
        Interval forth = knowing(Observations.none().held(low).held(high)).spareAtDrop();
        Interval back = knowing(Observations.none().held(high).held(low)).spareAtDrop();
        assertThat(back.median()).isCloseTo(forth.median(), within(1e-9));
        HeldPiece mean = HeldPiece.of(grams(146), SECONDS);
        Interval same = knowing(Observations.none().held(mean).held(mean)).spareAtDrop();
        assertThat(same.median()).isCloseTo(forth.median(), within(1e-9));
        assertThat(width(same)).isCloseTo(width(forth), within(1e-9));
    }

    /**
     * ANALYTIC: the covariance of two readings of one dunk by its formula, s_i s_j (1/2 + 1/2 exp(-|t_i - t_j|)); of a reading
     * with itself its variance.
     */
    @Test
    void readingsOfOneDunkShareHalfOfTheirVariance() {
        HeldPiece held =
                HeldPiece.of(grams(150), 2).within(grams(1)).then(grams(151), 4).within(grams(3));
        assertThat(held.covariance(0, 0)).isCloseTo(1e-6, within(1e-18));
        assertThat(held.covariance(1, 1)).isCloseTo(9e-6, within(1e-18));
        assertThat(held.covariance(0, 1)).isCloseTo(3e-6 * (0.5 + 0.5 * 0.1353352832366127), within(1e-18));
        assertThat(held.covariance(1, 0)).isEqualTo(held.covariance(0, 1));
    }

    /**
     * By definition: several readings of one piece tell more than one of them, and less than as many pieces, whose errors
     * have nothing in common. All are what the medians make of them.
     */
    @Test
    void severalReadingsTellMoreThanOneAndLessThanSeveralPieces() {
        PreparedQuestion prepared = PreparedQuestion.of(ASKED, Factors.standard());
        DropModel drop = new DropModel(prepared);
        HeldUnder bowl = new HeldUnder(prepared.form(), ASKED.bath());
        drop.at(prepared.factors().medians());
        HeldPiece read = HeldPiece.of(bowl.reading(drop.launch(), 2, true), 2);
        Observations pieces = Observations.none().held(read);
        for (int seconds = 4; seconds <= 10; seconds += 2) {
            double reading = bowl.reading(drop.launch(), seconds, true);
            read = read.then(reading, seconds);
            pieces = pieces.held(HeldPiece.of(reading, seconds));
        }
        HeldPiece one = HeldPiece.of(bowl.reading(drop.launch(), SECONDS, true), SECONDS);
        double several = width(knowing(Observations.none().held(read)).spareAtDrop());
        assertThat(several)
                .isLessThan(width(knowing(Observations.none().held(one)).spareAtDrop()));
        assertThat(width(knowing(pieces).spareAtDrop())).isLessThan(several);
    }

    /**
     * Other method: plain random draws of the priors, each weighed by the normal density of all readings with the covariance of the
     * formula, inverted here for two readings by hand; no input is solved for. The widths agree to the noise of 30,000 draws.
     */
    @Test
    void twoReadingsNarrowAsTheirLikelihoodDoes() {
        PreparedQuestion prepared = PreparedQuestion.of(ASKED, Factors.standard());
        Factors factors = prepared.factors();
        DropModel drop = new DropModel(prepared);
        HeldUnder bowl = new HeldUnder(prepared.form(), ASKED.bath());
        double own = HeldPiece.ownLift(BALL, ASKED.bath());
        double[] shown = {grams(147), grams(144.5)};
        double variance = 4e-6 + own * own;
        double shared = 4e-6 * (0.5 + 0.5 * Math.exp(-4)) + own * own;
        double determinant = variance * variance - shared * shared;
        SplittableRandom random = new SplittableRandom(5);
        int draws = 30_000;
        double[][] spare = new double[draws][];
        double sum = 0;
        for (int i = 0; i < draws; i++) {
            double[] inputs = factors.priors().stream()
                    .mapToDouble(prior -> prior.quantile(random.nextDouble(1e-12, 1)))
                    .toArray();
            double next = drop.at(inputs) + own * Normal.quantile(random.nextDouble(1e-12, 1));
            // scale and bowl are the dunked piece's own and make 0.15 g of the reading: left at their medians
            for (Input input : new Input[] {Input.SCALE, Input.BATH_TEMPERATURE}) {
                inputs[factors.column(input)] = factors.medians()[factors.column(input)];
            }
            drop.at(inputs);
            double weight = 0;
            for (boolean felt : new boolean[] {true, false}) {
                double a = shown[0] - bowl.reading(drop.launch(), 2, felt);
                double b = shown[1] - bowl.reading(drop.launch(), 6, felt);
                double square = (variance * (a * a + b * b) - 2 * shared * a * b) / determinant;
                weight += (felt ? HeldPiece.PLUME_FELT : 1 - HeldPiece.PLUME_FELT) * Math.exp(-0.5 * square);
            }
            spare[i] = new double[] {next, weight};
            sum += weight;
        }
        Arrays.sort(spare, Comparator.comparingDouble(one -> one[0]));
        double low = Double.NaN;
        double high = Double.NaN;
        double below = 0;
        for (double[] one : spare) {
            below += one[1] / sum;
            low = Double.isNaN(low) && below >= 0.025 ? one[0] : low;
            high = Double.isNaN(high) && below >= 0.975 ? one[0] : high;
        }
        HeldPiece held = HeldPiece.of(shown[0], 2).then(shown[1], 6);
        Interval found = FloatPredictor.standard()
                .with(new Sampling(1, 8192))
                .with(Observations.none().held(held))
                .forecast(ASKED)
                .spareAtDrop();
        assertThat(width(found)).isCloseTo(high - low, within(0.04 * (high - low)));
        assertThat(found.low()).isCloseTo(low, within(grams(0.3)));
        assertThat(found.high()).isCloseTo(high, within(grams(0.3)));
    }

    @Test
    void readingsOutOfTheirOrderAreRefused() {
        assertThatThrownBy(() -> HeldPiece.of(grams(150), 4).then(grams(150), 2))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("in their order");
        assertThatThrownBy(() -> HeldPiece.of(grams(150), 4).then(grams(150), 4.2))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new HeldPiece(List.of(), OptionalDouble.empty()))
                .isInstanceOf(Refusal.class);
    }

    private static Forecast knowing(Observations seen) {
        return FloatPredictor.standard().with(DRAWS).with(seen).forecast(ASKED);
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }
}
