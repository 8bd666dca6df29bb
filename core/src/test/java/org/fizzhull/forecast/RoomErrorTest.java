package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.hours;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Optional;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.numeric.Normal;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The errors of hygrometer and thermometer leave air that there is; expected values from the cut normal (analytic). */
class RoomErrorTest {
    private static final Sphere BALL = Sphere.ofDiameter(millimetres(65));
    private static final double HYGROMETER = 0.05;

    @ParameterizedTest
    @CsvSource({"0, 0.20", "0.01, 0.20", "0.55, 0.20", "0.97, 0.20", "1, 0.20", "0.97, 0.01"})
    void noDrawIsDamperThanSaturatedAirOrDrierThanDryAir(double room, double temperatureShare) {
        double kelvin = celsius(60 * temperatureShare);
        Factors asked = Factors.standard().asked(dried(RoomAir.of(kelvin, room)));
        Prior humidity = asked.row(Input.ROOM_HUMIDITY).orElseThrow().prior();
        Prior temperature = asked.row(Input.ROOM_TEMPERATURE).orElseThrow().prior();
        for (double u : new double[] {1e-12, 1e-6, 0.1, 0.5, 0.9, 1 - 1e-6, 1 - 1e-12}) {
            assertThat(room + humidity.quantile(u)).isBetween(0.0, 1.0);
            assertThat(kelvin + temperature.quantile(u)).isBetween(celsius(0), celsius(60));
            // of the normal: the share of what is left below a value
            double low = Normal.cumulative(-room / HYGROMETER);
            double high = Normal.cumulative((1 - room) / HYGROMETER);
            double expected = HYGROMETER * Normal.quantile(low + u * (high - low));
            assertThat(humidity.quantile(u)).isCloseTo(expected, within(1e-9));
        }
        assertThat(humidity.median()).isZero();
    }

    /** The error is one for all phases: a damp store bounds it in the drying room too. */
    @Test
    void theDampestAndTheDriestPhaseBoundTheError() {
        var dry = DryingConditions.open(RoomAir.of(celsius(20), 0.03), hours(24))
                .plan(BALL)
                .phases()
                .get(0);
        var damp = dry.in(RoomAir.of(celsius(20), 0.98));
        DryingPlan plan = new DryingPlan(java.util.List.of(dry, damp));
        Prior error = Factors.standard()
                .asked(Question.of(BALL, fill(plan)))
                .row(Input.ROOM_HUMIDITY)
                .orElseThrow()
                .prior();
        assertThat(error.quantile(1e-12)).isCloseTo(-0.03, within(1e-6));
        assertThat(error.quantile(1 - 1e-12)).isCloseTo(0.02, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0", "0.02", "0.96", "1"})
    void aForecastInTheDriestAndTheDampestAirIsMade(double room) {
        DryForecast forecast = DryPredictor.standard()
                .with(new Sampling(1, 128))
                .forecast(
                        BALL,
                        fill(DryingConditions.open(RoomAir.of(celsius(20), room), hours(24))
                                .plan(BALL)));
        assertThat(forecast.last().low())
                .isPositive()
                .isLessThanOrEqualTo(forecast.last().high());
        // saturated air takes no water; only gas of the reaction leaves (definition)
        assertThat(forecast.last().median() < forecast.damp().median()).isTrue();
    }

    @Test
    void anErrorThatLeavesNoAirIsRefused() {
        Factors fixed = Factors.standard().fix(Input.ROOM_HUMIDITY, 0.3);
        assertThatThrownBy(() -> fixed.asked(dried(RoomAir.of(celsius(20), 0.9))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo(Input.ROOM_HUMIDITY.label()));
        assertThat(fixed.asked(dried(RoomAir.of(celsius(20), 0.6)))
                        .row(Input.ROOM_HUMIDITY)
                        .orElseThrow()
                        .prior()
                        .median())
                .isEqualTo(0.3);
    }

    private static Question dried(RoomAir air) {
        return Question.of(BALL, fill(DryingConditions.open(air, hours(24)).plan(BALL)));
    }

    private static Moulded.Filled fill(DryingPlan plan) {
        return new Moulded.Filled(Blend.of(HostileInputTest.lemon()), grams(137), Optional.empty(), plan);
    }
}
