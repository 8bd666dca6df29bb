package org.fizzhull.mesh.uniting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * The crossings of the edges of a surface with its facets, ordered by edge and along each edge. A facet is not tested
 * against an edge that shares a corner with it. O(edges log facets + crossings).
 */
final class Crossings {
    private final Corners at;
    private final FacetEdges all;
    private final FacetTree tree;

    private final List<Crossing> found = new ArrayList<>();

    /** Index of the first crossing of each edge, and the number of all crossings at the end. */
    private final int[] first;

    /** Bounding box of the edge whose crossings are searched for. */
    private final double[] box = new double[6];

    /** Shell of that edge. */
    private int own;

    /** Shell of each facet; an edge is not tested against facets of its own shell. */
    private final int[] shell;

    /** Shell of all facets in a node of the tree; -1 where they belong to several. */
    private final int[] shellOfNode;

    /** Finds the crossings.
     *
     * @param shell for each facet the number of its shell; edges are not tested against facets of their own shell
     */
    Crossings(Corners at, FacetEdges all, int[] shell) {
        this.at = at;
        this.all = all;
        this.shell = shell;
        tree = new FacetTree(new TriangleMesh(at.grown, all.facetCorners()));
        shellOfNode = new int[tree.nodes()];
        // children have larger numbers than their parents
        for (int node = shellOfNode.length - 1; node >= 0; node--) {
            shellOfNode[node] = shellOf(node);
        }
        first = new int[all.count() + 1];
        search();
    }

    private int shellOf(int node) {
        boolean leaf = tree.leaf(node);
        int found = leaf ? shell[tree.facet(tree.first(node))] : shellOfNode[node + 1];
        boolean one = leaf
                ? IntStream.range(tree.first(node), tree.end(node)).allMatch(i -> shell[tree.facet(i)] == found)
                : shellOfNode[tree.right(node)] == found;
        return one ? found : -1;
    }

    /** Tests each edge against the facets whose bounding boxes overlap its own. */
    private void search() {
        for (int e = 0; e < all.count(); e++) {
            for (int k = 0; k < 3; k++) {
                double p = at.grown[3 * all.low(e) + k];
                double q = at.grown[3 * all.high(e) + k];
                box[k] = Math.min(p, q);
                box[k + 3] = Math.max(p, q);
            }
            own = shell[all.side(all.first(e)) / 3];
            search(0, e);
            first[e + 1] = found.size();
        }
    }

    private void search(int node, int e) {
        if (shellOfNode[node] == own) {
            return;
        }
        for (int k = 0; k < 3; k++) {
            if (tree.box(node, k) > box[k + 3] || tree.box(node, k + 3) < box[k]) {
                return;
            }
        }
        if (!tree.leaf(node)) {
            search(node + 1, e);
            search(tree.right(node), e);
            return;
        }
        for (int i = tree.first(node); i < tree.end(node); i++) {
            int f = tree.facet(i);
            if (shell[f] != own) {
                cross(e, f);
            }
        }
    }

    /**
     * Records a crossing where the ends of an edge lie on different sides of the plane of a facet and the three sides
     * of the facet pass the edge in the same sense.
     */
    private void cross(int e, int f) {
        int p = all.low(e);
        int q = all.high(e);
        int a = all.corner(3 * f);
        int b = all.corner(3 * f + 1);
        int c = all.corner(3 * f + 2);
        if (a == p || a == q || b == p || b == q || c == p || c == q) {
            return;
        }
        boolean before = at.inFront(a, b, c, p);
        if (before == at.inFront(a, b, c, q)) {
            return;
        }
        boolean side = at.inFront(p, q, a, b);
        if (side != at.inFront(p, q, b, c) || side != at.inFront(p, q, c, a)) {
            return;
        }
        found.add(new Crossing(e, f, before));
    }

    /** Adds a corner at each crossing and sorts the crossings of each edge by distance from its lower corner. */
    void addCorners() {
        for (Crossing crossing : found) {
            int f = 3 * crossing.facet;
            int p = all.low(crossing.edge);
            int q = all.high(crossing.edge);
            crossing.point = at.add(p, q, all.corner(f), all.corner(f + 1), all.corner(f + 2));
            for (int k = 0; k < 3; k++) {
                crossing.distance += Math.abs(at.grown[3 * crossing.point + k] - at.grown[3 * p + k]);
            }
        }
        found.sort(Comparator.<Crossing>comparingInt(crossing -> crossing.edge)
                .thenComparingDouble(crossing -> crossing.distance));
    }

    /** Whether shells a and b cross, at [a][b] and [b][a]; {@code count} is the number of shells. */
    boolean[][] shells(int count) {
        boolean[][] crossed = new boolean[count][count];
        for (Crossing crossing : found) {
            int a = shell[all.side(all.first(crossing.edge)) / 3];
            int b = shell[crossing.facet];
            crossed[a][b] = true;
            crossed[b][a] = true;
        }
        return crossed;
    }

    /** All crossings, edge after edge. */
    List<Crossing> all() {
        return found;
    }

    /** The crossings of an edge, once corners are added in order from its lower corner. */
    List<Crossing> along(int edge) {
        return found.subList(first[edge], first[edge + 1]);
    }
}
