package org.fizzhull.shape.body;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.MeshSection;
import org.fizzhull.mesh.cutting.PlaneClip;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.distance.PoissonTime;
import org.fizzhull.mesh.measure.ChordError;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * Hull of a closed triangle mesh, clipped without caps. With the reference point on the cutting plane the cap adds
 * nothing to volume and moments, so that holes, several loops and bodies that are not convex need nothing special
 * (docs/physics/hydrostatics.md, 4).
 * <pre>{@code
 * TriangleMesh mesh = ...;                       // closed, facing outward, m
 * Hull hull = new PolyhedronHull(mesh, 0);       // 0: the body is this polyhedron
 * List<Attitude> ways = Attitudes.find(hull, hull.centroid(), 0.9);
 * }</pre>
 *
 * <p>A cut costs some tens of nanoseconds for each facet that it touches, about the square root of their number, so
 * that no search needs a coarser mesh. Error: rounding, beside the chord error that the caller passes in; it is
 * reported by {@link #relativeError} and makes the searches of {@code hydrostatics} treat small metacentric heights as
 * zero. Immutable, safe for use by several threads. For bodies of revolution: {@link
 * org.fizzhull.shape.revolved.RevolvedHull}.
 */
public final class PolyhedronHull implements Hull {
    /** A mesh of more facets stands for a rounded body. */
    private static final int ROUNDED = 64;

    /** The mesh, m. */
    private final TriangleMesh mesh;
    /** Its facets in a tree. */
    private final FacetTree tree;
    /** What cuts it. */
    private final PlaneClip clip;
    /** Volume, area, centroid and second moments of the whole. */
    private final MassProperties whole;
    /** Relative error of volume and area against the true shape. */
    private final double relativeError;

    /**
     * The hull of a mesh.
     *
     * @param mesh closed mesh that faces outward, m
     * @param relativeError relative error of its volume and area against the true shape, 0 for a polyhedron
     * @throws IllegalArgumentException for a mesh that encloses no volume, and an error below 0
     */
    public PolyhedronHull(TriangleMesh mesh, double relativeError) {
        this(new FacetTree(mesh), MassProperties.of(mesh), relativeError);
    }

    /** The hull of a mesh whose facets stand in a tree already, with the error of its chords. */
    public PolyhedronHull(FacetTree tree, ChordError chords) {
        this(tree, MassProperties.of(tree.mesh()), chords);
    }

    private PolyhedronHull(FacetTree tree, MassProperties whole, ChordError chords) {
        this(tree, whole, chords.spread() / whole.volume());
    }

    private PolyhedronHull(FacetTree tree, MassProperties whole, double relativeError) {
        this.mesh = tree.mesh();
        this.tree = tree;
        this.clip = new PlaneClip(tree);
        this.whole = whole;
        this.relativeError = relativeError;
        if (!(whole.volume() > 0)) {
            throw new IllegalArgumentException(
                    "the mesh encloses " + whole.volume() + " m3: turned inside out or empty");
        }
        if (!(relativeError >= 0)) {
            throw new IllegalArgumentException("relative error " + relativeError + " is not 0 or more");
        }
    }

    /** {@return the mesh} */
    public TriangleMesh mesh() {
        return mesh;
    }

    /** Its facets in a tree, for distances and rays. */
    public FacetTree tree() {
        return tree;
    }

    /** {@return the number of facets} */
    public int facets() {
        return mesh.facetCount();
    }

    /** {@return the volume, area, centroid and second moments of the mesh} */
    public MassProperties properties() {
        return whole;
    }

    /**
     * Facet normals and directions from the centroid to the vertices; none where more facets stand for a rounded body.
     */
    @Override
    public List<Vec3> landmarks() {
        List<Vec3> out = new ArrayList<>();
        if (mesh.facetCount() > ROUNDED) {
            return out;
        }
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

    /** A vertex, m. */
    private Vec3 vertex(int v) {
        return new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
    }

    /** Adds a direction and its opposite, unless it has no length. */
    private static void both(Vec3 direction, List<Vec3> out) {
        if (direction.norm() > 0) {
            out.add(direction.unit());
            out.add(direction.unit().times(-1));
        }
    }

    /** To 1e-9 rad; a few milliseconds: keep the result. */
    @Override
    public Vec3 nearestPlane() {
        return NearestPlane.of(tree, whole.centroid());
    }

    /** Exact where no line of sight passes through material twice, else to 2e-5. */
    @Override
    public OptionalDouble shadow(Vec3 along) {
        // turned so that the direction is z
        Vec3 u = (Math.abs(along.x()) < 0.6 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0))
                .cross(along)
                .unit();
        Vec3 w = along.cross(u);
        double[][] turn = {{u.x(), u.y(), u.z()}, {w.x(), w.y(), w.z()}, {along.x(), along.y(), along.z()}};
        return OptionalDouble.of(Silhouette.area(mesh.moved(turn, new double[3])));
    }

    @Override
    public double volume() {
        return whole.volume();
    }

    @Override
    public Vec3 centroid() {
        return whole.centroid();
    }

    /** The corner farthest along the direction, by the tree. */
    @Override
    public double reach(double nx, double ny, double nz) {
        return clip.reach(nx, ny, nz);
    }

    /** The facets that the plane touches are clipped; whole branches of the tree below it are taken from sums. */
    @Override
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        clip.cut(nx, ny, nz, c, out);
    }

    @Override
    public double wettedArea(double nx, double ny, double nz, double c) {
        return clip.areaBelow(nx, ny, nz, c);
    }

    /**
     * From one solve on a lattice, to about 0.5 %, with a rounded edge on a tray to 1 %; 0.1 to 0.5 s: keep the result.
     */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure, double deepest) {
        boolean tray = exposure == DepthProfile.Exposure.TRAY;
        return OptionalDouble.of(PoissonTime.of(mesh, tray, exposure == DepthProfile.Exposure.OUTSIDE, deepest));
    }

    /** In the x z plane through the point. */
    @Override
    public List<double[][]> uprightSection(Vec3 through) {
        return MeshSection.of(mesh, through, new Vec3(1, 0, 0), Vec3.UP);
    }

    /** Over the vertices: exact at corners; an edge that crosses the level counts only from its upper corner on. */
    @Override
    public double[] heightsAbove(double least, Vec3 up) {
        // heights of the vertices that count
        double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vec3 point = vertex(v);
            if (point.z() >= least) {
                span[0] = Math.min(span[0], point.dot(up));
                span[1] = Math.max(span[1], point.dot(up));
            }
        }
        return span;
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
