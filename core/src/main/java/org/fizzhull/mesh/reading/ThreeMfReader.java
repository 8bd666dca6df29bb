package org.fizzhull.mesh.reading;

import java.io.ByteArrayInputStream;
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

    private final byte[] archive;
    private final FileRefusals refusals;

    private ThreeMfReader(byte[] archive, FileRefusals refusals) {
        this.archive = archive;
        this.refusals = refusals;
    }

    /** Reads a whole archive, from byte 0 of a buffer to its limit. */
    static FacetFile read(ByteBuffer bytes, FileRefusals refusals) {
        byte[] archive = new byte[bytes.limit()];
        bytes.get(0, archive);
        try {
            return new ThreeMfReader(archive, refusals).model();
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof IOException unpacking) {
                throw unpacked(unpacking, refusals);
            }
            throw refusals.unreadable(
                    "a model that is cut short, or no well-formed XML of a kind that is read",
                    "a model of the 3MF core specification",
                    "The file is damaged: copy or export it again.",
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber()));
        } catch (IOException e) {
            throw unpacked(e, refusals);
        }
    }

    private static Refusal unpacked(IOException e, FileRefusals refusals) {
        return e instanceof LimitedStream.TooMuch
                ? refusals.unpacksToMore(MOST_BYTES / (1 << 20))
                : refusals.unreadable(
                        "an archive that is cut short, damaged or encrypted",
                        "a whole 3MF package",
                        "Copy or export the file again, without a password.",
                        0);
    }

    private FacetFile model() throws IOException, XMLStreamException {
        InputStream relationships = entry(RELATIONSHIPS, MOST_RELATIONSHIPS);
        String part = relationships == null ? null : target(relationships);
        if (part == null) {
            throw refusals.notStl("a ZIP archive without a 3MF model", "Unpack it, and name the body in it.");
        }
        InputStream model = entry(part, MOST_BYTES);
        if (model == null) {
            throw refusals.unreadable(
                    "a package without its model, " + part, "a whole 3MF package", "Export it again.", 0);
        }
        return ThreeMfModel.read(model, refusals);
    }

    /** The entry of that name, unpacked as it is read; null where there is none. */
    private @Nullable InputStream entry(String name, long most) throws IOException {
        ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive));
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
}
