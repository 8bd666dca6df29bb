package org.fizzhull.drying.place;

import java.io.Serializable;
import org.fizzhull.drying.factor.DryingShapeFactor;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.jspecify.annotations.Nullable;

/**
 * The way out for vapour: the depth profile from the faces that are open, and the shape correction of that profile.
 *
 * <p>Diffusion along the depth profile alone is too fast, by Rayleigh's principle; dividing the diffusivity by c puts
 * the time constant right (docs/physics/drying.md, 4). Immutable; shared by all draws of a plan.
 *
 * @param profile what is left at depth d from the open faces: {@code ALL} on a rack, {@code TRAY} on a tray or a cloth
 * @param correction c = tau_exact / tau_profile, at least 1 ({@link DryingShapeFactor}); the diffusivity is divided by
 *     it
 */
public record Opening(DepthProfile profile, double correction) implements Serializable {
    /** c of a body whose form is not known: between cylinder and cube [assumed]. */
    private static final double USUAL = 1.16;

    /**
     * Refuses corrections below 1, which Rayleigh's principle excludes.
     *
     * @param profile what is left at depth d from the open faces: {@code ALL} on a rack, {@code TRAY} on a tray or a
     *     cloth
     * @param correction c = tau_exact / tau_profile, at least 1 ({@link DryingShapeFactor}); the diffusivity is divided
     *     by it
     * @throws IllegalArgumentException for a correction outside 1 to 3
     */
    public Opening {
        Given.all("profile", profile);
        if (!(correction >= 1 && correction < 3)) {
            throw new IllegalArgumentException("shape correction " + correction + " is not within 1 to 3");
        }
    }

    /**
     * {@return the opening of a shape} Where a solve puts c below 1 by its error, 1 holds; 1.16 where the form is not
     * known. May take some tenths of a second: keep the result.
     *
     * @param shape form of the piece
     * @param exposure which faces vapour leaves through
     */
    public static Opening of(Shape shape, DepthProfile.Exposure exposure) {
        Given.all("shape, exposure", shape, exposure);
        double factor = DryingShapeFactor.of(shape.bare(), exposure).orElse(USUAL);
        return new Opening(shape.depthProfile(exposure), Math.max(1, factor));
    }

    /**
     * {@return one flat open face, as of a piece left in its half mould: vapour has to cross the depth V/A} A slab of
     * the same volume and open area [assumed]; exact for straight walls.
     *
     * @param volume m3
     * @param area open face, m2
     * @throws IllegalArgumentException for a volume or area that is not above 0
     */
    public static Opening face(double volume, double area) {
        if (!(volume > 0 && area > 0)) {
            throw new IllegalArgumentException("an open face needs a volume and an area");
        }
        double depth = volume / area;
        return new Opening(
                new DepthProfile(new double[] {0, depth}, new double[] {volume, 0}, new double[] {area, area}, 0), 1);
    }

    /** {@return whether both have the very same profile and the same correction} Asked for every draw. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Opening that && profile.equals(that.profile) && correction == that.correction;
    }

    @Override
    public int hashCode() {
        return 31 * profile.hashCode() + Double.hashCode(correction);
    }
}
