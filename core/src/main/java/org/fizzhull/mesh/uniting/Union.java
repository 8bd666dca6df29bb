package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/** The surface of what two bodies fill together: of each the facets outside the other, cut where the two cross. */
final class Union {
    private Union() {}

    /** Corners of the facets of the union; new ones are added to the corners. */
    static int[] of(Corners at, int[] one, int[] two) {
        FacetEdges a = new FacetEdges(one, at.count());
        FacetEdges b = new FacetEdges(two, at.count());
        Crossings ab = Crossings.of(at, a, b);
        Crossings ba = Crossings.of(at, b, a);
        ab.addCorners();
        ba.addCorners();
        int[] left = new CutFacets(at, a, b, ab, ba, Windings.of(at, a, b, ab)).left();
        int[] other = new CutFacets(at, b, a, ba, ab, Windings.of(at, b, a, ba)).left();
        int[] both = Arrays.copyOf(left, left.length + other.length);
        System.arraycopy(other, 0, both, left.length, other.length);
        return both;
    }
}
