package org.fizzhull.text;

/**
 * What a message repeats of an input: on one line, of bounded length, and with every character visible. A control
 * character, one that changes the direction of text, and half of a surrogate pair are written as {@code \}{@code
 * u202E}: printed as they are they could move the cursor of a terminal, hide a part of a line or make an SVG no XML.
 */
public final class PrintableText {
    /** Most characters of an input that a message repeats. */
    public static final int LONGEST = 200;

    /** Mark at the end of a text that was cut. */
    private static final String MORE = "...";

    private PrintableText() {}

    /**
     * {@return the text as a message shows it, at most {@link #LONGEST} characters}
     *
     * @param text any text, however long
     */
    public static String of(String text) {
        return of(text, LONGEST);
    }

    /**
     * {@return the text as a message shows it, at most that many characters, the three points at its end included}
     *
     * @param text any text, however long
     * @param longest most characters of the result
     */
    public static String of(String text, int longest) {
        if (plain(text) && text.length() <= longest) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        // by code points, so that a character beyond the basic plane is kept or escaped whole
        for (int i = 0; i < text.length() && out.length() <= longest; ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\n' || c == '\r' || c == '\t') {
                out.append(' ');
            } else if (hidden(c)) {
                escaped(out, c);
            } else {
                out.appendCodePoint(c);
            }
        }
        if (out.length() <= longest) {
            return out.toString();
        }
        // never between the halves of a pair
        int end = longest - MORE.length();
        return out.substring(0, Character.isHighSurrogate(out.charAt(end - 1)) ? end - 1 : end) + MORE;
    }

    /**
     * {@return the index of the first character of a text that cannot be seen, blanks and line ends aside; -1 where
     * there is none}
     *
     * @param text any text
     */
    public static int hiddenAt(String text) {
        for (int i = 0; i < text.length(); ) {
            if (plain(text.charAt(i))) {
                i++;
                continue;
            }
            int c = text.codePointAt(i);
            if (c != '\n' && c != '\r' && c != '\t' && hidden(c)) {
                return i;
            }
            i += Character.charCount(c);
        }
        return -1;
    }

    /** Whether a text is printable ASCII alone: the usual case, which needs no copy. */
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!plain(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** Printable ASCII. */
    private static boolean plain(char c) {
        return c >= ' ' && c <= '~';
    }

    /** Controls, line separators, halves of pairs, no characters at all, and formats but for the joiners of scripts. */
    private static boolean hidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            case Character.FORMAT -> c != 0x200C && c != 0x200D;
            default -> (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        };
    }

    /** Writes a character by its number, as the Java language does. */
    private static void escaped(StringBuilder out, int c) {
        out.append(c > 0xFFFF ? "\\U" : "\\u");
        for (int shift = c > 0xFFFF ? 28 : 12; shift >= 0; shift -= 4) {
            out.append(Character.toUpperCase(Character.forDigit(c >> shift & 0xF, 16)));
        }
    }
}
