package org.fizzhull.forecast;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * What a mix does under a press: the answer of a {@link PressPredictor}. SI: Pa, kg, s; fractions from 0 to 1.
 */
public sealed interface PressForecast permits PressForecastRecord {
    /** {@return the mix of the recipe's middle amounts} */
    Blend blend();

    /** {@return the density of the dry powders as they are poured, by the central values, kg/m3} */
    double looseDensity();

    /** {@return the density of the dry powders after tapping, by the central values, kg/m3} */
    double tappedDensity();

    /** {@return of the mould} */
    Shape shape();

    /** {@return number of draws and seed} */
    Sampling sampling();

    /** {@return from no pressure to that of a kitchen press, with the 95 % band of the mass} */
    List<Point> curve();

    /** {@return how much liquid holds, in the draws of the piece asked for, else of one pressed firmly by hand} */
    Pressed.LiquidWindow window();

    /** {@return s until 2 % of the fizz is gone; 0 where it is at once, infinite where nothing reacts} */
    double workingTime();

    /** {@return the same where it reacts fast (prompt step doubled, film rate four times), s} */
    double workingTimeLeast();

    /** {@return the same where it reacts slowly (half, and a quarter), s} */
    double workingTimeMost();

    /** {@return what was asked for; empty where neither a fill nor a press was given} */
    Optional<PieceOut> piece();

    /** {@return what the reader must know} */
    List<Notice> notices();

    /**
     * A point of the curve.
     *
     * @param topPressure under the plunger, Pa
     * @param solidFraction by the central values
     * @param dampDensity by the central values, kg/m3
     * @param dampMass of a piece by the central values, kg
     * @param low 2.5 % point of the mass, kg
     * @param high 97.5 % point, kg
     */
    record Point(
            double topPressure, double solidFraction, double dampDensity, double dampMass, double low, double high) {}

    /**
     * The piece out of the mould.
     *
     * @param making how it was made
     * @param central by the central values
     * @param topPressure Pa
     * @param solidFraction dry solids over volume
     * @param dampMass kg
     * @param handForce on the whole face, N
     * @param saturation liquid over pore volume
     * @param strength tensile, damp, Pa
     * @param feel share of the draws by how they feel
     * @param narrowing what a weighed piece did; empty without one
     */
    record PieceOut(
            Making making,
            Pressed central,
            Interval topPressure,
            Interval solidFraction,
            Interval dampMass,
            Interval handForce,
            Interval saturation,
            Interval strength,
            Map<Pressed.Feel, Double> feel,
            Optional<MeasurementEffect> narrowing) {

        /**
         * {@return the damp mass by the second packing model under the same pressure, kg; empty where the fill was
         * weighed}
         */
        public OptionalDouble secondOpinion() {
            return making instanceof Moulded.Pressed
                    ? OptionalDouble.of(dampMass.median() * (1 + central.modelSpread() / central.solidFraction()))
                    : OptionalDouble.empty();
        }

        /** {@return the firmness most draws have; where two are equal, that it holds} */
        public Pressed.Feel likeliest() {
            double holds = feel.getOrDefault(Pressed.Feel.HOLDS, 0.0);
            double dry = feel.getOrDefault(Pressed.Feel.CRUMBLES, 0.0);
            double wet = feel.getOrDefault(Pressed.Feel.TOO_WET, 0.0);
            if (holds >= dry && holds >= wet) {
                return Pressed.Feel.HOLDS;
            }
            return dry >= wet ? Pressed.Feel.CRUMBLES : Pressed.Feel.TOO_WET;
        }
    }
}
