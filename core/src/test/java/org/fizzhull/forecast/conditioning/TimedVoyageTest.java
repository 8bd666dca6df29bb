package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.HeldUnder;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: the voyage of a measured piece is that of a question about it, sailed here by hand. */
class TimedVoyageTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Question QUESTION = Question.weighed(BALL, 0.142);
    private static final PreparedQuestion PREPARED = PreparedQuestion.of(QUESTION, Factors.standard());
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));

    private static TimedVoyage weighing(double mass) {
        return new TimedVoyage(PREPARED, OptionalDouble.of(mass));
    }

    @Test
    void aPieceOfAnotherWeightIsAQuestionOfItsOwn() {
        double[] medians = PREPARED.factors().medians();
        for (double mass : new double[] {0.12, 0.142, 0.15, 0.19}) {
            DropModel drop = new DropModel(PREPARED.ask(QUESTION.weighing(mass)));
            double spare = drop.at(medians);
            QuickVoyage voyage = new QuickVoyage(PREPARED.form(), QUESTION.bath());
            voyage.run(drop.launch());
            TimedVoyage timed = weighing(mass);
            assertThat(timed.spare(medians)).isEqualTo(spare);
            assertThat(timed.fizz(medians)).isEqualTo(voyage.fizzTime());
            voyage.runUntilRise(drop.launch());
            double rise = timed.rise(medians);
            assertThat(rise)
                    .isEqualTo(
                            switch (voyage.outcome()) {
                                case FLOATS_AT_ONCE -> 0;
                                case RISES_LATER, STAYS_DOWN ->
                                    voyage.upTime() > 0 ? voyage.upTime() : Double.POSITIVE_INFINITY;
                            });
            assertThat(timed.width()).isEqualTo(voyage.upWidth());
            HeldUnder bowl = new HeldUnder(PREPARED.form(), QUESTION.bath());
            assertThat(timed.held(medians, bowl, 4, false)).isEqualTo(bowl.reading(drop.launch(), 4, false));
        }
        assertThat(new TimedVoyage(PREPARED, OptionalDouble.empty()).spare(medians))
                .isEqualTo(weighing(0.142).spare(medians));
    }

    /** By the balance of forces: light pieces are up at once, heavy ones stay down, and one between rises after more than 20 s. */
    @Test
    void threeFates() {
        double[] medians = PREPARED.factors().medians();
        assertThat(weighing(0.12).rise(medians)).isZero();
        assertThat(weighing(0.15).rise(medians))
                .isGreaterThan(Voyage.Outcome.AT_ONCE)
                .isLessThan(600);
        assertThat(weighing(0.21).rise(medians)).isInfinite();
    }

    /** ANALYTIC: water of the bath in a ball, 4/3 pi r^3. */
    @Test
    void itDisplacesItsVolumeOfWater() {
        double volume = 4.0 / 3 * Math.PI * Math.pow(0.0325, 3);
        assertThat(weighing(0.15).displaced())
                .isCloseTo(volume * QUESTION.bath().density(), within(1e-12));
    }

    /** BY DEFINITION: the spread of a batch is not that of the piece on the scale, and stays in the draw as it is. */
    @Test
    void theSpreadOfTheBatchIsNotItsOwn() {
        PreparedQuestion batch = PreparedQuestion.of(QUESTION.spread(Priors.normal(0, 0.004)), Factors.standard());
        double[] inputs = batch.factors().medians();
        int hand = batch.factors().column(Input.HAND);
        inputs[hand] = 0.006;
        TimedVoyage timed = new TimedVoyage(batch, OptionalDouble.empty());
        assertThat(timed.spare(inputs))
                .isCloseTo(weighing(0.142).spare(PREPARED.factors().medians()), within(1e-15));
        assertThat(inputs[hand]).isEqualTo(0.006);
    }

    /** BY DEFINITION: a made piece on the scale has the weight it showed less what the scale shows too much, whatever was filled in. */
    @Test
    void aMadePieceHasTheWeightThatWasShown() {
        Question filled = Question.of(BALL, new Moulded.Filled(MIX, 0.15, Optional.empty(), DryingPlan.none()));
        PreparedQuestion prepared = PreparedQuestion.of(filled, Factors.standard());
        double[] inputs = prepared.factors().medians();
        DropModel asked = new DropModel(prepared);
        asked.at(inputs);
        asked.weigh(0.139);
        QuickVoyage voyage = new QuickVoyage(prepared.form(), filled.bath());
        voyage.run(asked.launch());
        TimedVoyage timed = new TimedVoyage(prepared, OptionalDouble.of(0.139));
        assertThat(timed.fizz(inputs)).isCloseTo(voyage.fizzTime(), within(1e-9));
        double spare = timed.spare(inputs);
        inputs[prepared.factors().column(Input.SCALE)] = 4e-4;
        assertThat(timed.spare(inputs)).isLessThan(spare - 3e-4).isGreaterThan(spare - 6e-4);
    }

    @Test
    void aMeasuredPieceHasAWeightThatItsShapeCanHave() {
        TimedVoyage.check(QUESTION, OptionalDouble.empty(), "measured fizz");
        TimedVoyage.check(QUESTION, OptionalDouble.of(0.15), "measured fizz");
        assertThatThrownBy(() -> TimedVoyage.check(QUESTION, OptionalDouble.of(0.4), "measured fizz"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("measured fizz"));
        Question filled = Question.of(BALL, new Moulded.Filled(MIX, 0.15, Optional.empty(), DryingPlan.none()));
        TimedVoyage.check(filled, OptionalDouble.of(0.15), "measured rise");
        assertThatThrownBy(() -> TimedVoyage.check(filled, OptionalDouble.empty(), "measured rise"))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.code()).isEqualTo("missing-value");
                    assertThat(refusal.field()).isEqualTo("measured rise");
                });
    }
}
