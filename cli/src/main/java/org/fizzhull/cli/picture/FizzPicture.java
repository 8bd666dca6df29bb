package org.fizzhull.cli.picture;

import java.util.List;
import org.fizzhull.cli.text.FizzText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.voyage.VoyageSeries;

/** The fizz: rate of gas against time with its band; below it the voyage as height, the piece shrinking. */
public final class FizzPicture {
    private static final double WIDTH = 760;
    private static final double HEIGHT = 540;
    private static final double LEFT = 70;
    private static final double RIGHT = 720;
    private static final double LITRES_A_MINUTE = 60e3;
    private static final double MINUTE = 60;
    private static final double CENTIMETRES = 100;
    private static final String WORDS = "fill=\"#222\"";
    private static final String BAND = "fill=\"#d9ecf2\"";
    private static final String LINE = "fill=\"none\" stroke=\"#2a6f86\" stroke-width=\"2\"";
    private static final String PIECE = "fill=\"#f3e3cb\" stroke=\"#7a5a2f\" stroke-width=\"1\"";

    private FizzPicture() {}

    /** The SVG document. */
    public static String of(FizzForecast forecast) {
        String title = forecast.blend().recipe().name() + ", fizzing in the bath: "
                + ShapeWords.piece(forecast.question().shape().bare());
        Svg svg = new Svg(WIDTH, HEIGHT, title, FizzText.sentence(forecast));
        svg.rect(0, 0, WIDTH, HEIGHT, "fill=\"#fff\"");
        svg.text(24, 34, WORDS + " font-size=\"18\" font-weight=\"bold\"", title);
        svg.text(24, 56, WORDS, FizzText.sentence(forecast));
        List<FizzForecast.Point> band = forecast.band();
        Axis time = Axis.of(0, band.get(band.size() - 1).time() / MINUTE, LEFT, RIGHT, 10);
        gas(svg, band, time);
        voyage(svg, forecast, time);
        return svg.document();
    }

    private static void gas(Svg svg, List<FizzForecast.Point> band, Axis time) {
        double most = 0;
        for (FizzForecast.Point point : band) {
            most = Math.max(most, LITRES_A_MINUTE * point.rate().high());
        }
        Axes axes = new Axes(time, Axis.of(0, most > 0 ? most : 1, 280, 100, 5));
        axes.draw(svg, "", "gas, L a minute (line: middle; band: 95 of 100 pieces)");
        int n = band.size();
        double[][] line = new double[n][];
        double[][] outline = new double[2 * n][];
        for (int i = 0; i < n; i++) {
            FizzForecast.Point point = band.get(i);
            double x = time.at(point.time() / MINUTE);
            line[i] =
                    new double[] {x, axes.y().at(LITRES_A_MINUTE * point.rate().median())};
            outline[i] =
                    new double[] {x, axes.y().at(LITRES_A_MINUTE * point.rate().high())};
            outline[2 * n - 1 - i] =
                    new double[] {x, axes.y().at(LITRES_A_MINUTE * point.rate().low())};
        }
        svg.outlines(new double[][][] {outline}, BAND);
        svg.polyline(line, LINE);
    }

    /** Top and bottom of the piece in the water of the bath, by the central values. */
    private static void voyage(Svg svg, FizzForecast forecast, Axis time) {
        VoyageSeries s = forecast.voyage().series();
        double depth = forecast.question().bath().depth() * CENTIMETRES;
        int n = s.rows();
        double[][] outline = new double[2 * n][];
        double[][] middle = new double[n][];
        double top = 0;
        for (int i = 0; i < n; i++) {
            top = Math.max(top, CENTIMETRES * (s.size()[i] / 2 - s.centreDepth()[i]));
        }
        Axes axes = new Axes(time, Axis.of(-depth, top, 480, 330, 5));
        svg.rect(
                LEFT,
                axes.y().at(0),
                RIGHT - LEFT,
                axes.y().at(-depth) - axes.y().at(0),
                "fill=\"#eef6f9\"");
        for (int i = 0; i < n; i++) {
            double x = time.at(Math.min(s.time()[i] / MINUTE, time.high()));
            double centre = -CENTIMETRES * s.centreDepth()[i];
            double half = CENTIMETRES * s.size()[i] / 2;
            middle[i] = new double[] {x, axes.y().at(centre)};
            outline[i] = new double[] {x, axes.y().at(centre + half)};
            outline[2 * n - 1 - i] = new double[] {x, axes.y().at(Math.max(-depth, centre - half))};
        }
        svg.outlines(new double[][][] {outline}, PIECE);
        svg.polyline(middle, "fill=\"none\" stroke=\"#7a5a2f\" stroke-width=\"1\" stroke-dasharray=\"3 3\"");
        axes.draw(svg, "minutes in the bath", "height of the piece above the water line, cm (middle case)");
    }
}
