package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/** The surface of what is filled at least once: the facets outside all else, cut where they cross. */
final class Union {
    private Union() {}

    /** Corners of the facets of the union of two bodies; new ones are added to the corners. */
    static int[] of(Corners at, int[] one, int[] two) {
        FacetEdges a = new FacetEdges(one, at.count());
        FacetEdges b = new FacetEdges(two, at.count());
        Crossings ab = Crossings.of(at, a, b);
        Crossings ba = Crossings.of(at, b, a);
        ab.addCorners();
        ba.addCorners();
        Windings aroundA = Windings.of(at, a, b, ab);
        Windings aroundB = Windings.of(at, b, a, ba);
        int[] left = new CutFacets(at, a, b, ab, ba, aroundA, aroundB).left();
        int[] other = new CutFacets(at, b, a, ba, ab, aroundB, aroundA).left();
        int[] both = Arrays.copyOf(left, left.length + other.length);
        System.arraycopy(other, 0, both, left.length, other.length);
        return both;
    }

    /** The same of a surface that runs through itself. */
    static int[] within(Corners at, int[] corners) {
        FacetEdges all = new FacetEdges(corners, at.count());
        Crossings own = Crossings.within(at, all);
        own.addCorners();
        Windings around = Windings.within(at, all, own);
        return new CutFacets(at, all, all, own, own, around, around).left();
    }
}
