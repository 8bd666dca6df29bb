package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Small faults of a facet list whose edges do not pair: facets listed twice, facets without area, corners that nearly
 * meet, corners that stand in the middle of a neighbour's edge. No corner moves by more than {@link #NEAR} of the
 * size. Facets that hang on no body are left out and {@link SmallHoles} closed; larger holes stay and are refused.
 */
final class MeshMending {
    /**
     * How near two places must be to count as one, as a part of the diagonal of the box (docs/physics/hydrostatics.md,
     * 6).
     */
    static final double NEAR = 1e-5;

    /** A facet lower than this part of its longest side has no area. */
    private static final double NO_AREA = 1e-7;

    private double[] xyz;
    private final List<Notice> notices;
    /** Diagonal of the box, m. */
    private final double size;

    private final double tolerance;
    private int[] corners;
    private EdgePairing pairing;

    MeshMending(double[] xyz, int[] corners, EdgePairing pairing, List<Notice> notices) {
        this.xyz = xyz;
        this.corners = corners;
        this.pairing = pairing;
        this.notices = notices;
        size = FaceSets.diagonal(new TriangleMesh(xyz, corners).box());
        tolerance = NEAR * size;
    }

    /** Mends what can be mended and returns the pairing of what is left. */
    EdgePairing mend() {
        FacetTwins twins = FacetTwins.among(corners, pairing.doubtful());
        if (twins.same() > 0) {
            replace(twins.withoutSame());
            tell("mesh-duplicates", twins.same() + " facets are listed more than once and were taken once.");
        }
        dropOpposite();
        if (!pairing.closed()) {
            dropWithoutArea();
        }
        if (pairing.open() > 0) {
            joinNear();
        }
        if (pairing.open() > 0) {
            divide();
        }
        if (pairing.open() > 0) {
            dropStray();
        }
        if (!pairing.closed()) {
            closeHoles();
        }
        return pairing;
    }

    /** Leaves out facets that hang on nothing, or by one edge on a surface that is closed there without them. */
    private void dropStray() {
        int dropped = 0;
        for (int pass = 0; pass < 8 && pairing.open() > 0; pass++) {
            byte[] free = new byte[corners.length / 3];
            for (int h : pairing.openEdges()) {
                free[h / 3]++;
            }
            byte[] doubtful = new byte[free.length];
            for (int h : pairing.doubtful()) {
                doubtful[h / 3]++;
            }
            boolean[] drop = new boolean[free.length];
            int count = 0;
            for (int f = 0; f < free.length; f++) {
                drop[f] = free[f] >= 2 && doubtful[f] == 3;
                count += drop[f] ? 1 : 0;
            }
            if (count == 0 || count == free.length) {
                break;
            }
            dropped += count;
            replace(without(corners, drop));
        }
        if (dropped > 0) {
            tell(
                    "mesh-stray",
                    dropped + (dropped == 1 ? " facet hangs" : " facets hang") + " on no body and were left out.");
        }
    }

    private void closeHoles() {
        SmallHoles small = new SmallHoles(xyz, corners, pairing.unbalanced(), size);
        if (small.closed() > 0) {
            xyz = small.xyz();
            replace(small.corners());
            small.tell(notices);
        }
    }

    /** The vertices, those in the middle of closed holes included, m. */
    double[] xyz() {
        return xyz;
    }

    /** The facets that are left. */
    int[] corners() {
        return corners;
    }

    private void replace(int[] others) {
        corners = others;
        pairing = EdgePairing.of(corners, xyz.length / 3);
    }

    private void tell(String code, String text) {
        notices.add(new Notice(code, text));
    }

    /** Of two facets back to back, one is a stray copy or both are an inner wall: whichever leaves a closed surface. */
    private void dropOpposite() {
        FacetTwins twins = FacetTwins.among(corners, pairing.doubtful());
        if (twins.opposite() == 0) {
            return;
        }
        int[] before = corners;
        EdgePairing pairingBefore = pairing;
        replace(twins.withoutOpposite(true));
        if (pairing.closed() && corners.length > 0) {
            tell("mesh-inner-wall", 2 * twins.opposite() + " facets lie back to back and were left out.");
            return;
        }
        replace(twins.withoutOpposite(false));
        if (pairing.closed() && !pairingBefore.closed()) {
            tell("mesh-duplicates", twins.opposite() + " facets are listed again the other way round; left out.");
            return;
        }
        corners = before;
        pairing = pairingBefore;
    }

