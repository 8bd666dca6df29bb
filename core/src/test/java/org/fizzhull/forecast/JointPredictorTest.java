package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.joint.JointPredictor;
import org.fizzhull.forecast.joint.OutcomeByDraw;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.junit.jupiter.api.Test;

/** Several questions in the same states of the world. What each says alone is held against {@link FloatPredictor}. */
class JointPredictorTest {
    private static final Sampling FEW = new Sampling(3, 128);
    private static final IngredientTable TABLE = IngredientTable.standard();
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));
    private static final Shape DOME = Dome.ofDiameter(millimetres(80));
    private static final JointPredictor JOINT = JointPredictor.standard().with(FEW);

    private static Question pressed(Shape shape, Recipe recipe) {
        DryingPlan plan =
                DryingConditions.open(RoomAir.of(celsius(21), 0.5), 2 * 86400.0).plan(shape);
        return Question.of(
                shape, new Moulded.Pressed(Blend.of(recipe), 30e3, 1.6, MouldDimensions.Filling.usual(shape), plan));
    }

    private static Question lemon(Shape shape) {
        return pressed(shape, ExampleRecipes.lemon(TABLE));
    }

    private static List<JointForecast> joint(Question... questions) {
        return JOINT.forecast(List.of(questions), List.of(), Workers.Progress.SILENT);
    }

    @Test
    void eachRowOfOneRecipeSaysWhatTheForecastOfItAloneSays() {
        List<JointForecast> rows = joint(lemon(BALL), lemon(DOME));
        for (JointForecast row : rows) {
            Forecast alone = FloatPredictor.standard().with(FEW).forecast(row.question());
            OutcomeByDraw bath = row.baths().get(0);
            assertThat(bath.critical().toTheEnd())
                    .containsExactly(alone.critical().toTheEnd());
            assertThat(bath.probability()).isEqualTo(alone.probability().orElseThrow());
            assertThat(bath.fizzTime()).isEqualTo(alone.fizzTime());
            assertThat(row.mass()).isEqualTo(alone.mass().orElseThrow());
            assertThat(row.piece()).isEqualTo(alone.piece());
        }
    }

    private static final Question HUNDRED_FORTY = Question.weighed(BALL, grams(140));

    private static OutcomeByDraw knowing(double reading, Question asked) {
        return knowing(JOINT, reading, asked);
    }

    private static OutcomeByDraw knowing(JointPredictor predictor, double reading, Question asked) {
        HeldPiece held = HeldPiece.of(grams(reading), 5).weighing(grams(140));
        Observations.MeasuredPieces pieces = new Observations.MeasuredPieces(
                HUNDRED_FORTY, Observations.none().held(held));
        return predictor
                .with(List.of(pieces))
                .forecast(List.of(asked), List.of(), Workers.Progress.SILENT)
                .get(0)
                .baths()
                .get(0);
    }

    /**
     * Two ways to the same posterior: inputs that are solved for as values, and as places in the common columns. They differ
     * in the last bits, on which the search for the critical weight may end elsewhere within its accuracy, 3e-4 of it.
     */
    @Test
    void aRowOfTheMeasuredMouldSaysWhatItsForecastSays() {
        Observations seen = Observations.none().held(HeldPiece.of(grams(139), 5).weighing(grams(140)));
        Forecast alone = FloatPredictor.standard().with(FEW).with(seen).forecast(HUNDRED_FORTY);
        OutcomeByDraw row = knowing(139, HUNDRED_FORTY);
        assertThat(row.critical().toTheEnd())
                .usingComparatorWithPrecision(3e-4 * 0.14)
                .containsExactly(alone.critical().toTheEnd());
        assertThat(row.probability().floatsToTheEnd())
                .isEqualTo(alone.probability().orElseThrow().floatsToTheEnd());
    }

    /** A ball that is lifted more has more gas on it, and the same gas clings to a dome: the direction, from the balance of forces. */
    @Test
    void whatLiftsABallLiftsADome() {
        JointPredictor many = JOINT.with(new Sampling(1, 1024));
        Question dome = Question.weighed(DOME, grams(140));
        double prior = many.forecast(List.of(dome), List.of(), Workers.Progress.SILENT)
                .get(0)
                .baths()
                .get(0)
                .probability()
                .floatsToTheEnd();
        assertThat(knowing(many, 132, dome).probability().floatsToTheEnd()).isLessThan(prior - 0.1);
        assertThat(knowing(many, 148, dome).probability().floatsToTheEnd()).isGreaterThan(prior + 0.1);
    }

    /** The error of one mould's size is no business of another: its own is drawn as before, from its prior. */
    @Test
    void theSizeOfAnotherMouldStaysAsUnsureAsItWas() {
        Question still = new Question(
                DOME,
                HUNDRED_FORTY.making(),
                HUNDRED_FORTY.bath(),
                HUNDRED_FORTY.into(),
                true,
                HUNDRED_FORTY.measured(),
                HUNDRED_FORTY.scale());
        double before = width(JOINT.forecast(List.of(still), List.of(), Workers.Progress.SILENT)
                .get(0)
                .baths()
                .get(0));
        assertThat(width(knowing(139, still))).isCloseTo(before, withinPercentage(20));
    }

    private static double width(OutcomeByDraw bath) {
        Interval band = bath.critical().interval();
        return band.high() - band.low();
    }

    @Test
    void aMeasurementThatNothingAgreesWithIsRefused() {
        assertThatThrownBy(() -> knowing(40, HUNDRED_FORTY))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("contradiction"));
    }

    @Test
    void aRowDoesNotDependOnTheOthersOfItsRecipe() {
        JointForecast among = joint(lemon(BALL), lemon(DOME)).get(1);
        JointForecast alone = joint(lemon(DOME)).get(0);
        assertThat(among.baths().get(0).headroom())
                .containsExactly(alone.baths().get(0).headroom());
        assertThat(among.readyTimes()).containsExactly(alone.readyTimes());
    }

    @Test
    void recipesShareWhatIsUncertainOfTheirCommonPowders() {
        List<JointForecast> rows = joint(lemon(BALL), pressed(BALL, ExampleRecipes.seaFoam(TABLE)));
        double[] a = rows.get(0).baths().get(0).headroom();
        double[] b = rows.get(1).baths().get(0).headroom();
        double[] difference = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            difference[i] = a[i] - b[i];
        }
        // of separate states of the world the variances would add up
        assertThat(variance(difference)).isLessThan(0.25 * (variance(a) + variance(b)));
    }

    @Test
    void anotherRecipeSaysWhatItSaysAloneWithinTheErrorOfTheDraws() {
        Question foam = pressed(BALL, ExampleRecipes.seaFoam(TABLE));
        OutcomeByDraw second = JointPredictor.standard()
                .with(new Sampling(1, 1024))
                .forecast(List.of(lemon(BALL), foam), List.of(), Workers.Progress.SILENT)
                .get(1)
                .baths()
                .get(0);
        CriticalWeights alone =
                FloatPredictor.standard().with(new Sampling(1, 1024)).critical(foam);
        // medians of 1,024 draws of a spread of a few per cent
        assertThat(second.critical().heaviest(0.5)).isCloseTo(alone.heaviest(0.5), within(0.01 * alone.heaviest(0.5)));
    }

    @Test
    void shapesOfEstimatedSurfaceShiftNoOtherColumn() {
        Shape filled = ShapeText.read("filled(water=143 g, like=sphere)");
        double[] alone = joint(lemon(BALL)).get(0).baths().get(0).headroom();
        double[] ball = joint(lemon(filled), lemon(BALL)).get(1).baths().get(0).headroom();
        double[] first = joint(lemon(filled), lemon(BALL)).get(0).baths().get(0).headroom();
        assertThat(ball).hasSameSizeAs(alone);
        // nearly the same body: the states are shared, so the two go together
        double[] difference = new double[ball.length];
        for (int i = 0; i < ball.length; i++) {
            difference[i] = ball[i] - first[i];
        }
        assertThat(variance(difference)).isLessThan(0.1 * variance(ball));
    }

    @Test
    void severalBathsAreOnePieceInEach() {
        Bath warm = Bath.at(celsius(38));
        Bath salted = warm.withSalt(1.5);
        JointForecast row = JOINT.forecast(List.of(lemon(BALL)), List.of(warm, salted), Workers.Progress.SILENT)
                .get(0);
        OutcomeByDraw alone = joint(lemon(BALL).in(salted)).get(0).baths().get(0);
        assertThat(row.baths()).hasSize(2);
        assertThat(row.baths().get(1).headroom()).containsExactly(alone.headroom());
        // Archimedes: denser water carries more
        assertThat(row.baths().get(1).critical().heaviest(0.5))
                .isGreaterThan(row.baths().get(0).critical().heaviest(0.5));
    }

    @Test
    void dryingIsThatOfTheDryingForecast() {
        Question question = lemon(BALL);
        JointForecast row = JointPredictor.standard()
                .with(new Sampling(1, 512))
                .forecast(List.of(question), List.of(), Workers.Progress.SILENT)
                .get(0);
        DryForecast dry = DryPredictor.standard().with(new Sampling(1, 512)).forecast(BALL, question.making());
        // the same model from other draws: their medians err by a few per cent
        assertThat(row.ready().orElseThrow().median())
                .isCloseTo(
                        dry.ready().orElseThrow().median(),
                        within(0.08 * dry.ready().orElseThrow().median()));
        assertThat(row.damp().orElseThrow().median())
                .isCloseTo(dry.damp().median(), within(0.01 * dry.damp().median()));
    }

    @Test
    void theOrderOfTheWorkChangesNothing() {
        Workers backwards = (count, task) -> {
            for (int i = count - 1; i >= 0; i--) {
                task.run(i);
            }
        };
        double[] one = joint(lemon(BALL)).get(0).baths().get(0).headroom();
        double[] other = JOINT.with(backwards)
                .forecast(List.of(lemon(BALL)), List.of(), Workers.Progress.SILENT)
                .get(0)
                .baths()
                .get(0)
                .headroom();
        assertThat(other).containsExactly(one);
    }

    @Test
    void progressIsToldAndMayStopIt() {
        List<Integer> told = new ArrayList<>();
        JOINT.forecast(List.of(lemon(BALL), lemon(DOME)), List.of(), (done, all) -> {
            assertThat(all).isEqualTo(2);
            return told.add(done);
        });
        assertThat(told).containsExactly(0, 1, 2);
        assertThatThrownBy(() -> JOINT.forecast(List.of(lemon(BALL), lemon(DOME)), List.of(), (done, all) -> done < 1))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void centralValuesAreNothingToCompare() {
        assertThatThrownBy(() -> JointPredictor.standard().with(new Sampling(1, 0)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("samples"));
    }

    private static double variance(double[] values) {
        return Statistics.variance(values, Statistics.mean(values));
    }
}
