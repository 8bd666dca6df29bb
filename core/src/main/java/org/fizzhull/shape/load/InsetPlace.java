package org.fizzhull.shape.load;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;

/**
 * Where in a hull there is material for an inset to lie in, read off the upright section through a point: a polygon, or
 * several, in x and z, for a body of revolution in distance from the axis and z.
 *
 * <p>A point is inside where a level ray from it crosses the outlines an odd number of times, so holes and hollows need
 * nothing special. Error: that of the section, whose arcs are chords. The section shows the distance to the surface in
 * its own plane alone: the true distance may be less. Cost: one section a question. Stateless. Used by {@link Loaded}.
 */
final class InsetPlace {
    /** Points of the search along the larger side of the section. */
    private static final int LATTICE = 60;

    private InsetPlace() {}

    /** Whether a point of the body frame, m, lies in the material; on the surface it may go either way. */
    static boolean holds(Hull hull, Vec3 point) {
        return inside(hull.uprightSection(point), across(hull, point), point.z());
    }

    /** Distance of a point in the material to the surface, at most, as its upright section shows it, m. */
    static double depth(Hull hull, Vec3 point) {
        return distance(hull.uprightSection(point), across(hull, point), point.z());
    }

    /** First coordinate of a point in its upright section, m. */
    private static double across(Hull hull, Vec3 point) {
        return hull.symmetry() == Hull.Symmetry.GENERAL ? point.x() : Math.hypot(point.x(), point.y());
    }

    /**
     * The point of the upright section that lies deepest in the material, m: the best of a grid over the half of the
     * section away from the axis, to about a 60th of its size. Proposed where an inset was put outside the material.
     */
    static Vec3 deepest(Hull hull) {
        List<double[][]> outlines = hull.section(Vec3.UP);
        // box of the section: least x, least z, largest x, largest z
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double[][] outline : outlines) {
            for (double[] point : outline) {
                box[0] = Math.min(box[0], point[0]);
                box[1] = Math.min(box[1], point[1]);
                box[2] = Math.max(box[2], point[0]);
                box[3] = Math.max(box[3], point[1]);
            }
        }
        // points stand off the axis by half a step, where outlines of round bodies are closed by nothing
        double step = Math.max(box[2] - box[0], box[3] - box[1]) / LATTICE;
        // the point of the grid farthest from the outline; the right half of a round body is enough
        double best = -1;
        Vec3 at = hull.centroid();
        for (double z = box[1] + step / 2; z < box[3]; z += step) {
            for (double x = (box[0] + box[2]) / 2 + step / 2; x < box[2]; x += step) {
                double depth = inside(outlines, x, z) ? distance(outlines, x, z) : -1;
                if (depth > best) {
                    best = depth;
                    at = new Vec3(x, hull.centroid().y(), z);
                }
            }
        }
        return at;
    }

    /** Whether a point of the section lies inside: an odd number of edges further in x at its height. */
    private static boolean inside(List<double[][]> outlines, double x, double z) {
        boolean in = false;
        for (double[][] outline : outlines) {
            for (int i = 0; i < outline.length; i++) {
                double[] a = outline[i];
                double[] b = outline[(i + 1) % outline.length];
                if ((a[1] > z) != (b[1] > z) && x < a[0] + (z - a[1]) / (b[1] - a[1]) * (b[0] - a[0])) {
                    in = !in;
                }
            }
        }
        return in;
    }

    /** Distance of a point of the section to its nearest edge, m. */
    private static double distance(List<double[][]> outlines, double x, double z) {
        double least = Double.MAX_VALUE;
        for (double[][] outline : outlines) {
            for (int i = 0; i < outline.length; i++) {
                double[] a = outline[i];
                double[] b = outline[(i + 1) % outline.length];
                // nearest point of the edge from a to b
                double ux = b[0] - a[0];
                double uz = b[1] - a[1];
                double length = ux * ux + uz * uz;
                double t = length > 0 ? ((x - a[0]) * ux + (z - a[1]) * uz) / length : 0;
                t = Math.max(0, Math.min(1, t));
                least = Math.min(least, Math.hypot(x - a[0] - t * ux, z - a[1] - t * uz));
            }
        }
        return least;
    }
}
