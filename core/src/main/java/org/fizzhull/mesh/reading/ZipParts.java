package org.fizzhull.mesh.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a ZIP archive in memory, found by the directory at its end (ISO/IEC 21320-1, with the layout of the ZIP
 * application note, section 4.3; from memory). The JDK reads that directory only in files, and this library opens none;
 * its reader of streams goes without it, and cannot pass over a part that is stored with its length behind it, as many
 * programs store pictures beside a model. What all parts together unpack to is limited. Not thread-safe.
 */
final class ZipParts {
    /** Most bytes that the parts may unpack to, room for the text of four million facets. */
    static final long MOST_BYTES = 1L << 29;

    private static final int END_SIGNATURE = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int MOST_COMMENT = 0xFFFF;
    private static final int ENTRY_SIGNATURE = 0x02014b50;
    private static final int ENTRY_LENGTH = 46;
    private static final int LOCAL_SIGNATURE = 0x04034b50;
    private static final int LOCAL_LENGTH = 30;
    private static final int STORED = 0;
    private static final int DEFLATED = 8;

    /** Where an entry is, and how it is packed. */
    private record Entry(boolean encrypted, int method, long checksum, long packed, long header) {}

    private final ByteBuffer bytes;
    private final Map<String, Entry> entries = new HashMap<>();
    private long left = MOST_BYTES;

    /** @throws IOException for bytes that are no whole archive */
    ZipParts(ByteBuffer archive) throws IOException {
        bytes = archive.slice().order(ByteOrder.LITTLE_ENDIAN);
        try {
            int end = end();
            int at = bytes.getInt(end + 16);
            for (int count = unsigned(end + 10); count > 0; count--) {
                at = entry(at);
            }
        } catch (IndexOutOfBoundsException e) {
            throw new ZipException("a directory that points outside the archive");
        }
    }

    /** Position of the record that ends the archive; a comment may follow it. */
    private int end() throws ZipException {
        int last = bytes.limit() - END_LENGTH;
        for (int at = last; at >= Math.max(0, last - MOST_COMMENT); at--) {
            if (bytes.getInt(at) == END_SIGNATURE && at + END_LENGTH + unsigned(at + 20) <= bytes.limit()) {
                return at;
            }
        }
        throw new ZipException("no directory at the end");
    }

    /** Reads the entry of the directory at a position; returns that of the next. */
    private int entry(int at) throws ZipException {
        if (bytes.getInt(at) != ENTRY_SIGNATURE) {
            throw new ZipException("no entry where the directory has one");
        }
        byte[] name = new byte[unsigned(at + 28)];
        bytes.get(at + ENTRY_LENGTH, name);
        Entry entry = new Entry(
                (unsigned(at + 8) & 1) != 0,
                unsigned(at + 10),
                Integer.toUnsignedLong(bytes.getInt(at + 16)),
                Integer.toUnsignedLong(bytes.getInt(at + 20)),
                Integer.toUnsignedLong(bytes.getInt(at + 42)));
        entries.put(key(new String(name, StandardCharsets.UTF_8)), entry);
        return at + ENTRY_LENGTH + name.length + unsigned(at + 30) + unsigned(at + 32);
    }

    /**
     * The bytes of a part, unpacked as they are read; null where there is none of that name. Names of parts begin with a
     * slash or not, and their case does not count (Open Packaging Conventions, ECMA-376-2).
     *
     * @param most most bytes that it may unpack to
     * @throws IOException while it is read too: {@link TooMuch} above the limits, others for damage
     */
    @Nullable
    InputStream open(String name, long most) throws IOException {
        Entry entry = entries.get(key(name));
        if (entry == null) {
            return null;
        }
        try {
            int header = Math.toIntExact(entry.header);
            boolean known = entry.method == STORED || entry.method == DEFLATED;
            if (entry.encrypted || !known || bytes.getInt(header) != LOCAL_SIGNATURE) {
                throw new ZipException("an entry that is encrypted, packed in an unusual way, or not there");
            }
            int begin = header + LOCAL_LENGTH + unsigned(header + 26) + unsigned(header + 28);
            return new Part(bytes.slice(begin, Math.toIntExact(entry.packed)), entry, most);
        } catch (IndexOutOfBoundsException | ArithmeticException e) {
            throw new ZipException("an entry that reaches beyond the archive");
        }
    }

    private static String key(String name) {
        return (name.startsWith("/") ? name.substring(1) : name).toLowerCase(Locale.ROOT);
    }

    private int unsigned(int at) {
        return Short.toUnsignedInt(bytes.getShort(at));
    }

    /** More came out of an archive than is allowed: what a few packed bytes blow up to must not fill the memory. */
    static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1;
    }

    /** One part, unpacked and counted; its checksum is compared at its end. */
    private final class Part extends InputStream {
        private final ByteBuffer packed;
        private final @Nullable Inflater inflater;
        private final CRC32 checksum = new CRC32();
        private final long expected;
        private long most;

        Part(ByteBuffer packed, Entry entry, long most) {
            this.packed = packed;
            this.most = most;
            expected = entry.checksum;
            inflater = entry.method == DEFLATED ? new Inflater(true) : null;
            if (inflater != null) {
                inflater.setInput(packed);
            }
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int n = length == 0 ? 0 : unpack(into, from, length);
            if (n < 0 && checksum.getValue() != expected) {
                throw new ZipException("a part whose checksum is another");
            }
            checksum.update(into, from, Math.max(0, n));
            most -= Math.max(0, n);
            left -= Math.max(0, n);
            if (most < 0 || left < 0) {
                throw new TooMuch();
            }
            return n;
        }

        /** Number of bytes, at least one; -1 at the end. */
        private int unpack(byte[] into, int from, int length) throws IOException {
            if (inflater == null) {
                int n = Math.min(length, packed.remaining());
                packed.get(into, from, n);
                return n > 0 ? n : -1;
            }
            try {
                int n = inflater.inflate(into, from, length);
                if (n == 0 && !inflater.finished()) {
                    throw new ZipException("a part that is cut short");
                }
                return n > 0 ? n : -1;
            } catch (DataFormatException e) {
                throw new ZipException("a part that is damaged");
            }
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }
    }
}
