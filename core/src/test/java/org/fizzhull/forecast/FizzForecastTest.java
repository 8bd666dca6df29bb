package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: how the parts of a fizz forecast belong together, and what is told on either side of a limit. */
class FizzForecastTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final FizzPredictor CENTRAL = FizzPredictor.standard().with(new Sampling(1, 0));
    private static final FizzPredictor DRAWN = FizzPredictor.standard().with(new Sampling(1, 128));

    private static Question weighed(Shape shape) {
        return Question.of(shape, new Making.Weighed(0.138, Optional.empty(), Optional.of(MIX)));
    }

    private static Question dried(double days) {
        return dried(days, 0.5);
    }

    private static Question dried(double days, double humidity) {
        return Question.of(
                BALL,
                new Moulded.Filled(
                        MIX,
                        0.146,
                        Optional.empty(),
                        DryingConditions.open(RoomAir.of(Units.celsius(21), humidity), days * 86400)
                                .plan(BALL)));
    }

    private static List<String> codes(FizzForecast forecast) {
        return NoticeSearch.codes(forecast.notices());
    }

    /** By hand: 61 times, closest at the start, 1.05 e (i/60)^2 with e the later end of the voyage and of the draws. */
    @Test
    void timesOfTheBand() {
        for (FizzPredictor predictor : List.of(CENTRAL, DRAWN)) {
            FizzForecast forecast = predictor.forecast(weighed(BALL));
            double end =
                    Math.max(forecast.voyage().fizzTime(), forecast.fizzTime().high());
            assertThat(forecast.band()).hasSize(61);
            for (int i : new int[] {0, 6, 30, 59, 60}) {
                assertThat(forecast.band().get(i).time()).isCloseTo(1.05 * end * i * i / 3600, within(1e-9));
            }
        }
    }

    /**
     * ANALYTIC: the gas that has come up is the integral of its rate; none comes up at the start or beyond the end, and the peak of the
     * voyage is the largest of all. By trapezes over 61 times, to some per cent.
     */
    @Test
    void theBandIsTheGasOfTheVoyage() {
        FizzForecast forecast = CENTRAL.forecast(weighed(BALL));
        Voyage voyage = forecast.voyage();
        double sum = 0;
        double most = 0;
        for (int i = 1; i < forecast.band().size(); i++) {
            FizzForecast.Point a = forecast.band().get(i - 1);
            FizzForecast.Point b = forecast.band().get(i);
            sum += (b.time() - a.time()) * (a.rate().median() + b.rate().median()) / 2;
            most = Math.max(most, b.rate().median());
        }
        double peak = forecast.drawn().peak().median();
        assertThat(most).isLessThanOrEqualTo(peak * (1 + 1e-9)).isGreaterThan(0.9 * peak);
        assertThat(peak).isCloseTo(voyage.dryVolume(voyage.peakGasRate()), within(1e-12));
        // no more gas than the reagents can give, 24 to 26 litres a mole, and more than a third of it reaches the
        // surface
        double moles = MIX.moles().gas() * 0.138;
        assertThat(sum).isBetween(0.3 * moles * 0.024, moles * 0.026);
        assertThat(forecast.fizzTime().low()).isEqualTo(forecast.fizzTime().high());
        assertThat(codes(forecast)).contains("central-values").doesNotContain("on-top-apart", "fizz-lost");
        assertThat(forecast.narrowing()).isEmpty();
    }

    /** ANALYTIC: rho c V_m / porosity, V_m of gas with the vapour of 38 C water (6.63 kPa) in it at 101.325 kPa. */
    @Test
    void gasPerEnteringWater() {
        FizzForecast forecast = CENTRAL.forecast(weighed(BALL));
        double molar = 8.314462618 * 311.15 / (101_325 - 6633);
        double density = 0.138 / BALL.volume();
        double expected = density
                * forecast.piece().makeup().gasCapacity()
                * molar
                / forecast.piece().porosity();
        assertThat(forecast.gasPerEnteringWater()).isCloseTo(expected, within(0.01 * expected));
        Forecast floats = FloatPredictor.standard().with(new Sampling(1, 0)).forecast(weighed(BALL));
        assertThat(floats.gasPerEnteringWater()).isEqualTo(forecast.gasPerEnteringWater());
        assertThat(floats.effervescence()).hasValue(forecast.effervescence());
    }

    @Test
    void drawsOfAPieceOnTheScale() {
        FizzForecast forecast = DRAWN.forecast(weighed(BALL));
        assertThat(forecast.fizzTime().low()).isLessThan(forecast.fizzTime().high());
        assertThat(forecast.piece().mass()).isEqualTo(0.138);
        assertThat(codes(forecast)).doesNotContain("central-values");
        FizzForecast.Point late = forecast.band().get(55);
        assertThat(late.rate().low()).isLessThan(late.rate().high());
        assertThat(forecast.drawn().peak().low())
                .isLessThan(forecast.drawn().peak().high());
        // the draws are those of the forecast of its floating
        Forecast floats = FloatPredictor.standard().with(new Sampling(1, 128)).forecast(weighed(BALL));
        assertThat(forecast.fizzTime()).isEqualTo(floats.fizzTime().orElseThrow());
    }

    @Test
    void aDriedPieceHasTheWeightOfTheMiddleDraw() {
        Forecast floats = FloatPredictor.standard().with(new Sampling(1, 128)).forecast(dried(2));
        FizzForecast forecast = DRAWN.forecast(dried(2));
        assertThat(forecast.piece().mass())
                .isEqualTo(floats.mass().orElseThrow().median());
        assertThat(forecast.fizzTime()).isEqualTo(floats.fizzTime().orElseThrow());
        assertThat(forecast.drawn().fizzLost()).isEqualTo(floats.fizzLost().orElseThrow());
        // by its own weight: the voyage that is shown is that of the middle draw, whose ball holds less water than it
        // displaces
        assertThat(forecast.voyage().fizzTime())
                .isBetween(forecast.fizzTime().low(), forecast.fizzTime().high());
    }

    /** What is lost before the bath is told from 2 % on, in whole per cent. */
    @Test
    void fizzThatIsLost() {
        for (double humidity : new double[] {0.5, 0.7, 0.8}) {
            FizzForecast forecast = CENTRAL.forecast(dried(20, humidity));
            double lost = forecast.drawn().fizzLost().median();
            Optional<Notice> told = forecast.notices().stream()
                    .filter(notice -> notice.code().equals("fizz-lost"))
                    .findFirst();
            assertThat(told.isPresent()).isEqualTo(lost >= 0.02);
            told.ifPresent(notice -> assertThat(notice.text()).contains("about " + Math.round(100 * lost) + " %"));
        }
        assertThat(codes(CENTRAL.forecast(dried(20, 0.8)))).contains("fizz-lost");
        assertThat(codes(CENTRAL.forecast(dried(20, 0.5)))).doesNotContain("fizz-lost");
    }

    @Test
    void whatLiesOnTopIsApart() {
        Shape salted = Loaded.with(BALL, new Topping("salt", 0.004, 2165, 0.55));
        assertThat(codes(CENTRAL.forecast(weighed(salted)))).contains("on-top-apart");
    }

    /** By definition: what was timed comes back, and what was believed before is kept beside it. */
    @Test
    void aTimedPieceNarrows() {
        Observations seen = Observations.none().fizzed(TimedPiece.fizzed(230));
        Interval before = DRAWN.forecast(weighed(BALL)).fizzTime();
        FizzForecast forecast = DRAWN.with(seen).forecast(weighed(BALL));
        assertThat(forecast.narrowing().orElseThrow().fizzTime()).hasValue(before);
        assertThat(forecast.fizzTime().median()).isCloseTo(230, within(3.0));
        assertThat(forecast.fizzTime().high() - forecast.fizzTime().low())
                .isLessThan(0.2 * (before.high() - before.low()));
        assertThat(codes(forecast)).contains("measured-fizz-as");
        FizzForecast central = CENTRAL.with(seen).forecast(weighed(BALL));
        assertThat(central.fizzTime().median()).isCloseTo(230, within(0.3));
        assertThat(codes(central)).contains("measured-fizz-as", "central-values");
    }

    @Test
    void aMixWithoutAcidDissolves() {
        Blend plain = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "300 g")
                .dry("corn starch", "60 g")
                .build());
        Question question = Question.of(BALL, new Making.Weighed(0.138, Optional.empty(), Optional.of(plain)));
        FizzForecast forecast = CENTRAL.forecast(question);
        assertThat(forecast.effervescence().fizzes()).isFalse();
        assertThat(codes(forecast)).startsWith("no-fizz");
        Forecast floats = FloatPredictor.standard().with(new Sampling(1, 0)).forecast(question);
        assertThat(floats.fizzTime()).isEmpty();
        assertThat(floats.effervescence().orElseThrow().fizzes()).isFalse();
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        assertThatThrownBy(() -> CENTRAL.forecast(Question.weighed(BALL, 0.138)))
                .isInstanceOf(IllegalArgumentException.class);
        Question asked = weighed(BALL);
        Question still = new Question(
                asked.shape(), asked.making(), asked.bath(), asked.into(), true, asked.measured(), asked.scale());
        assertThatThrownBy(() -> CENTRAL.forecast(still)).isInstanceOf(IllegalArgumentException.class);
        Making much =
                new Moulded.Filled(MIX, 0.5, Optional.empty(), dried(1).making().plan());
        assertThatThrownBy(() -> CENTRAL.forecast(Question.of(BALL, much))).isInstanceOf(Refusal.class);
    }
}
