package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.fizzhull.mesh.MassProperties;

/**
 * Parallel lines through a body, spread evenly over its projection by a Kronecker sequence, and base points on their
 * stretches inside at one even spacing: thin walls are met as well as thick parts, and each stretch of line stands for the
 * same volume a metre. The lines are tilted against the principal axes, along which bodies have flat faces; which lines
 * there are hangs neither on the axes of the file nor on the facets. Deterministic.
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

    /** Lines of the pilot, which tells how many of the lines in the box around the body meet it. */
    private static final int PILOT = 1 << 9;

    /** Cells to a side of the plane across, for the order of the lines. */
    private static final int CELLS = 128;

    /** Most lines that are drawn: a slight body in a wide box is missed by most. */
    private static final int MOST_LINES = 1 << 18;

    /** Direction of all lines, of length 1. */
    final double[] direction;

    /** For each stretch inside its start x, y, z and its length, m. */
    double[] stretch = new double[1 << 14];

    /** Number in the sequence of the line of each stretch. */
    private int[] number = new int[1 << 12];

    private final int parts;
    private final double met;
    private int drawn;
    private final double[][] axis;
    private final double[] low = new double[3];
    private final double[] high = new double[3];
    private final LineThrough through;
    private int used;
    private int slipped;

    /** Lines through the body of a tree; none is drawn yet. */
    DepthLines(FacetTree tree, MassProperties body, int parts) {
        this.parts = parts;
        axis = axes(body);
        direction = axis[2];
        reach(tree);
        through = new LineThrough(tree);
        for (int i = 0; i < PILOT; i++) {
            draw(i);
        }
        met = Math.max(used / 4.0, 1) / PILOT;
        used = 0;
        slipped = 0;
    }

    /** Goes on with the sequence until there are about so many stretches. */
    void upTo(int count) {
        int lines = (int) Math.min(MOST_LINES, Math.ceil(count / met));
        for (long key : inOrder(drawn, lines)) {
            int i = (int) key;
            draw(i);
        }
        drawn = Math.max(drawn, lines);
    }

    /** Which of the equal parts of the sequence a stretch belongs to; each part alone is spread evenly. */
    int part(int stretchNumber) {
        return (int) ((long) number[stretchNumber] * parts / drawn);
    }

    /** Lines that slipped through a seam between two facets, as a share of all. */
    double lost() {
        return (double) slipped / drawn;
    }

    /** Numbers of lines, in the low half of the keys, in the order of Morton: neighbours ask the same part of the tree. */
    private static long[] inOrder(int from, int to) {
        long[] keys = new long[Math.max(0, to - from)];
        for (int i = from; i < to; i++) {
            int u = (int) (share(i, 1) * CELLS);
            int v = (int) (share(i, 2) * CELLS);
            long key = 0;
            for (int bit = CELLS / 2; bit > 0; bit /= 2) {
                key = key << 2 | ((u & bit) != 0 ? 2 : 0) | ((v & bit) != 0 ? 1 : 0);
            }
            keys[i - from] = key << 32 | i;
        }
        Arrays.sort(keys);
        return keys;
    }

    private void draw(int i) {
        double a = low[0] + share(i, 1) * (high[0] - low[0]);
        double b = low[1] + share(i, 2) * (high[1] - low[1]);
        double[] start = new double[3];
        for (int k = 0; k < 3; k++) {
            start[k] = a * axis[0][k] + b * axis[1][k] + low[2] * direction[k];
        }
        double[] inside = through.stretches(start, direction);
        if (inside == null) {
            slipped++;
            return;
        }
        for (int s = 0; s < inside.length; s += 2) {
            if (used + 4 > stretch.length) {
                stretch = Arrays.copyOf(stretch, 2 * stretch.length);
                number = Arrays.copyOf(number, 2 * number.length);
            }
            number[used / 4] = i;
            for (int k = 0; k < 3; k++) {
                stretch[used++] = start[k] + inside[s] * direction[k];
            }
            stretch[used++] = inside[s + 1] - inside[s];
        }
    }

    private static double share(int i, int power) {
        double at = 0.5 + (i + 1) / Math.pow(GOLDEN, power);
        return at - Math.floor(at);
    }

    /** Unit vectors across the lines, and along them. */
    private static double[][] axes(MassProperties body) {
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
        double[][] axis = new double[3][3];
        for (int k = 0; k < 3; k++) {
            double[] principal = found.getEigenvector(k).toArray();
            for (int j = 0; j < 3; j++) {
                for (int x = 0; x < 3; x++) {
                    axis[j][x] += TILT[j][k] * principal[x];
                }
            }
        }
        return axis;
    }

    private void reach(FacetTree tree) {
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < tree.corner.length; i += 3) {
            for (int k = 0; k < 3; k++) {
                double at =
                        axis[k][0] * tree.corner[i] + axis[k][1] * tree.corner[i + 1] + axis[k][2] * tree.corner[i + 2];
                low[k] = Math.min(low[k], at);
                high[k] = Math.max(high[k], at);
            }
        }
    }

    int count() {
        return used / 4;
    }
}
