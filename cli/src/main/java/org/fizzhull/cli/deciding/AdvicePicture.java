package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.LoadMarks;
import org.fizzhull.cli.picture.Section;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;

/**
 * Advice, a line as it is and a line for each change: the piece cut through its middle, all to one scale, and its chance to
 * float to the end as a bar, with the goal as a rule across.
 */
public final class AdvicePicture {
    private static final double WIDTH = 860;
    private static final double TOP = 96;
    private static final double LINE = 66;
    private static final double UNDER = 60;
    private static final double LEFT = 24;
    private static final double PIECE_AT = 480;
    private static final double PIECE_HEIGHT = 50;
    private static final double PIECE_WIDTH = 84;
    private static final double BAR_HEIGHT = 18;
    private static final int LETTERS = 58;

    private static final String WORDS = "fill=\"#222\"";
    private static final String SMALL = "fill=\"#555\" font-size=\"12\"";
    private static final String PIECE = "fill=\"#e9cfa8\" stroke=\"#7a5a2f\" stroke-width=\"1.2\"";
    private static final String ENOUGH = "fill=\"#2a6f86\"";
    private static final String SHORT = "fill=\"#b9c6cb\"";
    private static final String RULE = "stroke=\"#e3e3e3\"";
    private static final String GOAL = "stroke=\"#a4482b\" stroke-width=\"1.5\"";

    private final Advice advice;
    private final double scale;
    private final double height;
    private final Axis axis = Axis.of(0, 100, 560, 740, 5);
    private final Svg svg;

    private AdvicePicture(Advice advice) {
        this.advice = advice;
        scale = scale();
        height = TOP + LINE * (1 + advice.changes().size()) + UNDER;
        svg = new Svg(WIDTH, height, "What to change", NumberText.plain(AdviceSentence.of(advice)));
    }

    /** The SVG document. */
    public static String of(Advice advice) {
        return new AdvicePicture(advice).draw();
    }

    /** Pixels a metre, so that the largest piece fits. */
    private double scale() {
        List<Shape> shapes = new ArrayList<>(List.of(advice.design().shape()));
        advice.changes().forEach(change -> shapes.add(change.design().shape()));
        double scale = Double.POSITIVE_INFINITY;
        for (Shape shape : shapes) {
            scale = Math.min(scale, PIECE_WIDTH / shape.extents().length());
            scale = Math.min(scale, PIECE_HEIGHT / shape.extents().height());
        }
        return scale;
    }

    private String draw() {
        svg.rect(0, 0, WIDTH, height, "fill=\"#fff\"");
        svg.text(LEFT, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title());
        svg.text(PIECE_AT, TOP - 34, SMALL + " text-anchor=\"middle\"", "to scale");
        svg.text(axis.at(0), TOP - 34, SMALL, "chance to float to the end, %");
        double bottom = TOP + LINE * (1 + advice.changes().size());
        for (double tick : axis.ticks()) {
            svg.line(axis.at(tick), TOP - 10, axis.at(tick), bottom, RULE);
            svg.text(axis.at(tick), TOP - 16, SMALL + " text-anchor=\"middle\"", NumberText.whole(tick));
        }
        row(TOP, "As it is", advice.design().shape(), advice.now());
        for (int i = 0; i < advice.changes().size(); i++) {
            Change change = advice.changes().get(i);
            row(
                    TOP + LINE * (i + 1),
                    AdviceText.capital(AdviceText.steps(change)),
                    change.design().shape(),
                    change.appraisal());
        }
        double goal = axis.at(100 * advice.goal().chance());
        svg.line(goal, TOP - 10, goal, bottom, GOAL);
        svg.text(LEFT, bottom + 24, SMALL, "Red line: what was asked. Bars that reach it are dark.");
        double length = scale * 0.050;
        svg.line(PIECE_AT - length / 2, bottom + 30, PIECE_AT + length / 2, bottom + 30, "stroke=\"#444\"");
        svg.text(PIECE_AT, bottom + 46, SMALL + " text-anchor=\"middle\"", "50 mm");
        return svg.document();
    }

    private String title() {
        return switch (advice.need()) {
            case NOTHING -> "Nothing needs changing";
            case A_CHANGE -> "What to change, smallest first";
            case A_MEASUREMENT_FIRST -> "Measure first; what would be enough";
            case ANOTHER_DESIGN -> "No small change is enough";
        };
    }

    private void row(double top, String words, Shape shape, Advice.Appraisal how) {
        double middle = top + LINE / 2;
        svg.line(LEFT, top + LINE, axis.at(100), top + LINE, RULE);
        List<String> lines = lines(NumberText.plain(words));
        double y = middle + 4 - 8.0 * (lines.size() - 1);
        for (String line : lines) {
            svg.text(LEFT, y, WORDS + " font-size=\"13\"", line);
            y += 16;
        }
        Optional<Hull> hull = shape.hull();
        if (hull.isPresent()) {
            Section section = Section.scaled(hull.get(), Vec3.UP, scale);
            double half = section.pixels(shape.extents().height()) / 2;
            svg.outlines(section.placed(PIECE_AT, middle + half), PIECE);
            LoadMarks.draw(svg, shape, hull.get(), Vec3.UP, section, PIECE_AT, middle + half);
        } else {
            svg.text(PIECE_AT, middle + 4, SMALL + " text-anchor=\"middle\"", "not drawn");
        }
        double length = axis.at(100 * how.chance()) - axis.at(0);
        String fill = how.chance() >= advice.goal().chance() ? ENOUGH : SHORT;
        svg.rect(axis.at(0), middle - BAR_HEIGHT / 2, Math.max(1, length), BAR_HEIGHT, fill);
        svg.text(
                axis.at(100) + 8,
                middle + 4,
                WORDS + " font-size=\"13\"",
                NumberText.plain(AdviceText.chance(advice, how.chance())));
    }

    /** Words on up to three lines. */
    private static List<String> lines(String words) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (line.length() + word.length() >= LETTERS && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
