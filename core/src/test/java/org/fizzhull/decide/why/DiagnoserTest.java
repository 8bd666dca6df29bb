package org.fizzhull.decide.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.IntoBath;
import org.fizzhull.medium.Bath;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Causes of a failed batch. Expected values: Bayes' rule by hand, and what a scale plainly says. */
class DiagnoserTest {
    private static final Diagnoser DIAGNOSER = Diagnoser.standard().with(new Sampling(1, 128));
    private static final Design BALL = new Design(
            Optional.of(ExampleRecipes.lemon(IngredientTable.standard())),
            ShapeText.read("sphere(diameter=65 mm)"),
            new Design.Filling.Fill(0.138, Optional.of(Priors.normal(0, 2e-3))),
            Optional.empty(),
            Bath.at(311.15),
            IntoBath.DROPPED,
            false,
            Measured.CALIPERS,
            Scale.usual(0.138));

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void chancesSumToOneWhateverWasSeen(Symptom symptom) {
        double sum = 0;
        for (Why.Chance chance :
                DIAGNOSER.diagnose(BALL, symptom, Seen.nothing()).causes()) {
            assertThat(chance.probability()).isBetween(0.0, 1.0);
            sum += chance.probability();
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    /**
     * Bayes' rule by hand for a fault against the plan, nothing measured: with weights w and chances s to show the symptom the
     * fault made the difference with w (s - s0), and the plan is to blame with s0 times all weights.
     */
    @Test
    void chancesFollowBayesRule() {
        Why why = DIAGNOSER.diagnose(BALL, Symptom.SANK, Seen.nothing());
        double asPlanned = why.asPlanned().orElseThrow();
        double weights = 0;
        for (Why.Chance each : why.causes()) {
            weights += each.cause().weight();
        }
        Why.Chance fault = chance(why, Cause.TOO_MUCH_MIX);
        double odds = fault.cause().weight() * (fault.showsIt() - asPlanned) / (asPlanned * weights);
        double plan = chance(why, Cause.SOMETHING_ELSE).probability();
        assertThat(fault.probability() / plan).isCloseTo(odds, within(1e-9 * odds));
    }

    /** What fails as planned is laid to the plan: a ball of 160 g in 144 cm3 sinks whatever else went wrong. */
    @Test
    void whatWouldHaveFailedAnywayIsLaidToThePlan() {
        Design heavy = BALL.filled(new Design.Filling.Fill(0.165, Optional.empty()));
        Why.Chance first =
                DIAGNOSER.diagnose(heavy, Symptom.SANK, Seen.nothing()).causes().get(0);
        assertThat(first.cause()).isEqualTo(Cause.SOMETHING_ELSE);
        assertThat(first.probability()).isGreaterThan(0.9);
    }

    /** 150 g on the scale where 138 g were planned is too much mix. */
    @Test
    void aHeavyPieceMeansTooMuchMix() {
        Seen heavy = Seen.nothing().with(Check.WEIGH_A_PIECE, 0.149);
        Why why = DIAGNOSER.diagnose(BALL, Symptom.SANK, heavy);
        assertThat(why.causes().get(0).cause()).isEqualTo(Cause.TOO_MUCH_MIX);
        assertThat(why.causes().get(0).probability()).isGreaterThan(0.9);
    }

    /** A piece 2 mm narrower than the mould is sold for came from a smaller mould. */
    @Test
    void aNarrowPieceMeansASmallerMould() {
        Seen narrow = Seen.nothing().with(Check.MEASURE_ACROSS, 0.0628).with(Check.WEIGH_A_PIECE, 0.137);
        assertThat(DIAGNOSER
                        .diagnose(BALL, Symptom.SANK, narrow)
                        .causes()
                        .get(0)
                        .cause())
                .isEqualTo(Cause.MOULD_SMALLER);
    }

    /** What was read already is not asked for again. */
    @Test
    void theBestCheckIsOneThatWasNotMade() {
        Why before = DIAGNOSER.diagnose(BALL, Symptom.SANK, Seen.nothing());
        assertThat(before.best().orElseThrow().check()).isEqualTo(Check.WEIGH_A_PIECE);
        Seen weighed = Seen.nothing().with(Check.WEIGH_A_PIECE, 0.138);
        DIAGNOSER
                .diagnose(BALL, Symptom.SANK, weighed)
                .best()
                .ifPresent(best -> assertThat(best.check()).isNotEqualTo(Check.WEIGH_A_PIECE));
    }

    private static Why.Chance chance(Why why, Cause cause) {
        return why.causes().stream().filter(c -> c.cause() == cause).findFirst().orElseThrow();
    }

    /**
     * What other pieces told narrows the plan as it narrows a forecast of it: the chance that the plan sinks is that of the forecast
     * that knows the same, but for the doubt in the models, 0.02 + 0.96 p. A dunk that lifts more says it floats.
     */
    @Test
    void measurementsOnOtherPiecesNarrowThePlan() {
        Design heavy = BALL.filled(new Design.Filling.Fill(0.146, Optional.of(Priors.normal(0, 2e-3))));
        Observations seen = Observations.none().held(HeldPiece.of(0.150, 4).weighing(0.140));
        Why why = DIAGNOSER.with(seen).diagnose(heavy, Symptom.SANK, Seen.nothing());
        double floats = FloatPredictor.standard()
                .with(seen)
                .forecast(heavy.question())
                .probability()
                .orElseThrow()
                .floatsAtOnce();
        assertThat(why.asPlanned().orElseThrow()).isCloseTo(0.02 + 0.96 * (1 - floats), within(0.03));
        double unknown = DIAGNOSER
                .diagnose(heavy, Symptom.SANK, Seen.nothing())
                .asPlanned()
                .orElseThrow();
        assertThat(why.asPlanned().orElseThrow()).isLessThan(unknown - 0.1);
        // half of the gas is a fault that moves what was measured: it may still sink
        assertThat(chance(why, Cause.LITTLE_CLINGING_GAS).showsIt())
                .isGreaterThan(why.asPlanned().orElseThrow() + 0.2);
        assertThat(why.notices()).extracting(Notice::code).contains("measured-lift-as");
    }
}
