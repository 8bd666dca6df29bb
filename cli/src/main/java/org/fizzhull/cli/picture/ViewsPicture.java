package org.fizzhull.cli.picture;

import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.text.Say;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.mesh.MeshSection;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Extents;
import org.fizzhull.shape.Hull;
import org.fizzhull.shape.PolyhedronHull;
import org.fizzhull.shape.Shape;

/**
 * A shape cut through its middle, at one scale: from the front, from the side and from above where it is bounded by
 * facets; else the one upright cut, which the others of a round body repeat.
 */
public final class ViewsPicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 340;
    private static final double MIDDLE = 190;
    private static final double ROOM = 200;
    private static final double STEP = 245;
    private static final String BODY = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1.5\"";
    private static final String WORDS = "fill=\"#222\"";
    private static final String CENTRED = WORDS + " text-anchor=\"middle\"";
    private static final Vec3 X = new Vec3(1, 0, 0);
    private static final Vec3 Y = new Vec3(0, 1, 0);
    private static final Vec3 Z = Vec3.UP;

    private ViewsPicture() {}

    /** The SVG document. */
    public static String of(Shape shape) {
        String title = ShapeWords.piece(shape);
        title = Character.toUpperCase(title.charAt(0)) + title.substring(1);
        String size = ShapeWords.box(shape.extents());
        Svg svg = new Svg(WIDTH, HEIGHT, title, title + ", " + size + ", cut through its middle.");
        svg.rect(0, 0, WIDTH, HEIGHT, "fill=\"#fff\"");
        svg.text(24, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title);
        svg.text(24, 56, WORDS, size + ", cut through its middle, to scale");
        Extents e = shape.extents();
        double scale = ROOM / Math.max(e.length(), Math.max(e.width(), e.height()));
        Optional<Hull> hull = shape.hull();
        if (hull.isEmpty()) {
            svg.text(24, MIDDLE, WORDS, "Only the volume of this shape is known: no drawing.");
        } else if (hull.get() instanceof PolyhedronHull body) {
            String[] names = {"from the front", "from the side", "from above"};
            Vec3[][] axes = {{X, Z}, {Y, Z}, {X, Y}};
            for (int i = 0; i < 3; i++) {
                cut(
                        svg,
                        MeshSection.of(body.mesh(), body.centroid(), axes[i][0], axes[i][1]),
                        names[i],
                        scale,
                        135 + STEP * i);
            }
        } else {
            cut(svg, hull.get().section(Z), "upright", scale, WIDTH / 2);
        }
        double bar = scale * 0.010;
        svg.line(WIDTH - 24 - bar, 40, WIDTH - 24, 40, "stroke=\"#444\" stroke-width=\"1\"");
        svg.text(WIDTH - 24 - bar / 2, 34, CENTRED + " font-size=\"12\"", Say.millimetres(0.010));
        return svg.document();
    }

    private static void cut(Svg svg, List<double[][]> outlines, String name, double scale, double x) {
        double[] low = {Double.MAX_VALUE, Double.MAX_VALUE};
        double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double[][] outline : outlines) {
            for (double[] point : outline) {
                for (int k = 0; k < 2; k++) {
                    low[k] = Math.min(low[k], point[k]);
                    high[k] = Math.max(high[k], point[k]);
                }
            }
        }
        double[][][] placed = new double[outlines.size()][][];
        for (int i = 0; i < placed.length; i++) {
            double[][] outline = outlines.get(i);
            placed[i] = new double[outline.length][];
            for (int k = 0; k < outline.length; k++) {
                placed[i][k] = new double[] {
                    x + scale * (outline[k][0] - (low[0] + high[0]) / 2),
                    MIDDLE - scale * (outline[k][1] - (low[1] + high[1]) / 2)
                };
            }
        }
        svg.outlines(placed, BODY);
        svg.text(x, HEIGHT - 24, CENTRED, name);
    }
}
