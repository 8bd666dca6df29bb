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
    static FacetFile read(ByteBuffer bytes, FileRefusals refusals) {
        try {
            return model(new ZipParts(bytes), refusals);
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof IOException unpacking
                    && !(unpacking instanceof CharacterCodingException)) {
                throw unpacked(unpacking, refusals);
            }
            throw malformed(
                    refusals,
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber()));
        } catch (CharacterCodingException e) {
            throw malformed(refusals, 0);
        } catch (IOException e) {
            throw unpacked(e, refusals);
        }
    }

    private static Refusal malformed(FileRefusals refusals, int line) {
        return refusals.unreadable(
                "a model that is cut short, or no well-formed XML in UTF-8 or UTF-16",
                "a model of the 3MF core specification",
                "The file is damaged: copy or export it again.",
                line);
    }

    private static Refusal unpacked(IOException e, FileRefusals refusals) {
        return e instanceof ZipParts.TooMuch
                ? refusals.unpacksToMore(ZipParts.MOST_BYTES / (1 << 20))
                : refusals.unreadable(
                        "an archive that is cut short, damaged or encrypted",
                        "a whole 3MF package",
                        "Copy or export the file again, without a password.",
                        0);
    }

    private static FacetFile model(ZipParts parts, FileRefusals refusals) throws IOException, XMLStreamException {
        InputStream relationships = parts.open(RELATIONSHIPS, MOST_RELATIONSHIPS);
        String root = relationships == null ? null : target(relationships);
        if (root == null) {
            throw refusals.notStl("a ZIP archive without a 3MF model", "Unpack it, and name the body in it.");
        }
        return ThreeMfModel.read(parts, root, refusals);
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
}
