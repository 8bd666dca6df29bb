package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * Parallel lines through a body, spread evenly over its projection by a Kronecker sequence: thin walls are met as well as
 * thick parts, and each stretch of line inside stands for the same volume a metre. The lines are tilted against the
 * principal axes, along which bodies have flat faces; which lines there are hangs neither on the axes of the file nor on
 * the facets. Inside is where more facets were entered than left. Deterministic.
 */
final class DepthLines {
    /** Root of g^3 = g + 1: its powers spread two numbers evenly (Roberts 2018, extremelearning.com.au; from memory). */
    private static final double GOLDEN = 1.324717957244746;

    /** A turn of the lines and of the plane across against the principal axes, of no special angles. */
    private static final double[][] TILT = {
        {0.5485228982525285, -0.6666844192482813, 0.5046330500712651},
        {0.7785063196235253, 0.1870330938200984, -0.5991214669182833},
        {0.3050418666328927, 0.7214918620106980, 0.6216099682706644}
    };

    /** Most lines that are drawn: a slight body in a wide box is missed by most. */
    private static final int MOST_LINES = 1 << 18;

    /** Direction of all lines, of length 1. */
    final double[] direction;

    /** For each stretch inside its start x, y, z and its length, m. */
    double[] stretch = new double[1 << 14];

    /** Number in the sequence of the line of each stretch. */
    private int[] number = new int[1 << 12];

    private final int parts;
    private final double[][] axis;

    /** The body, turned so that the lines run along z, and the box around it. */
    private final TriangleMesh turned;

    private final double[] box;

    /** Stretches that a line of the sequence meets on average. */
    private final double met;

    private int drawn;
    private int used;
    private int lost;

    /** Lines through the body of a mesh; none is drawn yet. */
    DepthLines(TriangleMesh mesh, MassProperties body, int parts) {
        this.parts = parts;
        axis = axes(mesh, body);
        direction = axis[2];
        turned = mesh.moved(axis, new double[3]);
        box = turned.box();
        double facing = 0;
        for (int f = 0; f < turned.facetCount(); f++) {
            facing += Math.max(0, FaceSets.shadow(turned, f));
        }
        met = facing / ((box[3] - box[0]) * (box[4] - box[1]));
    }

    /** Goes on with the sequence until there are about so many stretches. */
    void upTo(int count) {
        int lines = (int) Math.min(MOST_LINES, Math.ceil(count / met));
        if (lines <= drawn) {
            return;
        }
        double[] u = new double[lines - drawn];
        double[] v = new double[lines - drawn];
        for (int i = 0; i < u.length; i++) {
            u[i] = box[0] + share(drawn + i, 1) * (box[3] - box[0]);
            v[i] = box[1] + share(drawn + i, 2) * (box[4] - box[1]);
        }
        RayTable rays = new RayTable(turned, 2, u, v);
        for (int r : rays.inRows()) {
            enter(rays, r, u[r], v[r]);
        }
        drawn = lines;
    }

    private void enter(RayTable rays, int r, double u, double v) {
        int winding = 0;
        int before = used;
        for (int k = rays.first(r); k < rays.end(r); k++) {
            int outside = winding;
            winding += rays.leaves(k) ? -1 : 1;
            double w = rays.height(k);
            if (outside <= 0 && winding > 0) {
                begin(drawn + r, u, v, w);
            } else if (outside > 0 && winding <= 0) {
                stretch[used - 1] += w;
            }
        }
        if (winding != 0) {
            used = before;
            lost++;
        }
    }

    private void begin(int line, double u, double v, double w) {
        if (used + 4 > stretch.length) {
            stretch = Arrays.copyOf(stretch, 2 * stretch.length);
            number = Arrays.copyOf(number, 2 * number.length);
        }
        number[used / 4] = line;
        for (int k = 0; k < 3; k++) {
            stretch[used++] = u * axis[0][k] + v * axis[1][k] + w * direction[k];
        }
        stretch[used++] = -w;
    }

    /** Which of the equal parts of the sequence a stretch belongs to; each part alone is spread evenly. */
    int part(int stretchNumber) {
        return (int) ((long) number[stretchNumber] * parts / drawn);
    }

    /** Lines that enter more often than they leave, as a share of all: none but for rounding. */
    double lost() {
        return (double) lost / drawn;
    }

    private static double share(int i, int power) {
        double at = 0.5 + (i + 1) / Math.pow(GOLDEN, power);
        return at - Math.floor(at);
    }

    /** Unit vectors across the lines, and along them. */
    private static double[][] axes(TriangleMesh mesh, MassProperties body) {
        double[][] moments = {
            {body.xx(), body.xy(), body.zx()}, {body.xy(), body.yy(), body.yz()}, {body.zx(), body.yz(), body.zz()}
        };
        double size = body.xx() + body.yy() + body.zz();
        for (double[] row : moments) {
            for (int k = 0; k < 3; k++) {
                row[k] /= size;
            }
        }
        EigenDecomposition found = new EigenDecomposition(new Array2DRowRealMatrix(moments, false));
        double[][] principal = new double[3][];
        for (int k = 0; k < 3; k++) {
            principal[k] = found.getEigenvector(k).toArray();
        }
        double[] skew = skew(mesh, body.centroid(), principal);
        double[][] axis = new double[3][3];
        for (int k = 0; k < 3; k++) {
            double sign = skew[k] < 0 ? -1 : 1;
            for (int j = 0; j < 3; j++) {
                for (int x = 0; x < 3; x++) {
                    axis[j][x] += sign * TILT[j][k] * principal[k][x];
                }
            }
        }
        // across as seen against the lines, or the turned body would be its mirror image
        for (int k = 0; k < 3; k++) {
            int l = (k + 1) % 3;
            int m = (k + 2) % 3;
            axis[0][k] = axis[1][l] * axis[2][m] - axis[1][m] * axis[2][l];
        }
        return axis;
    }

    /**
     * 120 times the third moments of the body along three axes at right angles through its centroid: they tell one end of
     * a principal axis from the other, so that a turned body meets the same lines.
     */
    private static double[] skew(TriangleMesh mesh, Vec3 centroid, double[][] n) {
        double[] middle = {centroid.x(), centroid.y(), centroid.z()};
        double[] p = new double[9];
        double[] sum = new double[3];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int i = 0; i < 9; i++) {
                p[i] = mesh.at(mesh.corner(f, i / 3), i % 3) - middle[i % 3];
            }
            // six times the volume of the tetrahedron over the facet
            double six = p[0] * (p[4] * p[8] - p[5] * p[7])
                    + p[1] * (p[5] * p[6] - p[3] * p[8])
                    + p[2] * (p[3] * p[7] - p[4] * p[6]);
            for (int k = 0; k < 3; k++) {
                double a = n[k][0] * p[0] + n[k][1] * p[1] + n[k][2] * p[2];
                double b = n[k][0] * p[3] + n[k][1] * p[4] + n[k][2] * p[5];
                double c = n[k][0] * p[6] + n[k][1] * p[7] + n[k][2] * p[8];
                sum[k] += six * ((a * a + b * b + c * c) * (a + b + c) + a * b * c);
            }
        }
        return sum;
    }

    int count() {
        return used / 4;
    }
}
