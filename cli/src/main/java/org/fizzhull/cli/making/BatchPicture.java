package org.fizzhull.cli.making;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.answer.body.BatchPlan;
import org.fizzhull.batch.Batch;
import org.fizzhull.batch.MixingStep;
import org.fizzhull.cli.picture.Svg;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.evidence.Notice;

/**
 * A batch as a page to pin to the wall: lines for date and batch number, what is wrong with the plan, amounts and steps with
 * a box to tick for every mix, cautions where the action is, the rack from above to scale. One sheet of A4 at 96 pixels an
 * inch: what needs more height is drawn on a larger sheet and scaled down.
 */
public final class BatchPicture {
    private static final double WIDTH = 794;
    private static final double SHEET = 1123;
    private static final double LEFT = 48;

    /** A sheet is made larger by this factor until all fits. */
    private static final double LARGER = 1.03;

    /** Below half the size nobody reads it from the wall: what is longer still runs over the sheet. */
    private static final double LARGEST = 2;

    /** More mixes than this share one box. */
    private static final int MOST_BOXES = 8;

    private static final double BOX = 15;
    private static final double STEP = 24;
    private static final String WORDS = "fill=\"#222\"";
    private static final String BOLD = WORDS + " font-weight=\"bold\"";
    private static final String GREY = "fill=\"#666\" font-size=\"13\"";
    private static final String CAUTION = "fill=\"#9a3412\" font-size=\"13\"";
    private static final String RULE = "stroke=\"#c9c9c9\" stroke-width=\"1\"";

    private final BatchPlan plan;
    private final int boxes;
    private final Svg svg;
    private final double right;
    private double y = 64;

    /** A sheet {@code larger} times A4, shown at the size of A4 in width. */
    private BatchPicture(BatchPlan plan, double larger, double height) {
        this.plan = plan;
        boxes = plan.batch().mixes() > MOST_BOXES ? 1 : plan.batch().mixes();
        double width = WIDTH * larger;
        right = width - LEFT;
        svg = new Svg(width, height, 1 / larger, plan.recipe().name(), BatchText.sentence(plan));
        svg.rect(0, 0, width, height, "fill=\"#fff\"");
    }

    /** The SVG document. */
    public static String of(BatchPlan plan) {
        double larger = 1;
        double needed = new BatchPicture(plan, larger, SHEET).drawn();
        while (needed > SHEET * larger && larger < LARGEST) {
            larger *= LARGER;
            needed = new BatchPicture(plan, larger, SHEET * larger).drawn();
        }
        BatchPicture page = new BatchPicture(plan, larger, Math.max(SHEET * larger, needed));
        page.drawn();
        return page.svg.document();
    }

    /** Draws everything and returns where it ends. */
    private double drawn() {
        svg.text(LEFT, y, BOLD + " font-size=\"28\"", plan.recipe().name());
        y += 28;
        String piece = ShapeWords.piece(plan.shape());
        String first = Character.toUpperCase(piece.charAt(0)) + piece.substring(1) + ". ";
        lines(LEFT, WORDS + " font-size=\"15\"", first + BatchText.sentence(plan), fits(LEFT, 7.6), 20);
        for (Notice warning : BatchWarnings.of(plan)) {
            y += 4;
            lines(LEFT, BOLD + " font-size=\"15\"", warning.text(), fits(LEFT, 8.9), 20);
        }
        blanks();
        amounts();
        steps();
        needs();
        y = RackDrawing.draw(svg, plan, LEFT, y + 14, right - LEFT) + 8;
        cautions();
        return y + 24;
    }

    /** Lines to write on by hand. */
    private void blanks() {
        y += 16;
        double step = (right - LEFT) / 3;
        String[] labels = {"Date", "Batch no.", "Made by"};
        for (int i = 0; i < labels.length; i++) {
            double x = LEFT + i * step;
            svg.text(x, y, WORDS, labels[i]);
            double from = x + 10 + 8 * labels[i].length();
            svg.line(from, y + 3, x + step - 16, y + 3, "stroke=\"#444\" stroke-width=\"1\"");
        }
    }

