package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * Where the edges of a surface pass through its facets, by edge and along the edge. A facet is not held against an edge that
 * has a corner of it. O(edges log facets + crossings).
 */
final class Crossings {
    private final Corners at;
    private final FacetEdges all;
    private final FacetTree tree;

    private int[] edge = new int[64];
    private int[] facet = new int[64];
    private boolean[] enters = new boolean[64];
    private int[] point = new int[0];
    private int used;
    private int[] first = new int[0];

    /** Box around the edge that is looked at, and its shell. */
    private final double[] box = new double[6];

    private int own;

    /** Shell of each facet where a shell is not held against itself; else empty. */
    private final int[] shell;

    /** Shell of all facets of a node, -1 where there are several. */
    private final int[] only;

    /**
     * Looks for the crossings.
     *
     * @param shell for each facet the shell it belongs to, of those that are not held against themselves; empty where any
     *     facet may cross any
     */
    Crossings(Corners at, FacetEdges all, int[] shell) {
        this.at = at;
        this.all = all;
        this.shell = shell;
        tree = new FacetTree(new TriangleMesh(at.grown, all.facetCorners()));
        only = new int[shell.length == 0 ? 0 : tree.nodes()];
        tellShells();
        look();
    }

    /** Finds the shell of each node. */
    private void tellShells() {
        // children stand behind their parents
        for (int node = only.length - 1; node >= 0; node--) {
            int found = tree.leaf(node) ? shell[tree.facet(tree.first(node))] : only[node + 1];
            boolean one = tree.leaf(node) || only[tree.right(node)] == found;
            for (int i = tree.first(node); tree.leaf(node) && i < tree.end(node); i++) {
                one &= shell[tree.facet(i)] == found;
            }
            only[node] = one ? found : -1;
        }
    }

    private void look() {
        for (int e = 0; e < all.count(); e++) {
            for (int k = 0; k < 3; k++) {
                double p = at.grown[3 * all.low(e) + k];
                double q = at.grown[3 * all.high(e) + k];
                box[k] = Math.min(p, q);
                box[k + 3] = Math.max(p, q);
            }
            own = shell.length == 0 ? -1 : shell[all.side(all.first(e)) / 3];
            look(0, e);
        }
    }

    private void look(int node, int e) {
        if (only.length > 0 && only[node] == own) {
            return;
        }
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
            if (shell.length == 0 || shell[f] != own) {
                cross(e, f);
            }
        }
    }

    private void cross(int e, int f) {
        int p = all.low(e);
        int q = all.high(e);
        int a = all.corner(3 * f);
        int b = all.corner(3 * f + 1);
        int c = all.corner(3 * f + 2);
        if (a == p || a == q || b == p || b == q || c == p || c == q) {
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
            int p = all.low(edge[i]);
            point[i] = at.add(p, all.high(edge[i]), all.corner(f), all.corner(f + 1), all.corner(f + 2));
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
        first = new int[all.count() + 1];
        for (int i = 0; i < used; i++) {
            first[edge[i] + 1]++;
        }
        for (int e = 0; e < all.count(); e++) {
            first[e + 1] += first[e];
        }
    }

    /** Marks which shells cross, at one times their number plus the all. */
    void markShells(boolean[] crossed, int shells) {
        for (int i = 0; i < used; i++) {
            int a = shell[all.side(all.first(edge[i])) / 3];
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