    /** Leaves out facets without area at doubtful edges; the edge they leave is closed by {@link #divide}. */
    private void dropWithoutArea() {
        boolean[] drop = new boolean[corners.length / 3];
        int count = 0;
        for (int h : pairing.doubtful()) {
            if (!drop[h / 3] && withoutArea(h / 3)) {
                drop[h / 3] = true;
                count++;
            }
        }
        if (count > 0) {
            replace(without(corners, drop));
            tell("mesh-no-area", count + " facets without area were left out.");
        }
    }

    private boolean withoutArea(int facet) {
        double longest = 0;
        double height = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            int a = corners[3 * facet + k];
            int b = corners[3 * facet + (k + 1) % 3];
            double side = distance(xyz, a, b);
            longest = Math.max(longest, side);
            height = Math.min(height, offLine(xyz, a, b, corners[3 * facet + (k + 2) % 3]));
        }
        return height <= NO_AREA * longest;
    }

    /** Facets but those that are dropped. */
    static int[] without(int[] corners, boolean[] drop) {
        int[] left = new int[corners.length];
        int used = 0;
        for (int f = 0; f < drop.length; f++) {
            if (!drop[f]) {
                System.arraycopy(corners, 3 * f, left, used, 3);
                used += 3;
            }
        }
        return Arrays.copyOf(left, used);
    }

    private void joinNear() {
        NearCorners near = NearCorners.of(xyz, corners, pairing.doubtful(), tolerance);
        if (near.joined() == 0) {
            return;
        }
        int[] before = corners;
        EdgePairing pairingBefore = pairing;
        replace(near.corners());
        if (pairing.open() >= pairingBefore.open() || pairing.crowded() > pairingBefore.crowded()) {
            corners = before;
            pairing = pairingBefore;
            return;
        }
        tell(
                "mesh-near",
                near.joined() + " corners within " + PlaceWords.micrometres(tolerance)
                        + " micrometres of another were joined to it, the first at "
                        + PlaceWords.vertex(xyz, near.first()) + ".");
    }

    private void divide() {
        int divided = 0;
        int first = -1;
        for (int pass = 0; pass < 8 && pairing.open() > 0; pass++) {
            OpenEdges edges = new OpenEdges(xyz, corners, pairing.doubtful(), tolerance);
            if (edges.divided() == 0) {
                break;
            }
            first = first < 0 ? edges.first() : first;
            divided += edges.divided();
            replace(edges.corners());
        }
        if (divided > 0) {
            tell(
                    "mesh-t-junction",
                    divided + " corners stand in the middle of a neighbour's edge, the first at "
                            + PlaceWords.vertex(xyz, first) + "; the neighbours were divided there.");
        }
    }

    static double distance(double[] xyz, int a, int b) {
        return norm(xyz[3 * a] - xyz[3 * b], xyz[3 * a + 1] - xyz[3 * b + 1], xyz[3 * a + 2] - xyz[3 * b + 2]);
    }

    /** Distance of a vertex from the line through two others, m; its distance from them where they fall together. */
    static double offLine(double[] xyz, int a, int b, int v) {
        double ux = xyz[3 * b] - xyz[3 * a];
        double uy = xyz[3 * b + 1] - xyz[3 * a + 1];
        double uz = xyz[3 * b + 2] - xyz[3 * a + 2];
        double wx = xyz[3 * v] - xyz[3 * a];
        double wy = xyz[3 * v + 1] - xyz[3 * a + 1];
        double wz = xyz[3 * v + 2] - xyz[3 * a + 2];
        double length = norm(ux, uy, uz);
        return length > 0 ? norm(uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx) / length : norm(wx, wy, wz);
    }

    private static double norm(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }
}
