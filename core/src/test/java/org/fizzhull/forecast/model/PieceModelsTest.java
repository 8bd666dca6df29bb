package org.fizzhull.forecast.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fizzhull.Missing;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making.Weighed;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.question.Question.IntoBath;
import org.fizzhull.forecast.result.FloatCheck.Floats;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.piece.Piece.Makeup;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.junit.jupiter.api.Test;

/** ARCHIMEDES: what floats in still water; BY DEFINITION: how the models of a piece agree with one another. */
class PieceModelsTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private static PreparedQuestion prepared(Question question) {
        return PreparedQuestion.of(question, Factors.standard());
    }

    private static double[] centre(Question question) {
        return Factors.standard().asked(question).medians();
    }

    private static Blend mix() {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .wet("sunflower oil", "6 g")
                .wet("water", "3 g")
                .build());
    }

    /** The spare is the water pushed aside less the mass; a ball 1 mm wider is (66/65)^3 as large. */
    @Test
    void stillWater() {
        Question question = Question.still(BALL, 0.13);
        double water = question.bath().density() * BALL.volume();
        DropModel drop = new DropModel(prepared(question));
        assertThatThrownBy(drop::mass).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(drop::sizeError).isInstanceOf(IllegalStateException.class);
        double[] inputs = centre(question);
        assertThat(drop.at(inputs)).isCloseTo(water - 0.13, within(1e-12));
        assertThat(drop.mass()).isEqualTo(0.13);
        assertThat(drop.spare(0.12)).isCloseTo(water - 0.12, within(1e-12));
        assertThat(drop.solidMass()).isCloseTo(0.999 * Makeup.USUAL_TRUE_DENSITY * BALL.volume(), within(1e-12));
        assertThat(drop.fizzLeft()).isEqualTo(1);
        Factors asked = prepared(question).factors();
        inputs[asked.column(Input.MOULD_SIZE)] = 0.001;
        inputs[asked.column(Input.SCALE_OFFSET)] = 0.0005;
        assertThat(drop.at(inputs)).isCloseTo(water * Math.pow(66.0 / 65, 3) - 0.1305, within(1e-12));
        assertThat(drop.sizeError()).isEqualTo(0.001);
        assertThat(drop.piece(inputs).mass()).isCloseTo(0.1305, within(1e-15));
        assertThat(drop.piece(inputs, 0.11).mass()).isEqualTo(0.11);
        drop.weigh(0.12);
        assertThat(drop.mass()).isEqualTo(0.12);
        // a bath 1 K warmer is as much lighter as water of that temperature
        inputs = centre(question);
        inputs[asked.column(Input.BATH_TEMPERATURE)] = 1;
        Bath warmer = question.bath().withTemperature(question.bath().temperature() + 1);
        assertThat(drop.at(inputs)).isCloseTo(warmer.density() * BALL.volume() - 0.13, within(1e-9));
    }

    /** An inset is not pressed: only the body can be as dense as its grains. */
    @Test
    void theHeaviestBody() {
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        Question question = Question.still(loaded, 0.13);
        DropModel drop = new DropModel(prepared(question));
        drop.at(centre(question));
        assertThat(drop.solidMass()).isCloseTo(0.02 + 0.999 * 1900 * loaded.volume(), within(1e-12));
    }

    /** A piece whose making is the same is made once; the bath alone may change. */
    @Test
    void aMadePieceIsKept() {
        Question question = Question.of(BALL, new Moulded.Filled(mix(), 0.13, Optional.empty(), DryingPlan.none()));
        PreparedQuestion prepared = prepared(question);
        int[] made = {0};
        DropModel drop = new DropModel(prepared, (draw, ratio) -> {
            made[0]++;
            return new Piece(BALL, 0.13 + draw.massError(), draw.makeup());
        });
        double[] inputs = centre(question);
        drop.at(inputs);
        inputs[prepared.factors().column(Input.BATH_TEMPERATURE)] = 1;
        drop.at(inputs);
        assertThat(made[0]).isEqualTo(1);
        inputs[prepared.factors().column(Input.SCALE_OFFSET)] = 0.0005;
        drop.at(inputs);
        assertThat(made[0]).isEqualTo(2);
        assertThat(drop.mass()).isCloseTo(0.1305, within(1e-15));
        // both are kept: the first comes back without being made
        inputs[prepared.factors().column(Input.SCALE_OFFSET)] = 0;
        drop.at(inputs);
        assertThat(made[0]).isEqualTo(2);
        assertThat(drop.mass()).isEqualTo(0.13);
        inputs[prepared.factors().column(Input.MOULD_SIZE)] = 0.0001;
        drop.at(inputs);
        assertThat(made[0]).isEqualTo(3);
    }

    /** The limit of a draw is its water, whatever the piece weighs; it floats where it is lighter. */
    @Test
    void limitsInStillWater() {
        Question question = Question.still(BALL, 0.13);
        double water = question.bath().density() * BALL.volume();
        double[][] columns = new double[VoyageModel.CRITICAL_WIDTH][2];
        StillModel model = new StillModel(prepared(question), columns);
        model.at(centre(question));
        model.keep(0);
        double[] inputs = centre(question);
        inputs[prepared(question).factors().column(Input.SCALE_OFFSET)] = 0.0145;
        model.at(inputs);
        model.keep(1);
        assertThat(columns[VoyageModel.MASS]).containsExactly(new double[] {0.13, 0.1445}, within(1e-12));
        assertThat(columns[VoyageModel.OWN]).containsExactly(1, 0);
        assertThat(columns[VoyageModel.AT_ONCE]).containsExactly(1, 0);
        assertThat(columns[VoyageModel.END]).containsExactly(new double[] {water, water}, within(1e-12));
        assertThat(columns[VoyageModel.ONCE]).containsExactly(new double[] {water, water}, within(1e-12));
        assertThat(columns[VoyageModel.MEAN]).containsExactly(new double[] {0.13, 0.1445}, within(1e-12));
        assertThat(columns[VoyageModel.GAIN]).containsExactly(1, 1);
        DrawnWeights weights = new DrawnWeights(columns, Scatter.of(prepared(question)));
        assertThat(weights.shares()).containsExactly(1, 0);
    }

    /** Below its water it floats, at its water and above it does not. */
    @Test
    void checksInStillWater() {
        Question question = Question.still(BALL, 0.13);
        double water = question.bath().density() * BALL.volume();
        PreparedCheck check = new PreparedCheck(question, Factors.standard(), prepared(question), centre(question));
        assertThat(check.heaviest()).isCloseTo(water, within(1e-12));
        assertThat(check.question()).isEqualTo(question);
        assertThat(check.floats()).isEqualTo(new Floats(0.13, true, true, water - 0.13));
        Floats heavy = check.floats(water * 1.001);
        assertThat(heavy.atOnce()).isFalse();
        assertThat(heavy.toTheEnd()).isFalse();
        assertThat(heavy.spareAtDrop()).isCloseTo(-0.001 * water, within(1e-9));
        assertThat(check.floats(water * 0.999).toTheEnd()).isTrue();
    }

    /** The heaviest that floats to the end does, less a half per cent; more a half per cent, it does not. */
    @Test
    void checksInABath() {
        Question question = Question.weighed(BALL, 0.13);
        PreparedCheck check = new PreparedCheck(question, Factors.standard(), prepared(question), centre(question));
        double heaviest = check.heaviest();
        assertThat(check.floats(0.995 * heaviest).toTheEnd()).isTrue();
        assertThat(check.floats(1.005 * heaviest).toTheEnd()).isFalse();
        assertThat(check.floats().mass()).isEqualTo(0.13);
        // the limit belongs to the ball, not to the weight that was asked about
        Question other = Question.weighed(BALL, 0.15);
        PreparedCheck again = new PreparedCheck(other, Factors.standard(), prepared(other), centre(other));
        assertThat(again.heaviest()).isCloseTo(heaviest, within(1e-3 * heaviest));
    }

    /** A fill that does not fill its mould is refused, also by a check of another weight. */
    @Test
    void checksOfAFill() {
        Question question = Question.of(BALL, new Moulded.Filled(mix(), 0.13, Optional.empty(), DryingPlan.none()));
        PreparedCheck check = new PreparedCheck(question, Factors.standard(), prepared(question), centre(question));
        assertThatThrownBy(() -> check.floats(0.04)).isInstanceOf(Refusal.class);
        assertThat(check.floats(0.12).mass()).isLessThan(check.floats().mass());
    }

    /** 130 g of a mix of 309 g with 300 g of powder; of a dried piece the powder, the oil and no water weigh 102 parts. */
    @Test
    void powderOfAPiece() {
        Question fill = Question.of(BALL, new Moulded.Filled(mix(), 0.13, Optional.empty(), DryingPlan.none()));
        Factors asked = Factors.standard().asked(fill);
        Piece piece = new Piece(BALL, 0.1, Makeup.usual());
        assertThat(FreshPowder.of(fill, asked, piece).mass()).isCloseTo(0.13 / 1.03, within(1e-9));
        Blend dry = Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
                .dry("sodium bicarbonate", "200 g")
                .dry("citric acid anhydrous", "100 g")
                .wet("sunflower oil", "6 g")
                .build());
        Question weighed = Question.of(BALL, new Weighed(0.13, Optional.empty(), Optional.of(dry)));
        assertThat(FreshPowder.of(weighed, asked, piece).mass()).isCloseTo(0.1 / 1.02, within(1e-12));
        assertThat(FreshPowder.of(weighed, asked, piece).blend()).isEqualTo(dry);
    }

    /** A ball is dropped, a light bowl that stands stays set down, and one that was dropped stays dropped. */
    @Test
    void bowlsThatStand() {
        Question ball = Question.weighed(BALL, 0.13);
        assertThat(TippingBoat.judged(ball, Factors.standard())).isSameAs(ball);
        Question bowl = Question.weighed(Bowl.ofDiameterAndWall(0.08, 0.012), 0.06);
        assertThat(TippingBoat.judged(bowl, Factors.standard()).into()).isEqualTo(IntoBath.PLACED);
        Question dropped = bowl.into(IntoBath.DROPPED);
        assertThat(TippingBoat.judged(dropped, Factors.standard())).isSameAs(dropped);
        assertThatNullPointerException()
                .isThrownBy(() -> TippingBoat.judged(ball, Missing.value()))
                .withMessage("factors is null");
    }

    /** By the press itself at the standard parameters: damp density at the mean pressure, times the volume of the mould. */
    @Test
    void weightsByPressure() {
        Blend blend = mix();
        MouldDimensions mould = MouldDimensions.of(BALL, MouldDimensions.Filling.usual(BALL));
        double[] pressures = {2e4, 8e4};
        double[][] columns = new double[2][1];
        CurveModel curve = new CurveModel(blend, mould, new Factors(List.of()), pressures, columns);
        double first = curve.at(new double[0]);
        curve.keep(0);
        Press press = Press.of(blend);
        for (int i = 0; i < 2; i++) {
            double mean = pressures[i] * press.meanOverTop(mould);
            assertThat(columns[i][0])
                    .isCloseTo(press.dampDensity(press.solidFraction(mean)) * mould.volume(), within(1e-9));
        }
        assertThat(first).isEqualTo(columns[0][0]);
        assertThat(columns[1][0]).isGreaterThan(columns[0][0]);
    }

    /** Times, losses and masses stand in columns of their own, as long as there are draws. */
    @Test
    void fizzOfADraw() {
        Question question = Question.weighed(BALL, 0.13);
        double[][] columns = FizzModel.columns(2);
        FizzModel model = new FizzModel(prepared(question), columns);
        double spare = model.at(centre(question));
        model.keep(1);
        assertThat(columns[FizzModel.MASS]).containsExactly(0, 0.13);
        assertThat(columns[FizzModel.LOST]).containsExactly(0, 0);
        assertThat(columns[FizzModel.TIME][1]).isGreaterThan(30);
        DropModel drop = new DropModel(prepared(question));
        assertThat(spare).isEqualTo(drop.at(centre(question)));
        // a front twice as fast is through in half the time
        double[] faster = centre(question);
        faster[prepared(question).factors().column(Input.RECESSION)] *= 2;
        model.at(faster);
        model.keep(0);
        assertThat(columns[FizzModel.TIME][0]).isCloseTo(columns[FizzModel.TIME][1] / 2, within(0.1 * 60));
    }
}
