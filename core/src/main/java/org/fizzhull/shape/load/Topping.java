package org.fizzhull.shape.load;

import java.io.Serializable;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.size.SizeText;

/**
 * A layer of loose material stuck on the top of a piece as it is listed: salt, petals, sugar. It does not fizz. Its
 * weight shifts the centre of mass up, its grains displace water once they are under, and it hides the face below until
 * it comes off. See {@link Loaded#with(Shape, Topping)}.
 *
 * <p>Immutable.
 *
 * @param name what it is, in words
 * @param mass kg
 * @param trueDensity density of its grains, which push water aside, kg/m3
 * @param solidFraction share of the layer that is grains, more than 0 to 1; it makes the height of the layer
 */
public record Topping(String name, double mass, double trueDensity, double solidFraction) implements Serializable {
    /**
     * Refuses what is no mass, density or share.
     *
     * @param name what it is, in words
     * @param mass kg
     * @param trueDensity density of its grains, which push water aside, kg/m3
     * @param solidFraction share of the layer that is grains, more than 0 to 1; it makes the height of the layer
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}, of the field {@code on top}
     */
    public Topping {
        Given.all("name", name);
        Inset.check(
                "on top",
                mass > 0 && mass < Double.POSITIVE_INFINITY,
                SizeText.grams(mass),
                "more than 0 g",
                "Leave it out for none.");
        Inset.check(
                "on top: density",
                trueDensity >= 100 && trueDensity <= 20000,
                trueDensity / 1000 + " g/cm3",
                "0.1 to 20 g/cm3",
                "That of one grain is meant, without the gaps: 2.16 g/cm3 for table salt.");
        Inset.check(
                "on top: share of grains",
                solidFraction > 0 && solidFraction <= 1,
                Double.toString(solidFraction),
                "more than 0 up to 1",
                "Loose density over the density of a grain: about 0.6 for coarse salt.");
    }

    /** {@return the volume of the grains, m3} */
    public double volume() {
        return mass / trueDensity;
    }

    /** {@return the volume of the layer with the gaps between its grains, m3} */
    public double bulk() {
        return volume() / solidFraction;
    }
}
