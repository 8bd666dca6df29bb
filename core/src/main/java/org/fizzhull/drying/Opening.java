package org.fizzhull.drying;

import org.fizzhull.shape.DepthProfile;

/**
 * The way out for vapour: the depth profile from the faces that are open, and the shape correction of that profile.
 *
 * @param profile what is left at depth d from the open faces: {@code ALL} on a rack, {@code TRAY} on a tray or a cloth
 * @param correction c = tau_exact / tau_profile, at least 1 ({@link ShapeFactor}); the diffusivity is divided by it
 */
public record Opening(DepthProfile profile, double correction) {
    /** Refuses corrections below 1, which Rayleigh's principle excludes. */
    public Opening {
        if (!(correction >= 1 && correction < 3)) {
            throw new IllegalArgumentException("shape correction " + correction + " is not within 1 to 3");
        }
    }

    /**
     * One flat open face, as of a piece left in its half mould: vapour has to cross the depth V/A. A slab of the same
     * volume and open area [assumed]; exact for straight walls.
     *
     * @param volume m3
     * @param area open face, m2
     */
    public static Opening face(double volume, double area) {
        if (!(volume > 0 && area > 0)) {
            throw new IllegalArgumentException("an open face needs a volume and an area");
        }
        double depth = volume / area;
        return new Opening(
                new DepthProfile(new double[] {0, depth}, new double[] {volume, 0}, new double[] {area, area}, 0), 1);
    }
}
