package org.fizzhull.shape.kind;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;
import org.fizzhull.text.NearName;

/**
 * A mould known by the water that fills it: the volume is the mass of water over {@link #WATER_DENSITY}; all else is
 * that of a family of alike bodies scaled to the volume, with a spread of the surface that says how far a mould of that
 * family may differ.
 * <pre>{@code
 * Filled shell = Filled.ofWater(grams(143), Filled.Family.SHELL);
 * }</pre>
 *
 * <p>The volume is exact as far as the scale is: the air the water displaces on the scale (0.1 %) and a room that is
 * not at 20 C (0.1 % for 5 K) are left out. Shells and figures have no hull: their attitude is not known.
 * Immutable.
 *
 * @param water mass of the water, kg, 0.001 to 20 kg
 * @param like family
 */
public record Filled(double water, Family like) implements OfBody {
    /**
     * Density of air-free water at 20 C and 1 atm, kg/m3: 998.2, from 998.2071 of Kell (1975), J. Chem. Eng. Data 20,
     * 97 (from memory; the third decimal does not matter beside the scale).
     */
    public static final double WATER_DENSITY = 998.2;

    /** Least mass of water, kg. */
    private static final double LEAST = 0.001;
    /** Most water, kg. */
    private static final double MOST = 20;

    /** Bodies a mould may resemble. Proportions and spreads are judgements [assumed]. */
    public enum Family {
        /** A ball. */
        SPHERE("sphere", 0.02, true),
        /** Half a ball. */
        DOME("dome", 0.05, true),
        /** A tablet, height 0.4 and edge 0.07 of the diameter. */
        PUCK("puck", 0.08, true),
        /** A heart, height 0.4 of the width. */
        HEART("heart", 0.10, true),
        /** A sea shell or a turtle: taken as a cap, height 0.35 of the base; ribs and grooves lie in the spread. */
        SHELL("shell", 0.20, false),
        /** An animal or a flower: taken as an egg 1.4 times as long as wide; limbs and petals lie in the spread. */
        FIGURE("figure", 0.25, false);

        /** Name in shape text. */
        private final String word;
        /** Relative standard uncertainty of the surface. */
        private final double spread;
        /** Whether the member of the family floats as the body itself does. */
        private final boolean attitudeKnown;

        Family(String word, double spread, boolean attitudeKnown) {
            this.word = word;
            this.spread = spread;
            this.attitudeKnown = attitudeKnown;
        }

        /** {@return the name in shape text} */
        public String word() {
            return word;
        }

        /**
         * {@return the family of that name}
         *
         * @param text name of the family as it stands in shape text, {@code sphere} for example
         * @throws Refusal {@code unknown-family}, with the nearest name
         */
        public static Family named(String text) {
            for (Family family : values()) {
                if (family.word.equals(text)) {
                    return family;
                }
            }
            List<String> words = Stream.of(values()).map(Family::word).toList();
            String near = NearName.hint(text, words);
            throw new Refusal(
                    "unknown-family",
                    SizeCheck.field("like"),
                    text,
                    NearName.list(words, "or"),
                    near.isEmpty() ? "Take the one whose outline is most like yours." : near);
        }

        /** A member of the family whose leading size is {@code size}, m. */
        private Shape member(double size) {
            return switch (this) {
                case SPHERE -> Sphere.ofDiameter(size);
                case DOME -> Dome.ofDiameter(size);
                case PUCK -> Puck.ofDiameterHeightAndEdge(size, 0.4 * size, 0.07 * size);
                case HEART -> Heart.ofWidthAndHeight(size, 0.4 * size);
                case SHELL -> Dome.ofDiameterAndHeight(size, 0.35 * size);
                case FIGURE -> Egg.ofLengthAndDiameter(1.4 * size, size);
            };
        }
    }

    /**
     * Refuses a mass out of range.
     *
     * @param water mass of the water, kg, 0.001 to 20 kg
     * @param like family
     * @throws Refusal {@code out-of-range}
     */
    public Filled {
        Given.all("like", like);
        if (!(water >= LEAST && water <= MOST)) {
            double slip = water > MOST ? water / 1000 : water * 1000;
            String mend = slip >= LEAST && slip <= MOST ? SizeText.proposal(slip, Unit.GRAM) : "";
            throw new Refusal(
                    "out-of-range",
                    SizeCheck.field("water"),
                    SizeText.grams(water),
                    "1 g to 20000 g, the mass of the water that fills the mould",
                    mend);
        }
    }

    /**
     * {@return a mould of that family filled by that mass of water, kg}
     *
     * @param water mass of the water, kg, 0.001 to 20 kg
     * @param like family
     * @throws Refusal {@code out-of-range} for sizes beyond these
     */
    public static Filled ofWater(double water, Family like) {
        return new Filled(water, like);
    }

    /** {@return the member of the family with this volume, whose form is taken for its own} */
    @Override
    public Shape body() {
        // a member of any size, then the same scaled to the volume
        double tenCentimetres = 0.1;
        Shape member = like.member(tenCentimetres);
        return like.member(tenCentimetres * Math.cbrt(volume() / member.volume()));
    }

    @Override
    public String kind() {
        return "filled";
    }

    @Override
    public String text() {
        return "filled(water=" + SizeText.grams(water) + ", like=" + like.word() + ")";
    }

    @Override
    public double volume() {
        return water / WATER_DENSITY;
    }

    /** Of the family; none where its attitude is not known. */
    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude rest) {
        return like.attitudeKnown ? body().depthProfileAfloat(rest) : Optional.empty();
    }

    /** Of the family; none for shells and figures, whose attitude their outline decides. */
    @Override
    public Optional<Hull> hull() {
        return like.attitudeKnown ? body().hull() : Optional.empty();
    }

    /** Of the family. */
    @Override
    public double surfaceSpread() {
        return like.spread;
    }
}
