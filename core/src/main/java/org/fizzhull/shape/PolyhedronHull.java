package org.fizzhull.shape;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.MeshSection;
import org.fizzhull.mesh.cutting.PlaneClip;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.numeric.Vec3;

/**
 * Hull of a closed triangle mesh, clipped without caps. A cut costs some tens of nanoseconds for each facet that it
 * touches, about the square root of their number, so that no search needs a coarser mesh.
 */
public final class PolyhedronHull implements Hull {
    private final TriangleMesh mesh;
    private final FacetTree tree;
    private final PlaneClip clip;
    private final MassProperties whole;
    private final double relativeError;

    /**
     * The hull of a mesh; {@code relativeError} is its error in volume and area against the true shape, 0 for a
     * polyhedron.
     */
    public PolyhedronHull(TriangleMesh mesh, double relativeError) {
        if (!(relativeError >= 0)) {
            throw new IllegalArgumentException("relative error " + relativeError + " is not 0 or more");
        }
        this.mesh = mesh;
        this.tree = new FacetTree(mesh);
        this.clip = new PlaneClip(tree);
        this.whole = MassProperties.of(mesh);
        this.relativeError = relativeError;
        if (!(whole.volume() > 0)) {
            throw new IllegalArgumentException(
                    "the mesh encloses " + whole.volume() + " m3: turned inside out or empty");
        }
    }

    /** The mesh. */
    public TriangleMesh mesh() {
        return mesh;
    }

    /** Its facets in a tree, for distances and rays. */
    FacetTree tree() {
        return tree;
    }

    /** Number of facets. */
    public int facets() {
        return mesh.facetCount();
    }

    /** Volume, area, centroid and second moments of the mesh. */
    public MassProperties properties() {
        return whole;
    }

    /**
     * Unit vectors along the facet normals and from the centroid to the vertices, each with its opposite: where a
     * search for attitudes of an angular body should look.
     */
    public List<Vec3> landmarks() {
        List<Vec3> out = new ArrayList<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 a = vertex(mesh.corner(f, 0));
            Vec3 normal = vertex(mesh.corner(f, 1))
                    .minus(a)
                    .cross(vertex(mesh.corner(f, 2)).minus(a));
            both(normal, out);
        }
        for (int v = 0; v < mesh.vertexCount(); v++) {
            both(vertex(v).minus(whole.centroid()), out);
        }
        return out;
    }

    private Vec3 vertex(int v) {
        return new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
    }

    private static void both(Vec3 direction, List<Vec3> out) {
        if (direction.norm() > 0) {
            out.add(direction.unit());
            out.add(direction.unit().times(-1));
        }
    }

    @Override
    public double volume() {
        return whole.volume();
    }

    @Override
    public Vec3 centroid() {
        return whole.centroid();
    }

    @Override
    public double reach(double nx, double ny, double nz) {
        return clip.reach(nx, ny, nz);
    }

    @Override
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        clip.cut(nx, ny, nz, c, out);
    }

    /** Area of the surface below the plane {@code n . x = c}, n a unit vector, m2. */
    double areaBelow(double nx, double ny, double nz, double c) {
        return clip.areaBelow(nx, ny, nz, c);
    }

    @Override
    public Symmetry symmetry() {
        return Symmetry.GENERAL;
    }

    @Override
    public double relativeError() {
        return relativeError;
    }

    @Override
    public List<double[][]> section(Vec3 up) {
        // the vertical plane in which the body's z axis leans, as for a body of revolution; upright: the x z plane
        Vec3 level = Math.hypot(up.x(), up.y()) > 1e-9 ? Vec3.UP : up.z() > 0 ? new Vec3(1, 0, 0) : new Vec3(-1, 0, 0);
        Vec3 right = level.minus(up.times(level.dot(up))).unit();
        return MeshSection.of(mesh, whole.centroid(), right, up);
    }
}
