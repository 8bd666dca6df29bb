package org.fizzhull.answer.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.tree.AnswerTree;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/** Keys of a forecast against the forecast itself, in the units of the keys; volumes and limits against closed forms. */
class FloatAnswerTest {
    private static final Question BALL = Question.weighed(Sphere.ofDiameter(Units.millimetres(65)), Units.grams(138));

    /** A piece near its limit from a mould whose size is only known by the water that it holds: worth a measurement. */
    private static final Question NEAR =
            Question.weighed(ShapeText.read("filled(water=143 g, like=shell)"), Units.grams(148));

    private static Forecast forecast(Question question, int samples) {
        return FloatPredictor.standard().with(new Sampling(1, samples)).forecast(question);
    }

    @Test
    void valuesInTheUnitOfTheirKey() {
        Forecast forecast = forecast(BALL, 128);
        AnswerTree answer = FloatAnswer.of(forecast).tree();

        // volume of a sphere, pi d^3 / 6, with d = 6.5 cm
        assertThat(answer.number("/volume_cm3").orElseThrow()).isCloseTo(Math.PI * 6.5 * 6.5 * 6.5 / 6, within(1e-9));
        // Archimedes: the limit is the water that the hull holds, by the density in the same answer
        assertThat(answer.number("/limit_mass_g").orElseThrow())
                .isCloseTo(
                        answer.number("/bath/density_g_per_cm3").orElseThrow()
                                * answer.number("/volume_cm3").orElseThrow(),
                        within(1e-9));
        assertThat(answer.number("/spare_g").orElseThrow())
                .isCloseTo(answer.number("/limit_mass_g").orElseThrow() - 138, within(1e-9));
        assertThat(answer.number("/probability/floats_to_the_end"))
                .hasValue(forecast.probability().orElseThrow().floatsToTheEnd());
        assertThat(answer.interval("/spare_at_drop_g"))
                .contains(forecast.spareAtDrop().times(1e3));
        assertThat(answer.text("/likelihood_to_the_end"))
                .contains(forecast.likelihoodToTheEnd().orElseThrow().words());
        assertThat(answer.rows("/attitudes")).hasSameSizeAs(forecast.attitudes());
        assertThat(answer.text("/attitudes/0/lies")).contains("any way up");
        assertThat(answer.rows("/drivers")).hasSameSizeAs(forecast.drivers());
    }

    @Test
    void everyNullHasANotice() {
        AnswerTree answer = FloatAnswer.of(forecast(BALL, 0)).tree();
        List<String> said = answer.rows("/notices").stream()
                .map(notice -> notice.text("/text").orElseThrow())
                .toList();

        for (String key : answer.keys()) {
            if (answer.value("/" + key) == null) {
                assertThat(said).as(key).anyMatch(text -> text.contains(key));
            }
        }
    }

    @Test
    void theSameKeysWhateverTheResult() {
        Question bowl =
                Question.still(Bowl.ofDiameterAndWall(Units.millimetres(90), Units.millimetres(15)), Units.grams(300));

        assertThat(FloatAnswer.of(forecast(bowl, 0)).tree().keys())
                .isEqualTo(FloatAnswer.of(forecast(BALL, 128)).tree().keys());
    }

    @Test
    void wordsFillTheirKeysAndMoveNothingElse() {
        Forecast forecast = forecast(NEAR, 128);
        AnswerTree silent = FloatAnswer.of(forecast).tree();
        FloatAnswer worded = new FloatAnswer(forecast, new NextWords() {
            @Override
            public Optional<String> what(MeasureNext next, Question question) {
                return Optional.of("do " + next.kind());
            }

            @Override
            public Optional<String> type(MeasureNext next) {
                return Optional.of("type " + next.kind());
            }
        });
        AnswerTree told = worded.tree();
        MeasureNext next = forecast.next().orElseThrow();

        assertThat(silent.value("/measure_next/what")).isNull();
        assertThat(FloatAnswer.of(forecast).notices())
                .filteredOn(notice -> notice.code().equals("no-words"))
                .extracting(Notice::kind)
                .containsExactly(Notice.Kind.REMARK);
        assertThat(told.text("/measure_next/what")).contains("do " + next.kind());
        assertThat(told.text("/measure_next/type")).contains("type " + next.kind());
        assertThat(told.number("/measure_next/settles")).hasValue(next.settles());
        assertThat(next.settles()).isBetween(0.0, 1.0);
        assertThat(worded.notices()).noneMatch(notice -> notice.code().equals("no-words"));
        for (String key : told.keys()) {
            if (!List.of("measure_next", "notices").contains(key)) {
                assertThat(told.value("/" + key)).as(key).isEqualTo(silent.value("/" + key));
            }
        }
    }
}
