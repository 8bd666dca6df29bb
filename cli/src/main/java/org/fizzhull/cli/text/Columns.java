package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;

/** A table of several columns with a heading; the last column is free text and stands alone on its right. */
public final class Columns {
    private static final String INDENT = "  ";
    private static final String GAP = "  ";

    /** Room on the right, in characters, below which a free text that does not fit goes on a line of its own. */
    private static final int NARROW = 16;

    /** Where that line begins. */
    private static final int BELOW = 10;

    private final List<List<String>> rows = new ArrayList<>();

    /** Of these headings; a column whose heading is empty is left out. */
    public Columns(List<String> headings) {
        rows.add(headings);
    }

    /** Adds a row of as many cells as there are headings. */
    public void row(List<String> cells) {
        rows.add(cells);
    }

    /** A line for each row, the heading first, without line ends; a free text that is too long goes on below itself, or below its row. */
    public List<String> lines() {
        List<String> headings = rows.get(0);
        List<String> lines = new ArrayList<>(rows.size());
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(INDENT);
            for (int i = 0; i < headings.size(); i++) {
                if (headings.get(i).isEmpty()) {
                    continue;
                }
                if (i + 1 == headings.size()) {
                    int room = Table.WIDTH - line.length();
                    if (room < NARROW && row.get(i).length() > room) {
                        line.setLength(line.toString().stripTrailing().length());
                        line.append(Table.SOFT).append(" ".repeat(BELOW));
                        Table.hanging(line, BELOW, row.get(i));
                    } else {
                        Table.hanging(line, line.length(), row.get(i));
                    }
                } else {
                    line.append(row.get(i));
                    line.append(" ".repeat(width(i) - row.get(i).length())).append(GAP);
                }
            }
            lines.add(NumberText.plain(line.toString()).stripTrailing());
        }
        return lines;
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
