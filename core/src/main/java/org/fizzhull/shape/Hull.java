package org.fizzhull.shape;

import java.util.List;
import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.numeric.Vec3;

/** A closed surface that a plane can cut: what hydrostatics knows of a shape. Body frame, SI. */
public interface Hull {
    /** Enclosed volume, m3. */
    double volume();

    /** Centroid of the enclosed volume, m. */
    Vec3 centroid();

    /** Largest value of {@code n . x} over the body, m, for a unit vector n; the smallest is {@code -reach(-n)}. */
    double reach(double nx, double ny, double nz);

    /** Cuts by the plane {@code n . x = c} (n a unit vector) and fills {@code out}. Allocates nothing. */
    void cut(double nx, double ny, double nz, double c, PlaneCut out);

    /** Kind of symmetry, so that a search scans no more directions than it must. */
    Symmetry symmetry();

    /** Relative error of volumes and areas against the true shape: 0 where the sections are exact. */
    default double relativeError() {
        return 0;
    }

    /**
     * Closed outlines of the vertical section through the centroid when {@code up} points up, for pictures: x to the
     * right, y the height {@code up . x} above the origin of the body frame, m.
     */
    List<double[][]> section(Vec3 up);

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
