package org.fizzhull.shape;

import java.util.Optional;
import org.fizzhull.numeric.Vec3;

/**
 * A body of revolution from a measured outline. Volume, surface, centroid and hull are exact for the outline; the depth
 * profiles are measured on it when it is made, to 0.1 %. The hollow of an open profile is part of its surface; that it
 * could float dry, as a bowl does, is not considered.
 */
public final class RevolvedShape implements Shape {
    private final String file;
    private final Meridian meridian;
    private final Profile2D profile;
    private final double volume;
    private final DepthProfile all;
    private final DepthProfile tray;

    private RevolvedShape(String file, Profile2D profile) {
        this.file = file;
        this.profile = profile;
        this.meridian = Meridian.of(profile);
        this.volume = profile.volume();
        this.all = MeridianDepth.of(meridian, volume, false);
        this.tray = meridian.rests() ? MeridianDepth.of(meridian, volume, true) : all;
    }

    /**
     * The body of an outline with its lowest point at height 0, as {@link ProfilePoints} makes it; {@code file} is only
     * its name in shape text. Takes some hundredths of a second.
     */
    public static RevolvedShape of(String file, Profile2D profile) {
        RevolvedShape shape = new RevolvedShape(FileName.checked(file), profile);
        SizeCheck.size("file", Math.max(2 * shape.meridian.widest(), shape.meridian.height()));
        return shape;
    }

    /** The outline. */
    public Profile2D profile() {
        return profile;
    }

    /** The faces in the half plane. */
    Meridian meridian() {
        return meridian;
    }

    @Override
    public String kind() {
        return "revolved";
    }

    @Override
    public String text() {
        return "revolved(file=\"" + file + "\")";
    }

    @Override
    public double volume() {
        return volume;
    }

    @Override
    public double surface() {
        return profile.surface();
    }

    @Override
    public Vec3 centroid() {
        return profile.centroid();
    }

    @Override
    public Extents extents() {
        return new Extents(2 * meridian.widest(), 2 * meridian.widest(), meridian.height());
    }

    @Override
    public double planArea() {
        double inner = meridian.narrowest();
        return Math.PI * (meridian.widest() - inner) * (meridian.widest() + inner);
    }

    /** To 0.1 % of the volume over the first 90 % of it. OUTSIDE is ALL: a hollow is not told from the outside. */
    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        return exposure == Exposure.TRAY ? tray : all;
    }

    @Override
    public Optional<Hull> hull() {
        return Optional.of(new RevolvedHull(profile));
    }
}
