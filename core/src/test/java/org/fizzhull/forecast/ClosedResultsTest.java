package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.lang.reflect.Modifier;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.decide.why.Why;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer comes from its predictor alone: nobody else can put one together whose parts disagree. */
class ClosedResultsTest {
    @ParameterizedTest
    @ValueSource(
            classes = {
                Forecast.class,
                FizzForecast.class,
                DryForecast.class,
                PressForecast.class,
                JointForecast.class,
                Comparison.class,
                Advice.class,
                Why.class
            })
    void aStrangerCannotMakeOne(Class<?> result) {
        assertThat(result.getConstructors()).isEmpty();
        if (result.isInterface()) {
            assertThat(result.isSealed()).isTrue();
            assertThat(result.getPermittedSubclasses()).hasSize(1).allSatisfy(record -> {
                assertThat(record.isRecord()).isTrue();
                assertThat(Modifier.isPublic(record.getModifiers())).isFalse();
                assertThat(record.getConstructors()).isEmpty();
            });
        } else {
            assertThat(Modifier.isFinal(result.getModifiers())).isTrue();
        }
    }

    /** The same question twice is the same answer (definition). */
    @Test
    void anAnswerIsAValue() {
        Forecast one = dome(0.131);
        assertThat(dome(0.131)).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(dome(0.132)).isNotEqualTo(one);
    }

    private static Forecast dome(double kilograms) {
        Question batch =
                Question.weighed(Dome.ofDiameter(millimetres(80)), kilograms).spread(Priors.normal(0, grams(4)));
        return FloatPredictor.standard().with(new Sampling(1, 128)).forecast(batch);
    }
}
