package org.fizzhull.cli.page;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.text.Table;

/**
 * A part of a plain answer, read from its layout: text from the first column is prose, a line for each paragraph;
 * lines that start two blanks in are rows of a label and a text, items, or columns.
 *
 * @param kind what it is
 * @param rows its parts: one text of a paragraph or heading, label and text of a row, cells under their headers, the lines of columns
 */
record TextBlock(Kind kind, List<List<String>> rows) {
    enum Kind {
        PARAGRAPH,
        HEADING,
        ROWS,
        ITEMS,
        GRID,
        COLUMNS
    }

    private static final String MARGIN = "  ";

    /** Reads the parts of a text in their order. */
    static List<TextBlock> read(String text) {
        List<TextBlock> blocks = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (String broken : (text + "\n").split("\n", -1)) {
            String line = Table.whole(broken);
            boolean turns =
                    lines.isEmpty() || line.startsWith(MARGIN) != lines.get(0).startsWith(MARGIN);
            if (!lines.isEmpty() && (turns || line.isBlank())) {
                boolean above = line.startsWith(MARGIN) && !line.isBlank();
                blocks.addAll(lines.get(0).startsWith(MARGIN) ? List.of(indented(lines)) : prose(lines, above));
                lines.clear();
            }
            if (!line.isBlank()) {
                lines.add(line);
            }
        }
        return blocks;
    }

    /** Paragraphs; the last is a heading where rows follow at once. */
    private static List<TextBlock> prose(List<String> lines, boolean rowsFollow) {
        List<TextBlock> blocks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean heading = rowsFollow && i == lines.size() - 1;
            blocks.add(new TextBlock(heading ? Kind.HEADING : Kind.PARAGRAPH, List.of(List.of(lines.get(i)))));
        }
        return blocks;
    }

    private static TextBlock indented(List<String> lines) {
        int column = column(lines);
        if (column < 0) {
            List<List<String>> grid = grid(lines);
            if (!grid.isEmpty()) {
                return new TextBlock(Kind.GRID, grid);
            }
            return new TextBlock(Kind.COLUMNS, List.of(List.copyOf(lines)));
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        String label = "";
        for (String line : lines) {
            if (startsRow(line)) {
                if (!texts.isEmpty()) {
                    rows.add(row(label, texts));
                }
                texts.clear();
                label = column == 0 ? "" : line.substring(0, column).strip();
                texts.add(column == 0 ? line.substring(MARGIN.length()) : " ".repeat(column) + line.substring(column));
            } else {
                texts.add(line);
            }
        }
        rows.add(row(label, texts));
        return new TextBlock(column == 0 ? Kind.ITEMS : Kind.ROWS, rows);
    }

    /**
     * Rows of as many cells as the first has, two blanks or more between them; empty where a row has not so many.
     */
    private static List<List<String>> grid(List<String> lines) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : lines) {
            List<String> cells = new ArrayList<>(List.of(line.strip().split(" {2,}")));
            rows.add(cells);
            if (rows.get(rows.size() - 1).size() != rows.get(0).size()) {
                return List.of();
            }
        }
        return rows;
    }

    private static List<String> row(String label, List<String> texts) {
        List<String> row = new ArrayList<>(List.of(label));
        texts.forEach(text -> row.add(text.strip()));
        return row;
    }

    private static boolean startsRow(String line) {
        return line.length() > MARGIN.length() && line.charAt(MARGIN.length()) != ' ';
    }

    /** Where the texts of the rows start; 0 where the lines are items, -1 where they have more columns than two. */
    private static int column(List<String> lines) {
        int column = 0;
        boolean same = true;
        for (String line : lines) {
            if (!startsRow(line)) {
                continue;
            }
            int gap = line.indexOf(MARGIN, MARGIN.length());
            if (gap < 0) {
                same &= column == 0;
                continue;
            }
            int start = gap;
            while (start < line.length() && line.charAt(start) == ' ') {
                start++;
            }
            if (line.indexOf(MARGIN + " ", start) >= 0 || (column != 0 && column != start)) {
                return -1;
            }
            column = start;
        }
        for (String line : lines) {
            same &= column == 0
                    || (line.length() > column
                            && line.substring(column - 2, column).isBlank());
        }
        return same && startsRow(lines.get(0)) ? column : -1;
    }
}
