package org.fizzhull.medium;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.medium.relation.IapwsSurfaceTension;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.medium.relation.LaliberteCooper2004;
import org.fizzhull.medium.relation.Patek2009Viscosity;
import org.fizzhull.medium.relation.WagnerPruss2002;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * The water a piece is dropped into, as a value: temperature, depth, volume, salt and alkalinity, and from them
 * density, viscosity, surface tension and vapour pressure by published relations.
 * <pre>{@code
 * Bath bath = Bath.at(celsius(38)).withDepth(0.30);
 * double kgPerCubicMetre = bath.density();   // 993
 * }</pre>
 *
 * <p>Fresh tap water is taken as pure water at 1 atm; the density is then known to 0.5 kg/m3 (one standard uncertainty)
 * where the temperature is known to 1 K. Left out: dissolved gas, soap and oil. Sources: docs/physics/fizz.md, 2.
 * Immutable.
 *
 * @param temperature K, from 0 to 60 C
 * @param depth depth of the water, m, from 0.05 to 3
 * @param volume volume of the fresh water before any salt is stirred in, m3, from 0.0001 to 10
 * @param salt dissolved sodium chloride, kg, at most a mass fraction of 0.266 of the solution
 * @param alkalinity total alkalinity of the tap water, mol/m3 (mmol/L), from 0 to 100; it acts on the pH alone
 */
