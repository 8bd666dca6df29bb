package org.fizzhull.cli.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.body.DryReport;
import org.fizzhull.cli.picture.Axes;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.result.DryBand;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;

/** The drying curve: mass against days with its band, below it the fizz left; when it is ready and when wrapped. */
public final class DryingPicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 500;
    private static final double LEFT = 70;
    private static final double RIGHT = 720;
    private static final double DAY = 86400;

    /** Smaller differences than this (g, %) are not blown up to the whole panel. */
    private static final double LEAST_RANGE = 0.5;

    private static final String WORDS = "fill=\"#222\"";
    private static final String SMALL = WORDS + " font-size=\"12\"";
    private static final String HALO =
            "font-size=\"12\" stroke=\"#fff\" stroke-width=\"4\" fill=\"#fff\" stroke-linejoin=\"round\"";
    private static final String BAND = "fill=\"#d9ecf2\"";
    private static final String LINE = "fill=\"none\" stroke=\"#2a6f86\" stroke-width=\"2\"";
    private static final String FIZZ_BAND = "fill=\"#f3e3cb\"";
    private static final String FIZZ_LINE = "fill=\"none\" stroke=\"#7a5a2f\" stroke-width=\"2\"";
    private static final String DOT = "fill=\"#b3261e\" stroke=\"#fff\" stroke-width=\"1\"";
    private static final String MARK = "stroke=\"#444\" stroke-width=\"1\" stroke-dasharray=\"5 4\"";

    private final DryReport report;
    private final DryForecast forecast;
    private final DryBand band;
    private final List<double[]> weighed;
    private final Svg svg;

    private DryingPicture(DryReport report) {
        this.report = report;
        forecast = report.forecast();
        band = forecast.band();
        weighed = weighed(forecast, band);
        svg = new Svg(WIDTH, HEIGHT, title(), DryText.sentence(report));
    }

    /** The SVG document. */
    public static String of(DryReport report) {
        return new DryingPicture(report).draw();
    }

    private String title() {
        return forecast.blend().recipe().name() + ", drying in "
                + ShapeWords.piece(forecast.shape().bare());
    }

    private String draw() {
        svg.rect(0, 0, WIDTH, HEIGHT, "fill=\"#fff\"");
        svg.text(24, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title());
        svg.text(24, 56, WORDS, subtitle());
        List<Double> times = band.times();
        double end = times.get(times.size() - 1) / DAY;
        List<Interval> weights = new ArrayList<>(band.mass());
        for (double[] own : weighed) {
            weights.add(Interval.certain(own[1]));
        }
        Axes mass = panel(weights, 1e3, 100, 300, end, 6);
        mass.draw(
                svg,
                "",
                weighed.isEmpty()
                        ? "weight, g (line: middle; band: what is lost in 95 of 100 cases, from the middle damp weight)"
                        : "weight, g (line: middle; band: 95 of 100 cases; dots: your weighings, moved onto the line)");
        curves(mass, band.mass(), 1e3, BAND, LINE);
        Axes fizz = panel(band.fizzLeft(), 100, 346, 440, end, 4);
        fizz.draw(svg, "days from pressing", "fizz left, %");
        curves(fizz, band.fizzLeft(), 100, FIZZ_BAND, FIZZ_LINE);
        marks(mass, fizz, end);
        weighings(mass, end);
        return svg.document();
    }

    private String subtitle() {
        String air = NumberText.celsius(forecast.open().air().temperature()) + ", "
                + NumberText.percent(forecast.open().air().humidity()) + " humidity; ";
        Optional<Interval> ready = report.ready();
        return air
                + (ready.isPresent()
                        ? "ready after about " + Days.text(ready.get().median())
                        : "not ready here within 60 days");
    }

    private String wrap() {
        for (DryingPhase phase : forecast.plan().phases()) {
            if (phase.wrap().present()) {
                return phase.wrap().name();
            }
        }
        return "";
    }

    private String store() {
        List<DryingPhase> phases = forecast.plan().phases();
        RoomAir air = phases.get(phases.size() - 1).air();
        return "put away at " + NumberText.celsius(air.temperature()) + ", " + NumberText.percent(air.humidity());
    }

    private static Axes panel(List<Interval> values, double scale, double top, double bottom, double end, int ticks) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Interval value : values) {
            low = Math.min(low, scale * value.low());
            high = Math.max(high, scale * value.high());
        }
        double flat = Math.max(0, LEAST_RANGE - (high - low));
        return new Axes(Axis.of(0, end, LEFT, RIGHT, 10), Axis.of(low - flat, high, bottom, top, ticks));
    }

    private void curves(Axes axes, List<Interval> values, double scale, String filled, String line) {
        int n = values.size();
        double[][] points = new double[n][];
        double[][] outline = new double[2 * n][];
        for (int i = 0; i < n; i++) {
            double x = axes.x().at(band.times().get(i) / DAY);
            points[i] = new double[] {x, axes.y().at(scale * values.get(i).median())};
            outline[i] = new double[] {x, axes.y().at(scale * values.get(i).high())};
            outline[2 * n - 1 - i] =
                    new double[] {x, axes.y().at(scale * values.get(i).low())};
        }
        svg.outlines(new double[][][] {outline}, filled);
        svg.polyline(points, line);
    }

    /**
     * The maker's weighings, days and kg: each piece moved by a constant so that its own weight meets the middle line where
     * it was weighed, since only differences of weight say how dry it is.
     */
    private static List<double[]> weighed(DryForecast forecast, DryBand band) {
        List<double[]> all = new ArrayList<>();
        if (forecast.asked().weighings().isEmpty()) {
            return all;
        }
        for (DryLog.Series piece : forecast.asked().weighings().get().pieces()) {
            double off = 0;
            int n = piece.times().size();
            for (int i = 0; i < n; i++) {
                off += (piece.weights().get(i) - middle(band, piece.times().get(i))) / n;
            }
            for (int i = 0; i < n; i++) {
                all.add(new double[] {
                    piece.times().get(i) / DAY, piece.weights().get(i) - off
                });
            }
        }
        return all;
    }

    /** Middle weight at a time, kg; linear between the times of the band. */
    private static double middle(DryBand band, double seconds) {
        List<Double> times = band.times();
        int next = 1;
        while (next < times.size() - 1 && times.get(next) < seconds) {
            next++;
        }
        double from = times.get(next - 1);
        double share = Math.min(1, (seconds - from) / (times.get(next) - from));
        double before = band.mass().get(next - 1).median();
        return before + share * (band.mass().get(next).median() - before);
    }

    private void weighings(Axes mass, double end) {
        for (double[] own : weighed) {
            if (own[0] <= end) {
                svg.circle(mass.x().at(own[0]), mass.y().at(1e3 * own[1]), 3.5, DOT);
            }
        }
    }

    private void marks(Axes mass, Axes fizz, double end) {
        List<Mark> marks = new ArrayList<>();
        Optional<Interval> ready = report.ready();
        if (ready.isPresent() && ready.get().median() / DAY <= end) {
            marks.add(new Mark(ready.get().median() / DAY, "ready"));
        }
        forecast.wrappedAt().ifPresent(at -> marks.add(new Mark(at / DAY, "wrapped in " + wrap())));
        if (forecast.stored()) {
            marks.add(new Mark(forecast.dryingTime() / DAY, store()));
        }
        for (Mark mark : marks) {
            mark(mass, fizz, mark.day);
        }
        // the names stand where the curve does not begin
        double begin = mass.y().at(1e3 * band.mass().get(0).median());
        boolean below = begin < (mass.y().to() + mass.y().from()) / 2;
        double line =
                below ? mass.y().from() - 8 - 16 * (marks.size() - 1) : mass.y().to() + 14;
        for (Mark mark : marks) {
            name(mass.x().at(mark.day), line, mark.word);
            line += 16;
        }
    }

    /** A moment with a name, in days from pressing. */
    private record Mark(double day, String word) {}

    private void mark(Axes mass, Axes fizz, double day) {
        double x = mass.x().at(day);
        svg.line(x, mass.y().to(), x, mass.y().from(), MARK);
        svg.line(x, fizz.y().to(), x, fizz.y().from(), MARK);
    }

    private void name(double x, double y, String word) {
        boolean leftwards = x > RIGHT - 180 || (word.equals("ready") && x > LEFT + 60);
        double at = leftwards ? x - 6 : x + 6;
        String place = leftwards ? " text-anchor=\"end\"" : "";
        // the same word in thick white first, so that no line runs through it
        svg.text(at, y, HALO + place, word);
        svg.text(at, y, SMALL + place, word);
    }
}
