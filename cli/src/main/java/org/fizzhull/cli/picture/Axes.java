package org.fizzhull.cli.picture;

import java.util.function.DoubleFunction;
import org.fizzhull.quantity.Decimals;

/**
 * A frame of two axes with grid lines and numbers.
 *
 * @param x to the right
 * @param y upwards
 */
public record Axes(Axis x, Axis y) {
    private static final String WORDS = "fill=\"#222\" font-size=\"12\"";
    private static final String GRID = "stroke=\"#e3e3e3\" stroke-width=\"1\"";
    private static final String FRAME = "stroke=\"#444\" stroke-width=\"1\"";

    /** Draws it, the axis of y titled above it; the numbers of x only where there are words for them. */
    public void draw(Svg svg, String xWords, String yWords) {
        draw(svg, xWords, yWords, tick -> Decimals.text(tick, 5));
    }

    /** The same with other words for the ticks of y. */
    public void draw(Svg svg, String xWords, String yWords, DoubleFunction<String> tickWords) {
        for (double tick : y.ticks()) {
            svg.line(x.from(), y.at(tick), x.to(), y.at(tick), GRID);
            svg.text(x.from() - 8, y.at(tick) + 4, WORDS + " text-anchor=\"end\"", tickWords.apply(tick));
        }
        for (double tick : x.ticks()) {
            svg.line(x.at(tick), y.from(), x.at(tick), y.from() + 5, FRAME);
            if (!xWords.isEmpty()) {
                svg.text(x.at(tick), y.from() + 19, WORDS + " text-anchor=\"middle\"", Decimals.text(tick, 5));
            }
        }
        svg.line(x.from(), y.from(), x.to(), y.from(), FRAME);
        svg.line(x.from(), y.to(), x.from(), y.from(), FRAME);
        svg.text(x.from(), y.to() - 9, WORDS, yWords);
        if (!xWords.isEmpty()) {
            svg.text((x.from() + x.to()) / 2, y.from() + 38, WORDS + " text-anchor=\"middle\"", xWords);
        }
    }
}
