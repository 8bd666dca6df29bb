package org.fizzhull.piece;

import java.io.Serializable;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Additives;
import org.fizzhull.shape.Shape;

/**
 * A pressed piece as it goes into the bath: made by pressing and drying ({@code chain.DampPiece}), or weighed by a person.
 * Taken by {@code voyage}. Immutable.
 *
 * <p>Whether the mass fits the volume is not checked here: a porosity below 0 is refused where a forecast begins.
 *
 * @param shape its form
 * @param mass mass of everything on the scale, an inset (the crystals of a geode) included, kg
 * @param makeup what it is made of
 */
public record Piece(Shape shape, double mass, Makeup makeup) implements Serializable {
    /**
     * Checks the mass.
     *
     * @param shape its form
     * @param mass mass of everything on the scale, an inset (the crystals of a geode) included, kg
     * @param makeup what it is made of
     * @throws Refusal {@code out-of-range} for a mass that is not above that of the inset, or infinite
     */
    public Piece {
        Given.all("shape, makeup", shape, makeup);
        if (!(mass > shape.insetMass() && mass < Double.POSITIVE_INFINITY)) {
            throw new Refusal(
                    "out-of-range",
                    "mass",
                    Double.isFinite(mass) ? grams(mass) : mass + " g",
                    "more than " + grams(shape.insetMass()),
                    shape.insetMass() > 0
                            ? "The weight is that of the whole piece, crystals included."
                            : "Weigh the piece as it goes into the bath.");
        }
    }

    /** {@return the mass of the pressed body alone, without an inset, kg} */
    public double bodyMass() {
        return mass - shape.insetMass();
    }

    /** {@return the bulk density of the pressed body, pores included, kg/m3} */
    public double density() {
        return bodyMass() / shape.volume();
    }

    /** {@return the share of the body that is not solid; below 0 where the mass is more than the volume can hold} */
    public double porosity() {
        return 1 - density() / makeup.trueDensity();
    }

    /**
     * {@return the same piece with other additives}
     *
     * @param others additives of the mix, kg per kg of dry powder
     */
    public Piece with(Additives others) {
        return new Piece(shape, mass, makeup.with(others));
    }

    /**
     * {@return the same material in a mould of another volume: the mass without the inset is scaled, the shape is not}
     *
     * @param volumeRatio volume of the other mould over that of the shape, above 0
     */
    public Piece scaled(double volumeRatio) {
        return volumeRatio == 1 ? this : new Piece(shape, bodyMass() * volumeRatio + shape.insetMass(), makeup);
    }

    /** For messages: a mass in grams to a hundredth. */
    private static String grams(double kilograms) {
        return Math.round(Units.inGrams(kilograms) * 100) / 100.0 + " g";
    }
}
