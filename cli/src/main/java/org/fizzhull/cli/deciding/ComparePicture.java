package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.LoadMarks;
import org.fizzhull.cli.picture.Section;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Interval;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Decimals;

/**
 * A comparison, a line for each row: the piece cut through its middle, all to one scale; a hundred cases as dots, the ones
 * that float to the end filled; and the 95 % interval of how much heavier it could be and still float.
 */
public final class ComparePicture {
    private static final double WIDTH = 880;
    private static final double TOP = 112;
    private static final double LINE = 66;
    private static final double UNDER = 62;
    private static final double LEFT = 24;
    private static final double PIECE_AT = 350;
    private static final double PIECE_HEIGHT = 52;
    private static final double PIECE_WIDTH = 84;
    private static final double DOTS_AT = 416;
    private static final double DOT_STEP = 5.4;
    private static final double DOT_RADIUS = 2.1;
    private static final double AXIS_LEFT = 504;
    private static final double AXIS_RIGHT = 844;

    private static final String WORDS = "fill=\"#222\"";
    private static final String SMALL = "fill=\"#555\" font-size=\"12\"";
    private static final String PIECE = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1.2\"";
    private static final String FLOATS = "fill=\"#2a6f86\" stroke=\"#2a6f86\" stroke-width=\"0.6\"";
    private static final String SINKS = "fill=\"#fff\" stroke=\"#9a9a9a\" stroke-width=\"0.6\"";
    private static final String RULE = "stroke=\"#e3e3e3\"";
    private static final String ZERO = "stroke=\"#a4482b\" stroke-width=\"1.5\"";
    private static final String BAR = "stroke=\"#2a6f86\" stroke-width=\"3\"";

    /** Wider intervals are cut off here, with an arrow: a boat carries half its weight again. */
    private static final double WIDEST = 60;

    /** More rows are too small to read on a sheet, and their figures would fill twenty. */
    static final int ON_PAGE = 12;

    private final Comparison comparison;
    private final List<ComparedPiece> rows;
    private final Axis axis;
    private final double scale;
    private final double height;
    private final Svg svg;

    private ComparePicture(Comparison comparison, int most) {
        this.comparison = comparison;
        rows = comparison.rows().subList(0, Math.min(most, comparison.rows().size()));
        axis = axis(rows);
        scale = scale(rows);
        height = TOP + LINE * rows.size() + UNDER;
        svg = new Svg(WIDTH, height, "Which to take", CompareText.sentence(comparison));
    }

    /** The SVG document, a line for each row. */
    public static String of(Comparison comparison) {
        return new ComparePicture(comparison, Integer.MAX_VALUE).draw();
    }

    /** The same for a page, whose table has all rows: the best of them. */
    static String onPage(Comparison comparison) {
        return new ComparePicture(comparison, ON_PAGE).draw();
    }

    private String first() {
        int all = comparison.rows().size();
        return rows.size() < all ? "mould, the best " + rows.size() + " of " + all : "mould, best first";
    }

    private static Axis axis(List<ComparedPiece> rows) {
        double low = -5;
        double high = 5;
        for (ComparedPiece row : rows) {
            low = Math.min(low, 100 * row.bathed().headroom().low());
            high = Math.max(high, 100 * row.bathed().headroom().high());
        }
        return Axis.of(Math.max(-WIDEST, low), Math.min(WIDEST, high), AXIS_LEFT, AXIS_RIGHT, 6);
    }

    /** Pixels a metre, so that the largest fits. */
    private static double scale(List<ComparedPiece> rows) {
        double scale = Double.POSITIVE_INFINITY;
        for (ComparedPiece row : rows) {
            scale = Math.min(scale, PIECE_WIDTH / row.shape().extents().length());
            scale = Math.min(scale, PIECE_HEIGHT / row.shape().extents().height());
        }
        return scale;
    }

