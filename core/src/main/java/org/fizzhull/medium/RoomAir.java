package org.fizzhull.medium;

import java.io.Serializable;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.relation.Massman1998;
import org.fizzhull.medium.relation.WagnerPruss2002;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * The air of a room: what decides whether and how fast a piece dries. Vapour pressure by {@link WagnerPruss2002}; the
 * enhancement factor of 0.4 % at one atmosphere is left out, a home hygrometer is good for 3 to 5 % RH.
 * <pre>{@code
 * RoomAir room = RoomAir.of(celsius(21), 0.55);
 * RoomAir winter = RoomAir.heated(celsius(2), 0.85, celsius(21));   // 24 % RH
 * }</pre>
 *
 * <p>Source: docs/physics/drying.md, 1. Immutable.
 *
 * @param temperature K, 273.15 to 333.15 (0 to 60 C)
 * @param humidity relative humidity, 0 to 1
 * @param pressure Pa, 5e4 to 1.2e5
 */
public record RoomAir(double temperature, double humidity, double pressure) implements Serializable {
    /** One standard atmosphere, Pa. */
    public static final double STANDARD_PRESSURE = PhysicalConstants.ATMOSPHERE;

    /** Gas constant of water vapour, J/(kg K). */
    public static final double VAPOUR_GAS_CONSTANT = 461.52;

    /** Coldest air that a room is said to have, degrees Celsius. */
    public static final double COLDEST_CELSIUS = 0;

    /** Hottest air that a room is said to have, degrees Celsius. */
    public static final double HOTTEST_CELSIUS = 60;

    /** Allowed temperature of a room. */
    static final Allowed TEMPERATURE = Allowed.between(COLDEST_CELSIUS, HOTTEST_CELSIUS, Unit.CELSIUS);

    /** Allowed temperature outside; below freezing over supercooled water, as weather services report humidity. */
    static final Allowed OUTSIDE = Allowed.between(-30, 50, Unit.CELSIUS);

    /** Allowed relative humidity. */
    static final Allowed HUMIDITY = Allowed.between(0, 100, Unit.PERCENT);

    /** Allowed air pressure: beyond the highest villages and the deepest valleys (a judgement). */
    private static final Allowed PRESSURE = Allowed.between(50, 120, Unit.KILOPASCAL);

    /**
     * Refuses what is out of range.
     *
     * @param temperature K, 273.15 to 333.15 (0 to 60 C)
     * @param humidity relative humidity, 0 to 1
     * @param pressure Pa, 5e4 to 1.2e5
     * @throws Refusal {@code out-of-range}
     */
    public RoomAir {
        TEMPERATURE.check("air temperature", temperature);
        HUMIDITY.check("relative humidity", humidity);
        PRESSURE.check("air pressure", pressure);
    }

    /**
     * {@return the air of one atmosphere: temperature in K, relative humidity 0 to 1}
     *
     * @param temperature K, 273.15 to 333.15 (0 to 60 C)
     * @param humidity relative humidity, 0 to 1
     * @throws Refusal {@code out-of-range}
     */
    public static RoomAir of(double temperature, double humidity) {
        return new RoomAir(temperature, humidity, STANDARD_PRESSURE);
    }

    /**
     * {@return the air that a text says, at one atmosphere}: {@code 21 C, 55 %}, or from the weather report {@code outside 8 C,
     * 85 %, heated to 21 C}, which {@link #heated} turns into the air of the room.
     *
     * @param field option or key that was read, for the refusal
     * @param text what the person wrote
     * @throws Refusal {@code unreadable-air}, {@code below-dew-point}, or with a code of the package quantity
     */
    public static RoomAir parse(String field, String text) {
        return RoomAirText.parse(field, text);
    }

    /**
     * {@return the outside air let in and heated, nothing added: the vapour pressure stays, so cold damp air becomes
     * dry air}
     *
     * @param outside temperature outside, K, 243.15 to 323.15
     * @param humidity relative humidity outside, 0 to 1
     * @param inside temperature of the room, K
     * @throws Refusal {@code out-of-range}, or {@code below-dew-point} where the room would be too cold for the vapour
     */
    public static RoomAir heated(double outside, double humidity, double inside) {
        OUTSIDE.check("outside temperature", outside);
        HUMIDITY.check("relative humidity", humidity);
        TEMPERATURE.check("air temperature", inside);
        double vapour = humidity * WagnerPruss2002.vapourPressure(outside);
        double relative = vapour / WagnerPruss2002.vapourPressure(inside);
        if (!(relative <= 1)) {
            throw new Refusal(
                    "below-dew-point",
                    "air temperature",
                    QuantityText.rounded(inside, Unit.CELSIUS, 6),
                    "a temperature above the dew point of the outside air",
                    "Air cooled below its dew point drops water on the walls; give the room's own humidity.");
        }
        return of(inside, relative);
    }

    /** {@return the saturation vapour pressure at this temperature, Pa} */
    public double saturationPressure() {
        return WagnerPruss2002.vapourPressure(temperature);
    }

    /** {@return the partial pressure of the vapour, Pa} */
    public double vapourPressure() {
        return humidity * saturationPressure();
    }

    /** {@return the mass of vapour in saturated air at this temperature, kg/m3} */
    public double saturationDensity() {
        return saturationPressure() / (VAPOUR_GAS_CONSTANT * temperature);
    }

    /** {@return the absolute humidity: mass of vapour in this air, kg/m3} */
    public double vapourDensity() {
        return humidity * saturationDensity();
    }

    /** {@return the humidity ratio, kg of vapour per kg of dry air} */
    public double humidityRatio() {
        return Psychrometrics.humidityRatio(vapourPressure(), pressure);
    }

    /** {@return the diffusivity of water vapour in this air, m2/s} */
    public double diffusivity() {
        return Massman1998.diffusivity(temperature, pressure);
    }

    /** {@return the temperature at which this air would drop water, K; perfectly dry air has none: NaN} */
    public double dewPoint() {
        return Psychrometrics.dewPoint(vapourPressure());
    }

    /** {@return the temperature of a wet wick in moving air of this kind, K} */
    public double wetBulb() {
        return Psychrometrics.wetBulb(this);
    }

    /**
     * {@return the same temperature and pressure at another relative humidity}
     *
     * @param relative relative humidity, 0 to 1
     * @throws Refusal {@code out-of-range}
     */
    public RoomAir withHumidity(double relative) {
        return new RoomAir(temperature, relative, pressure);
    }
}
