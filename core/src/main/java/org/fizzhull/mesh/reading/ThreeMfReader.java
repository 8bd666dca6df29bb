package org.fizzhull.mesh.reading;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Reads a 3MF package: a ZIP archive (Open Packaging Conventions) whose relationships name the part that holds the model.
 * Nothing is unpacked but that part and the relationships; entries and what they blow up to are limited, a model part in
 * other files, an encrypted or a damaged archive is refused.
 */
final class ThreeMfReader {
    private static final String RELATIONSHIPS = "_rels/.rels";
    private static final String MODEL = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    private static final int MOST_ENTRIES = 10_000;

    /** Room for the text of four million facets, and what the relationships may take. */
    private static final long MOST_BYTES = 1L << 29;

    private static final long MOST_RELATIONSHIPS = 1L << 20;

    private final ByteBuffer bytes;
    private final String fileName;

    private ThreeMfReader(ByteBuffer bytes, String fileName) {
        this.bytes = bytes;
        this.fileName = fileName;
    }

    /** Reads the bytes of a whole archive. */
    static ThreeMfModel read(ByteBuffer bytes, String fileName) {
        try {
            return new ThreeMfReader(bytes, fileName).model();
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof IOException unpacking) {
                throw unpacked(unpacking, fileName);
            }
            throw refused(
                    "a model that is cut short, or no well-formed XML of a kind that is read",
                    "a model of the 3MF core specification",
                    "The file is damaged: copy or export it again.",
                    fileName,
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber()));
        } catch (IOException e) {
            throw unpacked(e, fileName);
        }
    }

    private static Refusal unpacked(IOException e, String fileName) {
        return e instanceof LimitedStream.TooMuch
                ? refused(
                        "an archive that unpacks to more than a body needs",
                        "up to " + MOST_BYTES / (1 << 20) + " MiB, as of " + StlReader.MOST_FACETS + " facets",
                        "Export with a coarser setting: 100 000 facets are plenty for a piece of this size.",
                        fileName,
                        0)
                : refused(
                        "an archive that is cut short, damaged or encrypted",
                        "a whole 3MF package",
                        "Copy or export the file again, without a password.",
                        fileName,
                        0);
    }

    private ThreeMfModel model() throws IOException, XMLStreamException {
        InputStream relationships = entry(RELATIONSHIPS, MOST_RELATIONSHIPS);
        String part = relationships == null ? null : target(relationships);
        if (part == null) {
            throw StlRefusals.notStl(
                    "a ZIP archive without a 3MF model", "Unpack it, and name the body in it.", fileName);
        }
        InputStream model = entry(part, MOST_BYTES);
        if (model == null) {
            throw refused(
                    "a package without its model, " + part, "a whole 3MF package", "Export it again.", fileName, 0);
        }
        return ThreeMfModel.read(model, fileName);
    }

    /** The entry of that name, unpacked as it is read; null where there is none. */
    private @Nullable InputStream entry(String name, long most) throws IOException {
        ZipInputStream zip = new ZipInputStream(new Bytes(bytes.duplicate().rewind()));
        long left = MOST_BYTES;
        for (int count = 0; count < MOST_ENTRIES; count++) {
            ZipEntry entry = next(zip);
            if (entry == null) {
                return null;
            }
            String here = entry.getName().startsWith("/") ? entry.getName().substring(1) : entry.getName();
            if (here.equalsIgnoreCase(name)) {
                return new LimitedStream(zip, most);
            }
            // an entry that is passed over is unpacked to find its end
            left -= new LimitedStream(zip, left).transferTo(OutputStream.nullOutputStream());
        }
        throw new ZipException("more than " + MOST_ENTRIES + " entries");
    }

    private static @Nullable ZipEntry next(ZipInputStream zip) throws IOException {
        try {
            return zip.getNextEntry();
        } catch (IllegalArgumentException e) { // a name that is no text
            throw new IOException(e);
        }
    }

    /** The part that the relationships name as the model, without a leading slash; null where they name none. */
    private static @Nullable String target(InputStream relationships) throws XMLStreamException {
        XMLStreamReader xml = ThreeMfModel.parser(relationships);
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("Relationship")) {
                String part = xml.getAttributeValue(null, "Target");
                if (MODEL.equals(xml.getAttributeValue(null, "Type")) && part != null) {
                    return part.startsWith("/") ? part.substring(1) : part;
                }
            }
        }
        return null;
    }

    static Refusal refused(String read, String allowed, String hint, String fileName, int line) {
        return new Refusal("3mf-unreadable", "3MF file", read, allowed, hint).at(fileName, line);
    }

    /** The bytes of a buffer as a stream. */
    private static final class Bytes extends InputStream {
        private final ByteBuffer left;

        Bytes(ByteBuffer left) {
            this.left = left;
        }

        @Override
        public int read() {
            return left.hasRemaining() ? left.get() & 0xff : -1;
        }

        @Override
        public int read(byte[] into, int from, int length) {
            int n = Math.min(length, left.remaining());
            left.get(into, from, n);
            return n > 0 || length == 0 ? n : -1;
        }
    }
}
