package org.fizzhull.mesh.repair;

/** Places and amounts in words, for notices and refusals. */
public final class Where {
    private Where() {}

    /** A place in the axes of the file, in millimetres to a micrometre. */
    public static String point(double x, double y, double z) {
        return "(" + millimetres(x) + ", " + millimetres(y) + ", " + millimetres(z) + ") mm";
    }

    /** A vertex. */
    public static String vertex(double[] xyz, int v) {
        return point(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    /** An edge, given as three times the facet plus the corner. */
    public static String edge(double[] xyz, int[] corners, int h) {
        return "from " + vertex(xyz, corners[h]) + " to " + vertex(xyz, corners[EdgePairing.next(h)]);
    }

    /** A length in mm, to a micrometre. */
    public static String millimetres(double metres) {
        return plain(metres * 1e3);
    }

    /** A length in micrometres. */
    public static String micrometres(double metres) {
        return plain(metres * 1e6);
    }

    /** An area in mm2. */
    public static String squareMillimetres(double squareMetres) {
        return plain(squareMetres * 1e6);
    }

    /** A volume in cm3, to four figures or so. */
    public static String cubicCentimetres(double cubicMetres) {
        return plain(cubicMetres * 1e6);
    }

    private static String plain(double value) {
        double rounded = Math.rint(value * 1e3) / 1e3;
        String text = Double.toString(rounded + 0.0);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
