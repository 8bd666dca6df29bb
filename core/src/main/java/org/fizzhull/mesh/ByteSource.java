package org.fizzhull.mesh;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;

/** Bytes of a file, looked at through windows: a buffer that is there as a whole, or a channel read piece by piece. */
interface ByteSource {
    /** Number of bytes. */
    long size();

    /**
     * Bytes from {@code position} on, little-endian, {@code length} of them or as many as there are. The window may be
     * overwritten by the next call.
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

    /** All bytes of an open channel, which stays open. */
    static ByteSource of(SeekableByteChannel channel) {
        long size;
        try {
            size = channel.size();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return new Windows(channel, size);
    }

    /** Reads a channel into one direct buffer again and again: cheaper than touching every page of a mapped file. */
    final class Windows implements ByteSource {
        private final SeekableByteChannel channel;
        private final long size;
        private ByteBuffer room = ByteBuffer.allocate(0);
        private long next = -1;

        private Windows(SeekableByteChannel channel, long size) {
            this.channel = channel;
            this.size = size;
        }

        @Override
        public long size() {
            return size;
        }

        @Override
        public ByteBuffer window(long position, int length) {
            if (room.capacity() < length) {
                room = ByteBuffer.allocateDirect(length).order(ByteOrder.LITTLE_ENDIAN);
            }
            room.clear().limit((int) Math.max(0, Math.min(length, size - position)));
            try {
                if (position != next) {
                    channel.position(position);
                }
                int read = 0;
                while (room.hasRemaining() && read >= 0) {
                    read = channel.read(room);
                }
                next = position + room.position();
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
            return room.flip();
        }
    }
}
