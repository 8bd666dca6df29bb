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
import org.fizzhull.forecast.question.Question;
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
            Question.IntoBath.DROPPED,
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
     * Bayes' rule by hand for a fault against the plan, nothing measured. With weights w, chances s to show the symptom, e = 0.04
     * that the models are wrong and then one symptom in ten, a fault weighs w ((1 - e) (s - s0) + e/10), the plan
     * w0 e/10 + (1 - e) s0 SUM w, where no fault makes sinking rarer: one that does leaves the plan no more than it shows itself.
     */
    @Test
    void chancesFollowBayesRule() {
        Why why = DIAGNOSER.diagnose(BALL, Symptom.SANK, Seen.nothing());
        double asPlanned = why.asPlanned().orElseThrow();
        double anyway = 0;
        for (Why.Chance each : why.causes()) {
            anyway += each.cause().weight() * Math.min(each.showsIt(), asPlanned);
        }
        Why.Chance fault = chance(why, Cause.TOO_MUCH_MIX);
        assertThat(fault.showsIt()).isGreaterThan(asPlanned + 0.1);
        double ofFault = fault.cause().weight() * (0.96 * (fault.showsIt() - asPlanned) + 0.04 / 10);
        double ofPlan = Cause.SOMETHING_ELSE.weight() * 0.04 / 10 + 0.96 * anyway;
        double plan = chance(why, Cause.SOMETHING_ELSE).probability();
        assertThat(fault.probability() / plan).isCloseTo(ofFault / ofPlan, within(1e-9));
    }

    /**
     * Sinking later is a rank between floating to the end and sinking at once. Of pieces in that order, those from f1 (to the end) to
     * f0 (at once) sink later with the fault, and those up to F1 float to the end as planned: the fault brings min(f0, F1) - f1. All
     * that sink later of spent pieces it is here, though the plan has some that sink later too.
     */
    @Test
    void whatSinksLaterIsARankBetweenTwo() {
        Why later = DIAGNOSER.diagnose(BALL, Symptom.SANK_LATER, Seen.nothing());
        Why atOnce = DIAGNOSER.diagnose(BALL, Symptom.SANK, Seen.nothing());
        double plannedEnd =
                1 - atOnce.asPlanned().orElseThrow() - later.asPlanned().orElseThrow();
        double all = 0;
        for (Why.Chance each : later.causes()) {
            all += each.cause().weight() * (0.96 * each.showsIt() + 0.04 / 10);
        }
        Why.Chance fault = chance(later, Cause.LOST_ITS_FIZZ);
        double once = 1 - chance(atOnce, Cause.LOST_ITS_FIZZ).showsIt();
        double toTheEnd = once - fault.showsIt();
        double added = Math.min(once, plannedEnd) - toTheEnd;
        assertThat(added).isCloseTo(fault.showsIt(), within(1e-12));
        assertThat(later.asPlanned().orElseThrow()).isGreaterThan(0.01);
        double expected = fault.cause().weight() * (0.96 * added + 0.04 / 10) / all;
        assertThat(fault.probability()).isCloseTo(expected, within(1e-9));
    }

    /** Weak fizz is shown by a spent piece and by little else: the faults that cannot show it share the doubt in the models. */
    @Test
    void faultsThatCannotShowASymptomDoNotOutweighTheOneThatCan() {
        Why why = DIAGNOSER.diagnose(BALL, Symptom.WEAK_FIZZ, Seen.nothing());
        double others = 0;
        for (Why.Chance each : why.causes()) {
            if (each.cause() != Cause.LOST_ITS_FIZZ) {
                assertThat(each.showsIt()).isZero();
                others += each.cause().weight();
            }
        }
        Why.Chance spent = chance(why, Cause.LOST_ITS_FIZZ);
        double ofSpent = spent.cause().weight() * (0.96 + 0.04 / 10);
        assertThat(spent.showsIt()).isEqualTo(1);
        assertThat(spent.probability()).isCloseTo(ofSpent / (ofSpent + others * 0.04 / 10), within(1e-12));
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
        Seen heavy = Seen.nothing().with(Why.Check.WEIGH_A_PIECE, 0.149);
        Why why = DIAGNOSER.diagnose(BALL, Symptom.SANK, heavy);
        assertThat(why.causes().get(0).cause()).isEqualTo(Cause.TOO_MUCH_MIX);
        assertThat(why.causes().get(0).probability()).isGreaterThan(0.9);
    }

    /** A piece 2 mm narrower than the mould is sold for came from a smaller mould. */
    @Test
    void aNarrowPieceMeansASmallerMould() {
        Seen narrow = Seen.nothing().with(Why.Check.MEASURE_ACROSS, 0.0628).with(Why.Check.WEIGH_A_PIECE, 0.137);
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
        assertThat(before.best().orElseThrow().check()).isEqualTo(Why.Check.WEIGH_A_PIECE);
        Seen weighed = Seen.nothing().with(Why.Check.WEIGH_A_PIECE, 0.138);
        DIAGNOSER
                .diagnose(BALL, Symptom.SANK, weighed)
                .best()
                .ifPresent(best -> assertThat(best.check()).isNotEqualTo(Why.Check.WEIGH_A_PIECE));
    }

    private static Why.Chance chance(Why why, Cause cause) {
        return why.causes().stream().filter(c -> c.cause() == cause).findFirst().orElseThrow();
    }

    /**
     * What other pieces told narrows the plan as it narrows a forecast of it: the chance that the plan sinks is that of the forecast
     * that knows the same. A dunk that lifts more says it floats.
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
        assertThat(why.asPlanned().orElseThrow()).isCloseTo(1 - floats, within(0.03));
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
