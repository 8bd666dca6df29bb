package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.fizz.Acid;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.forecast.FizzForecast.BathLoad;
import org.fizzhull.forecast.FloatVerdict.Answer;
import org.fizzhull.forecast.FloatVerdict.Reason;
import org.fizzhull.forecast.Forecast.Driver;
import org.fizzhull.forecast.Forecast.GoverningLimit;
import org.fizzhull.forecast.Forecast.GoverningLimit.Kind;
import org.fizzhull.forecast.making.Making.Weighed;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece.Makeup;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.HarbourAcid;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.fizzhull.uncertainty.sampling.Sensitivity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: verdicts and their reasons; MASS BALANCES by hand of what a piece brings into a bath. */
class ForecastValuesTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private static FloatVerdict verdict(double chance, Kind kind, double spare, double atOnce, Shape shape) {
        return FloatVerdict.of(
                chance, false, new GoverningLimit(kind, 0.14, spare), atOnce, Question.weighed(shape, 0.12));
    }

    /** Above two of three it floats, below one of three it sinks; between, either, or nobody can tell. */
    @ParameterizedTest
    @CsvSource({
        "0.67,false,floats",
        "0.66,false,either",
        "0.66,true,cannot tell",
        "0.33,false,either",
        "0.33,true,cannot tell",
        "0.32,true,sinks",
        "0.67,true,floats"
    })
    void answers(double chance, boolean undecided, String word) {
        GoverningLimit limit = new GoverningLimit(Kind.PLAIN, 0.14, 0.01);
        Question question = Question.weighed(BALL, 0.13);
        assertThat(FloatVerdict.of(chance, undecided, limit, chance, question)
                        .answer()
                        .word())
                .isEqualTo(word);
    }

    /**
     * What floats is light or lifted by its gas, by the sign of its spare. What sinks is too heavy by more than a thousandth
     * of its limit of 140 g, or soaks water; a boat's rim is named in either case.
     */
    @ParameterizedTest
    @CsvSource({
        "0.5,PLAIN,0,LIGHT", "0.5,PLAIN,-0.0001,GAS_LIFTS", "0.9,BOAT,0.01,LIGHT", "0.49,PLAIN,-0.00015,HEAVY",
        "0.49,PLAIN,-0.00014,SOAKS", "0.49,PLAIN,-0.00013,SOAKS", "0.49,BOAT,-0.00015,RIM", "0.49,BOAT,0.01,RIM",
        "0.1,PLAIN,0.01,SOAKS"
    })
    void reasons(double chance, Kind kind, double spare, Reason reason) {
        assertThat(verdict(chance, kind, spare, chance, BALL).reason()).isEqualTo(reason);
    }

    /** In still water there is neither gas nor soaking. */
    @Test
    void reasonsInStillWater() {
        Question still = Question.still(BALL, 0.13);
        GoverningLimit under = new GoverningLimit(Kind.PLAIN, 0.14, -0.0001);
        assertThat(FloatVerdict.of(0.9, false, under, 0.9, still).reason()).isEqualTo(Reason.LIGHT);
        assertThat(FloatVerdict.of(0.1, false, under, 0.1, still).reason()).isEqualTo(Reason.HEAVY);
        GoverningLimit rim = new GoverningLimit(Kind.BOAT, 0.14, 0.0001);
        assertThat(FloatVerdict.of(0.1, false, rim, 0.1, still).reason()).isEqualTo(Reason.RIM);
        assertThat(Answer.EITHER.word()).isEqualTo("either");
    }

    /** What floats at once and ends up with a stone of 8 g in 3 cm3 sinks by its load; a cork or a topping is none. */
    @Test
    void whatTheLoadDraws() {
        Shape stone = Loaded.with(BALL, new Inset(0.008, 3e-6));
        assertThat(verdict(0.1, Kind.PLAIN, 0.01, 0.5, stone).reason()).isEqualTo(Reason.LOAD);
        assertThat(verdict(0.1, Kind.PLAIN, 0.01, 0.49, stone).reason()).isEqualTo(Reason.SOAKS);
        Shape cork = Loaded.with(BALL, new Inset(0.003, 8e-6));
        assertThat(verdict(0.1, Kind.PLAIN, 0.01, 0.5, cork).reason()).isEqualTo(Reason.SOAKS);
        Shape salted = Loaded.with(BALL, new Topping("salt", 0.006, 2165, 0.55));
        assertThat(verdict(0.1, Kind.PLAIN, 0.01, 0.5, salted).reason()).isEqualTo(Reason.SOAKS);
        Shape both = Loaded.with(cork, new Topping("salt", 0.006, 2165, 0.55));
        assertThat(verdict(0.1, Kind.PLAIN, 0.01, 0.5, both).reason()).isEqualTo(Reason.SOAKS);
    }

    /** 300 g of powder in the mix, 100 g in the piece: a third of each line. */
    @Test
    void whatComesIntoTheBath() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "180 g")
                .dry("epsom salt", "60 g")
                .dry("slsa", "30 g")
                .dry("mica", "30 g")
                .wet("sunflower oil", "6 g")
                .wet("cocoa butter", "3 g")
                .wet("polysorbate 80", "3 g")
                .wet("decyl glucoside", "9 g")
                .wet("lemon fragrance", "1.5 g")
                .limit("lemon fragrance", "1 %")
                .build());
        BathLoad load = BathLoad.of(blend, 0.1);
        assertThat(load.oil()).isCloseTo(0.003, within(1e-12));
        assertThat(load.surfactant()).isCloseTo(0.013, within(1e-12));
        assertThat(load.emulsifier()).isCloseTo(0.001, within(1e-12));
        assertThat(load.fragrance()).isCloseTo(0.0005, within(1e-12));
        assertThat(load.salt()).isCloseTo(0.02, within(1e-12));
        assertThat(load.colour()).isCloseTo(0.01, within(1e-12));
        assertThat(load.limits()).hasSize(1);
        BathLoad.OwnLimit limit = load.limits().get(0);
        assertThat(limit.mass()).isCloseTo(0.0005, within(1e-12));
        assertThat(limit.limit()).isEqualTo(0.01);
        assertThat(limit.kept()).isTrue();
    }

    /**
     * Molar masses of IUPAC 2021 (84.006, 192.123, 150.087, 105.988 g/mol) on half of the mix: an acid counts in molecules,
     * a carbonate beside the bicarbonate, and a tenth of Epsom salt (246.47 g/mol) is magnesium.
     */
    @Test
    void reagentsOfThePiece() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "60 g")
                .dry("tartaric acid", "40 g")
                .dry("citric acid monohydrate", "20 g")
                .dry("sodium carbonate", "40 g")
                .dry("epsom salt", "40 g")
                .build());
        Reagents half = RecipeReagents.of(blend, 0.2);
        assertThat(half.bicarbonate()).isCloseTo(0.1 / 0.084006, within(1e-4));
        assertThat(half.carbonate()).isCloseTo(0.02 / 0.105988, within(1e-4));
        assertThat(half.acid(Acid.CITRIC)).isCloseTo(0.03 / 0.192123 + 0.01 / 0.210138, within(1e-4));
        assertThat(half.acid(Acid.TARTARIC)).isCloseTo(0.02 / 0.150087, within(1e-4));
        assertThat(half.magnesium()).isCloseTo(0.02 / 0.24647, within(1e-4));
        assertThat(half.acid(Acid.MALIC)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "malic acid,MALIC",
        "cream of tartar,POTASSIUM_BITARTRATE",
        "ascorbic acid,ASCORBIC",
        "lactic acid powder,LACTIC",
        "fumaric acid,FUMARIC"
    })
    void otherAcids(String name, Acid acid) {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry(name, "100 g")
                .build());
        assertThat(RecipeReagents.of(blend, 0.3).acid(acid)).isGreaterThan(0.4);
    }

    /** An acid of 150 g/mol that is none of those known here is named by that. */
    @Test
    void anUnknownAcid() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .own(HarbourAcid.NAME, HarbourAcid.SAID)
                .dry("sodium bicarbonate", "200 g")
                .dry(HarbourAcid.NAME, "100 g")
                .build());
        assertThatThrownBy(() -> RecipeReagents.of(blend, 0.3))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.read()).isEqualTo("an acid of 150.0 g/mol"));
    }

    /** An index below its own error, or below 0, is told as 0. */
    @Test
    void drivers() {
        Sensitivity found = new Sensitivity(
                new double[0],
                new double[] {0.3, 0.02, -0.1},
                new double[] {0.4, 0.05, Double.NaN},
                new double[] {0.1, 0.06, 0},
                new double[] {0.1, 0.01, 0});
        Driver first = Driver.of(Input.HAND, found, 0);
        assertThat(first).isEqualTo(new Driver(Input.HAND, 0.3, 0.4, 0.1));
        assertThat(first.share()).isEqualTo(0.4);
        assertThat(Driver.of(Input.HAND, found, 1)).isEqualTo(new Driver(Input.HAND, 0.02, 0, 0.06));
        Driver third = Driver.of(Input.HAND, found, 2);
        assertThat(third.firstOrder()).isZero();
        assertThat(third.total()).isNaN();
        assertThat(third.share()).isZero();
    }

    /** Of a dried piece the fizz lost is what its makeup says; of a piece that is only weighed nothing is drawn. */
    @Test
    void fizzThatIsLost() {
        Blend blend = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .wet("sunflower oil", "3 g")
                .build());
        Optional<Blend> mix = Optional.of(blend);
        Weighed dried = new Weighed(
                0.13, Optional.empty(), mix, Optional.of(Makeup.usual().withFizzLeft(0.75)));
        assertThat(FizzLoss.of(Question.of(BALL, dried), new double[] {5}).median())
                .isCloseTo(0.25, within(1e-12));
        Weighed dry = new Weighed(0.13, Optional.empty(), mix);
        assertThat(FizzLoss.of(Question.of(BALL, dry), new double[] {5})).isEqualTo(Interval.certain(0));
    }
}
