package org.fizzhull.cli.picture;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.result.CriticalWeights;

/**
 * The chance that a piece floats to the end against its weight as it goes into the bath, with this piece and the weights
 * that the answer advises. Where the mould is filled by weight the advice is one of damp mix, which the axis does not
 * hold: then the weight is marked at which 9 of 10 float.
 */
public final class ChanceCurve {
    /** What it takes below the drawing, pixels. */
    public static final double HEIGHT = 300;

    private static final double LEFT = 70;
    private static final double RIGHT = 720;
    private static final double TOP = 84;
    private static final double BOTTOM = 240;
    private static final int POINTS = 160;

    /** Chances at which the curve begins and ends. */
    private static final double SURE = 0.995;

    private static final double NINE_OF_TEN = 0.9;
    private static final String CURVE = "fill=\"none\" stroke=\"#2a6f86\" stroke-width=\"3\"";
    private static final String ADVICE = "stroke=\"#7a5a2f\" stroke-width=\"1.5\" stroke-dasharray=\"5 3\"";
    private static final String RIM = "stroke=\"#2a6f86\" stroke-width=\"1.5\" stroke-dasharray=\"2 3\"";
    private static final String PIECE = "stroke=\"#222\" stroke-width=\"1.5\"";
    private static final String WORDS = "fill=\"#222\" font-size=\"13\"";
    private static final double LINE = 17;

    /** Width of the title of the curve, pixels. */
    private static final double TITLE = 182;

    /** Weights farther than this from the median are drawn only where something is marked there. */
    private static final double WIDE = 0.3;

    /** A weight to be marked, kg. */
    private record Mark(double mass, String style, String words) {}

    private ChanceCurve() {}

    /** Whether there is a curve: not of central values, whose one draw is a step. */
    public static boolean isOf(Forecast forecast) {
        return forecast.probability().isPresent() && forecast.critical().draws() > 1;
    }

    /** Draws it, its upper edge at a height. */
    public static void draw(Svg svg, Forecast forecast, double y) {
        CriticalWeights critical = forecast.critical();
        List<Mark> marks = marks(forecast);
        double median = critical.heaviest(0.5);
        double least = Math.max(critical.heaviest(SURE), (1 - WIDE) * median);
        double most = Math.min(critical.heaviest(1 - SURE), (1 + WIDE) * median);
        for (Mark mark : marks) {
            least = Math.min(least, mark.mass());
            most = Math.max(most, mark.mass());
        }
        double room = Math.max(0.01 * median, 0.03 * (most - least));
        Axes axes = new Axes(
                Axis.of(Math.max(0, inGrams(least - room)), inGrams(most + room), LEFT, RIGHT, 8),
                new Axis(0, 100, y + BOTTOM, y + TOP, 25));
        axes.draw(svg, "weight into the bath, g", "");
        double[][] curve = new double[POINTS + 1][];
        for (int i = 0; i <= POINTS; i++) {
            double grams = axes.x().low() + (axes.x().high() - axes.x().low()) * i / POINTS;
            curve[i] = new double[] {axes.x().at(grams), axes.y().at(100 * chanceAt(critical, grams))};
        }
        svg.polyline(curve, CURVE);
        mark(svg, axes, marks, y);
        // over the lines of the marks, one of which may pass it
        svg.rect(LEFT - 2, y + TOP - 21, TITLE, 16, "fill=\"#fff\"");
        svg.text(LEFT, y + TOP - 9, WORDS, "chance to float to the end, %");
    }

    /** At the origin of an axis that begins there, the chance of the lightest piece. */
    private static double chanceAt(CriticalWeights critical, double grams) {
        return critical.chanceAt(Math.max(grams * 1e-3, Double.MIN_VALUE));
    }

    private static List<Mark> marks(Forecast forecast) {
        List<Mark> marks = new ArrayList<>();
        double piece = forecast.piece().mass();
        if (forecast.limit().kind() == Forecast.GoverningLimit.Kind.BOAT) {
            marks.add(new Mark(
                    forecast.limit().mass(),
                    RIM,
                    "the rim goes under at " + NumberText.grams(forecast.limit().mass())));
        }
        marks.add(new Mark(piece, PIECE, "this piece, " + NumberText.grams(piece)));
        if (forecast.aim().isPresent() && !(forecast.question().making() instanceof Moulded.Filled)) {
            CriticalWeights.BatchAim aim = forecast.aim().get();
            marks.add(new Mark(aim.neverAbove(), ADVICE, "never above " + NumberText.grams(aim.neverAbove())));
            marks.add(new Mark(aim.aimFor(), ADVICE, "aim for at most " + NumberText.grams(aim.aimFor())));
        } else {
            double nine = forecast.critical().heaviest(NINE_OF_TEN);
            marks.add(new Mark(nine, ADVICE, "chance 90 % at " + NumberText.grams(nine)));
        }
        return marks;
    }

    /**
     * A line for each mark through the frame, its words above it in a line of their own. The words stand on that side of
     * their line where there is more room, and the lines that pass words stand on the other side of them.
     */
    private static void mark(Svg svg, Axes axes, List<Mark> marks, double y) {
        double mean = marks.stream()
                .mapToDouble(mark -> axes.x().at(inGrams(mark.mass())))
                .average()
                .orElse(0);
        boolean before = mean > (LEFT + RIGHT) / 2;
        Comparator<Mark> lightest = Comparator.comparingDouble(Mark::mass);
        marks.sort(before ? lightest.reversed() : lightest);
        double top = y + 14;
        for (Mark mark : marks) {
            double x = axes.x().at(inGrams(mark.mass()));
            svg.line(x, top - 8, x, y + BOTTOM, mark.style());
            svg.text(
                    before ? x - 6 : x + 6,
                    top,
                    WORDS + " text-anchor=\"" + (before ? "end" : "start") + '"',
                    mark.words());
            top += LINE;
        }
    }
}
