package org.fizzhull.cli.picture;

import org.fizzhull.cli.text.Say;

/** A hundred pieces as dots: dark where they float at once, light where they come up later, empty where they stay down. */
final class HundredPieces {
    private static final int ACROSS = 10;
    private static final double STEP = 21;
    private static final double RADIUS = 7.5;
    private static final String FLOATS = "fill=\"#2a6f86\" stroke=\"#2a6f86\"";
    private static final String RISES = "fill=\"#a9cdd9\" stroke=\"#2a6f86\"";
    private static final String WORDS = "fill=\"#222\"";
    private static final double LINE = 20;
    private static final String SINKS = "fill=\"#fff\" stroke=\"#9a9a9a\"";

    private HundredPieces() {}

    /** Of shares that float at once and that sink first and come up later. */
    static void draw(Svg svg, double probability, double later, double x, double y) {
        long filled = Math.round(100 * probability);
        long risen = Math.round(100 * (probability + later));
        svg.text(x - RADIUS, y - 24, WORDS, "Of 100 pieces like this");
        for (int i = 0; i < 100; i++) {
            double cx = x + STEP * (i % ACROSS);
            int row = i / ACROSS;
            double cy = y + STEP * row;
            svg.circle(cx, cy, RADIUS, i < filled ? FLOATS : i < risen ? RISES : SINKS);
        }
        double under = y + STEP * ACROSS + 14;
        svg.text(x - RADIUS, under, WORDS, Say.ofHundred(probability) + " float at once");
        if (risen > filled) {
            svg.text(x - RADIUS, under + LINE, WORDS, Say.ofHundred(later) + " come up later (light)");
        }
    }
}
