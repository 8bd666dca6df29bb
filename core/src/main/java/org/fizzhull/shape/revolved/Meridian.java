package org.fizzhull.shape.revolved;

import java.util.List;

/**
 * The faces of a body of revolution as straight edges in the half plane of its axis (r to the right, z up), arcs as 64
 * chords: what depths are measured to. Edges have the material on their left: an outer side goes up, an inner one down,
 * a top runs inward. The lowest point is at height 0.
 *
 * <p>Depth here is the distance from a point inside to the nearest open face. Error: that of the chords, a few 1e-4 of
 * the radius of an arc; none for straight sides. Cost of a depth: one pass over the edges. Immutable, safe for use by
 * several threads. Read by {@code MeridianDepth}, {@code MeridianPoisson} and {@code MeridianHollow}.
 */
public final class Meridian {
    /** Heights closer than this share of the body are the same. */
    private static final double SAME = 1e-9;

    /** Start r, start z, end r, end z of each edge, m. */
    private final double[] edge;

    /** For each edge, whether it is shut on a tray. */
    private final boolean[] resting;
    /** Largest radius, m. */
    private final double widest;
    /** Smallest radius, m. */
    private final double narrowest;
    /** Height of the highest point, m. */
    private final double height;

    /** The same edges with others shut. */
    private Meridian(Meridian of, boolean[] shut) {
        this.edge = of.edge;
        this.widest = of.widest;
        this.narrowest = of.narrowest;
        this.height = of.height;
        this.resting = shut;
    }

    /** Edges as start and end, m; those on the lowest level that look down are shut on a tray. */
    private Meridian(double[] edge, double widest, double narrowest, double height) {
        this.edge = edge;
        this.widest = widest;
        this.narrowest = narrowest;
        this.height = height;
        resting = new boolean[edge.length / 4];
        for (int i = 0; i < resting.length; i++) {
            resting[i] = z0(i) <= SAME * height && z1(i) <= SAME * height && r1(i) > r0(i);
        }
    }

    /**
     * {@return the faces of a profile, moved along the axis so that the lowest point is at height 0}
     *
     * @param profile the exact outline
     */
    public static Meridian of(Profile2D profile) {
        // the curved and sloping faces, then the level ones, which no piece of a profile names
        List<List<double[]>> parts = ProfileOutline.parts(profile);
        int edges = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double widest = 0;
        double narrowest = Double.POSITIVE_INFINITY;
        // the box, and the number of edges
        for (List<double[]> part : parts) {
            edges += part.size() - 1;
            for (double[] point : part) {
                low = Math.min(low, point[1]);
                high = Math.max(high, point[1]);
                widest = Math.max(widest, point[0]);
                narrowest = Math.min(narrowest, point[0]);
            }
        }
        // one edge after another, the lowest point moved to height 0
        double[] edge = new double[4 * edges];
        int at = 0;
        for (List<double[]> part : parts) {
            for (int i = 0; i + 1 < part.size(); i++) {
                edge[at++] = part.get(i)[0];
                edge[at++] = part.get(i)[1] - low;
                edge[at++] = part.get(i + 1)[0];
                edge[at++] = part.get(i + 1)[1] - low;
            }
        }
        return new Meridian(edge, widest, narrowest, high - low);
    }

    /** The same body on whose tray other faces are shut than those it rests on; one flag for each edge. */
    Meridian shutting(boolean[] shut) {
        return new Meridian(this, shut.clone());
    }

    /** {@return the number of edges} */
    public int count() {
        return resting.length;
    }

    /**
     * {@return the radius at the start of edge i, m}
     *
     * @param i index of the edge, 0 to {@link #count} - 1
     */
    public double r0(int i) {
        return edge[4 * i];
    }

    /**
     * {@return the height at the start of edge i, m}
     *
     * @param i index of the edge, 0 to {@link #count} - 1
     */
    public double z0(int i) {
        return edge[4 * i + 1];
    }

    /**
     * {@return the radius at the end of edge i, m}
     *
     * @param i index of the edge, 0 to {@link #count} - 1
     */
    public double r1(int i) {
        return edge[4 * i + 2];
    }

    /**
     * {@return the height at the end of edge i, m}
     *
     * @param i index of the edge, 0 to {@link #count} - 1
     */
    public double z1(int i) {
        return edge[4 * i + 3];
    }

