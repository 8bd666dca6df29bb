package org.fizzhull.piece;

import java.io.Serializable;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.quantity.check.Given;
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

    /**
     * What a piece is made of, as far as the bath asks: density, gas, and what acts on its surface. Where no recipe is known it
     * is {@link #usual()}. Per kg of piece as it goes into the bath, not of dry powder. Immutable.
     *
     * @param trueDensity density of the solids without pores, kg/m3
     * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
     * @param additives oil, foaming powder and starch, which act on its fizzing surface
     * @param fizzLeft share of the carbon dioxide of its fresh powders that it can still give, 0 to 1; 1 where what it lost
     *     is not known
     */
    public record Makeup(double trueDensity, double gasCapacity, Additives additives, double fizzLeft)
            implements Serializable {
        /**
         * True density assumed where no recipe is given, kg/m3: two parts bicarbonate, one part citric acid, some starch.
         * Assumed; one standard deviation 3 %.
         */
        public static final double USUAL_TRUE_DENSITY = 1900;

        /**
         * Gas capacity assumed where no recipe is given, mol/kg, for the same mix. Assumed; one standard deviation 12 %.
         */
        public static final double USUAL_GAS_CAPACITY = 4.6;

        /**
         * Checks the values.
         *
         * @param trueDensity density of the solids without pores, kg/m3, above 0
         * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece, 0 or more
         * @param additives oil, foaming powder and starch, which act on its fizzing surface
         * @param fizzLeft share of the carbon dioxide of its fresh powders that it can still give, 0 to 1; 1 where what it
         *     lost is not known
         * @throws IllegalArgumentException for a value outside its range, infinity or NaN
         */
        public Makeup {
            Given.all("additives", additives);
            boolean sound = trueDensity > 0
                    && trueDensity < Double.POSITIVE_INFINITY
                    && gasCapacity >= 0
                    && gasCapacity < Double.POSITIVE_INFINITY
                    && fizzLeft >= 0
                    && fizzLeft <= 1;
            if (!sound) {
                throw new IllegalArgumentException("true density " + trueDensity + " kg/m3, gas capacity " + gasCapacity
                        + " mol/kg, share of the fizz left " + fizzLeft);
            }
        }

        /**
         * The makeup of a piece whose loss of fizz is not known.
         *
         * @param trueDensity density of the solids without pores, kg/m3
         * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
         * @param additives oil, foaming powder and starch, which act on its fizzing surface
         */
        public Makeup(double trueDensity, double gasCapacity, Additives additives) {
            this(trueDensity, gasCapacity, additives, 1);
        }

        /**
         * The makeup of acid and bicarbonate alone, or of a recipe that is not known.
         *
         * @param trueDensity density of the solids without pores, kg/m3
         * @param gasCapacity carbon dioxide still obtainable, mol per kg of piece
         */
        public Makeup(double trueDensity, double gasCapacity) {
            this(trueDensity, gasCapacity, Additives.NONE);
        }

        /**
         * {@return the same makeup with other additives}
         *
         * @param others additives of the mix, kg per kg of dry powder
         */
        public Makeup with(Additives others) {
            return new Makeup(trueDensity, gasCapacity, others, fizzLeft);
        }

        /**
         * {@return the same makeup with another share of its fizz left; the capacity is that of now and stays}
         *
         * @param share share of the carbon dioxide of the fresh powders that is left, 0 to 1
         */
        public Makeup withFizzLeft(double share) {
            return new Makeup(trueDensity, gasCapacity, additives, share);
        }

        /** {@return the mix assumed where no recipe is given} */
        public static Makeup usual() {
            return new Makeup(USUAL_TRUE_DENSITY, USUAL_GAS_CAPACITY);
        }
    }
}
