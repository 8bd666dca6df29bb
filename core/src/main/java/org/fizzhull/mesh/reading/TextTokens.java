package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Words of a plain text, with their lines. Any run of bytes up to the space character parts words; a line ends with LF,
 * CR or both.
 */
final class TextTokens {
    private static final int LONGEST = 64;

    private final ByteBuffer bytes;
    private int position;
    private int line = 1;
    private boolean afterCarriageReturn;
    private final byte[] word = new byte[LONGEST];
    private int length;
    private int wordLine;

    /** The words of some bytes from an index on. */
    TextTokens(ByteBuffer bytes, int from) {
        this.bytes = bytes;
        position = from;
    }

    /** Moves to the next word; false at the end of the text. */
    boolean next() {
        boolean more = toWord();
        length = 0;
        wordLine = line;
        while (more && position < bytes.limit()) {
            byte b = bytes.get(position);
            if (b <= ' ' && b >= 0) {
                return true;
            }
            if (length < LONGEST) {
                word[length] = b;
            }
            length++;
            position++;
        }
        return length > 0;
    }

    /** Skips blanks, counting line ends; false at the end of the text. */
    private boolean toWord() {
        while (position < bytes.limit()) {
            int b = bytes.get(position);
            if (b > ' ' || b < 0) {
                afterCarriageReturn = false;
                return true;
            }
            if ((b == '\n' && !afterCarriageReturn) || b == '\r') {
                line++;
            }
            afterCarriageReturn = b == '\r';
            position++;
        }
        return false;
    }

    /** Line of the word, from 1. */
    int line() {
        return wordLine;
    }

    /** Whether the word is this one, written in small letters here, in any case there. */
    boolean is(String small) {
        if (length != small.length()) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            int b = word[i];
            if ((b >= 'A' && b <= 'Z' ? b + 32 : b) != small.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** The word as text, cut after 64 bytes. */
    String text() {
        String text = new String(word, 0, Math.min(length, LONGEST), StandardCharsets.UTF_8);
        return length > LONGEST ? text + "..." : text;
    }

    /** The word as a number; NaN where it is none, or is too long to be one. */
    double number() {
        return length > LONGEST ? Double.NaN : ModelNumber.decimal(text());
    }

    /** Whether the word holds this byte. */
    boolean holds(char sought) {
        for (int i = 0; i < Math.min(length, LONGEST); i++) {
            if (word[i] == sought) {
                return true;
            }
        }
        return false;
    }
}
