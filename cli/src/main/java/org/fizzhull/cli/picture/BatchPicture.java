package org.fizzhull.cli.picture;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.text.BatchNeeds;
import org.fizzhull.cli.text.BatchPlan;
import org.fizzhull.cli.text.BatchText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.evidence.Notice;
import org.fizzhull.recipe.Batch;
import org.fizzhull.recipe.MixingStep;

/**
 * A batch as a page to pin to the wall: amounts and steps with a box to tick for every mix, cautions where the action is,
 * the rack from above to scale. As wide as a sheet of A4 at 96 pixels an inch; long recipes make it longer.
 */
public final class BatchPicture {
    private static final double WIDTH = 794;
    private static final double SHEET = 1123;
    private static final double LEFT = 48;
    private static final double RIGHT = WIDTH - 48;

    /** More mixes than this share one box. */
    private static final int MOST_BOXES = 8;

    /** What matters beside the bowl; the command tells the others. */
    private static final List<String> ON_THE_WALL = List.of(
            "above-limit",
            "assumed-ingredient",
            "crumbles",
            "too-wet",
            "press-at-once",
            "sealed-jars-burst",
            "jar-pressure",
            "too-hot",
            "alcohol-burns");

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
    private double y = 64;

    private BatchPicture(BatchPlan plan, double height) {
        this.plan = plan;
        boxes = plan.batch().mixes() > MOST_BOXES ? 1 : plan.batch().mixes();
        svg = new Svg(WIDTH, height, plan.recipe().name(), BatchText.sentence(plan));
        svg.rect(0, 0, WIDTH, height, "fill=\"#fff\"");
    }

    /** The SVG document. */
    public static String of(BatchPlan plan) {
        double needed = new BatchPicture(plan, SHEET).drawn();
        BatchPicture page = new BatchPicture(plan, Math.max(SHEET, needed));
        page.drawn();
        return page.svg.document();
    }

    /** Draws everything and returns where it ends. */
    private double drawn() {
        svg.text(LEFT, y, BOLD + " font-size=\"28\"", plan.recipe().name());
        y += 28;
        String piece = ShapeWords.piece(plan.shape());
        String first = Character.toUpperCase(piece.charAt(0)) + piece.substring(1) + ". ";
        lines(LEFT, WORDS + " font-size=\"15\"", first + BatchText.sentence(plan), 88, 20);
        amounts();
        steps();
        needs();
        y = RackDrawing.draw(svg, plan, LEFT, y + 14, RIGHT - LEFT) + 8;
        cautions();
        return y + 24;
    }

    private void amounts() {
        Batch batch = plan.batch();
        heading(BatchText.weighIn(batch));
        for (Batch.Line line : batch.lines()) {
            boxes();
            double x = LEFT + boxes * STEP + 8;
            svg.text(x + 72, y, BOLD + " font-size=\"17\" text-anchor=\"end\"", BatchNeeds.weighed(line.mass()));
            svg.text(x + 86, y, WORDS + " font-size=\"17\"", line.ingredient().name());
            svg.text(RIGHT, y, GREY + " text-anchor=\"end\"", line.spoons());
            y += 9;
            svg.line(LEFT, y, RIGHT, y, "stroke=\"#ececec\" stroke-width=\"1\"");
            y += 19;
        }
    }

    private void steps() {
        heading("Order of mixing");
        for (MixingStep step : plan.steps()) {
            boxes();
            double x = LEFT + boxes * STEP + 8;
            lines(x, WORDS + " font-size=\"15\"", BatchText.line(step, plan), (int) ((RIGHT - x) / 7.6), 20);
            if (!step.caution().isEmpty()) {
                lines(x, CAUTION, "Caution: " + step.caution(), (int) ((RIGHT - x) / 6.6), 18);
            }
            if (step.mayStop()) {
                svg.line(x, y - 5, x + 60, y - 5, RULE + " stroke-dasharray=\"4 4\"");
                svg.text(x + 70, y - 1, GREY, "you may stop here");
                svg.line(x + 200, y - 5, RIGHT, y - 5, RULE + " stroke-dasharray=\"4 4\"");
                y += 20;
            }
            y += 6;
        }
    }

    private void needs() {
        heading("It takes");
        for (String[] row : BatchNeeds.rows(plan)) {
            svg.text(LEFT, y, GREY, row[0]);
            lines(LEFT + 90, WORDS, row[1], 85, 19);
        }
    }

    private void cautions() {
        heading("Mind");
        for (String caution : BatchNeeds.cautions(plan)) {
            lines(LEFT, CAUTION, caution, 104, 18);
        }
        for (Notice notice : plan.notices()) {
            if (ON_THE_WALL.contains(notice.code())) {
                lines(LEFT, CAUTION, notice.text(), 104, 18);
            }
        }
    }

    /** One box for each mix in front of a line, numbered over the first line. */
    private void boxes() {
        for (int i = 0; i < boxes; i++) {
            svg.rect(LEFT + i * STEP, y - BOX + 2, BOX, BOX, "fill=\"#fff\" stroke=\"#444\" stroke-width=\"1.2\"");
        }
    }

    private void heading(String text) {
        y += 16;
        svg.line(LEFT, y, RIGHT, y, RULE);
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
