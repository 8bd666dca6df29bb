package org.fizzhull.mesh.reading;

import java.io.Reader;
import java.nio.ByteBuffer;

/**
 * The bytes of a buffer as characters of the same numbers. A word of more than 1000 bytes, which no format has, is broken
 * up, so that a file that is no text does not become one word.
 */
final class TextBytes extends Reader {
    private static final int LONGEST = 1000;

    private final ByteBuffer left;
    private int length;

    /** From the position of a buffer, which moves on. */
    TextBytes(ByteBuffer bytes) {
        left = bytes;
    }

    @Override
    public int read() {
        if (!left.hasRemaining()) {
            return -1;
        }
        if (length == LONGEST) {
            length = 0;
            return ' ';
        }
        int b = left.get() & 0xff;
        length = b <= ' ' ? 0 : length + 1;
        return b;
    }

    @Override
    public int read(char[] into, int from, int most) {
        int n = 0;
        for (int b = most > 0 ? read() : -1; b >= 0; b = n < most ? read() : -1) {
            into[from + n++] = (char) b;
        }
        return n > 0 || most == 0 ? n : -1;
    }

    /** Nothing of its own is open. */
    @Override
    public void close() {
        // nothing is open
    }
}
