package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Optional;
import java.util.stream.IntStream;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.medium.Bath;
import org.fizzhull.numeric.Normal;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CriticalWeightsTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard();
    /** That other program took the whole error of a kitchen scale, 0.5 g, to differ from piece to piece. */
    private static final Factors OTHER_SCALE = Factors.standard()
            .without(Input.SCALE_OFFSET)
            .with(new Factor(
                    Input.SCALE,
                    Priors.normal(0, grams(0.5)),
                    Factors.standard().rows().get(0).source()));

    private static final FloatPredictor FEW = PREDICTOR.with(new Sampling(1, 512));

    /**
     * OTHER PROGRAM: {@code validation/reference/drop_balance.py}: share of its draws in which nine of ten of a batch float.
     */
    @ParameterizedTest
    @CsvSource({"138, 2, 0.852", "142, 1, 0.665", "146, 3, 0.158"})
    void nineOfTenOfABatchOfBalls(double mass, double hand, double expected) {
        CriticalWeights.BatchShare share = PREDICTOR
                .with(OTHER_SCALE)
                .critical(Question.weighed(BALL, grams(mass)).spread(Priors.normal(0, grams(hand))))
                .batch();
        assertThat(share.nineOfTen()).isCloseTo(expected, within(0.03));
    }

    /**
     * A thin bowl floats at once at every weight that it can be pressed to, but its rim goes under later: what is told of
     * the end of the range is told of the way to the end, whose border lies far below the heaviest, 1.67 g/cm3.
     */
    @Test
    void theEndOfTheRangeIsThatOfTheWayToTheEnd() {
        Shape bowl = ShapeText.read("bowl(diameter=80 mm, wall=6 mm)");
        CriticalWeights critical = FEW.critical(Question.weighed(bowl, grams(55)));
        assertThat(critical.interval().high()).isLessThan(0.9 * 1670 * bowl.volume());
        assertThat(critical.heaviestAtOnce(0.5)).isGreaterThan(critical.heaviest(0.5));
        assertThat(critical.count(CriticalWeights.Met.ABOVE_RANGE)).isZero();
    }

    /** OTHER PROGRAM: the same. */
    @Test
    void nineOfTenOfABatchOfDomes() {
        Shape dome = ShapeText.read("dome(diameter=80 mm)");
        CriticalWeights.BatchShare share = PREDICTOR
                .with(OTHER_SCALE)
                .critical(Question.weighed(dome, grams(129)).spread(Priors.normal(0, grams(4))))
                .batch();
        assertThat(share.nineOfTen()).isCloseTo(0.74, within(0.03));
        assertThat(share.mean()).isCloseTo(0.91, within(0.03));
    }

    /** The equation of motion, apart from the quick voyage, changes its verdict at the central critical weight. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sphere(diameter=65 mm)",
                "puck(diameter=70 mm, height=30 mm)",
                "cone(diameter=60 mm, height=70 mm)"
            })
    void theFullVoyageTurnsThere(String text) {
        Shape shape = ShapeText.read(text);
        Bath bath = Bath.at(Question.DEFAULT_TEMPERATURE);
        double mass = 1000 * shape.volume();
        double critical = PREDICTOR
                .with(new Sampling(1, 0))
                .critical(Question.weighed(shape, mass))
                .toTheEnd()[0];
        assertThat(floats(shape, bath, critical * 0.99)).isTrue();
        assertThat(floats(shape, bath, critical * 1.01)).isFalse();
    }

    private static boolean floats(Shape shape, Bath bath, double mass) {
        Launch launch = Launch.of(
                new Piece(shape, mass, Piece.Makeup.usual()),
                bath,
                FizzParameters.standard(),
                VoyageParameters.standard());
        return FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), bath)
                .run(launch)
                .floatsToTheEnd();
    }

    /** IDENTITY: the chance at a weight is the share of draws whose border lies above it, whatever weight was asked. */
    @Test
    void doesNotDependOnTheWeightAsked() {
        CriticalWeights light = FEW.critical(Question.weighed(BALL, grams(130)));
        CriticalWeights heavy = FEW.critical(Question.weighed(BALL, grams(155)));
        double[] a = light.toTheEnd();
        double[] b = heavy.toTheEnd();
        for (int i = 0; i < a.length; i++) {
            assertThat(b[i]).isEqualTo(a[i]);
        }
    }

    /** IDENTITY: asked of a weighed piece, a forecast counts what its critical weights say, but for their accuracy. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sphere(diameter=65 mm); 142",
                "dome(diameter=80 mm); 135",
                "bowl(diameter=90 mm, wall=15 mm); 165",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm); 80"
            })
    void agreesWithTheVoyagesOfThePiece(String row) {
        String[] part = row.split("; ", -1);
        Question question = Question.weighed(ShapeText.read(part[0]), grams(Double.parseDouble(part[1])));
        Forecast forecast = FEW.forecast(question);
        double byWeight = forecast.critical().chanceAt(forecast.piece().mass());
        assertThat(byWeight).isCloseTo(forecast.probability().orElseThrow().floatsToTheEnd(), within(0.02));
    }

    /** IDENTITY: to the end is the harder of the two, in every draw. */
    @ParameterizedTest
    @ValueSource(
            strings = {"sphere(diameter=40 mm)", "bowl(diameter=90 mm, wall=15 mm)", "ring(diameter=90 mm, tube=30 mm)"
            })
    void atOnceIsNeverLess(String text) {
        Shape shape = ShapeText.read(text);
        CriticalWeights found = FEW.critical(Question.weighed(shape, 1000 * shape.volume()));
        double[] end = found.toTheEnd();
        double[] once = found.atOnce();
        assertThat(IntStream.range(0, end.length)).allMatch(i -> end[i] <= once[i]);
    }

    /** ANALYTIC: in still water a body floats up to the water it pushes aside: its weight by Archimedes. */
    @Test
    void inStillWaterItIsTheDisplacement() {
        CriticalWeights found = PREDICTOR.with(new Sampling(1, 0)).critical(Question.still(BALL, grams(138)));
        double density = Bath.at(Question.DEFAULT_TEMPERATURE).density();
        assertThat(found.toTheEnd()[0]).isCloseTo(density * BALL.volume(), within(grams(1e-6)));
    }

    /** ANALYTIC: with a normal hand the share of a batch is the normal distribution function of the border's distance. */
    @Test
    void theShareOfABatchIsThatOfANormalHand() {
        double hand = grams(3);
        Factors exact = Factors.standard().without(Input.SCALE).without(Input.SCALE_OFFSET);
        CriticalWeights found =
                FEW.with(exact).critical(Question.weighed(BALL, grams(144)).spread(Priors.normal(0, hand)));
        double[] border = found.toTheEnd();
        double mean = 0;
        for (double weight : border) {
            mean += Normal.cumulative((weight - grams(144)) / hand) / border.length;
        }
        assertThat(found.batch().mean()).isCloseTo(mean, within(1e-6));
    }

    /** IDENTITY: at the weight to aim for nine of ten float, and one piece of that chance is heavier than the mean. */
    @Test
    void theAimGivesItsChanceBack() {
        CriticalWeights found = FEW.critical(Question.weighed(BALL, grams(140)).spread(Priors.normal(0, grams(4))));
        double aim = found.aim(0.9).orElseThrow();
        assertThat(found.batchAt(aim).mean()).isCloseTo(0.9, within(1e-4));
        assertThat(found.single(0.9).orElseThrow()).isGreaterThan(aim);
        assertThat(found.chanceAt(found.heaviest(0.9))).isCloseTo(0.9, within(0.005));
    }

    /** Made pieces have a critical weight as they go into the bath, and the aim stands in damp weight. */
    @Test
    void aFillIsAimedAtDamp() {
        DryingPlan plan = DryingPlan.none();
        Forecast damp = FEW.forecast(Question.of(
                BALL, new Moulded.Filled(blend(), grams(140), Optional.of(Priors.normal(0, grams(2))), plan)));
        double aim = damp.aim().orElseThrow().aimFor();
        assertThat(FEW.forecast(Question.of(
                                BALL, new Moulded.Filled(blend(), aim, Optional.of(Priors.normal(0, grams(2))), plan)))
                        .probability()
                        .orElseThrow()
                        .floatsToTheEnd())
                .isCloseTo(0.9, within(0.02));
    }

    /** The pieces of one hand's presses scatter: the batch is neither whole nor none for the whole of the unknown. */
    @Test
    void aPressScattersItsPieces() {
        Moulded.Pressed pressed =
                new Moulded.Pressed(blend(), 30e3, 1.6, MouldDimensions.Filling.usual(BALL), DryingPlan.none());
        Forecast forecast = FEW.forecast(Question.of(BALL, pressed));
        CriticalWeights.BatchShare share = forecast.share().orElseThrow();
        assertThat(share.mean()).isBetween(share.share().low(), share.share().high());
        assertThat(forecast.aim()).isEmpty();
        assertThat(forecast.next().orElseThrow().kind()).isEqualTo(MeasureNext.Kind.WEIGH_PRESSED);
    }

    /** The answer is the same on any number of threads. */
    @Test
    void sameOnAnyThreads() {
        Question question = Question.weighed(BALL, grams(140)).spread(Priors.normal(0, grams(2)));
        CriticalWeights many = FEW.with(
                        (count, task) -> IntStream.range(0, count).parallel().forEach(task::run))
                .critical(question);
        assertThat(many).isEqualTo(FEW.critical(question));
    }

    @Test
    void refusesWhatIsNoWeightAndNoChance() {
        CriticalWeights found = FEW.critical(Question.weighed(BALL, grams(140)));
        assertThatThrownBy(() -> found.chanceAt(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> found.heaviest(1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Blend blend() {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "40 g")
                .wet("sweet almond oil", "10 g")
                .wet("water", "4 g")
                .build());
    }
}
