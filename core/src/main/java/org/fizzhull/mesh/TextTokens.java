package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Words of a plain text, with their lines. Any run of bytes up to the space character parts words; a line ends with LF,
 * CR or both.
 */
final class TextTokens {
    private static final int WINDOW = 1 << 16;
    private static final int LONGEST = 64;

    private final ByteSource bytes;
    private ByteBuffer window;
    private long at;
    private int line = 1;
    private boolean afterCarriageReturn;
    private final byte[] word = new byte[LONGEST];
    private int length;
    private int wordLine;

    TextTokens(ByteSource bytes, long from) {
        this.bytes = bytes;
        at = from;
        window = bytes.window(from, WINDOW);
    }

    /** Moves to the next word; false at the end of the text. */
    boolean next() {
        int b = read();
        while (b >= 0 && b <= ' ') {
            b = read();
        }
        length = 0;
        wordLine = line;
        while (b > ' ') {
            if (length < LONGEST) {
                word[length] = (byte) b;
            }
            length++;
            b = read();
        }
        return length > 0;
    }

    /** One byte; line ends are counted when the byte after them is read, so that a word keeps its own line. */
    private int read() {
        if (!window.hasRemaining()) {
            window = bytes.window(at, WINDOW);
            if (!window.hasRemaining()) {
                return -1;
            }
        }
        at++;
        int b = window.get() & 0xff;
        if ((b == '\n' && !afterCarriageReturn) || b == '\r') {
            line++;
        }
        afterCarriageReturn = b == '\r';
        return b;
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
        return length > LONGEST ? Double.NaN : DecimalNumber.parse(word, length);
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
