package org.fizzhull.cli.making;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.forecast.PressForecast.PieceOut;
import org.fizzhull.forecast.PressForecast.Point;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Decimals;

/**
 * Weight of a damp piece against the weight leant on the mould, F/g = p A/g in kg (p pressure at the top, A the face that is
 * pressed on, g gravity), with the band that 95 of 100 mixes keep to.
 */
public final class PressPicture {
    private static final double LEFT = 80;
    private static final double RIGHT = 640;
    private static final double TOP = 76;
    private static final double BOTTOM = 390;
    private static final String INK = "fill=\"#222\"";
    private static final String RULE = "stroke=\"#ddd\"";
    private static final String FRAME = "stroke=\"#555\"";
    private static final String BAND = "fill=\"#2a6f86\" fill-opacity=\"0.18\" stroke=\"none\"";
    private static final String CURVE = "fill=\"none\" stroke=\"#2a6f86\" stroke-width=\"2.5\"";
    private static final String MARK = "stroke=\"#a4482b\" stroke-width=\"2\"";
    private static final String DOT = "fill=\"#a4482b\" stroke=\"#fff\"";

    private PressPicture() {}

    /** The picture. */
    public static String of(PressForecast forecast) {
        List<Point> points = forecast.curve();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Point point : points) {
            least = Math.min(least, inGrams(point.low()));
            most = Math.max(most, inGrams(point.high()));
        }
        double face = forecast.shape().planArea();
        Axis x = Axis.of(0, leant(points.get(points.size() - 1).topPressure(), face), LEFT, RIGHT, 8);
        Axis y = Axis.of(least, most, BOTTOM, TOP, 6);
        String name = ShapeWords.piece(forecast.shape().bare());
        String title = forecast.blend().recipe().name() + " in " + name;
        Svg svg = new Svg(
                680,
                450,
                title,
                "Weight of the damp piece in grams against the kilograms leant on the mould, with its 95 % band.");
        svg.rect(0, 0, 680, 450, "fill=\"#fff\"");
        svg.text(LEFT, 30, INK + " font-size=\"18\" font-weight=\"bold\"", title);
        svg.text(LEFT, 52, "fill=\"#555\"", "weight of the damp piece; 95 of 100 cases lie in the band");
        axes(svg, x, y);
        band(svg, x, y, points, face);
        words(svg, x, face);
        Optional<PieceOut> piece = forecast.piece();
        piece.ifPresent(out -> mark(svg, x, y, out, face));
        return svg.document();
    }

    private static double leant(double pascal, double face) {
        return pascal * face / PhysicalConstants.GRAVITY;
    }

    private static void axes(Svg svg, Axis x, Axis y) {
        for (double tick : y.ticks()) {
            svg.line(LEFT, y.at(tick), RIGHT, y.at(tick), RULE);
            svg.text(LEFT - 8, y.at(tick) + 5, INK + " text-anchor=\"end\"", Decimals.text(tick, 6));
        }
        for (double tick : x.ticks()) {
            svg.line(x.at(tick), BOTTOM, x.at(tick), BOTTOM + 5, FRAME);
            svg.text(x.at(tick), BOTTOM + 21, INK + " text-anchor=\"middle\"", Decimals.text(tick, 6));
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, FRAME);
        svg.line(LEFT, TOP, LEFT, BOTTOM, FRAME);
        svg.text((LEFT + RIGHT) / 2, BOTTOM + 44, INK + " text-anchor=\"middle\"", "leaning on the mould, kg");
        svg.text(LEFT - 8, TOP - 10, INK + " text-anchor=\"end\"", "g");
    }

    private static void band(Svg svg, Axis x, Axis y, List<Point> points, double face) {
        int n = points.size();
        double[][] outline = new double[2 * n][];
        double[][] line = new double[n][];
        for (int i = 0; i < n; i++) {
            Point point = points.get(i);
            double at = x.at(leant(point.topPressure(), face));
            outline[i] = new double[] {at, y.at(inGrams(point.low()))};
            outline[2 * n - 1 - i] = new double[] {at, y.at(inGrams(point.high()))};
            line[i] = new double[] {at, y.at(inGrams(point.dampMass()))};
        }
        svg.outlines(new double[][][] {outline}, BAND);
        svg.polyline(line, CURVE);
    }

    /** Where light, firm and hard are. */
    private static void words(Svg svg, Axis x, double face) {
        String[] names = {"light", "firm", "hard"};
        PressWord[] words = PressWord.values();
        for (int i = 0; i < words.length; i++) {
            double at = x.at(leant(words[i].pressure(), face));
            svg.line(at, TOP, at, BOTTOM, "stroke=\"#999\" stroke-dasharray=\"3 4\"");
            svg.text(at + 4, BOTTOM - 8, "fill=\"#555\"", names[i]);
        }
    }

    private static void mark(Svg svg, Axis x, Axis y, PieceOut piece, double face) {
        double pressure = leant(piece.topPressure().median(), face);
        if (pressure > x.high()) {
            return;
        }
        double at = x.at(pressure);
        double mass = inGrams(piece.dampMass().median());
        svg.line(
                at,
                y.at(inGrams(piece.dampMass().low())),
                at,
                y.at(inGrams(piece.dampMass().high())),
                MARK);
        svg.circle(at, y.at(mass), 6, DOT);
        svg.text(at + 12, y.at(mass) + 18, "fill=\"#a4482b\"", PressText.weight(piece.dampMass()));
    }
}
