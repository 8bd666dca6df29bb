package org.fizzhull.shape.kind;

import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A half shell as a {@link Bowl}, its hollow lined with crystals that stay until the shell is gone. Volume, surface,
 * centroid and depth profile are those of the shell alone; the crystals are the inset.
 *
 * <p>Assumed: crystals of sodium chloride in a thin, even lining, which do not fizz and do not dissolve before the
 * shell (docs/physics/hydrostatics.md, 1 and 5). Immutable.
 *
 * @param diameter outer diameter, 0.005 to 1 m
 * @param wall thickness of the shell, between 0 and half the diameter, m
 * @param crystals mass of the crystals, kg: more than 0, and no more than the hollow holds
 */
public record Geode(double diameter, double wall, double crystals) implements OfBody {
    /** Density of a crystal of coarse salt, sodium chloride, kg/m3 (from memory: halite 2165 at room temperature). */
    public static final double CRYSTAL_DENSITY = 2165;

    /**
     * Solid fraction of a loose bed of crystals, its upper end (0.5 to 0.6, assumed, docs/physics/hydrostatics.md, 1).
     */
    private static final double BED = 0.6;

    /**
     * Refuses sizes out of range and more crystals than the hollow holds.
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness of the shell, between 0 and half the diameter, m
     * @param crystals mass of the crystals, kg: more than 0, and no more than the hollow holds
     * @throws Refusal {@code out-of-range}
     */
    public Geode {
        // what the hollow holds of a loose bed, filled to the rim
        double inner = HalfShell.of(" for a geode of diameter ", diameter, wall).inner();
        double most = 2 * Math.PI * inner * inner * inner / 3 * BED * CRYSTAL_DENSITY;
        if (!(crystals > 0 && crystals <= most)) {
            double full = Math.floor(most * 1e4) / 1e4;
            throw new Refusal(
                    "out-of-range",
                    SizeCheck.field("crystals"),
                    SizeText.grams(crystals),
                    "more than 0 g up to " + SizeText.grams(full) + ", what the hollow holds filled to the rim",
                    crystals > most && crystals / 10 <= most
                            ? SizeText.proposal(crystals / 10, Unit.GRAM)
                            : "Without crystals it is a bowl(diameter=..., wall=...).");
        }
    }

    /**
     * {@return a geode of outer diameter and wall, m, and crystals, kg}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness of the shell, between 0 and half the diameter, m
     * @param crystals mass of the crystals, kg: more than 0, and no more than the hollow holds
     * @throws Refusal {@code out-of-range} for sizes beyond these
     */
    public static Geode ofDiameterWallAndCrystals(double diameter, double wall, double crystals) {
        return new Geode(diameter, wall, crystals);
    }

    /** {@return the bare shell, without crystals} */
    @Override
    public Bowl body() {
        return new Bowl(diameter, wall);
    }

    @Override
    public String kind() {
        return "geode";
    }

    @Override
    public String text() {
        return "geode(diameter=" + SizeText.mm(diameter) + ", wall=" + SizeText.mm(wall) + ", crystals="
                + SizeText.grams(crystals) + ")";
    }

    /** Of the shell alone. */
    @Override
    public double volume() {
        return body().volume();
    }

    @Override
    public double hullVolume() {
        return body().hullVolume();
    }

    @Override
    public double insetMass() {
        return crystals;
    }

    /** A thin lining of the inner half ball: half the inner radius below the rim (Archimedes). */
    @Override
    public Vec3 insetCentroid() {
        return new Vec3(0, 0, diameter / 2 - (diameter / 2 - wall) / 2);
    }

    @Override
    public double insetVolume() {
        return crystals / CRYSTAL_DENSITY;
    }
}
