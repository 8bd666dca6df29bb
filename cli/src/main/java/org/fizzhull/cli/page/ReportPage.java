package org.fizzhull.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.fizzhull.answer.body.Version;

/**
 * One answer as one self-contained page: the answer, its picture, rows, notes and cautions, what was asked, what stands
 * behind it. Prints on A4 and Letter, follows the light or dark of the reader, holds no script and loads nothing.
 */
public final class ReportPage {
    /** What every page says of itself. */
    public static final String NO_CERTIFICATE = "A forecast, not a test certificate.";

    private static final String TO_TICK = "[ ] ";
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");

    private final StringBuilder out = new StringBuilder(1 << 15);
    private final UnaryOperator<String> units;
    private int regions;

    private ReportPage(UnaryOperator<String> units) {
        this.units = units;
    }

    /**
     * The page.
     *
     * @param units turns texts into the units in which they are shown
     * @param question what the command answers, one line
     * @param answer the whole answer as plain text: sentences, rows, notes, cautions
     * @param picture an SVG document; empty where there is none
     * @param inputs name and value of each option that was given
     * @param behind figures, priors and sources as plain text
     */
    public static String of(
            UnaryOperator<String> units,
            String question,
            String answer,
            String picture,
            List<List<String>> inputs,
            String behind) {
        return new ReportPage(units).page(question, answer, picture, inputs, behind);
    }

    private String page(String question, String answer, String picture, List<List<String>> inputs, String behind) {
        String title = Character.toUpperCase(question.charAt(0)) + question.substring(1);
        List<TextBlock> blocks = TextBlock.read(answer);
        raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        text(title);
        raw("</title>\n<style>\n" + css()
                + "</style>\n</head>\n<body>\n<header>\n<p class=\"name\">fizzhull</p>\n<h1>");
        text(title);
        raw("</h1>\n<p class=\"lines\"><span>Date</span><span>Batch</span></p>\n</header>\n<main>\n");
        raw("<section>\n<h2 class=\"unseen\">Answer</h2>\n");
        int first = 0;
        while (first < blocks.size() && blocks.get(first).kind() == TextBlock.Kind.PARAGRAPH) {
            block(blocks.get(first), first == 0 ? "answer" : "");
            first++;
        }
        if (!picture.isEmpty()) {
            raw("<figure tabindex=\"0\">\n" + picture + "</figure>\n");
        }
        for (TextBlock block : blocks.subList(first, blocks.size())) {
            block(block, "");
        }
        List<TextBlock> figures = TextBlock.read(behind);
        if (!inputs.isEmpty()) {
            raw("</section>\n<section class=\"asked" + (figures.isEmpty() ? "" : " apart")
                    + "\">\n<h2>What was asked</h2>\n");
            rows(inputs);
        }
        if (!figures.isEmpty()) {
            raw("</section>\n<section class=\"behind\">\n<h2>Figures and sources</h2>\n");
        }
        for (TextBlock block : figures) {
            block(block, "");
        }
        raw("</section>\n</main>\n<footer>\n<p><strong>" + NO_CERTIFICATE + "</strong> Local rules and a qualified"
                + " assessor come first. fizzhull " + Version.TEXT + "</p>\n</footer>\n</body>\n</html>\n");
        return out.toString();
    }

    private void block(TextBlock block, String style) {
        List<List<String>> rows = block.rows();
        switch (block.kind()) {
            case PARAGRAPH -> paragraph(rows.get(0).get(0), style);
            case HEADING -> {
                raw("<h3>");
                text(rows.get(0).get(0));
                raw("</h3>\n");
            }
            case ROWS -> rows(rows);
            case ITEMS -> items(rows);
            case GRID -> grid(rows);
            case COLUMNS -> {
                raw("<pre tabindex=\"0\" role=\"region\" aria-label=\"Table " + ++regions + "\">");
                text(String.join("\n", rows.get(0)));
                raw("</pre>\n");
            }
        }
    }

    /** A paragraph whose first word ends in a colon, such as a caution, is set apart. */
    private void paragraph(String words, String style) {
        int colon = words.indexOf(": ");
        boolean marked = style.isEmpty() && colon > 0 && words.indexOf(' ') == colon + 1;
        raw(marked ? "<p class=\"marked\"><strong>" : style.isEmpty() ? "<p>" : "<p class=\"" + style + "\">");
        if (marked) {
            text(words.substring(0, colon + 1));
            raw("</strong>");
        }
        text(marked ? words.substring(colon + 1) : words);
        raw("</p>\n");
    }

    private void rows(List<List<String>> rows) {
        raw("<table>\n<tbody>\n");
        for (List<String> row : rows) {
            raw("<tr><th scope=\"row\">");
            text(row.get(0));
            raw("</th><td>");
            lines(row.subList(1, row.size()));
            raw("</td></tr>\n");
        }
        raw("</tbody>\n</table>\n");
    }

    /**
     * Columns under their headers. The last one names the row, so that long names end a line of plain text; here it leads and
     * stays in sight while a table wider than the screen is moved sideways.
     */
    private void grid(List<List<String>> rows) {
        raw("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"Table " + ++regions
                + "\">\n<table class=\"grid\">\n<thead>\n<tr>");
        for (String header : nameFirst(rows.get(0))) {
            cell("th scope=\"col\"", header);
        }
        raw("</tr>\n</thead>\n<tbody>\n");
        for (List<String> row : rows.subList(1, rows.size())) {
            List<String> cells = nameFirst(row);
            raw("<tr>");
            cell("th scope=\"row\"", cells.get(0));
            cells.subList(1, cells.size()).forEach(words -> cell("td", words));
            raw("</tr>\n");
        }
        raw("</tbody>\n</table>\n</div>\n");
    }

    private static List<String> nameFirst(List<String> cells) {
        List<String> turned = new ArrayList<>(cells);
        Collections.rotate(turned, 1);
        return turned;
    }

    private void cell(String tag, String words) {
        raw('<' + tag + '>');
        text(words);
        raw("</" + tag.substring(0, 2) + '>');
    }

    /** Items; one that opens with a box is a step to tick off. */
    private void items(List<List<String>> items) {
        raw("<ul>\n");
        for (List<String> item : items) {
            List<String> lines = new ArrayList<>(item.subList(1, item.size()));
            boolean step = lines.get(0).startsWith(TO_TICK);
            if (step) {
                lines.set(0, lines.get(0).substring(TO_TICK.length()));
            }
            raw(step ? "<li class=\"step\">" : "<li>");
            lines(lines);
            raw("</li>\n");
        }
        raw("</ul>\n");
    }

    private void lines(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            raw(i == 0 ? "" : "<br>");
            text(lines.get(i));
        }
    }

    private void raw(String html) {
        out.append(html);
    }

    /** Words as they stand; an option to type is not broken after its hyphens. */
    private void text(String words) {
        String safe = units.apply(words)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
        out.append(OPTION.matcher(safe).replaceAll("<span class=\"option\">$0</span>"));
    }

    private static String css() {
        try (InputStream in = ReportPage.class.getResourceAsStream("/org/fizzhull/cli/page/page.css")) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks page.css");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