    /**
     * Whether edge i is shut on a tray: a level face at the lowest height that faces down, or whatever {@link
     * #shutting} has set.
     */
    boolean resting(int i) {
        return resting[i];
    }

    /** Whether the body has a flat face to rest on. */
    boolean rests() {
        for (boolean flat : resting) {
            if (flat) {
                return true;
            }
        }
        return false;
    }

    /** The edges both of whose ends lie between two heights, m. */
    boolean[] between(double low, double high) {
        boolean[] found = new boolean[count()];
        for (int i = 0; i < found.length; i++) {
            found[i] = Math.min(z0(i), z1(i)) >= low && Math.max(z0(i), z1(i)) <= high;
        }
        return found;
    }

    /** Area of the faces, m2: the edges swept about the axis; on a tray without the shut ones. */
    double area(boolean tray) {
        double sum = 0;
        for (int i = 0; i < count(); i++) {
            if (!(tray && resting[i])) {
                sum += Math.PI * (r0(i) + r1(i)) * Math.hypot(r1(i) - r0(i), z1(i) - z0(i));
            }
        }
        return sum;
    }

    /** Largest radius, m. */
    double widest() {
        return widest;
    }

    /** Smallest radius, m: above 0 for a ring. */
    double narrowest() {
        return narrowest;
    }

    /** Height of the highest point, m; the lowest is at 0. */
    double height() {
        return height;
    }

    /**
     * Distance of a point (r, z), m, to the nearest face, m, negative outside the body; on a tray the shut faces do not
     * count as faces, only for what is inside. A point is inside where the number of edges further out at its height is
     * odd.
     */
    double depth(boolean tray, double r, double z) {
        double least = Double.POSITIVE_INFINITY;
        boolean in = false;
        // points of the lowest plane and of the axis are looked at from just inside
        // an edge is crossed where its ends lie on both sides of the height of the point
        double zs = Math.max(z, SAME * height);
        double rs = Math.max(r, SAME * height);
        for (int i = 0; i < resting.length; i++) {
            double ar = edge[4 * i];
            double az = edge[4 * i + 1];
            // from the start of the edge to its end
            double ur = edge[4 * i + 2] - ar;
            double uz = edge[4 * i + 3] - az;
            if ((az > zs) != (az + uz > zs) && rs < ar + (zs - az) / uz * ur) {
                in = !in;
            }
            if (tray && resting[i]) {
                continue;
            }
            // nearest point of the edge
            double length = ur * ur + uz * uz;
            double t = length > 0 ? ((r - ar) * ur + (z - az) * uz) / length : 0;
            t = Math.max(0, Math.min(1, t));
            double dr = r - ar - t * ur;
            double dz = z - az - t * uz;
            least = Math.min(least, dr * dr + dz * dz);
        }
        return in ? Math.sqrt(least) : -Math.sqrt(least);
    }

    /**
     * Largest depth, m: the best of a grid of about 4,000 points (finer where a thin body falls between them), and from
     * there by a pattern search over eight neighbours, halving the step, to about 1e-7 of itself. A second, deeper
     * place that no point of the grid comes near is missed.
     */
    double deepest(boolean tray) {
        double h = Math.sqrt(widest * height / 4000);
        double best = 0;
        double r = 0;
        double z = 0;
        for (int pass = 0; best == 0 && pass < 6; pass++, h /= 2) {
            for (double y = 0; y <= height; y += h) {
                for (double x = 0; x <= widest; x += h) {
                    double d = depth(tray, x, y);
                    if (d > best) {
                        best = d;
                        r = x;
                        z = y;
                    }
                }
            }
        }
        // thinner than a 32nd of the grid
        if (!(best > 0)) {
            throw new IllegalArgumentException("an outline too thin for its height and width");
        }
        for (double step = Math.min(h, best) / 2; step > 1e-7 * best; ) {
            double better = best;
            double toR = r;
            double toZ = z;
            for (int m = 0; m < 9; m++) {
                double x = Math.max(0, r + (m % 3 - 1) * step);
                double y = Math.max(0, z + (m / 3 - 1) * step);
                double d = depth(tray, x, y);
                if (d > better) {
                    better = d;
                    toR = x;
                    toZ = y;
                }
            }
            step = better > best ? step : step / 2;
            best = better;
            r = toR;
            z = toZ;
        }
        return best;
    }
}
