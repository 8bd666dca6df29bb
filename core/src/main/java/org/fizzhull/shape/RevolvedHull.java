package org.fizzhull.shape;

import java.util.List;
import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.numeric.Vec3;

/** Hull of a body of revolution, cut by exact chord sections. */
public final class RevolvedHull implements Hull {
    /** The hull of a meridian. */
    public RevolvedHull(Profile2D profile) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double volume() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Vec3 centroid() {
        throw new UnsupportedOperationException();
    }

    @Override
    public double reach(double nx, double ny, double nz) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Symmetry symmetry() {
        return Symmetry.REVOLVED;
    }

    @Override
    public List<double[][]> section(Vec3 up) {
        throw new UnsupportedOperationException();
    }
}
