package org.fizzhull.cli.picture;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.load.Loaded;

/** What a piece carries, drawn into its section: the layer on top as a band, a thing inside as a dashed ball of its volume. */
public final class LoadMarks {
    private static final String LAYER = "fill=\"#fdfcf8\" stroke=\"#7a5a2f\" stroke-width=\"1\"";
    private static final String CRYSTALS = "fill=\"#d5dde3\" stroke=\"#7a5a2f\" stroke-width=\"1\"";
    private static final String THING =
            "fill=\"#f6efe4\" stroke=\"#7a5a2f\" stroke-width=\"1.5\" stroke-dasharray=\"5 3\"";

    /** The layer covers what lies above this share of the height as listed, as in the forecast. */
    private static final double TOP = 0.97;

    /** Teeth of a lining, twice. */
    private static final int POINTS = 36;

    /** Thinnest band that is seen, pixels. */
    private static final double SEEN = 4;

    private final Vec3 up;
    private final Vec3 right;

    private LoadMarks(Vec3 up) {
        this.up = up;
        double side = Math.hypot(up.x(), up.y());
        // the plane of Hull.section: that in which the z axis leans
        right = side > 1e-9 ? Vec3.UP.minus(up.times(up.z())).times(1 / side) : new Vec3(up.z() > 0 ? 1 : -1, 0, 0);
    }

    /** Draws the load of a shape over its section with {@code up} upward, placed at x, its lowest point at y. */
    public static void draw(Svg svg, Shape shape, Hull hull, Vec3 up, Section section, double x, double y) {
        LoadMarks marks = new LoadMarks(up);
        if (shape.bare() instanceof Geode geode) {
            double[][] lining = lining(geode);
            for (int i = 0; i < lining.length; i++) {
                double[] at = lining[i];
                lining[i] =
                        section.point(marks.lean() * at[0] + at[1] * marks.right.z(), marks.height(at[0], at[1]), x, y);
            }
            svg.outlines(new double[][][] {lining}, CRYSTALS);
        }
        if (!(shape instanceof Loaded loaded)) {
            return;
        }
        for (Loaded.Held held : loaded.held()) {
            double[] at =
                    section.point(held.centre().dot(marks.right), held.centre().dot(up), x, y);
            double radius = Math.cbrt(3 * held.thing().volume() / (4 * Math.PI));
            svg.circle(at[0], at[1], section.pixels(radius), THING);
        }
        if (!loaded.toppings().isEmpty()) {
            double thickness = Math.max(loaded.toppingHeight(), SEEN / section.pixels(1));
            double least = TOP * hull.reach(0, 0, 1);
            for (double[][] outline : hull.section(up)) {
                marks.band(svg, outline, least, thickness, section, x, y);
            }
        }
    }

    /**
     * The crystals of a geode in its upright section, as a jagged layer of their volume on the hollow: points across and
     * up, m.
     */
    public static double[][] lining(Geode geode) {
        double outer = geode.diameter() / 2;
        double hollow = outer - geode.wall();
        double free = Math.cbrt(Math.max(0, hollow * hollow * hollow - 3 * geode.insetVolume() / (2 * Math.PI)));
        double thickness = hollow - free;
        double[][] points = new double[2 * POINTS + 2][];
        for (int i = 0; i <= POINTS; i++) {
            double angle = Math.PI * i / POINTS;
            double inner = hollow - (i % 2 == 0 ? 0.5 : 1.5) * thickness;
            points[i] = new double[] {hollow * Math.cos(angle), outer - hollow * Math.sin(angle)};
            points[points.length - 1 - i] =
                    new double[] {inner * Math.cos(angle), outer - Math.max(0, inner) * Math.sin(angle)};
        }
        return points;
    }

    /** How far the horizontal of the body lies along that of the section: its cosine, with its sign. */
    private double lean() {
        return Math.hypot(up.x(), up.y()) > 1e-9 ? -up.z() : Math.signum(right.x());
    }

    /** Height in the section of a point across and up of the upright one, m. */
    private double height(double across, double high) {
        return Math.hypot(up.x(), up.y()) * across + high * up.z();
    }

    /** Every run of an outline that lies high enough, and the same lifted by the thickness. */
    private void band(
            Svg svg, double[][] outline, double least, double thickness, Section section, double x, double y) {
        int n = outline.length;
        int start = 0;
        while (start < n && height(outline[start]) >= least) {
            start++;
        }
        if (start == n) {
            return;
        }
        List<double[]> run = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            double[] before = outline[(start + i - 1) % n];
            double[] here = outline[(start + i) % n];
            boolean was = height(before) >= least;
            boolean is = height(here) >= least;
            if (was != is) {
                double t = (least - height(before)) / (height(here) - height(before));
                run.add(new double[] {before[0] + t * (here[0] - before[0]), before[1] + t * (here[1] - before[1])});
            }
            if (is) {
                run.add(here);
            } else if (was) {
                lift(svg, run, thickness, section, x, y);
                run.clear();
            }
        }
    }

    private void lift(Svg svg, List<double[]> run, double thickness, Section section, double x, double y) {
        double[][] band = new double[2 * run.size()][];
        for (int i = 0; i < run.size(); i++) {
            double[] at = run.get(i);
            band[i] = section.point(at[0], at[1], x, y);
            band[band.length - 1 - i] = section.point(at[0] + thickness * right.z(), at[1] + thickness * up.z(), x, y);
        }
        svg.outlines(new double[][][] {band}, LAYER);
    }

    /** Height as listed of a point of the section, m. */
    private double height(double[] point) {
        return point[0] * right.z() + point[1] * up.z();
    }
}
