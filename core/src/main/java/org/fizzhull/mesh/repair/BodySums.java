package org.fizzhull.mesh.repair;

import java.util.Arrays;

/** Volume by three fluxes, box and nesting of each closed surface of a mesh. */
final class BodySums {
    /** Thickness of a flat body as a part of its largest side; float32 coordinates hold seven digits. */
    static final double FLAT = 1e-9;

    private final int count;
    private final int[] facets;
    private final double[] area;
    private final double[] fx;
    private final double[] fy;
    private final double[] fz;

    /** Smallest x, y, z, then largest x, y, z of each surface. */
    private final double[] box;

    private final int[] outermost;

    BodySums(int count) {
        this.count = count;
        facets = new int[count];
        area = new double[count];
        fx = new double[count];
        fy = new double[count];
        fz = new double[count];
        box = new double[6 * count];
        outermost = new int[count];
        for (int b = 0; b < count; b++) {
            Arrays.fill(box, 6 * b, 6 * b + 3, Double.POSITIVE_INFINITY);
            Arrays.fill(box, 6 * b + 3, 6 * b + 6, Double.NEGATIVE_INFINITY);
            outermost[b] = b;
        }
    }

    /** Sums over the facets; an empty label stands for a single surface. */
    static BodySums of(double[] xyz, int[] corners, int[] label, int count) {
        BodySums sums = new BodySums(count);
        double[] middle = middle(xyz);
        for (int f = 0; f < corners.length / 3; f++) {
            int body = label.length == 0 ? 0 : label[f];
            sums.facets[body]++;
            sums.flux(xyz, corners, f, body, middle);
            for (int h = 3 * f; h < 3 * f + 3; h++) {
                sums.widen(6 * body, xyz, 3 * corners[h]);
            }
        }
        return sums;
    }

    /** Middle of some vertices: near the body, so that large offsets cost no digits. */
    private static double[] middle(double[] xyz) {
        int half = xyz.length / 6 * 3;
        return new double[] {(xyz[0] + xyz[half]) / 2, (xyz[1] + xyz[half + 1]) / 2, (xyz[2] + xyz[half + 2]) / 2};
    }

    /** Adds three volumes: of x, y and z times the area vector. On a closed surface they are one. */
    private void flux(double[] xyz, int[] corners, int facet, int body, double[] middle) {
        int a = 3 * corners[3 * facet];
        int b = 3 * corners[3 * facet + 1];
        int c = 3 * corners[3 * facet + 2];
        double ux = xyz[b] - xyz[a];
        double uy = xyz[b + 1] - xyz[a + 1];
        double uz = xyz[b + 2] - xyz[a + 2];
        double wx = xyz[c] - xyz[a];
        double wy = xyz[c + 1] - xyz[a + 1];
        double wz = xyz[c + 2] - xyz[a + 2];
        double nx = uy * wz - uz * wy;
        double ny = uz * wx - ux * wz;
        double nz = ux * wy - uy * wx;
        area[body] += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
        fx[body] += (3 * (xyz[a] - middle[0]) + ux + wx) * nx / 6;
        fy[body] += (3 * (xyz[a + 1] - middle[1]) + uy + wy) * ny / 6;
        fz[body] += (3 * (xyz[a + 2] - middle[2]) + uz + wz) * nz / 6;
    }

    private void widen(int at, double[] xyz, int v) {
        for (int k = 0; k < 3; k++) {
            double x = xyz[v + k];
            box[at + k] = x < box[at + k] ? x : box[at + k];
            box[at + 3 + k] = x > box[at + 3 + k] ? x : box[at + 3 + k];
        }
    }

    /** Number of surfaces. */
    int count() {
        return count;
    }

    /** Signed volume, m3. */
    double volume(int body) {
        return (fx[body] + fy[body] + fz[body]) / 3;
    }

    /** Signed volume of all, m3. */
    double volume() {
        double sum = 0;
        for (int b = 0; b < count; b++) {
            sum += volume(b);
        }
        return sum;
    }

    /** Largest difference between the three volumes, m3. */
    double fluxSpread(int body) {
        double high = Math.max(fx[body], Math.max(fy[body], fz[body]));
        return high - Math.min(fx[body], Math.min(fy[body], fz[body]));
    }

    /** Volume, m3, below which a surface is flat: rounding alone makes about a ten-millionth of it. */
    double flatVolume(int body) {
        return FLAT * area[body] * Math.max(side(body, 0), Math.max(side(body, 1), side(body, 2)));
    }

    private double side(int body, int axis) {
        return box[6 * body + 3 + axis] - box[6 * body + axis];
    }

    /** Whether the box of one surface lies inside the box of another. */
    boolean boxInside(int inner, int outer) {
        for (int axis = 0; axis < 3; axis++) {
            if (!(box[6 * inner + axis] >= box[6 * outer + axis]
                    && box[6 * inner + 3 + axis] <= box[6 * outer + 3 + axis])) {
                return false;
            }
        }
        return true;
    }

    /** Middle of the box, in words. */
    String middle(int body) {
        int at = 6 * body;
        return PlaceWords.point(
                (box[at] + box[at + 3]) / 2, (box[at + 1] + box[at + 4]) / 2, (box[at + 2] + box[at + 5]) / 2);
    }

    /** The free surface around this one; the surface itself where it stands free. */
    int outermost(int body) {
        return outermost[body];
    }

    void setOutermost(int body, int around) {
        outermost[body] = around;
    }

    /** Counts the surface as turned. */
    void turn(int body) {
        fx[body] = -fx[body];
        fy[body] = -fy[body];
        fz[body] = -fz[body];
    }

    /** The surface as a record. */
    MeshBody body(int body, int depth) {
        int at = 6 * body;
        return new MeshBody(
                facets[body],
                volume(body),
                depth,
                box[at],
                box[at + 1],
                box[at + 2],
                box[at + 3],
                box[at + 4],
                box[at + 5]);
    }
}
