package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;

/** A short table of a label and what it says, wrapped to a page that fits a small window. */
public final class Table {
    /** Columns of a plain terminal window. */
    public static final int WIDTH = 80;

    private static final String INDENT = "  ";
    private static final String GAP = "  ";

    private final List<String> labels = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();

    /** Adds a row. */
    public Table row(String label, String text) {
        labels.add(label);
        texts.add(text);
        return this;
    }

    /** The table with a line end after each line. */
    @Override
    public String toString() {
        int column = 0;
        for (String label : labels) {
            column = Math.max(column, label.length());
        }
        int at = INDENT.length() + column + GAP.length();
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < labels.size(); i++) {
            out.append(INDENT).append(labels.get(i));
            pad(out, column - labels.get(i).length());
            out.append(GAP);
            wrap(out, texts.get(i), at, at);
            out.append('\n');
        }
        return out.toString();
    }

    /** A paragraph wrapped to the page, with a line end. */
    public static String paragraph(String text) {
        StringBuilder out = new StringBuilder();
        wrap(out, text, 0, 0);
        return out.append('\n').toString();
    }

    /** Appends a wrapped paragraph that starts at a column. */
    public static void indented(StringBuilder out, int column, String text) {
        pad(out, column);
        wrap(out, text, column, column);
        out.append('\n');
    }

    /** Appends a wrapped paragraph to a line that stands at a column already. */
    public static void hanging(StringBuilder out, int column, String text) {
        wrap(out, text, column, column);
        out.append('\n');
    }

    /**
     * A text in which lines above the width are broken anew, with the lines that go on below them.
     *
     * @param text the text with other words in the same lines
     * @param wrapped the same as it was wrapped: it tells which lines of a paragraph go on with the one above
     */
    static String broken(String text, String wrapped) {
        StringBuilder out = new StringBuilder(text.length());
        String[] lines = text.split("\n", -1);
        String[] before = wrapped.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i];
            if (line.length() > WIDTH) {
                int column = column(line);
                StringBuilder whole = new StringBuilder(line.substring(column));
                while (i + 1 < lines.length
                        && (column > 0 ? goesOn(lines[i + 1], column) : wraps(before[i], before[i + 1]))) {
                    whole.append(' ').append(lines[++i].strip());
                }
                out.append(line, 0, column);
                wrap(out, whole.toString(), column, column);
            } else {
                out.append(line);
            }
            out.append(i + 1 < lines.length ? "\n" : "");
        }
        return out.toString();
    }

    /** Whether a line goes on with the one above: its first word did not fit there. */
    private static boolean wraps(String above, String line) {
        int word = line.indexOf(' ');
        return !line.isBlank()
                && !line.startsWith(INDENT)
                && above.length() + 1 + (word < 0 ? line.length() : word) > WIDTH;
    }

    /** Where the text of a row begins; 0 in a paragraph. */
    private static int column(String line) {
        int gap = line.startsWith(INDENT) ? line.indexOf(GAP, INDENT.length()) : 0;
        int at = gap < 0 ? INDENT.length() : gap;
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /** Whether a line is the next one of a row whose text begins at a column. */
    private static boolean goesOn(String line, int column) {
        return !line.isEmpty()
                && column(line) == column
                && line.substring(0, column).isBlank();
    }

    private static void wrap(StringBuilder out, String text, int start, int indent) {
        int at = start;
        int from = 0;
        while (from < text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            boolean first = from == 0;
            if (!first && at + 1 + to - from > WIDTH) {
                while (out.charAt(out.length() - 1) == ' ') {
                    out.setLength(out.length() - 1); // a gap before what is typed ends with its line
                }
                out.append('\n');
                pad(out, indent);
                at = indent;
            } else if (!first) {
                out.append(' ');
                at++;
            }
            out.append(text, from, to);
            at += to - from;
            from = to + 1;
        }
    }

    private static void pad(StringBuilder out, int count) {
        for (int i = 0; i < count; i++) {
            out.append(' ');
        }
    }
}
