package org.fizzhull.geometry;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A closed surface that a plane can cut: all that hydrostatics, drying and the voyage use of the outside of a body.
 * Body frame, SI.
 *
 * <p>Planes are given as {@code n . x = c}, n a unit vector of the body frame (for a floating body the one that points
 * up) and c in m; the part with {@code n . x <= c} is "below". Components are passed one by one, so that a search
 * allocates no more than a holder of one facet.
 *
 * <p>Two kinds come with the library, exact bodies of revolution ({@code shape.revolved.RevolvedHull}) and closed
 * triangle meshes ({@code shape.meshed.PolyhedronHull}); an embedder may write another. Nothing in the library depends
 * on which kind a hull is: a kind with a better method than the defaults here overrides them. A kind of one's own needs
 * volume, centroid, reach, cut, wetted area, symmetry and section; everything else has a default.
 *
 * <p>Implementations are immutable and safe for use by several threads; {@link #cut} and {@link #wettedArea} are called
 * in inner loops. Readers: {@code hydrostatics}, {@code voyage}, {@code drying}.
 */
public interface Hull {
    /** {@return the enclosed volume, m3} */
    double volume();

    /** {@return the centroid of the enclosed volume, m} */
    Vec3 centroid();

    /**
     * {@return the largest value of {@code n . x} over the body, m, for a unit vector n: the support function of the
     * body; the smallest is {@code -reach(-n)}}
     *
     * @param nx x component of the unit vector n
     * @param ny y component of n
     * @param nz z component of n
     */
    double reach(double nx, double ny, double nz);

    /**
     * Cuts by the plane {@code n . x = c} (n a unit vector) and fills {@code out}: volume and first moments of the part
     * below, area, centroid and second moments of the cut face. Allocates nothing. A plane beyond the body gives
     * nothing or the whole.
     *
     * @param nx x component of the unit normal n, which points out of the part that is kept
     * @param ny y component of n
     * @param nz z component of n
     * @param c distance of the plane from the origin along n, m; any value, also beyond the body
     * @param out where volume, first moments and the cut face are written
     */
    void cut(double nx, double ny, double nz, double c, PlaneCut out);

    /**
     * {@return the area of the part of the surface that lies below the plane {@code n . x = c} (n a unit vector), m2;
     * the whole surface for a plane above the body} This is what gas clings to and what recedes while the body floats.
     *
     * @param nx x component of the unit normal n
     * @param ny y component of n
     * @param nz z component of n
     * @param c distance of the plane from the origin along n, m
     */
    double wettedArea(double nx, double ny, double nz, double c);

    /** {@return the kind of symmetry, so that a search scans no more directions than it must} */
    Symmetry symmetry();

    /**
     * {@return whether it is an ellipsoid, whose draft has a closed form in every attitude: stretched to a ball, the
     * share under water is that of the ball}
     */
    default boolean isEllipsoid() {
        return symmetry() == Symmetry.BALL;
    }

    /** {@return the relative error of volumes and areas against the true shape: 0 where the sections are exact} */
    default double relativeError() {
        return 0;
    }

    /**
     * {@return the closed outlines of the vertical section through the centroid when {@code up} points up, for
     * pictures: x to the right, y the height {@code up . x} above the origin of the body frame, m}
     *
     * @param up unit vector of the body frame that points up in the picture
     */
    List<double[][]> section(Vec3 up);

    /**
     * {@return the closed outlines of an upright section through a point of the body frame, m: first coordinate along
     * the body's x axis (for a hull with an axis of revolution: distance from the axis), second the height z} The
     * default is the section through the centroid, which for a body of revolution holds for every point.
     *
     * @param through point of the body frame that the section passes through, m
     */
    default List<double[][]> uprightSection(Vec3 through) {
        return section(Vec3.UP);
    }

    /**
     * {@return the heights along {@code up} (a unit vector) between which the part of the surface above the level
     * {@code z >= least} of the body frame lies, {lowest, highest}, m; {+infinity, -infinity} where nothing lies above
     * it} The default reads them off the section in which the body's axis leans, exact for bodies of revolution.
     *
     * @param least lowest level in the body frame that still counts, m
     * @param up unit vector of the body frame
     */
    default double[] heightsAbove(double least, Vec3 up) {
        double side = Math.hypot(up.x(), up.y());
        double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (double[][] outline : section(up)) {
            for (double[] point : outline) {
                if (point[0] * side + point[1] * up.z() >= least) {
                    span[0] = Math.min(span[0], point[1]);
                    span[1] = Math.max(span[1], point[1]);
                }
            }
        }
        return span;
    }

    /**
     * {@return the unit vectors in which a search for attitudes of an angular body must look: along facet normals and
     * towards corners, each with its opposite} Empty for rounded bodies, whose attitudes any dense set of starts finds.
     */
    default List<Vec3> landmarks() {
        return List.of();
    }

    /**
     * {@return the mean time constant of diffusion out of the body through its open faces for a diffusivity of 1 m2/s,
     * m2: {@code (1/V) INT u dV} with {@code laplacian u = -1}, u = 0 on the open faces} Empty where this hull cannot
     * tell; drying then takes a usual value and says so.
     *
     * @param exposure which faces are open
     * @param deepest largest inward depth from them, m: the length that a lattice must resolve
     */
    default OptionalDouble diffusionTime(Exposure exposure, double deepest) {
        return OptionalDouble.empty();
    }

    /**
     * {@return the unit vector from the centroid to the nearest of all planes that touch the body: see {@link
     * RestingAttitude}} The default tries 2,000 even directions and is good to 1e-7 rad; a hull of many parts has a
     * better way.
     */
    default Vec3 nearestPlane() {
        return EvenDirections.nearest(this);
    }

    /**
     * {@return the area of the shadow along a unit vector, m2; empty where this hull cannot tell}
     *
     * @param along unit vector of the body frame in which the light falls
     */
    default OptionalDouble shadow(Vec3 along) {
        return OptionalDouble.empty();
    }

    /** Symmetry of a hull. */
    enum Symmetry {
        /** A ball: every direction is alike. */
        BALL,
        /** Revolved about the z axis: directions differ only by their angle to the axis. */
        REVOLVED,
        /** None that is used. */
        GENERAL
    }
}
