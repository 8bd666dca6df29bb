package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Closed shells that face outward, and which of them cross or touch; shells within a few millionths of their size of
 * each other count as touching. {@link #united} returns the union.
 *
 * <p>Method: each edge is cut where it passes through a facet. The winding number of the whole surface, just outside
 * its facets, is carried along the edges; a piece of an edge where it is 0 lies outside every other shell. In a facet
 * these pieces and the segments along which other facets cross it bound the part that belongs to the union. Crossings
 * are decided by the signs of determinants of perturbed corners ({@link PerturbedShells}), each always computed from
 * the same numbers, so that the parts fit together whatever the rounding. More than two bodies are united one after
 * another, so that no three facets cross in a point.
 */
public final class CrossedShells {
    /** Most perturbations that are tried. */
    private static final int ATTEMPTS = 4;

    /**
     * Largest error of a union by {@link LineCheck}: difference of the lengths of lines inside, as a share of the
     * length.
     */
    private static final double MAX_ERROR = 1e-4;

    private final double[] xyz;
    private final int[] corners;
    private final int[] shell;
    private final double[] grown;
    private final boolean[][] crossed;

    /** Finds which shells cross or touch.
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet, anticlockwise seen from outside
     * @param shell number of the shell of each facet
     * @param count number of shells
     */
    public CrossedShells(double[] xyz, int[] corners, int[] shell, int count) {
        ShellCorners apart = ShellCorners.of(xyz, corners, shell);
        Corners at = PerturbedShells.of(apart.xyz(), apart.corners(), shell, 0);
        this.xyz = apart.xyz();
        this.corners = apart.corners();
        this.shell = shell;
        grown = at.grown;
        crossed = new Crossings(at, new FacetEdges(this.corners, at.count()), shell).shells(count);
    }

    /** {@return the perturbed shells by which crossings are decided, each grown a little, m} */
    public TriangleMesh grown() {
        return new TriangleMesh(grown, corners);
    }

    /** {@return whether any two shells cross or touch} */
    public boolean any() {
        return IntStream.range(0, crossed.length)
                .anyMatch(a -> IntStream.range(0, a).anyMatch(b -> cross(a, b)));
    }

    /**
     * {@return whether two shells cross or touch}
     *
     * @param a number of a shell
     * @param b number of another
     */
    public boolean cross(int a, int b) {
        return crossed[a][b];
    }

    /** A union of shells.
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet; those of shells that cross nothing are included unchanged
     * @param bodies number of bodies that became part of a larger one; 0 where bodies were not distinguished
     */
    public record United(double[] xyz, int[] corners, int bodies) {}

    /**
     * {@return the union of all bodies that cross or touch, with the others unchanged; empty where it cannot be
     * determined}
     *
     * @param body for each shell the outermost shell around it, the same for a body and its cavities
     */
    public Optional<United> united(int[] body) {
        int count = crossed.length;
        boolean[][] bodies = new boolean[count][count];
        for (int a = 0; a < count; a++) {
            for (int b = 0; b < count; b++) {
                bodies[body[a]][body[b]] |= crossed[a][b];
            }
        }
        if (IntStream.range(0, count).anyMatch(b -> bodies[b][b])) {
            return Optional.empty();
        }
        int[] turn = turns(bodies);
        int[] turnOf = Arrays.stream(shell).map(s -> turn[body[s]]).toArray();
        int joined = (int) Arrays.stream(turn).filter(t -> t > 0).count();
        return unionOf(xyz, corners, shell, at -> inTurn(at, turnOf), joined);
    }

    /**
     * {@return the surface of the region that shells enclose at least once, also where they intersect themselves or
     * one another; empty where it cannot be determined, or where a part is inside out}
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet, anticlockwise seen from outside
     * @param shell number of the shell of each facet
     */
    public static Optional<United> themselves(double[] xyz, int[] corners, int[] shell) {
        int[] each = IntStream.range(0, corners.length / 3).toArray();
        ShellCorners apart = ShellCorners.of(xyz, corners, shell);
        return unionOf(apart.xyz(), apart.corners(), shell, at -> outerFacets(at, apart.corners(), each), 0);
    }

    /** Unites perturbed shells, with another perturbation each time, until {@link LineCheck} accepts the union. */
    private static Optional<United> unionOf(
            double[] xyz, int[] corners, int[] shell, Function<Corners, int[]> union, int bodies) {
        TriangleMesh parts = new TriangleMesh(xyz, corners);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Corners at = PerturbedShells.of(xyz, corners, shell, attempt);
            try {
                int[] left = union.apply(at);
                double[] place = Arrays.copyOf(at.place, 3 * at.count());
                if (left.length > 0 && LineCheck.difference(parts, new TriangleMesh(place, left)) <= MAX_ERROR) {
                    return Optional.of(new United(place, left, bodies));
                }
            } catch (UnclearException unclear) {
                // with another perturbation it may be clear
            }
        }
        return Optional.empty();
    }

    /**
     * Turn in which each body is united, from 1, the same for bodies that do not cross; 0 for those that cross
     * nothing.
     */
    private static int[] turns(boolean[][] bodies) {
        int[] turn = new int[bodies.length];
        for (int b = 0; b < turn.length; b++) {
            BitSet taken = new BitSet();
            for (int other = 0; other < turn.length; other++) {
                if (bodies[b][other]) {
                    // turn 0 is taken too, since it means that a body crosses nothing
                    taken.set(0);
                    taken.set(turn[other]);
                }
            }
            turn[b] = taken.nextClearBit(0);
        }
        return turn;
    }

    /** Facets of the union of bodies, which are added turn after turn, and of the bodies that cross nothing. */
    private int[] inTurn(Corners at, int[] turnOf) {
        int[] all = facets(turnOf, 1);
        for (int k = 2; k <= crossed.length; k++) {
            int[] next = facets(turnOf, k);
            if (next.length > 0) {
                int[] part = new int[(all.length + next.length) / 3];
                Arrays.fill(part, all.length / 3, part.length, 1);
                all = outerFacets(at, joined(all, next), part);
            }
        }
        return joined(all, facets(turnOf, 0));
    }

    /**
     * Corners of the outer facets of a surface, those outside all it encloses; new corners are added where facets are
     * cut.
     *
     * @param part for each facet a number; facets of the same number do not cross
     */
    private static int[] outerFacets(Corners at, int[] corners, int[] part) {
        FacetEdges edges = new FacetEdges(corners, at.count());
        Crossings crossings = new Crossings(at, edges, part);
        crossings.addCorners();
        return new CutFacets(at, edges, crossings, new Windings(at, edges, crossings)).outerFacets();
    }

    private static int[] joined(int[] one, int[] other) {
        return IntStream.concat(Arrays.stream(one), Arrays.stream(other)).toArray();
    }

    private int[] facets(int[] turnOf, int which) {
        return IntStream.range(0, corners.length)
                .filter(h -> turnOf[h / 3] == which)
                .map(h -> corners[h])
                .toArray();
    }
}
