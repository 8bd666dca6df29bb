package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Adds the volume above every depth, and its rate, of one closed body to some sums: the signed distance is exact at the
 * corners and the middle of cubes, which are halved where the middle differs from the mean of the corners, that is at
 * edges, along the medial surfaces on which fronts meet, and where the front is strongly curved. Each cube left is twelve
 * tetrahedra about its middle, on each of which the distance is taken as linear, shifted by the mean error of a parabola.
 * Blocks of the lattice are worked one after another, so that memory does not grow with their number.
 */
final class DepthField {
    /** Lattice steps along a block; a cube has an even number of them. */
    static final int FINE = 32;

    private static final int POINTS = FINE + 1;

    /** Cubes are never larger than this share of a block. */
    private static final int LARGEST = FINE / 2;

    /** Cubes on the wall of a hollow are no larger: there a share of a tetrahedron gets the depths of all of it. */
    private static final int ON_A_WALL = 2;

    /** Mean error of the twelve tetrahedra on a parabola, in shares of its error at the middle of the cube. */
    private static final double PARABOLA = 5.0 / 12;

    /** Distances may be long by this share of the tolerance, which spares the many almost nearest facets of a ball. */
    private static final double SLACK = 0.25;

    private final DepthLattice lattice;
    private final LevelVolumes levels;
    private final double tolerance;
    private final int sign;
    private final RayTable inside;
    private final FacetTree.Probe surface;
    private final FacetTree.Probe[] front;
    private final double[] value = new double[POINTS * POINTS * POINTS];
    private final double[] corner = new double[9];
    private final double[] depth = new double[9];
    private int left;
    private int row;
    private int low;

    /** Adds the body itself: the depth is the distance to its own open facets. */
    DepthField(DepthLattice lattice, LevelVolumes levels, double tolerance, boolean[] body, FacetTree open) {
        this(lattice, levels, tolerance, 1, lattice.rays(body), open, new FacetTree.Probe[0]);
    }

    /** Takes a hollow away, in which the depth is the distance to the open facets of the body around it. */
    DepthField(
            DepthLattice lattice,
            LevelVolumes levels,
            double tolerance,
            RayTable hollow,
            FacetTree walls,
            FacetTree open) {
        this(lattice, levels, tolerance, -1, hollow, walls, new FacetTree.Probe[] {open.probe()});
    }

    private DepthField(
            DepthLattice lattice,
            LevelVolumes levels,
            double tolerance,
            int sign,
            RayTable inside,
            FacetTree surface,
            FacetTree.Probe[] front) {
        this.lattice = lattice;
        this.levels = levels;
        this.tolerance = tolerance;
        this.sign = sign;
        this.inside = inside;
        this.surface = surface.probe();
        this.front = front;
    }

    /** Works through all blocks. */
    void measure() {
        for (int z = 0; z < lattice.blocks(2); z++) {
            for (int y = 0; y < lattice.blocks(1); y++) {
                for (int x = 0; x < lattice.blocks(0); x++) {
                    left = x * FINE;
                    row = y * FINE;
                    low = z * FINE;
                    Arrays.fill(value, Double.NaN);
                    cube(0, 0, 0, FINE);
                }
            }
        }
    }

    private void cube(int i, int j, int k, int size) {
        int half = size / 2;
        double middle = at(i + half, j + half, k + half);
        if (middle < -Math.sqrt(3) * half * lattice.fine()) {
            return;
        }
        if (size <= LARGEST) {
            double sum = 0;
            double highest = middle;
            double lowest = middle;
            for (int c = 0; c < 8; c++) {
                double v = at(i + size * (c & 1), j + size * (c >> 1 & 1), k + size * (c >> 2));
                sum += v;
                highest = Math.max(highest, v);
                lowest = Math.min(lowest, v);
                corner[c] = v;
            }
            double bulge = middle - sum / 8;
            boolean smooth = Math.abs(bulge) <= tolerance;
            boolean wall = front.length > 0 && lowest < 0 && size > ON_A_WALL;
            if (half == 1 || (smooth && highest > 0 && !wall)) {
                corner[8] = middle;
                add(i, j, k, size, smooth ? PARABOLA * bulge : 0);
                return;
            }
        }
        for (int c = 0; c < 8; c++) {
            cube(i + half * (c & 1), j + half * (c >> 1 & 1), k + half * (c >> 2), half);
        }
    }

    private void add(int i, int j, int k, int size, double shift) {
        for (int c = 0; c < 9; c++) {
            corner[c] += shift;
        }
        for (int c = 0; front.length > 0 && c < 9; c++) {
            boolean middle = c == 8;
            int half = size / 2;
            depth[c] = lattice.distance(
                    front[0],
                    left + i + (middle ? half : size * (c & 1)),
                    row + j + (middle ? half : size * (c >> 1 & 1)),
                    low + k + (middle ? half : size * (c >> 2)),
                    SLACK * tolerance);
        }
        double side = size * lattice.fine();
        double volume = side * side * side / 12;
        for (int axis = 0; axis < 3; axis++) {
            int a = 1 << axis;
            int b = 1 << (axis + 1) % 3;
            int c = 1 << (axis + 2) % 3;
            tetrahedron(volume, 0, a, a + b);
            tetrahedron(volume, 0, b, a + b);
            tetrahedron(volume, c, c + a, c + a + b);
            tetrahedron(volume, c, c + b, c + a + b);
        }
    }

    /** The middle of the cube with three of its corners. */
    private void tetrahedron(double volume, int a, int b, int c) {
        if (front.length == 0) {
            levels.add(volume, corner[8], corner[a], corner[b], corner[c]);
        } else {
            double share = LevelVolumes.positive(corner[8], corner[a], corner[b], corner[c]);
            levels.add(sign * share * volume, depth[8], depth[a], depth[b], depth[c]);
        }
    }

    /** Distance to the surface at a lattice point of the block, m, negative outside. */
    private double at(int i, int j, int k) {
        int here = (k * POINTS + j) * POINTS + i;
        if (Double.isNaN(value[here])) {
            double d = lattice.distance(surface, left + i, row + j, low + k, SLACK * tolerance);
            value[here] = lattice.inside(inside, left + i, row + j, low + k) ? d : -d;
        }
        return value[here];
    }
}