    private String draw() {
        svg.rect(0, 0, WIDTH, height, "fill=\"#fff\"");
        svg.text(LEFT, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title());
        svg.text(LEFT, TOP - 40, SMALL, first());
        svg.text(PIECE_AT, TOP - 40, SMALL + " text-anchor=\"middle\"", "to scale");
        svg.text(DOTS_AT, TOP - 40, SMALL, "in 100 cases");
        svg.text(AXIS_LEFT, TOP - 40, SMALL, "how much heavier it could be and still float to the end, %");
        double bottom = TOP + LINE * rows.size();
        for (double tick : axis.ticks()) {
            svg.line(axis.at(tick), TOP - 12, axis.at(tick), bottom, RULE);
            svg.text(axis.at(tick), TOP - 18, SMALL + " text-anchor=\"middle\"", Decimals.text(tick, 4));
        }
        svg.line(axis.at(0), TOP - 12, axis.at(0), bottom, ZERO);
        for (int i = 0; i < rows.size(); i++) {
            row(rows.get(i), TOP + LINE * i);
        }
        svg.text(
                LEFT,
                bottom + 24,
                SMALL,
                "Filled dots: cases in which it floats to the end. Bar: 95 of 100 cases lie in it, the dot is the middle one.");
        svg.text(LEFT, bottom + 44, SMALL, "Left of the red line it is too heavy.");
        scaleBar(bottom + 40);
        return svg.document();
    }

    private String title() {
        Optional<ComparedPiece> best = comparison.best();
        return switch (comparison.verdict()) {
            case BEST, ONE_ROW ->
                best.isPresent() ? "Take the " + CompareWords.name(comparison, best.get()) : "One to look at";
            case TOO_CLOSE -> "Too close to call";
            case NONE_DRIES -> "None is dry within 60 days";
            case NONE_FLOATS ->
                CompareSentence.none(CompareSentence.surest(comparison.rows()).floats());
        };
    }

    private void row(ComparedPiece row, double top) {
        double middle = top + LINE / 2;
        svg.line(LEFT, top + LINE, AXIS_RIGHT, top + LINE, RULE);
        svg.text(LEFT, middle - 4, WORDS, CompareWords.mould(row));
        List<String> facts = new ArrayList<>();
        facts.add(NumberText.grams(row.made().mass().median()));
        if (CompareWords.severalRecipes(comparison)) {
            facts.add(CompareWords.recipe(row));
        }
        facts.addAll(CompareWords.special(row));
        svg.text(LEFT, middle + 13, SMALL, String.join(", ", facts));
        piece(row, middle);
        dots(row, middle);
        interval(row.bathed().headroom(), middle);
    }

    private void piece(ComparedPiece row, double middle) {
        Optional<Hull> hull = row.shape().hull();
        if (hull.isEmpty()) {
            svg.text(PIECE_AT, middle + 4, SMALL + " text-anchor=\"middle\"", "not drawn");
            return;
        }
        Section section = Section.scaled(hull.get(), Vec3.UP, scale);
        double half = section.pixels(row.shape().extents().height()) / 2;
        svg.outlines(section.placed(PIECE_AT, middle + half), PIECE);
        LoadMarks.draw(svg, row.shape(), hull.get(), Vec3.UP, section, PIECE_AT, middle + half);
    }

    private void dots(ComparedPiece row, double middle) {
        long filled = Math.round(100 * row.floats());
        for (int i = 0; i < 100; i++) {
            double x = DOTS_AT + DOT_STEP * (i % 10);
            int line = i / 10;
            double y = middle + DOT_STEP * (line - 4.5);
            svg.circle(x, y, DOT_RADIUS, i < filled ? FLOATS : SINKS);
        }
    }

    private void interval(Interval headroom, double middle) {
        double low = Math.max(axis.low(), 100 * headroom.low());
        double high = Math.min(axis.high(), 100 * headroom.high());
        double at = Math.max(axis.low(), Math.min(axis.high(), 100 * headroom.median()));
        svg.line(axis.at(low), middle, axis.at(high), middle, BAR);
        if (100 * headroom.high() > axis.high()) {
            arrow(axis.at(high), middle, 1);
        }
        if (100 * headroom.low() < axis.low()) {
            arrow(axis.at(low), middle, -1);
        }
        svg.circle(axis.at(at), middle, 5.5, "fill=\"#2a6f86\" stroke=\"#fff\" stroke-width=\"1.5\"");
    }

    /** Goes on beyond the axis. */
    private void arrow(double x, double y, double way) {
        double[][] tip = {{x, y - 6}, {x + 9 * way, y}, {x, y + 6}};
        svg.outlines(new double[][][] {tip}, "fill=\"#2a6f86\"");
    }

    private void scaleBar(double y) {
        double length = scale * 0.050;
        svg.line(PIECE_AT - length / 2, y, PIECE_AT + length / 2, y, "stroke=\"#444\"");
        svg.text(PIECE_AT + length / 2 + 8, y + 4, SMALL, "50 mm");
    }
}
