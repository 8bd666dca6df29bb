package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;

/** A channel over an array that gives at most a thousand bytes at a time, as channels may. */
final class ByteChannelOfArray implements SeekableByteChannel {
    private final byte[] bytes;
    private int at;

    ByteChannelOfArray(byte[] bytes) {
        this.bytes = bytes;
    }

    @Override
    public int read(ByteBuffer into) {
        if (at >= bytes.length) {
            return -1;
        }
        int length = Math.min(1000, Math.min(into.remaining(), bytes.length - at));
        into.put(bytes, at, length);
        at += length;
        return length;
    }

    @Override
    public int write(ByteBuffer from) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long position() {
        return at;
    }

    @Override
    public SeekableByteChannel position(long position) {
        at = (int) position;
        return this;
    }

    @Override
    public long size() {
        return bytes.length;
    }

    @Override
    public SeekableByteChannel truncate(long size) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public void close() {}
}
