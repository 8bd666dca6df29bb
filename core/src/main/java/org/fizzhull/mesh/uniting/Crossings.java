package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * Where the edges of one surface pass through the facets of another, by edge and along the edge. O(edges log facets +
 * crossings).
 */
final class Crossings {
    private final Corners at;
    private final FacetEdges own;
    private final FacetEdges other;
    private final FacetTree tree;

    private int[] edge = new int[64];
    private int[] facet = new int[64];
    private boolean[] enters = new boolean[64];
    private int[] point = new int[0];
    private int used;
    private int[] first = new int[0];
    private final double[] box = new double[6];

    /** Shell of each facet where shells of one surface are told apart: then a shell is not held against itself. */
    private final int[] shell;

    /** Whether a surface is held against itself: then a facet is not held against an edge that has a corner of it. */
    private final boolean itself;

    private Crossings(Corners at, FacetEdges own, FacetEdges other, int[] shell, boolean itself) {
        this.at = at;
        this.own = own;
        this.other = other;
        this.shell = shell;
        this.itself = itself;
        tree = new FacetTree(new TriangleMesh(at.grown, other.facetCorners()));
    }

    /** The crossings of two surfaces. */
    static Crossings of(Corners at, FacetEdges own, FacetEdges other) {
        Crossings found = new Crossings(at, own, other, new int[0], false);
        found.look();
        return found;
    }

    /** The crossings of a surface with itself. */
    static Crossings within(Corners at, FacetEdges all) {
        Crossings found = new Crossings(at, all, all, new int[0], true);
        found.look();
        return found;
    }

    /** The crossings of different shells of one surface. */
    static Crossings among(Corners at, FacetEdges all, int[] shell) {
        Crossings found = new Crossings(at, all, all, shell, false);
        found.look();
        return found;
    }

    private void look() {
        for (int e = 0; e < own.count(); e++) {
            for (int k = 0; k < 3; k++) {
                double p = at.grown[3 * own.low(e) + k];
                double q = at.grown[3 * own.high(e) + k];
                box[k] = Math.min(p, q);
                box[k + 3] = Math.max(p, q);
            }
            look(0, e);
        }
    }

    private void look(int node, int e) {
        for (int k = 0; k < 3; k++) {
            if (tree.box(node, k) > box[k + 3] || tree.box(node, k + 3) < box[k]) {
                return;
            }
        }
        if (!tree.leaf(node)) {
            look(node + 1, e);
            look(tree.right(node), e);
            return;
        }
        for (int i = tree.first(node); i < tree.end(node); i++) {
            int f = tree.facet(i);
            if (shell.length == 0 || shell[f] != shell[own.side(own.first(e)) / 3]) {
                cross(e, f);
            }
        }
    }

    private void cross(int e, int f) {
        int p = own.low(e);
        int q = own.high(e);
        int a = other.corner(3 * f);
        int b = other.corner(3 * f + 1);
        int c = other.corner(3 * f + 2);
        if (itself && (a == p || a == q || b == p || b == q || c == p || c == q)) {
            return;
        }
        boolean before = at.before(a, b, c, p);
        if (before == at.before(a, b, c, q)) {
            return;
        }
        boolean side = at.before(p, q, a, b);
        if (side != at.before(p, q, b, c) || side != at.before(p, q, c, a)) {
            return;
        }
        if (used == edge.length) {
            edge = Arrays.copyOf(edge, 2 * used);
            facet = Arrays.copyOf(facet, 2 * used);
            enters = Arrays.copyOf(enters, 2 * used);
        }
        edge[used] = e;
        facet[used] = f;
        enters[used++] = before;
    }

    /** Adds the corners and puts those of each edge in the order in which they follow from its lower corner. */
    void addCorners() {
        point = new int[used];
        Integer[] order = new Integer[used];
        double[] far = new double[used];
        for (int i = 0; i < used; i++) {
            int f = 3 * facet[i];
            int p = own.low(edge[i]);
            point[i] = at.add(p, own.high(edge[i]), other.corner(f), other.corner(f + 1), other.corner(f + 2));
            for (int k = 0; k < 3; k++) {
                far[i] += Math.abs(at.grown[3 * point[i] + k] - at.grown[3 * p + k]);
            }
            order[i] = i;
        }
        Arrays.sort(order, Comparator.<Integer>comparingInt(i -> edge[i]).thenComparingDouble(i -> far[i]));
        int[] by = Arrays.stream(order).mapToInt(i -> i).toArray();
        edge = IntStream.of(by).map(i -> edge[i]).toArray();
        facet = IntStream.of(by).map(i -> facet[i]).toArray();
        point = IntStream.of(by).map(i -> point[i]).toArray();
        boolean[] enter = new boolean[used];
        for (int i = 0; i < used; i++) {
            enter[i] = enters[by[i]];
        }
        enters = enter;
        first = new int[own.count() + 1];
        for (int i = 0; i < used; i++) {
            first[edge[i] + 1]++;
        }
        for (int e = 0; e < own.count(); e++) {
            first[e + 1] += first[e];
        }
    }

    /** Marks which shells cross, at one times their number plus the other. */
    void markShells(boolean[] crossed, int shells) {
        for (int i = 0; i < used; i++) {
            int a = shell[own.side(own.first(edge[i])) / 3];
            int b = shell[facet[i]];
            crossed[a * shells + b] = true;
            crossed[b * shells + a] = true;
        }
    }

    int count() {
        return used;
    }

    /** Edge of a crossing. */
    int edge(int i) {
        return edge[i];
    }

    /** Facet of the other surface it passes through. */
    int facet(int i) {
        return facet[i];
    }

    /** The new corner there. */
    int point(int i) {
        return point[i];
    }

    /** Whether the edge passes from before the facet to behind it, going up from its lower corner. */
    boolean enters(int i) {
        return enters[i];
    }

    /** First crossing of an edge; its crossings end where those of the next edge begin. */
    int first(int e) {
        return first[e];
    }
}
