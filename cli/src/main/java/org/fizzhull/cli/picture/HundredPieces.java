package org.fizzhull.cli.picture;

import org.fizzhull.cli.text.Say;

/** A hundred pieces as dots: filled where they float at once. */
final class HundredPieces {
    private static final int ACROSS = 10;
    private static final double STEP = 21;
    private static final double RADIUS = 7.5;
    private static final String FLOATS = "fill=\"#2a6f86\" stroke=\"#2a6f86\"";
    private static final String SINKS = "fill=\"#fff\" stroke=\"#9a9a9a\"";

    private HundredPieces() {}

    static void draw(Svg svg, double probability, double x, double y) {
        long filled = Math.round(100 * probability);
        svg.text(x - RADIUS, y - 24, "fill=\"#222\"", "Of 100 pieces like this");
        for (int i = 0; i < 100; i++) {
            double cx = x + STEP * (i % ACROSS);
            int row = i / ACROSS;
            double cy = y + STEP * row;
            svg.circle(cx, cy, RADIUS, i < filled ? FLOATS : SINKS);
        }
        svg.text(x - RADIUS, y + STEP * ACROSS + 14, "fill=\"#222\"", Say.ofHundred(probability) + " float at once");
    }
}
