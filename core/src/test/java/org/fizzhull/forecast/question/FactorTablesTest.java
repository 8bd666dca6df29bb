package org.fizzhull.forecast.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.Missing;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.ToldShape;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: which rows a table of inputs has after each change, and in which columns they stand. */
class FactorTablesTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);
    private static final Shape BALL = Sphere.ofDiameter(0.065);
    private static final Blend LEMON = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));

    private static Factor row(Input input, double value, int columns) {
        return new Factor(input, Priors.certain(value), INVENTED, columns);
    }

    private static List<Input> inputs(Factors factors) {
        return factors.rows().stream().map(Factor::input).toList();
    }

    private final Factors three =
            new Factors(List.of(row(Input.HAND, 0.1, 1), row(Input.POWDER_SCORES, 2, 3), row(Input.PLUME, 0.3, 1)));

    @Test
    void columns() {
        assertThat(three.columns()).containsExactly(1, 3, 1);
        assertThat(three.column(Input.HAND)).isZero();
        assertThat(three.column(Input.POWDER_SCORES)).isEqualTo(1);
        assertThat(three.column(Input.PLUME)).isEqualTo(4);
        assertThat(three.column(Input.SCALE)).isEqualTo(-1);
        assertThat(three.medians()).containsExactly(0.1, 2, 2, 2, 0.3);
        assertThat(three.makingColumns()).containsExactly(0, 1, 2, 3);
        assertThat(three.priors()).hasSize(5);
        assertThat(three.solved(Input.PLUME).median()).isEqualTo(0.3);
        assertThatThrownBy(() -> three.solved(Input.SCALE))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.allowed()).isEqualTo("an uncertain " + Input.SCALE.label()));
    }

    @Test
    void rows() {
        assertThat(three.row(Input.PLUME)).hasValue(row(Input.PLUME, 0.3, 1));
        assertThat(three.row(Input.SCALE)).isEmpty();
        assertThat(inputs(three.without(Input.HAND))).containsExactly(Input.POWDER_SCORES, Input.PLUME);
        assertThat(inputs(three.fix(Input.SCALE, 0.01)))
                .containsExactly(Input.HAND, Input.POWDER_SCORES, Input.PLUME, Input.SCALE);
        assertThat(three.fix(Input.HAND, 0.2).medians()).containsExactly(0.2, 2, 2, 2, 0.3);
        assertThat(three.scaled(Input.HAND, 3).medians()[0]).isCloseTo(0.3, within(1e-15));
        assertThat(three.toString()).startsWith(Input.HAND.label() + ": ").contains("\n" + Input.PLUME.label());
        assertThatNullPointerException()
                .isThrownBy(() -> three.row(Missing.value()))
                .withMessage("input is null");
        assertThatNullPointerException()
                .isThrownBy(() -> three.column(Missing.value()))
                .withMessage("input is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Factors(Missing.value()))
                .withMessage("rows is null");
    }

    /** What was taken out stays out until it is put in again; what stands in the table replaces what a question brings. */
    @Test
    void whatAQuestionBrings() {
        List<Factor> brought = List.of(row(Input.HAND, 0.5, 1), row(Input.POWDER_SCORES, 1, 6), row(Input.SCALE, 0, 1));
        Factors over = three.without(Input.SCALE).over(brought);
        assertThat(over.rows()).containsExactly(row(Input.HAND, 0.1, 1), row(Input.POWDER_SCORES, 2, 6));
        assertThat(inputs(three.without(Input.SCALE).fix(Input.SCALE, 1).over(brought)))
                .contains(Input.SCALE);
    }

    @Test
    void equalTables() {
        Factors same = new Factors(three.rows());
        assertThat(same).isEqualTo(three).hasSameHashCodeAs(three);
        assertThat(three.without(Input.SCALE)).isNotEqualTo(three);
        assertThat(three.sized(BALL, row(Input.MOULD_SIZE, 0.001, 1))).isNotEqualTo(three);
        assertThat(three.fix(Input.HAND, 0)).isNotEqualTo(three);
        assertThat(three.hashCode()).isNotEqualTo(new Factors(List.of()).hashCode());
        assertThatThrownBy(() -> three.sized(BALL, row(Input.HAND, 0.001, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Two inputs whose draws came together: 1 with 10, 2 with 20. Each row of uniforms picks one of them whole. */
    @Test
    void dependentInputs() {
        List<List<Double>> draws = List.of(List.of(0.1, 0.01), List.of(0.2, 0.02));
        Factors learned = three.learned(List.of(row(Input.PLUME, 0.15, 1)), List.of(Input.HAND, Input.PLUME), draws);
        assertThat(learned.isDependent()).isTrue();
        assertThat(learned.holds(Input.HAND)).isTrue();
        assertThat(three.isDependent()).isFalse();
        assertThat(learned).isNotEqualTo(three);
        List<Prior> priors = learned.priors();
        for (double u : new double[] {0.2, 0.8}) {
            double[] uniforms = {u, 0.5, 0.5, 0.5, 0.5};
            double hand = priors.get(0).quantile(uniforms, 0);
            double plume = priors.get(4).quantile(uniforms, 4);
            assertThat(plume).isCloseTo(hand / 10, within(1e-12));
            assertThat(hand).isCloseTo(u < 0.5 ? 0.1 : 0.2, within(1e-12));
            double doubled = learned.scaled(Input.HAND, 2).priors().get(0).quantile(uniforms, 0);
            assertThat(doubled).isCloseTo(2 * hand, within(1e-12));
        }
        Factors apart = learned.without(Input.HAND);
        assertThat(apart.holds(Input.HAND)).isFalse();
        assertThat(apart.isDependent()).isTrue();
        assertThat(apart.without(Input.PLUME).isDependent()).isFalse();
        assertThat(learned.fix(Input.HAND, 0.3).holds(Input.HAND)).isFalse();
        assertThat(learned.without(Input.SCALE).holds(Input.HAND)).isTrue();
        Factors shorter = new Factors(List.of()).learned(List.of(), List.of(Input.HAND), List.of(List.of(0.1)));
        assertThat(shorter.isDependent()).isFalse();
        assertThat(shorter.priors()).isEmpty();
    }

    /** A weighed ball asks for its scale, size and bath, and the ten of the fizz; of what it is made, two. */
    @Test
    void inputsOfAWeight() {
        List<Input> asked = inputs(Factors.standard().asked(Question.weighed(BALL, 0.13)));
        assertThat(asked)
                .containsExactlyInAnyOrder(
                        Input.TRUE_DENSITY,
                        Input.GAS_CAPACITY,
                        Input.SCALE,
                        Input.SCALE_OFFSET,
                        Input.MOULD_SIZE,
                        Input.BATH_TEMPERATURE,
                        Input.RECESSION,
                        Input.POROSITY_SLOPE,
                        Input.ACTIVATION_ENERGY,
                        Input.REACTIVE_EXPONENT,
                        Input.BUBBLE_SIZE,
                        Input.GAS_LAYER,
                        Input.UNDERSIDE,
                        Input.GAS_SHARE,
                        Input.WET_SKIN_DEPTH,
                        Input.PLUME);
        List<Input> still = inputs(Factors.standard().asked(Question.still(BALL, 0.13)));
        assertThat(still)
                .containsExactlyInAnyOrder(
                        Input.TRUE_DENSITY,
                        Input.GAS_CAPACITY,
                        Input.SCALE,
                        Input.SCALE_OFFSET,
                        Input.MOULD_SIZE,
                        Input.BATH_TEMPERATURE);
        // a row of the table that the question does not bring: kept where it is of the bath, idle where it is of the
        // making
        Factors more = Factors.standard()
                .fix(Input.PRESS, 1)
                .fix(Input.FILM_RATE, 1e-5)
                .fix(Input.OIL, 0.8);
        assertThat(inputs(more.asked(Question.weighed(BALL, 0.13))))
                .contains(Input.OIL)
                .doesNotContain(Input.PRESS, Input.FILM_RATE);
    }

    /** Rows with many columns and those of drying stand behind the others, so that a forecast without them is the same. */
    @Test
    void inputsOfAFill() {
        DryingPlan plan =
                DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 86400).plan(BALL);
        Moulded.Filled filled = new Moulded.Filled(LEMON, 0.13, Optional.of(Priors.normal(0, 0.002)), plan);
        Question question = Question.of(BALL, filled);
        List<Input> asked = inputs(Factors.standard().asked(question));
        assertThat(asked).contains(Input.HAND, Input.OIL, Input.STARCH).doesNotContain(Input.SURFACTANT, Input.PRESS);
        assertThat(asked.indexOf(Input.POWDER_SCORES)).isGreaterThan(asked.indexOf(Input.PLUME));
        assertThat(asked.indexOf(Input.ROOM_HUMIDITY)).isGreaterThan(asked.indexOf(Input.POWDER_SCORES));
        assertThat(asked).doesNotHaveDuplicates();
        Moulded.Pressed pressed = new Moulded.Pressed(LEMON, 5e4, 1.6, MouldDimensions.Filling.usual(BALL), plan);
        List<Input> press = inputs(Factors.standard().askedOfPress(Question.of(BALL, pressed)));
        assertThat(press)
                .contains(Input.PRESS_SCALE, Input.PRESS, Input.PRESS_REPEAT, Input.BRIDGE_EFFICIENCY)
                .contains(Input.PENDULAR_LIMIT, Input.FILM_RATE, Input.LOOSE_SCORE)
                .doesNotHaveDuplicates();
        List<Input> ofFill = inputs(Factors.standard().askedOfPress(question));
        assertThat(ofFill).contains(Input.PRESS_SCALE, Input.LOOSE_SCORE).doesNotContain(Input.PRESS);
    }

    /** In air of 96 % no draw of the hygrometer's error is above 4 %. */
    @Test
    void noDrawLeavesTheAirThatIsPossible() {
        DryingPlan plan = DryingConditions.open(RoomAir.of(Units.celsius(21), 0.96), 86400)
                .plan(BALL);
        Question question = Question.of(BALL, new Moulded.Filled(LEMON, 0.13, Optional.empty(), plan));
        Prior damp = Factors.standard()
                .asked(question)
                .row(Input.ROOM_HUMIDITY)
                .orElseThrow()
                .prior();
        assertThat(damp.quantile(1 - 1e-9)).isLessThanOrEqualTo(0.04);
    }

    /** The size of one mould is known better than the question says; that of another is not. */
    @Test
    void theSizeOfOneMould() {
        Factor size = row(Input.MOULD_SIZE, 0.001, 1);
        Factors sized = Factors.standard().sized(BALL, size);
        assertThat(sized.asked(Question.weighed(BALL, 0.13)).row(Input.MOULD_SIZE))
                .hasValue(size);
        assertThat(inputs(sized.asked(Question.weighed(BALL, 0.13))))
                .isEqualTo(inputs(Factors.standard().asked(Question.weighed(BALL, 0.13))));
        assertThat(sized.asked(Question.weighed(Sphere.ofDiameter(0.06), 0.1)).row(Input.MOULD_SIZE))
                .isNotEqualTo(Optional.of(size));
    }

    /** A size across of 0.2 mm deviation; a mould filled with water has an estimated surface besides. */
    @Test
    void errorsOfTheForm() {
        Factors asked = Factors.standard().asked(Question.weighed(BALL, 0.13));
        Prior size = asked.row(Input.MOULD_SIZE).orElseThrow().prior();
        assertThat(size.quantile(0.8413447)).isCloseTo(0.2e-3, within(1e-9));
        Prior bath = asked.row(Input.BATH_TEMPERATURE).orElseThrow().prior();
        assertThat(bath.quantile(0.8413447)).isCloseTo(1, within(1e-6));
        Shape water = Filled.ofWater(0.143, Filled.Family.SPHERE);
        Factors of = Factors.standard().asked(Question.weighed(water, 0.13));
        Prior surface = of.row(Input.SURFACE).orElseThrow().prior();
        assertThat(surface.median()).isCloseTo(1, within(1e-12));
        assertThat(surface.quantile(0.8413447)).isCloseTo(1 + water.surfaceSpread(), within(1e-6));
        assertThat(StandardPriors.ofForm(BALL)).isEmpty();
    }

    /**
     * A leaf of 100 x 100 mm and 1 mm: half its surface, 102 cm2, by 1 mm is 102 % of its 10 cm3; by a ruler, 0.7 mm, 71 %;
     * by calipers, 0.2 mm, 20 %; by water, 2 cm3 over 204 cm2, 10 %: the last way is named.
     */
    @Test
    void aMouldTooSlightForItsMeasure() {
        Shape leaf = Block.ofSides(0.1, 0.1, 0.001);
        Question nominal = Question.still(leaf, 0.01).measured(Measured.NOMINAL);
        assertThatThrownBy(() -> Factors.standard().asked(nominal)).isInstanceOfSatisfying(Refusal.class, r -> {
            assertThat(r.read()).endsWith("open to 102 %");
            assertThat(r.allowed()).isEqualTo("a way that leaves at most 70 % open");
            assertThat(r.hint()).isEqualTo("Measure it another way: water.");
        });
        assertThatThrownBy(() -> Factors.standard().asked(nominal.measured(Measured.RULER)))
                .isInstanceOf(Refusal.class);
        assertThat(Factors.standard().asked(nominal.measured(Measured.CALIPERS)).row(Input.MOULD_SIZE))
                .isPresent();
        Shape film = new ToldShape(leaf, "told", 0.1);
        assertThatThrownBy(() -> Factors.standard().asked(Question.still(film, 0.001)))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.hint()).startsWith("No way measures so thin a body"));
    }

    /** Of a dependence the values of an input go, and those of the others stay in their order. */
    @Test
    void dependence() {
        Dependence two = new Dependence(
                List.of(Input.HAND, Input.PLUME, Input.HAND), List.of(List.of(1.0, 2.0, 3.0), List.of(4.0, 5.0, 6.0)));
        assertThat(two.without(Input.SCALE)).isSameAs(two);
        assertThat(two.without(Input.HAND))
                .isEqualTo(new Dependence(List.of(Input.PLUME), List.of(List.of(2.0), List.of(5.0))));
        assertThat(two.without(Input.HAND).without(Input.PLUME)).isSameAs(Dependence.NONE);
        assertThat(two.scaled(Input.HAND, 10).draws())
                .containsExactly(List.of(10.0, 2.0, 30.0), List.of(40.0, 5.0, 60.0));
        // the second value of an input belongs to its second column
        Factors columns = new Factors(List.of(row(Input.PLUME, 0, 1), row(Input.HAND, 0, 2)));
        List<Prior> priors = new ArrayList<>(columns.priors());
        double[] uniforms = {0.2, 0.2, 0.2};
        List<Prior> joined = two.join(priors, columns);
        // the first column of the dependence picks the draw
        double[] drawn = {
            joined.get(0).quantile(uniforms, 0),
            joined.get(1).quantile(uniforms, 1),
            joined.get(2).quantile(uniforms, 2)
        };
        assertThat(drawn).containsExactly(2, 1, 3);
        assertThat(two.join(List.of(), new Factors(List.of()))).isEmpty();
        assertThat(two.join(priors, new Factors(List.of(row(Input.HAND, 0, 1)))))
                .hasSize(3);
    }
}
