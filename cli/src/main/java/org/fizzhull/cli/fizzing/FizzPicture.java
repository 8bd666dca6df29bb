package org.fizzhull.cli.fizzing;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.picture.Axes;
import org.fizzhull.cli.picture.Axis;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.FizzForecast;

/** The fizz: rate of gas against time with its band; below it the voyage in the tub, the piece shrinking. */
public final class FizzPicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 620;
    private static final double LEFT = 70;
    private static final double RIGHT = 720;

    /** The time shown over the median fizz time; the slowest pieces go on far beyond. */
    private static final double SHOWN = 1.25;

    private static final double LITRES_A_MINUTE = 60e3;
    private static final double MINUTE = 60;
    private static final String WORDS = "fill=\"#222\"";
    private static final String BAND = "fill=\"#d9ecf2\"";
    private static final String LINE = "fill=\"none\" stroke=\"#2a6f86\" stroke-width=\"2\"";

    private FizzPicture() {}

    /** The SVG document. */
    public static String of(FizzForecast forecast) {
        String title = forecast.blend().recipe().name() + ", fizzing in the bath: "
                + ShapeWords.piece(forecast.question().shape().bare());
        Svg svg = new Svg(WIDTH, HEIGHT, title, FizzText.sentence(forecast));
        svg.rect(0, 0, WIDTH, HEIGHT, "fill=\"#fff\"");
        svg.text(24, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title);
        svg.text(24, 56, WORDS, FizzText.caption(forecast));
        double typical =
                Math.max(forecast.voyage().fizzTime(), forecast.fizzTime().median());
        Axis time = Axis.of(0, SHOWN * typical / MINUTE, LEFT, RIGHT, 10);
        gas(svg, forecast.band(), time);
        TubPicture.draw(svg, forecast, time, 570, 330);
        return svg.document();
    }

    private static void gas(Svg svg, List<FizzForecast.Point> band, Axis time) {
        double most = 0;
        for (FizzForecast.Point point : band) {
            most = Math.max(most, LITRES_A_MINUTE * point.rate().high());
        }
        Axes axes = new Axes(time, Axis.of(0, most > 0 ? most : 1, 280, 100, 5));
        List<double[]> line = new ArrayList<>();
        List<double[]> high = new ArrayList<>();
        List<double[]> low = new ArrayList<>();
        for (FizzForecast.Point point : shown(band, time.high() * MINUTE)) {
            double x = time.at(point.time() / MINUTE);
            line.add(new double[] {x, axes.y().at(LITRES_A_MINUTE * point.rate().median())});
            high.add(new double[] {x, axes.y().at(LITRES_A_MINUTE * point.rate().high())});
            low.add(0, new double[] {
                x, axes.y().at(LITRES_A_MINUTE * point.rate().low())
            });
        }
        high.addAll(low);
        svg.outlines(new double[][][] {high.toArray(new double[0][])}, BAND);
        svg.polyline(line.toArray(new double[0][]), LINE);
        axes.draw(svg, "", "gas, L a minute (line: middle; band: 95 of 100 cases)");
    }

    /** The points up to a time, s, with one there. */
    private static List<FizzForecast.Point> shown(List<FizzForecast.Point> band, double end) {
        List<FizzForecast.Point> shown = new ArrayList<>();
        for (FizzForecast.Point point : band) {
            if (point.time() > end) {
                FizzForecast.Point last = shown.get(shown.size() - 1);
                double share = (end - last.time()) / (point.time() - last.time());
                shown.add(new FizzForecast.Point(end, between(last.rate(), point.rate(), share)));
                break;
            }
            shown.add(point);
        }
        return shown;
    }

    private static Interval between(Interval a, Interval b, double share) {
        return new Interval(
                a.median() + share * (b.median() - a.median()),
                a.low() + share * (b.low() - a.low()),
                a.high() + share * (b.high() - a.high()));
    }
}
