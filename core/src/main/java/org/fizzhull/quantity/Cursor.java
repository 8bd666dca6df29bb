package org.fizzhull.quantity;

/**
 * A place in a text, which the readers of this package move along. The text is made plain first: any run of spaces to
 * one space, none at the ends; the typographic minus to a hyphen; the fraction stroke to a slash; a raised 3 to 3; the
 * one-character signs for degrees Celsius and Fahrenheit to two characters. Everything else stays as it was written.
 * Not for use by several threads.
 */
final class Cursor {
    /** The text made plain. */
    final String text;
    /** Index of the next character. */
    int at;

    Cursor(String written) {
        this.text = plain(written);
    }

    /** Every kind of space to one space, typographic minus, fraction stroke and raised 3 to their plain forms. */
    private static String plain(String written) {
        StringBuilder out = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            // a space only after something and not after another space
            if (c == '\t' || Character.isSpaceChar(c)) {
                if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
                    out.append(' ');
                }
            } else {
                switch (c) {
                    case '\u2212' -> out.append('-');
                    case '\u2044' -> out.append('/');
                    case '\u00b3' -> out.append('3');
                    case '\u2103' -> out.append("°C");
                    case '\u2109' -> out.append("°F");
                    default -> out.append(c);
                }
            }
        }
        int end = out.length();
        return out.substring(0, end > 0 && out.charAt(end - 1) == ' ' ? end - 1 : end);
    }

    /** Skips a space; whether nothing follows. */
    boolean atEnd() {
        if (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at == text.length();
    }

    /** The character here, or NUL at the end. */
    char here() {
        return ahead(0);
    }

    /** The character some places on, or NUL beyond the end. */
    char ahead(int places) {
        return at + places < text.length() ? text.charAt(at + places) : 0;
    }

    /** Moves past a sign where it stands here. */
    boolean take(String sign) {
        if (text.startsWith(sign, at)) {
            at += sign.length();
            return true;
        }
        return false;
    }

    /** Whether this word stands here and does not go on as a longer one. */
    boolean startsWord(String word) {
        return text.startsWith(word, at) && !Character.isLetter(ahead(word.length()));
    }

    /** What was passed so far, without blanks around it. */
    String before() {
        return text.substring(0, at).trim();
    }

    /** What is still to come. */
    String rest() {
        return text.substring(at);
    }

    /** What is still to come up to the next space. */
    String word() {
        int end = text.indexOf(' ', at);
        return end < 0 ? rest() : text.substring(at, end);
    }

    /** Whether a character is one of 0 to 9; figures of other scripts are none. */
    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