public record Bath(double temperature, double depth, double volume, double salt, double alkalinity)
        implements Serializable {
    /** Depth where none is given, m. A judgement: a tub for one person. */
    public static final double DEFAULT_DEPTH = 0.35;

    /** Volume where none is given, m3. A judgement: a tub for one person. */
    public static final double DEFAULT_VOLUME = 0.150;

    /** Allowed temperature. */
    static final Allowed TEMPERATURE = Allowed.between(0, 60, Unit.CELSIUS);
    /** Allowed depth. */
    static final Allowed DEPTH = Allowed.between(5, 300, Unit.CENTIMETRE);
    /** Allowed volume. */
    static final Allowed VOLUME = Allowed.between(0.1, 10_000, Unit.LITRE);

    /** Total alkalinity of ISO 9963-1: a hard tap has 6 mmol/L, a soda spring 100. */
    private static final Allowed ALKALINITY = Allowed.between(0, 100, Unit.MILLIMOLE_PER_LITRE);

    /** Above this mass fraction the notice about salt is given: viscosity is then about 2 % off, from memory. */
    private static final double FRESH = 0.01;

    /**
     * Refuses what is no bath, with a correction where one is likely.
     *
     * @param temperature K, from 0 to 60 C
     * @param depth depth of the water, m, from 0.05 to 3
     * @param volume volume of the fresh water before any salt is stirred in, m3, from 0.0001 to 10
     * @param salt dissolved sodium chloride, kg, at most a mass fraction of 0.266 of the solution
     * @param alkalinity total alkalinity of the tap water, mol/m3 (mmol/L), from 0 to 100; it acts on the pH alone
     * @throws Refusal {@code out-of-range}
     */
    public Bath {
        // a number of degrees Celsius where kelvin are meant
        if (temperature >= 0 && temperature <= 60) {
            String read = QuantityText.rounded(temperature, Unit.KELVIN, 6);
            String hint = "A temperature in the library is in kelvin: celsius(38).";
            throw new Refusal("out-of-range", "bath temperature", read, TEMPERATURE.words(), hint);
        }
        TEMPERATURE.check("bath temperature", temperature);
        DEPTH.check("bath depth", depth);
        VOLUME.check("bath volume", volume);
        Allowed.between(0, mostSalt(temperature, volume), Unit.KILOGRAM).check("bath salt", salt);
        ALKALINITY.check("tap alkalinity", alkalinity);
    }

    /**
     * A bath of water without alkalinity.
     *
     * @param temperature K, from 0 to 60 C
     * @param depth depth of the water, m, from 0.05 to 3
     * @param volume volume of the fresh water before any salt is stirred in, m3, from 0.0001 to 10
     * @param salt dissolved sodium chloride, kg, at most a mass fraction of 0.266 of the solution
     * @throws Refusal {@code out-of-range}
     */
    public Bath(double temperature, double depth, double volume, double salt) {
        this(temperature, depth, volume, salt, 0);
    }

    /**
     * {@return a bath of fresh water at a temperature in K, {@link #DEFAULT_DEPTH} deep, {@link #DEFAULT_VOLUME}}
     *
     * @param kelvin temperature, K, from 273.15 to 333.15
     * @throws Refusal {@code out-of-range}
     */
    public static Bath at(double kelvin) {
        return new Bath(kelvin, DEFAULT_DEPTH, DEFAULT_VOLUME, 0);
    }

    /**
     * {@return the bath that a text says, without salt}: {@code 38 C}, {@code 38 C, 35 cm}, {@code 100 F, 14 in}, {@code 38 C,
     * 150 L, 35 cm}. The temperature comes first, depth and volume follow in any order; what is left out has its default.
     *
     * @param field option or key that was read, for the refusal
     * @param text what the person wrote
     * @throws Refusal with a code of the package quantity, or {@code repeated-part}
     */
    public static Bath parse(String field, String text) {
        return BathText.parse(field, text);
    }

    /**
     * {@return the same bath at another temperature, K}
     *
     * @param kelvin temperature, K, from 273.15 to 333.15
     * @throws Refusal {@code out-of-range}
     */
    public Bath withTemperature(double kelvin) {
        return new Bath(kelvin, depth, volume, salt, alkalinity);
    }

    /**
     * {@return the same bath at another depth, m}
     *
     * @param metres depth, m, from 0.05 to 3
     * @throws Refusal {@code out-of-range}
     */
    public Bath withDepth(double metres) {
        return new Bath(temperature, metres, volume, salt, alkalinity);
    }

    /**
     * {@return the same bath with another volume of water, m3}
     *
     * @param cubicMetres volume of the fresh water, m3, from 0.0001 to 10
     * @throws Refusal {@code out-of-range}
     */
    public Bath withVolume(double cubicMetres) {
        return new Bath(temperature, depth, cubicMetres, salt, alkalinity);
    }

    /**
     * {@return the same bath with this much sodium chloride in all, kg}
     *
     * @param kilograms mass of sodium chloride, kg; 0 for fresh water
     * @throws Refusal {@code out-of-range}
     */
    public Bath withSalt(double kilograms) {
        return new Bath(temperature, depth, volume, kilograms, alkalinity);
    }

    /**
     * {@return the same bath of tap water of this total alkalinity, mol/m3 (mmol/L); it is taken as dissolved
     * bicarbonate}
     *
     * @param molPerCubicMetre total alkalinity, mol/m3, from 0 to 100
     * @throws Refusal {@code out-of-range}
     */
    public Bath withTapAlkalinity(double molPerCubicMetre) {
        return new Bath(temperature, depth, volume, salt, molPerCubicMetre);
    }

    /** {@return the mass fraction of sodium chloride in the solution} */
    public double saltFraction() {
        return salt / (salt + Kell1975.density(temperature) * volume);
    }

    /** {@return the density, kg/m3: {@link Kell1975} and, with salt, {@link LaliberteCooper2004}} */
    public double density() {
        return densityAt(temperature);
    }

    /**
     * {@return the density of this water at another temperature, K, the salt fraction held, kg/m3} Allocates and checks
     * nothing.
     *
     * @param kelvin temperature, K
     */
    public double densityAt(double kelvin) {
        return salt == 0
                ? Kell1975.density(kelvin)
                : LaliberteCooper2004.SODIUM_CHLORIDE.density(kelvin, saltFraction());
    }

    /** {@return the dynamic viscosity of fresh water, Pa s: {@link Patek2009Viscosity}} Salt is left out. */
    public double viscosity() {
        return Patek2009Viscosity.viscosity(temperature);
    }

    /** {@return the surface tension of pure water, N/m: {@link IapwsSurfaceTension}} Salt and soap are left out. */
    public double surfaceTension() {
        return IapwsSurfaceTension.surfaceTension(temperature);
    }

    /** {@return the vapour pressure over pure water, Pa: {@link WagnerPruss2002}} Salt is left out. */
    public double vapourPressure() {
        return WagnerPruss2002.vapourPressure(temperature);
    }

    /** {@return what a reader of a result in this bath must know; empty for fresh water from 0.01 C} */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(2);
        Optional<Notice> cold = WagnerPruss2002.VALIDITY.notice(temperature);
        if (cold.isPresent()) {
            notices.add(cold.get());
        }
        if (saltFraction() > FRESH) {
            notices.add(new Notice(
                    "salt-in-bath",
                    "Salt counts in the density of the bath; its viscosity, surface tension and vapour pressure are taken"
                            + " as those of fresh water."));
        }
        return List.copyOf(notices);
    }

    /** The most salt that the density relation covers, in whole grams, kg. */
    private static double mostSalt(double temperature, double volume) {
        double fraction = LaliberteCooper2004.SODIUM_CHLORIDE.fractionRange().high();
        return Math.floor(1e3 * Kell1975.density(temperature) * volume * fraction / (1 - fraction)) / 1e3;
    }
}
