package org.fizzhull.cli.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * Lines of an input, as bytes without their line feed. A line above the limit is passed over to its end and told as too
 * long, so that the memory in use is bounded by the limit whatever comes in. Not thread-safe.
 */
final class RequestLines {
    private final InputStream in;
    private final int longest;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int end;

    /**
     * @param in is read to its end; not closed
     * @param longest bytes that a line may have, the line feed not counted
     */
    RequestLines(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /**
     * A line.
     *
     * @param bytes what stands in it; the first bytes only where it is too long
     * @param tooLong whether it is longer than a line may be
     */
    record Line(byte[] bytes, boolean tooLong) {}

    /** The next line; empty at the end of the input. A last line without a line feed counts. */
    Optional<Line> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(256);
        boolean tooLong = false;
        while (fill()) {
            int stop = at;
            while (stop < end && buffer[stop] != '\n') {
                stop++;
            }
            int room = longest - line.size();
            tooLong |= stop - at > room;
            line.write(buffer, at, Math.min(stop - at, room));
            boolean whole = stop < end;
            at = whole ? stop + 1 : stop;
            if (whole) {
                return Optional.of(new Line(line.toByteArray(), tooLong));
            }
        }
        return line.size() == 0 ? Optional.empty() : Optional.of(new Line(line.toByteArray(), tooLong));
    }

    private boolean fill() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(buffer));
        }
        return at < end;
    }
}
