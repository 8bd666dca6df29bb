package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Repairs small faults of a facet list whose edges do not pair: facets listed twice, facets without area, corners
 * that nearly coincide, corners within an edge of a neighbour (T-junctions). No corner moves by more than {@link
 * #NEAR} of the size. Stray facets that belong to no body are left out and {@link SmallHoles} closed; larger holes
 * stay and are refused.
 */
final class MeshMending {
    /**
     * How near two places must be to count as one, as a part of the diagonal of the box (docs/physics/hydrostatics.md,
     * 6).
     */
    static final double NEAR = 1e-5;

    /** A facet lower than this part of its longest side has no area. */
    private static final double NO_AREA = 1e-7;

    /** Most rounds of dividing facets and of leaving out stray ones, each of which may lay open others. */
    private static final int PASSES = 8;

    private double[] xyz;
    private EdgePairing pairing;
    private final List<Notice> notices;

    /** Diagonal of the box, m. */
    private final double size;

    private final double tolerance;

    MeshMending(double[] xyz, EdgePairing pairing, List<Notice> notices) {
        this.xyz = xyz;
        this.pairing = pairing;
        this.notices = notices;
        size = FaceSets.diagonal(new TriangleMesh(xyz, pairing.corners).box());
        tolerance = NEAR * size;
    }

    /**
     * Repairs what it can and returns the pairing of the result. The order matters: duplicates are removed before
     * facets back to back, which they would hide; corners are joined before edges are divided at them; holes come
     * last, so that a fan closes only what the facets of the file cannot.
     */
    EdgePairing mend() {
        dropSame();
        dropOpposite();
        if (!pairing.closed()) {
            dropWithoutArea();
        }
        if (pairing.open.length > 0) {
            joinNear();
        }
        if (pairing.open.length > 0) {
            divide();
        }
        if (pairing.open.length > 0) {
            dropStray();
        }
        if (!pairing.closed()) {
            SmallHoles.Closed closed = SmallHoles.closed(xyz, pairing.corners, pairing.unbalanced, size, notices);
            xyz = closed.xyz();
            pairing = paired(closed.corners());
        }
        return pairing;
    }

    /** The vertices, those in the middle of closed holes included, m. */
    double[] xyz() {
        return xyz;
    }

    private EdgePairing paired(int[] corners) {
        return new EdgePairing(corners, xyz.length / 3);
    }

    private EdgePairing without(IntPredicate dropped) {
        return paired(without(pairing.corners, dropped));
    }

    /** Facets but those that are dropped, by number. */
    static int[] without(int[] corners, IntPredicate dropped) {
        return IntStream.range(0, corners.length / 3)
                .filter(dropped.negate())
                .flatMap(f -> IntStream.of(corners[3 * f], corners[3 * f + 1], corners[3 * f + 2]))
                .toArray();
    }

    private void addNotice(String code, String text) {
        notices.add(new Notice(code, text));
    }

    /** Takes facets that are listed several times the same way round once. */
    private void dropSame() {
        FacetTwins twins = FacetTwins.among(pairing.corners, pairing.doubtful);
        if (!twins.same().isEmpty()) {
            pairing = without(twins.same()::contains);
            addNotice(
                    "mesh-duplicates", twins.same().size() + " facets are listed more than once and were taken once.");
        }
    }

    /** Of two facets back to back, one is a stray copy or both are an inner wall: whichever leaves a closed surface. */
    private void dropOpposite() {
        FacetTwins twins = FacetTwins.among(pairing.corners, pairing.doubtful);
        int pairs = twins.later().size();
        if (pairs == 0) {
            return;
        }
        EdgePairing neither =
                without(f -> twins.earlier().contains(f) || twins.later().contains(f));
        EdgePairing one = without(twins.later()::contains);
        if (neither.closed() && neither.corners.length > 0) {
            pairing = neither;
            addNotice("mesh-inner-wall", 2 * pairs + " facets lie back to back and were left out.");
        } else if (one.closed() && !pairing.closed()) {
            pairing = one;
            addNotice("mesh-duplicates", pairs + " facets are listed again the other way round; left out.");
        }
    }

    /** Leaves out facets without area at doubtful edges; the edge they leave is closed by {@link #divide}. */
    private void dropWithoutArea() {
        Set<Integer> flat = Arrays.stream(pairing.doubtful)
                .map(h -> h / 3)
                .filter(this::withoutArea)
                .boxed()
                .collect(Collectors.toSet());
        if (!flat.isEmpty()) {
            pairing = without(flat::contains);
            addNotice("mesh-no-area", flat.size() + " facets without area were left out.");
        }
    }

    /** Whether a facet is a line or nearly so: its least height over a side is nothing beside its longest side. */
    private boolean withoutArea(int facet) {
        double longest = 0;
        double height = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
            int a = pairing.corners[3 * facet + k];
            int b = pairing.corners[3 * facet + (k + 1) % 3];
            int c = pairing.corners[3 * facet + (k + 2) % 3];
            longest = Math.max(longest, Vertices.distance(xyz, a, b));
            height = Math.min(height, Vertices.offLine(xyz, a, b, c));
        }
        return height <= NO_AREA * longest;
    }

    /** Joins corners that nearly meet, where that leaves fewer edges open and no more of them crowded. */
    private void joinNear() {
        NearCorners near = NearCorners.of(xyz, pairing.corners, pairing.doubtful, tolerance);
        EdgePairing found = paired(near.corners());
        if (found.open.length < pairing.open.length && found.crowded.length <= pairing.crowded.length) {
            pairing = found;
            addNotice(
                    "mesh-near",
                    near.joined() + " corners within " + PlaceWords.micrometres(tolerance)
                            + " micrometres of another were joined to it, the first at "
                            + PlaceWords.vertex(xyz, near.first()) + ".");
        }
    }

    /** Divides facets at corners of others on their open edges, one side of a facet at a time. */
    private void divide() {
        int divided = 0;
        int first = -1;
        for (int pass = 0; pass < PASSES && pairing.open.length > 0; pass++) {
            OpenEdges edges = new OpenEdges(xyz, pairing.corners, pairing.doubtful, tolerance);
            if (edges.divided == 0) {
                break;
            }
            first = first < 0 ? edges.first : first;
            divided += edges.divided;
            pairing = paired(edges.corners);
        }
        if (divided > 0) {
            addNotice(
                    "mesh-t-junction",
                    divided + " corners stand in the middle of a neighbour's edge, the first at "
                            + PlaceWords.vertex(xyz, first) + "; the neighbours were divided there.");
        }
    }

    /** Leaves out facets that hang on nothing, or by one edge on a surface that is closed there without them. */
    private void dropStray() {
        int dropped = 0;
        for (int pass = 0; pass < PASSES && pairing.open.length > 0; pass++) {
            int[] open = sidesOf(pairing.open);
            int[] doubtful = sidesOf(pairing.doubtful);
            IntPredicate stray = f -> open[f] >= 2 && doubtful[f] == 3;
            int count = (int) IntStream.range(0, open.length).filter(stray).count();
            if (count == 0 || count == open.length) {
                break;
            }
            dropped += count;
            pairing = without(stray);
        }
        if (dropped > 0) {
            addNotice(
                    "mesh-stray",
                    dropped + (dropped == 1 ? " facet hangs" : " facets hang") + " on no body and were left out.");
        }
    }

    /** How many of some sides each facet has. */
    private int[] sidesOf(int[] sides) {
        int[] count = new int[pairing.corners.length / 3];
        for (int h : sides) {
            count[h / 3]++;
        }
        return count;
    }
}
