package org.fizzhull.mesh.repair;

import org.fizzhull.mesh.uniting.FacetEdges;

/** Places and amounts in words, for notices and refusals. */
public final class PlaceWords {
    private PlaceWords() {}

    /**
     * {@return a place in the axes of the file, in millimetres to a micrometre}
     *
     * @param x first coordinate, m
     * @param y second coordinate, m
     * @param z third coordinate, m
     */
    public static String point(double x, double y, double z) {
        return "(" + millimetres(x) + ", " + millimetres(y) + ", " + millimetres(z) + ") mm";
    }

    /**
     * {@return a vertex}
     *
     * @param xyz coordinates of the vertices, m, three each
     * @param v number of the vertex
     */
    public static String vertex(double[] xyz, int v) {
        return point(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    /**
     * {@return an edge, given as three times the facet plus the corner}
     *
     * @param xyz coordinates of the vertices, m, three each
     * @param corners vertices of the facets, three each
     * @param h number of the half edge
     */
    public static String edge(double[] xyz, int[] corners, int h) {
        return "from " + vertex(xyz, corners[h]) + " to " + vertex(xyz, corners[FacetEdges.next(h)]);
    }

    /**
     * {@return a length in mm, to a micrometre}
     *
     * @param metres length, m
     */
    public static String millimetres(double metres) {
        return plain(metres * 1e3);
    }

    /**
     * {@return a length in micrometres}
     *
     * @param metres length, m
     */
    public static String micrometres(double metres) {
        return plain(metres * 1e6);
    }

    /**
     * {@return an area in mm2}
     *
     * @param squareMetres area, m2
     */
    public static String squareMillimetres(double squareMetres) {
        return plain(squareMetres * 1e6);
    }

    /**
     * {@return a volume in cm3, to four figures or so}
     *
     * @param cubicMetres volume, m3
     */
    public static String cubicCentimetres(double cubicMetres) {
        return plain(cubicMetres * 1e6);
    }

    private static String plain(double value) {
        double rounded = Math.rint(value * 1e3) / 1e3;
        String text = Double.toString(rounded + 0.0);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
