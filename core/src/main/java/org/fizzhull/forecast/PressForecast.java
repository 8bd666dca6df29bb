package org.fizzhull.forecast;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.pressing.Feel;
import org.fizzhull.pressing.LiquidWindow;
import org.fizzhull.pressing.Press;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.shape.Shape;

/**
 * What a mix does under a press: the answer of a {@link PressPredictor}. SI: Pa, kg, s; fractions from 0 to 1.
 *
 * @param press the mix by the central values
 * @param shape of the mould
 * @param sampling number of draws and seed
 * @param curve from no pressure to that of a kitchen press, with the 95 % band of the mass
 * @param window how much liquid holds, in the draws of the piece asked for, else of one pressed firmly by hand
 * @param workingTime s until 2 % of the fizz is gone; 0 where it is at once, infinite where nothing reacts
 * @param workingTimeLeast the same where it reacts fast (prompt step doubled, film rate four times), s
 * @param workingTimeMost the same where it reacts slowly (half, and a quarter), s
 * @param piece what was asked for; empty where neither a fill nor a press was given
 * @param notices what the reader must know
 */
public record PressForecast(
        Press press,
        Shape shape,
        Sampling sampling,
        List<Point> curve,
        LiquidWindow window,
        double workingTime,
        double workingTimeLeast,
        double workingTimeMost,
        Optional<PieceOut> piece,
        List<Notice> notices) {

    /**
     * Copies the lists.
     *
     * @param press the mix by the central values
     * @param shape of the mould
     * @param sampling how it was drawn
     * @param curve from no pressure to that of a kitchen press, with the 95 % band of the mass
     * @param window how much liquid holds, in the draws of the piece asked for, else of one pressed firmly by hand
     * @param workingTime s until 2 % of the fizz is gone; 0 where it is at once, infinite where nothing reacts
     * @param workingTimeLeast the same where it reacts fast (prompt step doubled, film rate four times)
     * @param workingTimeMost the same where it reacts slowly
     * @param piece what was asked for; empty where neither a fill nor a press was given
     * @param notices what the reader must know
     */
    public PressForecast {
        curve = List.copyOf(curve);
        notices = List.copyOf(notices);
    }

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
    public record Point(
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
    public record PieceOut(
            Making making,
            Pressed central,
            Interval topPressure,
            Interval solidFraction,
            Interval dampMass,
            Interval handForce,
            Interval saturation,
            Interval strength,
            Map<Feel, Double> feel,
            Optional<MeasurementEffect> narrowing) {

        /**
         * {@return the damp mass by the second packing model under the same pressure, kg; empty where the fill was
         * weighed}
         */
        public OptionalDouble secondOpinion() {
            return making instanceof PressedMould
                    ? OptionalDouble.of(dampMass.median() * (1 + central.modelSpread() / central.solidFraction()))
                    : OptionalDouble.empty();
        }

        /** {@return the firmness most draws have; where two are equal, that it holds} */
        public Feel likeliest() {
            double holds = feel.getOrDefault(Feel.HOLDS, 0.0);
            double dry = feel.getOrDefault(Feel.CRUMBLES, 0.0);
            double wet = feel.getOrDefault(Feel.TOO_WET, 0.0);
            if (holds >= dry && holds >= wet) {
                return Feel.HOLDS;
            }
            return dry >= wet ? Feel.CRUMBLES : Feel.TOO_WET;
        }
    }
}
