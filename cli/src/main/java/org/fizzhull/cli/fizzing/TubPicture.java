package org.fizzhull.cli.fizzing;

import java.util.Optional;
import org.fizzhull.cli.picture.Axes;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.Section;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.result.Voyage;

/**
 * The voyage in the tub by the central values: water and bottom to scale, the path of the piece's centre against time,
 * and the piece itself at moments along it, shrinking, at the scale of the height.
 */
final class TubPicture {
    private static final double MINUTE = 60;
    private static final double CENTIMETRES = 100;

    /** From one drawn piece to the next, in widths of the whole piece, and in pixels at least. */
    private static final double APART = 1.6;

    private static final double LEAST_APART = 40;

    /** The piece is never drawn smaller than so many pixels across while it is there. */
    private static final double LEAST_SIZE = 2;

    private static final String WATER = "fill=\"#e3f1f6\"";
    private static final String FLOOR = "fill=\"#cfcfcf\"";
    private static final String SURFACE = "stroke=\"#2a6f86\" stroke-width=\"2\"";
    private static final String PATH = "fill=\"none\" stroke=\"#b08d57\" stroke-width=\"1.5\"";
    private static final String PIECE = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1\"";

    private final Svg svg;
    private final Voyage.Series series;
    private final Axes axes;
    private final double pixels;

    private TubPicture(Svg svg, Voyage.Series series, Axes axes, double pixels) {
        this.svg = svg;
        this.series = series;
        this.axes = axes;
        this.pixels = pixels;
    }

    /** Draws it between two pixels of height, below a line that tells the way. */
    static void draw(Svg svg, FizzForecast forecast, Axis time, double bottom, double top) {
        Voyage.Series series = forecast.voyage().series();
        double depth = forecast.question().bath().depth() * CENTIMETRES;
        double above = 0;
        for (int i = 0; i < series.rows(); i++) {
            above = Math.max(above, CENTIMETRES * (series.size()[i] / 2 - series.centreDepth()[i]));
        }
        Axis height = Axis.of(-depth - 0.5, above, bottom, top, 5);
        double pixels = (height.at(0) - height.at(1)) * CENTIMETRES;
        TubPicture tub = new TubPicture(svg, series, new Axes(time, height), pixels);
        svg.rect(time.from(), height.at(0), time.to() - time.from(), height.at(-depth) - height.at(0), WATER);
        svg.rect(time.from(), height.at(-depth), time.to() - time.from(), bottom - height.at(-depth), FLOOR);
        tub.axes.draw(
                svg,
                "minutes in the bath; depth under the water line in cm, the piece at the same scale",
                "in the middle case it " + VoyageText.of(forecast.voyage()),
                tick -> tick > 0 ? "" : Decimals.text(Math.abs(tick), 5));
        svg.line(time.from(), height.at(0), time.to(), height.at(0), SURFACE);
        tub.path();
        tub.pieces(forecast.question().shape());
    }

    private void path() {
        double[][] path = new double[series.rows()][];
        for (int i = 0; i < path.length; i++) {
            path[i] = new double[] {x(i), y(i)};
        }
        svg.polyline(path, PATH);
    }

    private void pieces(Shape shape) {
        double whole = series.size()[0];
        Extents box = shape.extents();
        double across = pixels * Math.max(box.length(), Math.max(box.width(), box.height()));
        double apart = Math.max(LEAST_APART, APART * across);
        double last = Double.NEGATIVE_INFINITY;
        Vec3 up = shape.restingAttitude().nearest();
        Optional<Section> section = shape.hull().map(hull -> Section.scaled(hull, up, pixels));
        for (int i = 0; i < series.rows(); i++) {
            double size = series.size()[i] / whole;
            if (x(i) - last >= apart && x(i) >= axes.x().from() + across / 2 && size * across >= LEAST_SIZE) {
                last = x(i);
                double lowest = y(i) + pixels * series.size()[i] / 2;
                if (section.isPresent()) {
                    svg.outlines(section.get().placed(x(i), lowest, size), PIECE);
                } else {
                    svg.circle(x(i), y(i), pixels * series.size()[i] / 2, PIECE);
                }
            }
        }
    }

    private double x(int i) {
        return axes.x().at(Math.min(series.time()[i] / MINUTE, axes.x().high()));
    }

    private double y(int i) {
        return axes.y().at(-CENTIMETRES * series.centreDepth()[i]);
    }
}
