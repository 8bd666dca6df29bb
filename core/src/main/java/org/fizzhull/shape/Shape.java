package org.fizzhull.shape;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;

/**
 * The form of a piece, of its material alone. SI; body frame: z up as the shape is listed, origin at the lowest point
 * on the axis. A plain interface, so that an embedder can add a kind of their own.
 *
 * <p>What the rest of the library needs of a shape:
 * <ul>
 *   <li>its hull, for how it floats ({@code hydrostatics}, {@code voyage});
 *   <li>its depth profiles, for how it fizzes ({@code voyage}) and dries ({@code drying});
 *   <li>volume, plan area and height, for how it is pressed ({@code pressing});
 *   <li>hollow and inset, for boats, geodes, toppings and things inside.
 * </ul>
 * <pre>{@code
 * Shape ball = Shapes.sphere(millimetres(65));
 * Shape same = ShapeText.read("sphere(diameter=65 mm)");
 * double cm3 = inCubicCentimetres(ball.volume());   // 143.8
 * }</pre>
 *
 * <p>Implementations are immutable and safe for use by several threads; what is expensive to compute, depth profiles
 * above all, is asked for once per forecast and kept by the caller. Volumes and areas of the kinds in this library:
 * docs/physics/hydrostatics.md, 1. The kinds: packages {@code shape.kind}, {@code shape.revolved}, {@code
 * shape.meshed}; {@link org.fizzhull.shape.load.Loaded} puts toppings and things inside on any of them.
 */
public interface Shape extends Serializable {
    /** {@return the name of the kind as it stands in shape text, for example {@code dome}} */
    String kind();

    /**
     * {@return the canonical shape text} For the kinds of this library {@link org.fizzhull.shape.text.ShapeText} reads
     * it back to an equal shape; that of an embedder's own kind is shown and nothing more.
     */
    String text();

    /** {@return the volume of the material, m3} */
    double volume();

    /** {@return the total surface, hollow included, m2} */
    double surface();

    /** {@return the centroid of the material, m} */
    Vec3 centroid();

    /** {@return the box around the shape, m} */
    Extents extents();

    /** {@return the area of the horizontal projection as listed, m2} */
    double planArea();

    /**
     * {@return the attitude in which it lies on the bottom, or floats nearly awash, when it was not placed by hand}
     */
    default RestingAttitude restingAttitude() {
        Optional<Hull> hull = hull();
        return hull.isPresent()
                ? RestingAttitude.of(hull.get(), planArea())
                : RestingAttitude.listed(extents(), planArea());
    }

    /**
     * {@return what is left at each inward depth from the faces that are open}
     *
     * @param exposure which faces lose material: all of them, all but the face it rests on, or the outside of a hollow
     *     shape
     */
    DepthProfile depthProfile(DepthProfile.Exposure exposure);

    /**
     * {@return the depth profile of a piece that floats with a flat face up and dry and all others open
     * (docs/physics/voyage.md, 1); empty where its nearest side has no flat face, or one that a floating body does
     * not keep up ({@link RestingAttitude#keepsUp})}
     *
     * <p>The default covers the base on which the shape is listed, either flat of an upright prism, and the rim of a
     * hollow full of water. For the last it is the profile of every face: the fronts from both sides of the wall meet
     * in its middle whether the rim is dry or not.
     *
     * @param rest attitude of this shape as {@link #restingAttitude} gives it
     */
    default Optional<DepthProfile> depthProfileAfloat(RestingAttitude rest) {
        boolean upright = rest.prism() && Math.abs(rest.nearest().z()) == 1;
        if (hollow().isPresent()) {
            return rest.rimUp() ? Optional.of(depthProfile(DepthProfile.Exposure.ALL)) : Optional.empty();
        }
        if (!(upright || rest.onItsBase())) {
            return Optional.empty();
        }
        DepthProfile open = depthProfile(DepthProfile.Exposure.TRAY);
        double flat = depthProfile(DepthProfile.Exposure.ALL).area(0) - open.area(0);
        return rest.keepsUp(flat) ? Optional.of(open) : Optional.empty();
    }

    /**
     * {@return the bound on the relative error of its depth profiles ({@link DepthProfile#relativeError}), the larger
     * where it is hollow}
     */
    default double depthError() {
        double every = depthProfile(DepthProfile.Exposure.ALL).relativeError();
        return hollow().isPresent()
                ? Math.max(every, depthProfile(DepthProfile.Exposure.OUTSIDE).relativeError())
                : every;
    }

    /**
     * {@return the closed surface of the material} A shape whose attitude is not known, a mould known by its water
     * alone, has none: then only its displacement is known, not which way up it floats.
     */
    Optional<Hull> hull();

    /** {@return the hollow of an open shape; empty for solid shapes} */
    default Optional<Hollow> hollow() {
        return Optional.empty();
    }

    /** {@return the shape without toppings and insets; this shape where it has none} */
    default Shape bare() {
        return this;
    }

    /** {@return the mass set into the piece that does not fizz, crystals of a geode for example, kg} */
    default double insetMass() {
        return 0;
    }

    /** {@return the volume the inset displaces, m3} */
    default double insetVolume() {
        return 0;
    }

    /**
     * {@return the part of {@link #insetVolume} that the hull encloses already, m3: the inset lifts only by the rest}
     */
    default double insetInsideHull() {
        return 0;
    }

    /** {@return the centre of mass of the inset, m} */
    default Vec3 insetCentroid() {
        return centroid();
    }

    /** {@return the volume with the hollow closed by its rim plane; the volume itself for solid shapes, m3} */
    default double hullVolume() {
        Optional<Hollow> hollow = hollow();
        return hollow.isPresent() ? hollow.get().closed().volume() : volume();
    }

    /**
     * {@return the mean time constant of diffusion out of the shape for a diffusivity of 1 m2/s, m2 (see {@link
     * Hull#diffusionTime}); empty where it cannot be computed: a form that is not known, or an open hollow that is
     * closed} May take some tenths of a second: keep the result.
     *
     * @param exposure which faces vapour leaves through
     */
    default OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        if (exposure == DepthProfile.Exposure.OUTSIDE && hollow().isPresent()) {
            return OptionalDouble.empty();
        }
        Optional<Hull> hull = hull();
        if (hull.isEmpty()) {
            return OptionalDouble.empty();
        }
        DepthProfile profile = depthProfile(exposure);
        return ThinSheet.is(profile)
                ? OptionalDouble.of(ThinSheet.diffusionTime(profile))
                : hull.get().diffusionTime(exposure, profile.deepest());
    }

    /**
     * {@return whether moulds of this kind are two halves, each filled and closed on one another, rather than one
     * cavity pressed from its open side (common practice, no source)}
     */
    default boolean mouldedInHalves() {
        return false;
    }

    /**
     * {@return the relative standard uncertainty of the surface where it is only estimated; 0 where it is computed}
     */
    default double surfaceSpread() {
        return 0;
    }

    /**
     * {@return notices that belong to any answer about this shape: what was repaired in its file, for example}
     */
    default List<Notice> notices() {
        return List.of();
    }
}
