package org.fizzhull.cli.floating;

import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.picture.ChanceCurve;
import org.fizzhull.cli.picture.HundredPieces;
import org.fizzhull.cli.picture.LoadMarks;
import org.fizzhull.cli.picture.Section;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.forecast.FloatVerdict;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.attitude.LiesWords;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * The water-line drawing: the piece cut through its middle in its likeliest attitude, to scale, with the water line and
 * the depths under and above it; beside it the chance as a hundred dots, below it the chance against the weight.
 */
public final class WaterlinePicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 440;
    private static final double TUB_LEFT = 24;
    private static final double TUB_RIGHT = 470;
    private static final double TUB_BOTTOM = 400;
    private static final double WATER_TOP = 190;
    private static final double PIECE_SIZE = 170;

    private static final String WATER = "fill=\"#d9ecf2\"";
    private static final String PIECE = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1.5\"";
    private static final String MAYBE =
            "fill=\"#f5e9d6\" stroke=\"#7a5a2f\" stroke-width=\"1.5\" stroke-dasharray=\"5 3\"";
    private static final String LINE = "stroke=\"#2a6f86\" stroke-width=\"2\"";
    private static final String THIN = "stroke=\"#444\" stroke-width=\"1\"";
    private static final String WORDS = "fill=\"#222\"";
    private static final String BESIDE = WORDS + " text-anchor=\"end\"";

    private static final double LINE_BELOW = 18;

    /** Half of the way between the two places where an undecided piece is drawn, pixels. */
    private static final double APART = 105;

    /** Room between the water line and words beside it. */
    private static final double CLEAR = 11;

    private final Forecast forecast;
    private final Svg svg;
    private final double height;
    private final boolean curve;

    private WaterlinePicture(Forecast forecast) {
        this.forecast = forecast;
        height = ShapeWords.load(forecast.question().shape()).isEmpty() ? HEIGHT : HEIGHT + LINE_BELOW;
        curve = ChanceCurve.isOf(forecast);
        svg = new Svg(WIDTH, height + (curve ? ChanceCurve.HEIGHT : 0), title(forecast), FloatText.sentence(forecast));
    }

    /** The SVG document. */
    public static String of(Forecast forecast) {
        return new WaterlinePicture(forecast).draw();
    }

    private static String title(Forecast forecast) {
        return NumberText.grams(forecast.piece().mass(), forecast.piece().mass()) + " in "
                + ShapeWords.piece(forecast.question().shape().bare());
    }

    private String draw() {
        svg.rect(0, 0, WIDTH, height + (curve ? ChanceCurve.HEIGHT : 0), "fill=\"#fff\"");
        svg.text(TUB_LEFT, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title(forecast));
        svg.text(TUB_LEFT, 56, WORDS, subtitle());
        svg.text(TUB_LEFT, 76, WORDS, ShapeWords.load(forecast.question().shape()));
        Optional<FloatingAttitude> rest = forecast.attitudes().stream().findFirst();
        Optional<Hull> hull = forecast.question().shape().hull();
        if (hull.isEmpty()) {
            svg.rect(TUB_LEFT, WATER_TOP, TUB_RIGHT - TUB_LEFT, TUB_BOTTOM - WATER_TOP, WATER);
            svg.text(TUB_LEFT + 16, WATER_TOP + 40, WORDS, "Only the volume of this shape is known: no drawing.");
        } else if (rest.isPresent()) {
            afloat(hull.get(), rest.get());
        } else {
            sunk(hull.get());
        }
        svg.line(TUB_LEFT, WATER_TOP, TUB_RIGHT, WATER_TOP, LINE);
        forecast.probability().ifPresent(p -> HundredPieces.draw(svg, p, TUB_RIGHT + 50, 110));
        if (curve) {
            ChanceCurve.draw(svg, forecast, height);
        }
        return svg.document();
    }

    private String subtitle() {
        Forecast.GoverningLimit governing = forecast.limit();
        String limit = (governing.kind() == Forecast.GoverningLimit.Kind.BOAT ? "rim limit " : "float limit ")
                + NumberText.grams(governing.mass(), forecast.piece().mass()) + " in "
                + NumberText.celsius(forecast.question().bath().temperature()) + " water";
        if (forecast.verdict().answer() == FloatVerdict.Answer.CANNOT_TELL) {
            return "Floats to the end: cannot tell yet; " + limit;
        }
        return forecast.likelihoodToTheEnd()
                .map(word -> "Floats to the end: " + word.words() + "; " + limit)
                .orElse(limit);
    }

    private void afloat(Hull hull, FloatingAttitude rest) {
        Shape shape = forecast.question().shape();
        Vec3 up = rest.up();
        Section section = Section.of(hull, up, PIECE_SIZE);
        boolean dry = rest.cavity() == FloatingAttitude.Cavity.DRY;
        double bottom = WATER_TOP + section.pixels(rest.draft());
        double middle = (TUB_LEFT + TUB_RIGHT) / 2;
        svg.rect(TUB_LEFT, WATER_TOP, TUB_RIGHT - TUB_LEFT, TUB_BOTTOM - WATER_TOP, WATER);
        if (dry) {
            Hull closed = shape.hollow().orElseThrow().closed();
            svg.outlines(section.sibling(closed, up).placed(middle, bottom), "fill=\"#fff\"");
        }
        svg.outlines(section.placed(middle, bottom), PIECE);
        LoadMarks.draw(svg, shape, hull, up, section, middle, bottom);
        double left = middle - section.width() / 2 - 24;
        double top = WATER_TOP - section.pixels(rest.freeboard());
        span(left, WATER_TOP, bottom);
        span(left, top, WATER_TOP);
        double under = Math.max((WATER_TOP + bottom) / 2, WATER_TOP + CLEAR) + 5;
        double above = Math.min((WATER_TOP + top) / 2, WATER_TOP - CLEAR) + 5;
        svg.text(left - 9, under, BESIDE, NumberText.millimetres(rest.draft()) + " under");
        svg.text(left - 9, above, BESIDE, NumberText.millimetres(rest.freeboard()) + (dry ? " to the rim" : " above"));
        svg.text(
                middle,
                TUB_BOTTOM + 22,
                WORDS + " text-anchor=\"middle\"",
                LiesWords.way(shape, rest) + (dry ? ", the hollow dry" : "") + ", to scale");
        svg.text(
                middle,
                TUB_BOTTOM + 22 + LINE_BELOW,
                WORDS + " text-anchor=\"middle\"",
                LiesWords.topping(shape, rest));
        scaleBar(section);
    }

    private void sunk(Hull hull) {
        Section section = Section.of(hull, Vec3.UP, PIECE_SIZE);
        svg.rect(TUB_LEFT, WATER_TOP, TUB_RIGHT - TUB_LEFT, TUB_BOTTOM - WATER_TOP, WATER);
        double middle = (TUB_LEFT + TUB_RIGHT) / 2;
        double floor = TUB_BOTTOM - 4;
        double awash = WATER_TOP + section.height();
        switch (forecast.verdict().answer()) {
            case FLOATS -> lying(hull, section, middle, awash);
            case SINKS -> lying(hull, section, middle, floor);
            case EITHER, CANNOT_TELL -> {
                maybe(section, middle - APART, floor, "down");
                maybe(section, middle + APART, awash, "or up");
            }
        }
        svg.line(TUB_LEFT, TUB_BOTTOM - 3, TUB_RIGHT, TUB_BOTTOM - 3, THIN);
        svg.text(middle, TUB_BOTTOM + 22, WORDS + " text-anchor=\"middle\"", AttitudeText.none(forecast));
        scaleBar(section);
    }

    private void lying(Hull hull, Section section, double x, double lowest) {
        svg.outlines(section.placed(x, lowest), PIECE);
        LoadMarks.draw(svg, forecast.question().shape(), hull, Vec3.UP, section, x, lowest);
    }

    /** Where it may be: dashed, so that it is not taken for what will happen. */
    private void maybe(Section section, double x, double lowest, String words) {
        svg.outlines(section.placed(x, lowest), MAYBE);
        svg.text(x, lowest - section.height() / 2 + 5, WORDS + " text-anchor=\"middle\"", words);
    }

    private void span(double x, double from, double to) {
        svg.line(x, from, x, to, THIN);
        for (double end : List.of(from, to)) {
            svg.line(x - 5, end, x + 5, end, THIN);
        }
    }

    private void scaleBar(Section section) {
        double y = TUB_BOTTOM - 14;
        double length = section.pixels(0.010);
        svg.line(TUB_RIGHT - 16 - length, y, TUB_RIGHT - 16, y, THIN + " stroke-linecap=\"square\"");
        svg.text(TUB_RIGHT - 16 - length / 2, y - 6, WORDS + " font-size=\"12\" text-anchor=\"middle\"", "10 mm");
    }
}
