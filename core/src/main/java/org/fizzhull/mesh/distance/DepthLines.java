package org.fizzhull.mesh.distance;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Parallel lines through a body, spread evenly over its projection by a Kronecker sequence: thin walls are met as well as
 * thick parts, and each stretch of line inside stands for the same volume a metre. The lines are tilted against the axes of
 * the file, along which bodies have flat faces. Inside is where more facets were entered than left. Deterministic.
 */
final class DepthLines {
    /** Root of g^3 = g + 1: its powers spread two numbers evenly (Roberts 2018, extremelearning.com.au; from memory). */
    private static final double GOLDEN = 1.324717957244746;

    /** Three unit vectors at right angles, of no special angles; the lines run along the last. */
    private static final double[][] AXES = {
        {0.5485228982525285, -0.6666844192482813, 0.5046330500712651},
        {0.7785063196235253, 0.1870330938200984, -0.5991214669182833},
        {0.3050418666328927, 0.7214918620106980, 0.6216099682706644}
    };

    /** Direction of all lines, of length 1. */
    static final Vec3 DIRECTION = new Vec3(AXES[2][0], AXES[2][1], AXES[2][2]);

    /** Most lines that are drawn: a slight body in a wide box is missed by most. */
    private static final int MOST_LINES = 1 << 18;

    /**
     * What of a line lies inside.
     *
     * @param start where it comes in, m
     * @param length up to where it goes out, m
     */
    record Stretch(Vec3 start, double length) {}

    private final List<List<Stretch>> parts = new ArrayList<>();
    private final int lines;
    private int lost;

    /**
     * Draws lines.
     *
     * @param mesh closed, facing outward
     * @param from about how many stretches of the sequence were drawn before
     * @param to about how many there shall be with these
     * @param parts in how many parts: one after another in the sequence, so that each is spread evenly
     */
    DepthLines(TriangleMesh mesh, int from, int to, int parts) {
        TriangleMesh turned = mesh.moved(AXES, new double[3]);
        double[] box = turned.box();
        double facing = 0;
        for (int f = 0; f < turned.facetCount(); f++) {
            facing += Math.max(0, FaceSets.shadow(turned, f));
        }
        // stretches that a line meets on average
        double met = facing / ((box[3] - box[0]) * (box[4] - box[1]));
        int first = (int) Math.min(MOST_LINES, Math.ceil(from / met));
        lines = (int) Math.min(MOST_LINES, Math.ceil(to / met)) - first;
        double[] u = new double[lines];
        double[] v = new double[lines];
        for (int i = 0; i < lines; i++) {
            u[i] = box[0] + share(first + i, 1) * (box[3] - box[0]);
            v[i] = box[1] + share(first + i, 2) * (box[4] - box[1]);
        }
        for (int p = 0; p < parts; p++) {
            this.parts.add(new ArrayList<>());
        }
        RayTable rays = new RayTable(turned, 2, u, v);
        for (int r : rays.inRows()) {
            this.parts.get((int) ((long) r * parts / lines)).addAll(inside(rays, r));
        }
    }

    /** A share from 0 to 1, by a power of the golden number. */
    private static double share(int i, int power) {
        double at = 0.5 + (i + 1) / Math.pow(GOLDEN, power);
        return at - Math.floor(at);
    }

    private List<Stretch> inside(RayTable rays, int r) {
        List<Stretch> found = new ArrayList<>();
        Vec3 foot = along(0, rays.u(r)).plus(along(1, rays.v(r)));
        int winding = 0;
        double entered = 0;
        for (int k = rays.first(r); k < rays.end(r); k++) {
            int outside = winding;
            winding += rays.leaves(k) ? -1 : 1;
            if (outside <= 0 && winding > 0) {
                entered = rays.height(k);
            } else if (outside > 0 && winding <= 0) {
                found.add(new Stretch(foot.plus(DIRECTION.times(entered)), rays.height(k) - entered));
            }
        }
        lost += winding == 0 ? 0 : 1;
        return winding == 0 ? found : List.of();
    }

    private static Vec3 along(int axis, double length) {
        return new Vec3(length * AXES[axis][0], length * AXES[axis][1], length * AXES[axis][2]);
    }

    /** What of the lines lies inside, part after part. */
    List<List<Stretch>> parts() {
        return parts;
    }

    /** Lines that enter more often than they leave, as a share of all: none but for rounding. */
    double lost() {
        return lost == 0 ? 0 : (double) lost / lines;
    }
}
