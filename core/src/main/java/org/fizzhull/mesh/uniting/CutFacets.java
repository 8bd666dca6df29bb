package org.fizzhull.mesh.uniting;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The outer part of a surface: its facets outside all that it encloses, cut where other facets cross them. The outer
 * part of a facet is bounded by the outer pieces of its sides and by one segment for each facet that crosses it;
 * together these form closed loops. Both facets of a segment get the same corners, so that the parts fit together.
 */
final class CutFacets {
    private final Corners at;
    private final FacetEdges all;
    private final Crossings crossings;
    private final Windings winding;

    /** Edge of each side. */
    private final int[] edge;

    /** A segment on a facet, directed so that the outer part lies on its left; a corner is -1 until it is known. */
    private static final class Segment {
        private int from = -1;
        private int to = -1;
    }

    /** For each facet that others cross, the segments on it, by the facet that crosses it. */
    private final Map<Integer, NavigableMap<Integer, Segment>> segments = new HashMap<>();

    private final IntStream.Builder out = IntStream.builder();

    CutFacets(Corners at, FacetEdges all, Crossings crossings, Windings winding) {
        this.at = at;
        this.all = all;
        this.crossings = crossings;
        this.winding = winding;
        edge = all.edges();
    }

    /** The outer facets, three corners each. */
    int[] outerFacets() {
        gatherEnds();
        for (int f = 0; f < all.facets(); f++) {
            NavigableMap<Integer, Segment> own = segments.get(f);
            if (own != null || crossed(f)) {
                cut(f, own == null ? List.of() : own.values());
            } else if (winding.at(all.corner(3 * f)) == 0) {
                out.add(all.corner(3 * f)).add(all.corner(3 * f + 1)).add(all.corner(3 * f + 2));
            }
        }
        return out.build().toArray();
    }

    private boolean crossed(int f) {
        return !crossings.along(edge[3 * f]).isEmpty()
                || !crossings.along(edge[3 * f + 1]).isEmpty()
                || !crossings.along(edge[3 * f + 2]).isEmpty();
    }

    /**
     * Finds both ends of the segment of each two facets that cross, for either of them. Where a side passes behind
     * the other facet, its outer piece ends and the segment on its own facet starts; the segment on the other facet
     * has the opposite direction and ends there. Segments inside a third body (winding number above 0) bound no outer
     * part.
     */
    private void gatherEnds() {
        for (Crossing crossing : crossings.all()) {
            int e = crossing.edge;
            for (int k = all.first(e); k < all.first(e + 1) && crossing.lowerWinding == 0; k++) {
                int h = all.side(k);
                boolean start = all.rises(h) == crossing.enters;
                add(h / 3, crossing.facet, crossing.point, start);
                add(crossing.facet, h / 3, crossing.point, !start);
            }
        }
    }

    /** Sets one end of the segment on facet f that facet g cuts. */
    private void add(int f, int g, int point, boolean start) {
        Segment segment = segments.computeIfAbsent(f, i -> new TreeMap<>()).computeIfAbsent(g, i -> new Segment());
        if ((start ? segment.from : segment.to) >= 0) {
            throw new UnclearException("two facets that cross at other than two points");
        }
        if (start) {
            segment.from = point;
        } else {
            segment.to = point;
        }
    }

    /** Triangulates the outer part of a facet, between the outer pieces of its sides and the segments on it. */
    private void cut(int f, Collection<Segment> own) {
        FacetTriangulation fill =
                new FacetTriangulation(at, all.corner(3 * f), all.corner(3 * f + 1), all.corner(3 * f + 2));
        for (int h = 3 * f; h < 3 * f + 3; h++) {
            side(h, fill);
        }
        for (Segment segment : own) {
            if (segment.from < 0 || segment.to < 0) {
                throw new UnclearException("two facets that cross at one point only");
            }
            fill.add(segment.from, segment.to);
        }
        fill.triangles(out);
    }

    /** Adds the outer pieces of a side, those on which the winding number is 0. */
    private void side(int h, FacetTriangulation fill) {
        List<Crossing> along = crossings.along(edge[h]);
        int before = all.corner(h);
        int w = winding.at(before);
        for (int k = 0; k < along.size(); k++) {
            Crossing crossing = along.get(all.rises(h) ? k : along.size() - 1 - k);
            if (w == 0) {
                fill.add(before, crossing.point);
            }
            w += all.rises(h) ? crossing.step() : -crossing.step();
            before = crossing.point;
        }
        if (w == 0) {
            fill.add(before, all.end(h));
        }
    }
}
