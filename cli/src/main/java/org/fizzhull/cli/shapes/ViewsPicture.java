package org.fizzhull.cli.shapes;

import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.picture.LoadMarks;
import org.fizzhull.cli.picture.ShadedView;
import org.fizzhull.cli.picture.Surface;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.MeshSection;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.kind.Geode;

/**
 * A shape in a shaded view and cut through its middle, the cuts at one scale: from the front, from the side and from
 * above where it is bounded by facets; else the one upright cut, which the others of a round body repeat.
 */
public final class ViewsPicture {
    private static final double WIDTH = 560;
    private static final double MIDDLE = 190;
    private static final double ROOM = 200;
    private static final double LEFT = 155;
    private static final double STEP = 260;
    private static final double ROW = 255;
    private static final double VIEW = 215;
    private static final String BODY = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1.5\"";
    private static final String CRYSTALS = "fill=\"#d5dde3\" stroke=\"#7a5a2f\" stroke-width=\"1\"";
    private static final String WORDS = "fill=\"#222\"";
    private static final String CENTRED = WORDS + " text-anchor=\"middle\"";
    private static final String SEEN = "from the front, right and above";
    private static final Vec3 X = new Vec3(1, 0, 0);
    private static final Vec3 Y = new Vec3(0, 1, 0);
    private static final Vec3 Z = Vec3.UP;

    private final Svg svg;
    private final double scale;

    private ViewsPicture(Svg svg, double scale) {
        this.svg = svg;
        this.scale = scale;
    }

    /** The SVG document. */
    public static String of(Shape shape) {
        String title = ShapeWords.piece(shape);
        title = Character.toUpperCase(title.charAt(0)) + title.substring(1);
        String size = ShapeWords.box(shape.extents());
        Optional<Hull> hull = shape.hull();
        boolean facets = hull.isPresent() && hull.get() instanceof PolyhedronHull;
        String seen = hull.isEmpty() ? "" : ", shaded " + SEEN + ", and cut through its middle";
        Svg svg = new Svg(WIDTH, facets ? 340 + ROW : 340, title, title + ", " + size + seen + ".");
        svg.rect(0, 0, WIDTH, facets ? 340 + ROW : 340, "fill=\"#fff\"");
        svg.text(24, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title);
        Extents e = shape.extents();
        double scale = ROOM / Math.max(e.length(), Math.max(e.width(), e.height()));
        ViewsPicture picture = new ViewsPicture(svg, scale);
        svg.text(24, 56, WORDS, hull.isEmpty() ? size : size + ", cut through its middle, to scale");
        if (hull.isEmpty()) {
            svg.text(24, MIDDLE, WORDS, "Only the volume of this shape is known: no drawing.");
            return svg.document();
        }
        Optional<TriangleMesh> surface = Surface.of(hull.get());
        surface.ifPresent(mesh -> {
            boolean exact = !(hull.get() instanceof PolyhedronHull body) || body.facets() == mesh.facetCount();
            ShadedView.draw(svg, mesh, exact, LEFT, MIDDLE, VIEW);
            svg.text(LEFT, 340 - 24, CENTRED, SEEN);
        });
        if (hull.get() instanceof PolyhedronHull body) {
            picture.cut(section(body, X, Z), "from the front", LEFT + STEP, MIDDLE);
            picture.cut(section(body, Y, Z), "from the side", LEFT, MIDDLE + ROW);
            picture.cut(section(body, X, Y), "from above", LEFT + STEP, MIDDLE + ROW);
        } else {
            double x = surface.isPresent() ? LEFT + STEP : WIDTH / 2;
            picture.cut(hull.get().section(Z), "upright", x, MIDDLE);
            if (shape.bare() instanceof Geode geode) {
                picture.crystals(geode, x, MIDDLE);
            }
        }
        double bar = scale * 0.010;
        svg.line(WIDTH - 24 - bar, 80, WIDTH - 24, 80, "stroke=\"#444\" stroke-width=\"1\"");
        svg.text(WIDTH - 24 - bar / 2, 74, CENTRED + " font-size=\"12\"", NumberText.millimetres(0.010));
        return svg.document();
    }

    private void crystals(Geode geode, double x, double y) {
        double[][] lining = LoadMarks.lining(geode);
        for (int i = 0; i < lining.length; i++) {
            lining[i] = new double[] {
                x + scale * lining[i][0],
                y - scale * (lining[i][1] - geode.extents().height() / 2)
            };
        }
        svg.outlines(new double[][][] {lining}, CRYSTALS);
    }

    private static List<double[][]> section(PolyhedronHull body, Vec3 right, Vec3 up) {
        return MeshSection.of(body.mesh(), body.centroid(), right, up);
    }

    private void cut(List<double[][]> outlines, String name, double x, double y) {
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
                    y - scale * (outline[k][1] - (low[1] + high[1]) / 2)
                };
            }
        }
        svg.outlines(placed, BODY);
        svg.text(x, y + 340 - 24 - MIDDLE, CENTRED, name);
    }
}