    /** How many letters of a width fit between a place and the right margin. */
    private int fits(double x, double letter) {
        return (int) ((right - x) / letter);
    }

    private void amounts() {
        Batch batch = plan.batch();
        heading(BatchText.weighIn(batch));
        for (Batch.Line line : batch.lines()) {
            boxes();
            double x = LEFT + boxes * STEP + 8;
            svg.text(x + 72, y, BOLD + " font-size=\"17\" text-anchor=\"end\"", BatchNeeds.weighed(line.mass()));
            svg.text(x + 86, y, WORDS + " font-size=\"17\"", line.ingredient().name());
            svg.text(right, y, WORDS + " font-size=\"15\" text-anchor=\"end\"", line.spoons());
            y += 9;
            svg.line(LEFT, y, right, y, "stroke=\"#ececec\" stroke-width=\"1\"");
            y += 19;
        }
    }

    private void steps() {
        heading("Order of mixing");
        for (MixingStep step : plan.steps()) {
            boxes();
            double x = LEFT + boxes * STEP + 8;
            lines(x, WORDS + " font-size=\"15\"", BatchText.line(step, plan), fits(x, 7.6), 20);
            if (!step.caution().isEmpty()) {
                lines(x, CAUTION, "Caution: " + step.caution(), fits(x, 6.6), 18);
            }
            if (step.mayStop()) {
                svg.line(x, y - 5, x + 60, y - 5, RULE + " stroke-dasharray=\"4 4\"");
                svg.text(x + 70, y - 1, GREY, "you may stop here");
                svg.line(x + 200, y - 5, right, y - 5, RULE + " stroke-dasharray=\"4 4\"");
                y += 20;
            }
            y += 6;
        }
    }

    private void needs() {
        heading("It takes");
        for (String[] row : BatchNeeds.rows(plan)) {
            svg.text(LEFT, y, GREY, row[0]);
            lines(LEFT + 96, WORDS, row[1], fits(LEFT + 96, 7), 19);
        }
    }

    private void cautions() {
        heading("Mind");
        for (String caution : BatchNeeds.cautions(plan)) {
            lines(LEFT, CAUTION, caution, fits(LEFT, 6.6), 18);
        }
        for (Notice notice : BatchWarnings.all(plan)) {
            if (besideTheBowl(notice)) {
                // red is for what can hurt somebody
                String style = NoticeText.isCaution(notice) ? CAUTION : WORDS + " font-size=\"13\"";
                lines(LEFT, style, notice.text(), fits(LEFT, 6.6), 18);
            }
        }
    }

    /** What can hurt, and what is of the mix itself; the command tells the others. */
    private boolean besideTheBowl(Notice notice) {
        return NoticeText.isCaution(notice)
                || plan.recipe().notices().contains(notice)
                || plan.batch().notices().contains(notice);
    }

    /** One box for each mix in front of a line, numbered over the first line. */
    private void boxes() {
        for (int i = 0; i < boxes; i++) {
            svg.rect(LEFT + i * STEP, y - BOX + 2, BOX, BOX, "fill=\"#fff\" stroke=\"#444\" stroke-width=\"1.2\"");
        }
    }

    private void heading(String text) {
        y += 16;
        svg.line(LEFT, y, right, y, RULE);
        y += 26;
        svg.text(LEFT, y, BOLD + " font-size=\"18\"", text);
        y += 26;
        boolean ticked = text.startsWith("Weigh") || text.startsWith("Order");
        if (ticked && boxes > 1) {
            for (int i = 0; i < boxes; i++) {
                double middle = LEFT + i * STEP + BOX / 2;
                svg.text(middle, y, GREY + " text-anchor=\"middle\"", Integer.toString(i + 1));
            }
            svg.text(LEFT + boxes * STEP + 8, y, GREY, "mix");
            y += 22;
        }
    }

    private void lines(double x, String style, String text, int most, double step) {
        for (String line : wrapped(text, most)) {
            svg.text(x, y, style, line);
            y += step;
        }
    }

    /** Cuts at plain spaces; a number stays with its unit. */
    private static List<String> wrapped(String text, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
