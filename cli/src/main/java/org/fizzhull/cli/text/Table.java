package org.fizzhull.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * A short table of a label and what it says, and paragraphs, wrapped to the width of a plain window. Where the width breaks a
 * line stands {@link #SOFT}, so that a text may be wrapped anew, for other units or on a page; {@link #plain} ends it.
 */
public final class Table {
    /** Columns of a plain terminal window. */
    static final int WIDTH = 80;

    /** Breaks a line for its width alone: Unicode's line separator, where the line feed parts rows and paragraphs. */
    static final char SOFT = '\u2028';

    private static final String INDENT = "  ";
    private static final String GAP = "  ";

    private static final Pattern BROKEN = Pattern.compile(SOFT + " *");

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

    /** A text for a window: its lines broken where the width breaks them, with plain spaces. */
    public static String plain(String text) {
        return NumberText.plain(text).replace(SOFT, '\n');
    }

    /** The lines of a text as a window shows them. */
    public static List<String> lines(String text) {
        return text.replace(SOFT, '\n').lines().toList();
    }

    /** A row or a paragraph in one line, as it was before the width broke it. */
    public static String whole(String line) {
        return line.indexOf(SOFT) < 0 ? line : BROKEN.matcher(line).replaceAll(" ");
    }

    /**
     * A row or a paragraph in other words.
     *
     * @param broken as the width broke it
     * @param words says a line in other words
     */
    static String reworded(String broken, UnaryOperator<String> words) {
        String line = words.apply(whole(broken));
        if (line.length() <= WIDTH) {
            return line;
        }
        int soft = broken.indexOf(SOFT);
        int column = soft < 0 ? column(line) : blanks(broken, soft + 1) - soft - 1;
        StringBuilder out = new StringBuilder(line.substring(0, column));
        wrap(out, line.substring(column), column, column);
        return out.toString();
    }

    /** Where the text of a row begins; 0 in a paragraph. */
    private static int column(String line) {
        int gap = line.startsWith(INDENT) ? line.indexOf(GAP, INDENT.length()) : 0;
        return blanks(line, gap < 0 ? INDENT.length() : gap);
    }

    /** The first place from another on that is not blank. */
    private static int blanks(String line, int from) {
        int at = from;
        while (at < line.length() && line.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /** Wider gaps within a line are kept, and end with it where it is broken there; what has no room at the column begins before it. */
    private static void wrap(StringBuilder out, String text, int start, int indent) {
        int at = start;
        int gap = 0;
        int from = 0;
        while (from < text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            if (from > 0 && to > from && at + gap + to - from > WIDTH) {
                out.append(SOFT);
                at = Math.min(indent, Math.max(INDENT.length(), WIDTH - (to - from)));
                pad(out, at);
            } else if (to > from) {
                pad(out, gap);
                at += gap;
            }
            if (to > from) {
                out.append(text, from, to);
                at += to - from;
                gap = 0;
            }
            gap++;
            from = to + 1;
        }
    }

    private static void pad(StringBuilder out, int count) {
        for (int i = 0; i < count; i++) {
            out.append(' ');
        }
    }
}
