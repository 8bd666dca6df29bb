package org.fizzhull.shape;

import java.util.Optional;
import org.fizzhull.mesh.Silhouette;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.numeric.Vec3;

/**
 * How a body lies that nobody placed: the nearest of all planes that touch it, seen from its centroid, is down where it
 * lies on the bottom (the centroid then lies lowest) and up where it floats nearly awash (the little that shows is then
 * lowest, which is the least of the potential energy in that limit; Gilbert, Amer. Math. Monthly 98 (1991) 201, for the
 * duality of light and heavy bodies). It does not depend on how the body is listed.
 *
 * @param nearest unit vector of the body frame from the centroid to that plane
 * @param height of the body along it, m
 * @param planArea area of the body's shadow along it, m2
 */
public record RestingAttitude(Vec3 nearest, double height, double planArea) {
    /** A shadow along the listed axis is that of the listing. */
    private static final double ALONG = 1e-9;

    /** Of a hull whose shadow along its listed z axis is known, m2. */
    static RestingAttitude of(Hull hull, double listedPlanArea) {
        Vec3 n = NearestPlane.of(hull);
        double height = hull.reach(n.x(), n.y(), n.z()) + hull.reach(-n.x(), -n.y(), -n.z());
        boolean listed = Math.abs(n.x()) < ALONG && Math.abs(n.y()) < ALONG;
        return new RestingAttitude(n, height, listed ? listedPlanArea : shadow(hull, n, listedPlanArea));
    }

    /** Of a shape whose hull is not known: as it is listed, its shortest side upright. */
    static RestingAttitude of(Shape shape) {
        Optional<Hull> hull = shape.hull();
        if (hull.isPresent()) {
            return of(hull.get(), shape.planArea());
        }
        Extents box = shape.extents();
        double height = Math.min(box.height(), Math.min(box.length(), box.width()));
        return new RestingAttitude(Vec3.UP, height, shape.planArea());
    }

    private static double shadow(Hull hull, Vec3 n, double otherwise) {
        if (hull instanceof PolyhedronHull polyhedron) {
            return Silhouette.area(upright(polyhedron.mesh(), n));
        }
        return hull instanceof RevolvedHull revolved ? RevolvedShadow.area(revolved.profile(), n.z()) : otherwise;
    }

    /** The mesh turned so that a direction points up. */
    private static TriangleMesh upright(TriangleMesh mesh, Vec3 n) {
        Vec3 aside = Math.abs(n.x()) < 0.6 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        Vec3 u = aside.cross(n).unit();
        Vec3 w = n.cross(u);
        double[] xyz = new double[3 * mesh.vertexCount()];
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vec3 p = new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
            xyz[3 * v] = p.dot(u);
            xyz[3 * v + 1] = p.dot(w);
            xyz[3 * v + 2] = p.dot(n);
        }
        int[] corners = new int[3 * mesh.facetCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                corners[3 * f + k] = mesh.corner(f, k);
            }
        }
        return new TriangleMesh(xyz, corners);
    }
}
