package org.fizzhull.mesh;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;

/**
 * Bytes of a file, looked at through windows: a buffer that is there as a whole, or a file that its opener reads piece by
 * piece, which for large files is faster than a mapped one and needs less memory.
 */
public interface ByteSource {
    /** Number of bytes. */
    long size();

    /**
     * Bytes from {@code position} on, {@code length} of them or as many as there are, from position 0 to the limit of a
     * buffer whose byte order the caller sets. The window may be overwritten by the next call.
     */
    ByteBuffer window(long position, int length);

    /** The bytes between a buffer's position and its limit; the buffer is left as it is. */
    static ByteSource of(ByteBuffer buffer) {
        ByteBuffer bytes = buffer.slice();
        return new ByteSource() {
            @Override
            public long size() {
                return bytes.limit();
            }

            @Override
            public ByteBuffer window(long position, int length) {
                int from = (int) Math.min(position, bytes.limit());
                return bytes.slice(from, Math.min(length, bytes.limit() - from)).order(ByteOrder.LITTLE_ENDIAN);
            }
        };
    }

    /**
     * An open channel, read from the beginning, which its opener closes; a failure to read is an
     * {@link java.io.UncheckedIOException}.
     */
    static ByteSource of(SeekableByteChannel channel) throws IOException {
        return new ChannelBytes(channel);
    }
}
