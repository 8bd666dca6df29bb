package org.fizzhull.shape.kind;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PrismMesh;

/**
 * Facets for a block: twelve for a sharp one. A rounded one gets each quarter arc as {@value #CHORDS} chords, about
 * corners of a radius slightly below the edge radius, so chosen that the enclosed volume is that of the true shape; the
 * six flats lie exactly.
 *
 * <p>Built of rings of points, level by level: {@value #CHORDS} + 1 rings round the lower edges and as many round the
 * upper, each with a quarter circle at every corner. Immutable. Used by {@link Block#hull}.
 */
final class RoundedBlockMesh {
    /** Chords of a quarter circle. */
    private static final int CHORDS = 8;
    /** Area of the quarter polygon on the unit circle. */
    private static final double QUARTER = CHORDS / 2.0 * Math.sin(Math.PI / (2 * CHORDS));

    /** The block. */
    private final Block block;
    /** Radius of the corners of the mesh, m; 0 for a sharp block. */
    private final double radius;

    /**
     * Finds the corner radius whose facets enclose the true volume of a block.
     *
     * @param block the block to be drawn with facets
     */
    public RoundedBlockMesh(Block block) {
        this.block = block;
        this.radius = block.edge() == 0 ? 0 : radiusOfVolume(block.volume());
    }

    /**
     * Largest distance between facets and rounding, times the area of the rounding, over the volume: a bound on the
     * error of any part cut off, in shares of the whole. Facets lie outside at a corner, where the smaller radius
     * reaches (sqrt 3 - 1)(e - r) further, and inside at the middle of a facet, by twice the height of a chord at most;
     * the two volumes are equal, so only the larger counts.
     */
    double relativeError() {
        double e = block.edge();
        double chord = Math.PI / (2 * CHORDS);
        double off = Math.max((Math.sqrt(3) - 1) * (e - radius), 2 * radius * (1 - Math.cos(chord / 2)));
        double flats = 2
                * ((block.length() - 2 * e) * (block.width() - 2 * e)
                        + (block.width() - 2 * e) * (block.height() - 2 * e)
                        + (block.height() - 2 * e) * (block.length() - 2 * e));
        return off * (block.surface() - flats) / block.volume();
    }

    /** {@return the closed triangle mesh, facing outward, m; it encloses the volume of the block} */
    public TriangleMesh mesh() {
        if (radius == 0) {
            double x = block.length() / 2;
            double y = block.width() / 2;
            return box(x, y, block.height());
        }
        // points of a ring: a quarter circle at each corner; rings from the lower flat to the upper
        int around = 4 * (CHORDS + 1);
        int rings = 2 * (CHORDS + 1);
        double[] xyz = new double[3 * around * rings];
        // rings from the bottom flat up: height and radius of the quarter circles of each
        for (int ring = 0; ring < rings; ring++) {
            // the end rings shrink to the four corners of a flat
            boolean upper = ring > CHORDS;
            double angle = Math.PI / 2 * (upper ? ring - CHORDS - 1 : CHORDS - ring) / CHORDS;
            double rho = ring == 0 || ring == rings - 1 ? 0 : radius * Math.cos(angle);
            double rise = radius * Math.sin(angle);
            double z = upper ? block.height() - radius + rise : radius - rise;
            for (int i = 0; i < around; i++) {
                // corner of the block that the point belongs to, and its place on the quarter circle there
                int quadrant = i / (CHORDS + 1);
                double turn = Math.PI / 2 * (i % (CHORDS + 1)) / CHORDS + Math.PI / 2 * quadrant;
                double cx = (block.length() / 2 - radius) * (quadrant == 0 || quadrant == 3 ? 1 : -1);
                double cy = (block.width() / 2 - radius) * (quadrant < 2 ? 1 : -1);
                PrismMesh.put(xyz, ring * around + i, cx + rho * Math.cos(turn), cy + rho * Math.sin(turn), z);
            }
        }
        return new TriangleMesh(xyz, facets(around, rings));
    }

    /** Bands between rings, without the facets that the four corners of the end rings shrink to nothing. */
    private static int[] facets(int around, int rings) {
        int corner = CHORDS + 1;
        int[] corners = new int[3 * (2 * around * (rings - 1) + 4)];
        int at = 0;
        for (int ring = 0; ring + 1 < rings; ring++) {
            for (int i = 0; i < around; i++) {
                int j = (i + 1) % around;
                // between two corners the band is flat: there the end rings give a whole facet
                boolean straight = j % corner == 0;
                int lower = ring * around;
                int upper = lower + around;
                if (ring == 0) {
                    // One vertex stands for each corner of the flat.
                    int a = i / corner * corner;
                    int b = j / corner * corner;
                    at = PrismMesh.facet(corners, at, a, upper + j, upper + i);
                    at = straight ? PrismMesh.facet(corners, at, a, b, upper + j) : at;
                } else if (ring + 2 == rings) {
                    int a = upper + i / corner * corner;
                    int b = upper + j / corner * corner;
                    at = PrismMesh.facet(corners, at, lower + i, lower + j, a);
                    at = straight ? PrismMesh.facet(corners, at, lower + j, b, a) : at;
                } else {
                    at = PrismMesh.facet(corners, at, lower + i, lower + j, upper + j);
                    at = PrismMesh.facet(corners, at, lower + i, upper + j, upper + i);
                }
            }
        }
        // the two flats, two facets each
        int top = (rings - 1) * around;
        at = PrismMesh.facet(corners, at, 0, 2 * corner, corner);
        at = PrismMesh.facet(corners, at, 0, 3 * corner, 2 * corner);
        at = PrismMesh.facet(corners, at, top, top + corner, top + 2 * corner);
        at = PrismMesh.facet(corners, at, top, top + 2 * corner, top + 3 * corner);
        return Arrays.copyOf(corners, at);
    }

    /** The sharp block, from -x to x, -y to y and 0 to the height, m. */
    private static TriangleMesh box(double x, double y, double height) {
        double[] xyz = {
            -x, -y, 0, x, -y, 0, x, y, 0, -x, y, 0, -x, -y, height, x, -y, height, x, y, height, -x, y, height
        };
        int[] corners = {
            0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7
        };
        return new TriangleMesh(xyz, corners);
    }

    /**
     * The radius, m, at which the facets enclose a volume, m3: the volume falls as the radius grows, and halving the
     * interval to rounding needs no start value.
     */
    private double radiusOfVolume(double volume) {
        double low = 0;
        double high = block.edge();
        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
            if (volumeAt(middle) > volume) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Volume that the facets enclose at a corner radius, m3: Steiner's formula with polygons for circles. */
    private double volumeAt(double e) {
        double x = block.length() - 2 * e;
        double y = block.width() - 2 * e;
        double z = block.height() - 2 * e;
        // the eight corners put together are a ball of facets, summed as frusta ring by ring
        double ball = 0;
        for (int i = 0; i < CHORDS; i++) {
            double t = Math.PI / 2 / CHORDS;
            double c0 = Math.cos(i * t);
            double c1 = i + 1 == CHORDS ? 0 : Math.cos((i + 1) * t);
            double rise = Math.sin((i + 1) * t) - Math.sin(i * t);
            ball += 8 * QUARTER * rise * (c0 * c0 + c0 * c1 + c1 * c1) / 3;
        }
        return x * y * z + 2 * (x * y + y * z + z * x) * e + 4 * QUARTER * (x + y + z) * e * e + ball * e * e * e;
    }
}
