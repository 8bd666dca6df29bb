package org.fizzhull.mesh.repair;

/**
 * Where a line parallel to z pierces a facet. Which side of an edge the line passes is computed from the edge's lower
 * vertex to its upper one, whichever facet asks: so neighbours never disagree, and a line through a closed surface meets
 * it an even number of times even where it touches an edge.
 */
final class VerticalRay {
    private VerticalRay() {}

    /** +1 where the line enters the body going up, -1 where it leaves, 0 where it misses the facet. */
    static int sign(double[] xyz, int a, int b, int c, double x, double y) {
        boolean ab = left(xyz, a, b, x, y);
        if (left(xyz, b, c, x, y) != ab || left(xyz, c, a, x, y) != ab) {
            return 0;
        }
        return ab ? -1 : 1;
    }

    /** Height at which the line meets the plane of a facet it pierces, m. */
    static double height(double[] xyz, int a, int b, int c, double x, double y) {
        double wa = turn(xyz, b, c, x, y);
        double wb = turn(xyz, c, a, x, y);
        double wc = turn(xyz, a, b, x, y);
        double sum = wa + wb + wc;
        double za = xyz[3 * a + 2];
        return sum == 0 ? za : za + (wb * (xyz[3 * b + 2] - za) + wc * (xyz[3 * c + 2] - za)) / sum;
    }

    private static boolean left(double[] xyz, int from, int to, double x, double y) {
        return from < to ? turn(xyz, from, to, x, y) >= 0 : !(turn(xyz, to, from, x, y) >= 0);
    }

    private static double turn(double[] xyz, int from, int to, double x, double y) {
        double fx = xyz[3 * from];
        double fy = xyz[3 * from + 1];
        return (xyz[3 * to] - fx) * (y - fy) - (xyz[3 * to + 1] - fy) * (x - fx);
    }
}
