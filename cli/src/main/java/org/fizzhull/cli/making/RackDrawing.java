package org.fizzhull.cli.making;

import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.Rack;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.geometry.Extents;

/** The pieces on their rack from above, to scale; each numbered by its mix, whose shades alternate. */
final class RackDrawing {
    /** Beyond this many, dots say nothing. */
    private static final int MOST = 400;

    /** Height of the rack on the sheet and in a document of its own, pixels. */
    private static final double ON_SHEET = 220;

    private static final double ALONE = 130;

    /** From the rack to the line of its caption, pixels. */
    private static final double CAPTION = 18;

    /** A piece wide enough for a number, pixels. */
    private static final double NUMBERED = 14;

    private static final String NUMBER = "fill=\"#333\" font-size=\"11\" text-anchor=\"middle\"";
    private static final String[] FILLS = {"fill=\"#e9cfa8\"", "fill=\"#f5e9d6\""};
    private static final String EDGE = " stroke=\"#7a5a2f\" stroke-width=\"1\"";
    private static final String GREY = "fill=\"#666\" font-size=\"13\"";

    /** A document of its own: width and margin, pixels. */
    private static final double WIDTH = 420;

    private static final double MARGIN = 8;

    private RackDrawing() {}

    /** The rack as a document of its own; empty where it would hold too many pieces to say anything. */
    static String document(BatchPlan plan) {
        if (plan.batch().allPieces() > MOST) {
            return "";
        }
        double width = WIDTH - 2 * MARGIN;
        double height = MARGIN + scale(plan.rack(), width, ALONE) * plan.rack().width() + CAPTION + MARGIN;
        Svg svg = new Svg(WIDTH, height, "The rack of " + plan.recipe().name(), whole(plan));
        draw(svg, plan, MARGIN, MARGIN, width, ALONE, "The rack from above");
        return svg.document();
    }

    /** Draws on the sheet, at a place within a width, and returns where it ends. */
    static double draw(Svg svg, BatchPlan plan, double x, double y, double width) {
        return plan.batch().allPieces() > MOST ? y : draw(svg, plan, x, y, width, ON_SHEET, whole(plan));
    }

    /** Pixels a metre. */
    private static double scale(Rack rack, double width, double highest) {
        return Math.min(width / rack.length(), highest / rack.width());
    }

    private static double draw(
            Svg svg, BatchPlan plan, double x, double y, double width, double highest, String caption) {
        Batch batch = plan.batch();
        int pieces = batch.allPieces();
        Extents e = plan.shape().extents();
        Rack rack = plan.rack();
        int columns = rack.columns();
        int rows = rack.rows();
        double across = rack.length() / columns;
        double down = rack.width() / rows;
        double scale = scale(rack, width, highest);
        svg.rect(
                x,
                y,
                scale * columns * across,
                scale * rows * down,
                "fill=\"none\" stroke=\"#9a9a9a\" stroke-width=\"1.2\"");
        boolean mixed = batch.mixes() > 1;
        boolean numbered = mixed && scale * Math.min(e.length(), e.width()) > NUMBERED;
        boolean round = Math.abs(e.length() - e.width()) < 1e-9;
        for (int i = 0; i < pieces; i++) {
            int row = i / columns;
            double cx = x + scale * across * (i % columns + 0.5);
            double cy = y + scale * down * (row + 0.5);
            String style = FILLS[i / batch.piecesPerMix() % 2] + EDGE;
            if (round) {
                svg.circle(cx, cy, scale * e.length() / 2, style);
            } else {
                double w = scale * e.length();
                double h = scale * e.width();
                svg.rect(cx - w / 2, cy - h / 2, w, h, style);
            }
            if (numbered) {
                svg.text(cx, cy + 4, NUMBER, Integer.toString(1 + i / batch.piecesPerMix()));
            }
        }
        double end = y + scale * rows * down + CAPTION;
        String mixes = numbered ? "; the numbers are those of the mixes" : "; from mix to mix the shade changes";
        svg.text(x, end, GREY, caption + (mixed ? mixes : "") + '.');
        return end;
    }

    private static String whole(BatchPlan plan) {
        return "The rack from above, " + BatchNeeds.rack(plan);
    }
}
