package org.fizzhull.mesh.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Reads a 3MF package: a ZIP archive (Open Packaging Conventions) whose relationships name the part that holds the root
 * model. Nothing is unpacked but the relationships, that part and the parts of which it places objects; what they blow up
 * to is limited, an encrypted or a damaged archive is refused.
 */
final class ThreeMfReader {
    private static final String RELATIONSHIPS = "_rels/.rels";
    private static final String MODEL = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    private static final long MOST_RELATIONSHIPS = 1L << 20;

    private ThreeMfReader() {}

    /** Reads the bytes of a whole archive. */
    static ThreeMfModel read(ByteBuffer bytes, String fileName) {
        try {
            return model(new ZipParts(bytes), fileName);
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof IOException unpacking
                    && !(unpacking instanceof CharacterCodingException)) {
                throw unpacked(unpacking, fileName);
            }
            throw malformed(
                    fileName,
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber()));
        } catch (CharacterCodingException e) {
            throw malformed(fileName, 0);
        } catch (IOException e) {
            throw unpacked(e, fileName);
        }
    }

    private static Refusal malformed(String fileName, int line) {
        return refused(
                "a model that is cut short, or no well-formed XML in UTF-8 or UTF-16",
                "a model of the 3MF core specification",
                "The file is damaged: copy or export it again.",
                fileName,
                line);
    }

    private static Refusal unpacked(IOException e, String fileName) {
        return e instanceof ZipParts.TooMuch
                ? refused(
                        "an archive that unpacks to more than a body needs",
                        "up to " + ZipParts.MOST_BYTES / (1 << 20) + " MiB, as of " + StlReader.MOST_FACETS + " facets",
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

    private static ThreeMfModel model(ZipParts parts, String fileName) throws IOException, XMLStreamException {
        InputStream relationships = parts.open(RELATIONSHIPS, MOST_RELATIONSHIPS);
        String root = relationships == null ? null : target(relationships);
        if (root == null) {
            throw StlRefusals.notStl(
                    "a ZIP archive without a 3MF model", "Unpack it, and name the body in it.", fileName);
        }
        return ThreeMfModel.read(parts, root, fileName);
    }

    /** The part that the relationships name as the model; null where they name none. */
    private static @Nullable String target(InputStream relationships) throws IOException, XMLStreamException {
        XMLStreamReader xml = ThreeMfModel.parser(relationships);
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("Relationship")) {
                String part = xml.getAttributeValue(null, "Target");
                if (MODEL.equals(xml.getAttributeValue(null, "Type")) && part != null) {
                    return part;
                }
            }
        }
        return null;
    }

    static Refusal refused(String read, String allowed, String hint, String fileName, int line) {
        return new Refusal("3mf-unreadable", "3MF file", read, allowed, hint).at(fileName, line);
    }
}
