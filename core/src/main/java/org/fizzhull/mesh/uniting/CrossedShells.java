package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Closed shells, facing out, with what crosses or touches what: within a few millionths of their size, touching counts.
 * {@link #united} makes one surface of those that do.
 *
 * <p>Each edge is cut where it passes through a facet. The winding number of the whole surface, on the side that facets
 * look to, is carried along the edges and tells the pieces outside from those that something else fills; in a facet these
 * and the segments along which facets cross bound what is left. Which cross is told by signs of determinants of grown and
 * shaken corners ({@link GrownShells}), each always worked out from the same numbers, so that the parts fit together
 * whatever the rounding. More than two bodies are taken one after another, so that no three facets cross in a point.
 */
public final class CrossedShells {
    /** Ways of growing and shaking that are tried. */
    private static final int ATTEMPTS = 4;

    /** Largest share of the length of lines inside by which a union may differ from what it was made of. */
    private static final double SAME = 1e-4;

    private final double[] xyz;
    private final int[] corners;
    private final double[] grown;
    private final int[] shell;
    private final int count;
    private final boolean[] crossed;

    private CrossedShells(double[] xyz, int[] corners, double[] grown, int[] shell, int count, boolean[] crossed) {
        this.xyz = xyz;
        this.corners = corners;
        this.grown = grown;
        this.shell = shell;
        this.count = count;
        this.crossed = crossed;
    }

    /**
     * {@return some shells, with what crosses what}
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet, anticlockwise seen from outside
     * @param shell number of the shell of each facet
     * @param count number of shells
     */
    public static CrossedShells of(double[] xyz, int[] corners, int[] shell, int count) {
        ShellCorners apart = ShellCorners.of(xyz, corners, shell);
        Corners at = GrownShells.of(apart.xyz(), apart.corners(), shell, 0);
        boolean[] crossed = new boolean[count * count];
        new Crossings(at, new FacetEdges(apart.corners(), at.count()), shell).markShells(crossed, count);
        return new CrossedShells(apart.xyz(), apart.corners(), at.grown, shell, count, crossed);
    }

    /** {@return the shells as they are held against each other, each grown a little, m} */
    public TriangleMesh grown() {
        return new TriangleMesh(grown, corners);
    }

    /** {@return whether any two shells cross or touch} */
    public boolean any() {
        for (boolean one : crossed) {
            if (one) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return whether two shells cross or touch}
     *
     * @param a number of a shell
     * @param b number of another
     */
    public boolean cross(int a, int b) {
        return crossed[a * count + b];
    }

    /**
     * What shells were united to.
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet; shells that cross nothing are among them as they were
     * @param bodies number of bodies that became part of a larger one; 0 where they were not told apart
     */
    public record United(double[] xyz, int[] corners, int bodies) {}

    /**
     * {@return the union of all bodies that cross or touch, with the others; empty where it cannot be told}
     *
     * @param body for each shell the outermost one around it: a body and its cavities have one
     */
    public Optional<United> united(int[] body) {
        boolean[] bodies = new boolean[count * count];
        for (int i = 0; i < crossed.length; i++) {
            int a = body[i / count];
            int b = body[i % count];
            if (crossed[i] && a == b) {
                return Optional.empty();
            }
            bodies[a * count + b] |= crossed[i];
        }
        int[] turn = turns(bodies);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Optional<United> found = attempt(body, turn, attempt);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the surface of what some shells enclose at least once, whichever of them run through themselves or through
     * others; empty where it cannot be told, or where something is inside out}
     *
     * @param xyz coordinates of the corners, m, three each
     * @param corners three corners a facet, anticlockwise seen from outside
     * @param shell number of the shell of each facet
     */
    public static Optional<United> themselves(double[] xyz, int[] corners, int[] shell) {
        ShellCorners apart = ShellCorners.of(xyz, corners, shell);
        TriangleMesh parts = new TriangleMesh(apart.xyz(), apart.corners());
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Optional<United> united = themselves(parts, apart, shell, attempt);
            if (united.isPresent()) {
                return united;
            }
        }
        return Optional.empty();
    }

    /** One attempt, each of which grows and shakes the shells otherwise; empty where what is inside stays unclear. */
    private static Optional<United> themselves(TriangleMesh parts, ShellCorners apart, int[] shell, int attempt) {
        Corners at = GrownShells.of(apart.xyz(), apart.corners(), shell, attempt);
        try {
            int[] left = left(at, apart.corners(), new int[0]);
            double[] place = Arrays.copyOf(at.place, 3 * at.count());
            boolean same = left.length > 0 && LineCheck.difference(parts, new TriangleMesh(place, left)) <= SAME;
            return same ? Optional.of(new United(place, left, 0)) : Optional.empty();
        } catch (UnclearException unclear) {
            return Optional.empty();
        }
    }

    /** When each body is taken: 0 for those that cross nothing, else the same number for several that do not cross. */
    private int[] turns(boolean[] bodies) {
        int[] turn = new int[count];
        for (int b = 0; b < count; b++) {
            boolean[] taken = new boolean[count + 2];
            boolean free = true;
            for (int other = 0; other < count; other++) {
                if (bodies[b * count + other]) {
                    free = false;
                    taken[turn[other]] = true;
                }
            }
            int first = 1;
            while (taken[first]) {
                first++;
            }
            turn[b] = free ? 0 : first;
        }
        return turn;
    }

    private Optional<United> attempt(int[] body, int[] turn, int attempt) {
        Corners at = GrownShells.of(xyz, corners, shell, attempt);
        int[] all = facets(body, turn, 1);
        try {
            for (int k = 2; k <= count; k++) {
                int[] next = facets(body, turn, k);
                int[] part = new int[(all.length + next.length) / 3];
                Arrays.fill(part, all.length / 3, part.length, 1);
                all = next.length == 0 ? all : left(at, joined(all, next), part);
            }
        } catch (UnclearException unclear) {
            return Optional.empty();
        }
        int[] free = facets(body, turn, 0);
        int[] both = joined(all, free);
        double[] place = Arrays.copyOf(at.place, 3 * at.count());
        if (both.length == 0
                || LineCheck.difference(new TriangleMesh(xyz, corners), new TriangleMesh(place, both)) > SAME) {
            return Optional.empty();
        }
        int bodies = 0;
        for (int b = 0; b < count; b++) {
            bodies += body[b] == b && turn[b] > 0 ? 1 : 0;
        }
        return Optional.of(new United(place, both, bodies));
    }

    /**
     * Corners of the facets that are left of a surface; new ones are added to the corners.
     *
     * @param part for each facet one of the parts that do not run through themselves; empty where any facet may cross any
     */
    private static int[] left(Corners at, int[] corners, int[] part) {
        FacetEdges edges = new FacetEdges(corners, at.count());
        Crossings crossings = new Crossings(at, edges, part);
        crossings.addCorners();
        return new CutFacets(at, edges, crossings, Windings.of(at, edges, crossings)).left();
    }

    private static int[] joined(int[] one, int[] other) {
        int[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    private int[] facets(int[] body, int[] turn, int which) {
        int[] found = new int[corners.length];
        int used = 0;
        for (int f = 0; f < shell.length; f++) {
            if (turn[body[shell[f]]] == which) {
                System.arraycopy(corners, 3 * f, found, used, 3);
                used += 3;
            }
        }
        return Arrays.copyOf(found, used);
    }
}
