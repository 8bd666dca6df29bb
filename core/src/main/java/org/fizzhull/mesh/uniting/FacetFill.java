package org.fizzhull.mesh.uniting;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Fills what is left of one facet with triangles, given the pieces of its boundary, which have the inside on their left,
 * around holes too. Each piece in turn becomes a side of the triangle to that corner from which it looks widest,
 * of those it sees: the constrained triangulation of Delaunay (Chew, Algorithmica 4, 1989; from memory). What is left then
 * is bounded by the two other sides. Where rounding hides all corners, the piece that follows ends at the third: triangles
 * always fit their neighbours, and one may lie on another by what is rounded. About O(corners^2).
 */
final class FacetFill {
    private record Piece(int from, int to) {}

    private record Candidate(int corner, double cotangent) {}

    private final Plane plane;
    private final Set<Piece> front = new LinkedHashSet<>();

    /** Nothing yet of a facet, seen along the axis across which it is widest, so that it runs anticlockwise. */
    FacetFill(Corners at, int a, int b, int c) {
        plane = Plane.across(at.grown, a, b, c);
    }

    /** Adds a piece, or takes away the one that runs back: between them is nothing. */
    void add(int from, int to) {
        if (!front.remove(new Piece(to, from)) && !front.add(new Piece(from, to))) {
            throw new UnclearException("a piece of boundary that is there twice");
        }
    }

    /** Hands over the corners of triangles that fill what the pieces bound, anticlockwise. */
    void triangles(IntStream.Builder out) {
        Map<Integer, Integer> balance = new HashMap<>();
        for (Piece piece : front) {
            balance.merge(piece.from, 1, Integer::sum);
            balance.merge(piece.to, -1, Integer::sum);
        }
        if (balance.values().stream().anyMatch(sum -> sum != 0)) {
            throw new UnclearException("a facet whose parts have no closed boundary");
        }
        while (!front.isEmpty()) {
            Piece base = front.iterator().next();
            int third = third(base);
            front.remove(base);
            add(base.from, third);
            add(third, base.to);
            out.add(base.from).add(base.to).add(third);
        }
    }

    /** The corner under the widest angle, that is the least cotangent, which both ends of a piece see. */
    private int third(Piece base) {
        PriorityQueue<Candidate> left = new PriorityQueue<>(Comparator.comparingDouble(Candidate::cotangent));
        int following = -1;
        for (Piece piece : front) {
            int c = piece.from;
            if (plane.doubled(base.from, base.to, c) > 0) {
                left.add(new Candidate(c, plane.cotangent(base.from, c, base.to)));
            }
            following = c == base.to ? piece.to : following;
        }
        while (!left.isEmpty()) {
            int c = left.remove().corner;
            if (clear(base.from, c) && clear(base.to, c)) {
                return c;
            }
        }
        return following;
    }

    /** Whether no piece crosses or touches the way between two corners, but at these. */
    private boolean clear(int p, int q) {
        for (Piece piece : front) {
            int a = piece.from;
            int b = piece.to;
            boolean meets = a == p || a == q || b == p || b == q;
            if (!meets
                    && plane.doubled(p, q, a) * plane.doubled(p, q, b) <= 0
                    && plane.doubled(a, b, p) * plane.doubled(a, b, q) <= 0) {
                return false;
            }
        }
        return true;
    }
}
