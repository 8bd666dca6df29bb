package org.fizzhull.shape;

import java.util.List;
import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.numeric.Vec3;

/** Hull of a closed triangle mesh, clipped without caps. */
public final class PolyhedronHull implements Hull {
    /** The hull of a mesh; {@code relativeError} is its error in volume and area against the true shape, 0 for a polyhedron. */
    public PolyhedronHull(TriangleMesh mesh, double relativeError) {
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
        return Symmetry.GENERAL;
    }

    @Override
    public List<double[][]> section(Vec3 up) {
        throw new UnsupportedOperationException();
    }
}
