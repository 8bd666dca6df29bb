package org.fizzhull.mesh.reading;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes that come out of an archive, up to a limit: what a few packed bytes blow up to must not fill the memory. */
final class LimitedStream extends FilterInputStream {
    /** More came out than was allowed. */
    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1;
    }

    private long left;

    /** At most so many bytes of a stream. */
    LimitedStream(InputStream in, long most) {
        super(in);
        left = most;
    }

    @Override
    public int read() throws IOException {
        int b = super.read();
        count(b < 0 ? 0 : 1);
        return b;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int n = super.read(into, from, length);
        count(n);
        return n;
    }

    private void count(long n) throws IOException {
        left -= Math.max(0, n);
        if (left < 0) {
            throw new TooMuch();
        }
    }

    /** Reads what it passes over, so that it counts. */
    @Override
    public long skip(long n) throws IOException {
        return readNBytes((int) Math.min(n, 1 << 13)).length;
    }

    /** Leaves the archive open: the reader goes on to the next entry. */
    @Override
    public void close() {
        // nothing of its own is open
    }
}
