package org.fizzhull.cli.picture;

import org.fizzhull.cli.text.NumberText;
import org.fizzhull.forecast.result.Probability;

/**
 * A chance as a hundred dots: dark that the piece floats to the end, pale that it floats a part of the way (at once and
 * then down, or down and then up), empty that it stays down. The dots are cases of what is not known, not pieces of a
 * batch.
 */
public final class HundredPieces {
    private static final int ACROSS = 10;
    private static final double STEP = 21;
    private static final double RADIUS = 7.5;
    private static final String FLOATS = "fill=\"#2a6f86\" stroke=\"#2a6f86\"";
    private static final String PARTLY = "fill=\"#a9cdd9\" stroke=\"#2a6f86\"";
    private static final String WORDS = "fill=\"#222\"";
    private static final double LINE = 20;
    private static final String SINKS = "fill=\"#fff\" stroke=\"#9a9a9a\"";

    private HundredPieces() {}

    /** Of the fates of a piece. */
    public static void draw(Svg svg, Probability p, double x, double y) {
        double partly = p.floatsAtOnce() - p.floatsToTheEnd() + p.risesLater().orElse(0);
        long dark = Math.round(100 * p.floatsToTheEnd());
        long some = Math.min(100, Math.round(100 * (p.floatsToTheEnd() + partly)));
        svg.text(x - RADIUS, y - 24, WORDS, "In 100 cases like this");
        for (int i = 0; i < 100; i++) {
            double cx = x + STEP * (i % ACROSS);
            int row = i / ACROSS;
            double cy = y + STEP * row;
            svg.circle(cx, cy, RADIUS, i < dark ? FLOATS : i < some ? PARTLY : SINKS);
        }
        double under = y + STEP * ACROSS + 14;
        svg.text(x - RADIUS, under, WORDS, NumberText.ofHundred(p.floatsToTheEnd()) + ": floats to the end");
        if (some > dark) {
            svg.text(x - RADIUS, under + LINE, WORDS, "about " + (some - dark) + ": part of the way (pale)");
        }
    }
}
