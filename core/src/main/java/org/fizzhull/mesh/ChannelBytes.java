package org.fizzhull.mesh;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;

/** A channel that its opener closes, read into one direct buffer again and again. */
final class ChannelBytes implements ByteSource {
    private final SeekableByteChannel channel;
    private final long size;
    private ByteBuffer room = ByteBuffer.allocate(0);

    ChannelBytes(SeekableByteChannel channel) throws IOException {
        this.channel = channel;
        size = channel.size();
    }

    @Override
    public long size() {
        return size;
    }

    @Override
    public ByteBuffer window(long position, int length) {
        if (room.capacity() < length) {
            room = ByteBuffer.allocateDirect(length);
        }
        room.clear().limit((int) Math.max(0, Math.min(length, size - position)));
        try {
            if (channel.position() != position) {
                channel.position(position);
            }
            int read = 0;
            while (room.hasRemaining() && read >= 0) {
                read = channel.read(room);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return room.flip();
    }
}
