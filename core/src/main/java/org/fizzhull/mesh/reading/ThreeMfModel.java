package org.fizzhull.mesh.reading;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A model part of a 3MF package: objects of triangles or of other objects, and in the root model the items that are built,
 * each placed. What the root places from other parts of the package is read when it is met. What is not made (supports,
 * loose surfaces) is left out and told; colours and other properties are passed over; what would change the form and is
 * not known here is refused. XML by the JDK's streaming parser, without document types and outside entities (3MF Core
 * Specification 1.3, chapters 3 and 4; 3MF Production Extension 1.1, chapter 3: https://3mf.io/spec/).
 */
final class ThreeMfModel {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private static final String PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";

    /** Extensions that leave the form of a body as it is: colours, objects in other parts, sets of triangles. */
    private static final Set<String> HARMLESS = Set.of(
            CORE,
            "http://schemas.microsoft.com/3dmanufacturing/material/2015/02",
            PRODUCTION,
            "http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07");

    private static final Map<String, Unit> UNITS = Map.of(
            "micron", Unit.MICROMETRE,
            "millimeter", Unit.MILLIMETRE,
            "centimeter", Unit.CENTIMETRE,
            "inch", Unit.INCH,
            "foot", Unit.FOOT,
            "meter", Unit.METRE);

    private static final String AGAIN = "Export the body again.";

    private final ZipParts parts;
    private final FileRefusals refusals;
    private final XMLStreamReader xml;

    /** The root model; this one itself, where it is the root. */
    private final ThreeMfModel root;

    /** Parts that the root places objects from, by the path it names. */
    private final Map<String, ThreeMfModel> others = new HashMap<>();

    private final Map<String, ModelObject> objects = new HashMap<>();
    private final VertexWeld weld = new VertexWeld();
    private Unit unit = Unit.MILLIMETRE;

    /** Triangles that were read from all parts, and those of objects placed in others; of the root. */
    private long facets;

    private long placed;
    private int leftOut;

    private ThreeMfModel(ZipParts parts, InputStream in, FileRefusals refusals, @Nullable ThreeMfModel root)
            throws IOException, XMLStreamException {
        this.parts = parts;
        this.refusals = refusals;
        this.root = root == null ? this : root;
        xml = parser(in);
    }

    /** A parser without document types, outside entities and the replacement of any. */
    static XMLStreamReader parser(InputStream in) throws IOException, XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        return factory.createXMLStreamReader(text(in));
    }

    /**
     * The characters of a part, UTF-8 or UTF-16 (ECMA-376-2). Bytes that are neither are an error here; left to find it, the
     * JDK's parser would write it to the standard error stream as well.
     */
    private static Reader text(InputStream in) throws IOException {
        BufferedInputStream bytes = new BufferedInputStream(in);
        bytes.mark(2);
        int mark = bytes.read() << 8 | bytes.read();
        bytes.reset();
        boolean wide = mark == 0xFEFF || mark == 0xFFFE;
        Charset charset = wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
        PushbackReader text = new PushbackReader(new InputStreamReader(bytes, charset.newDecoder()));
        int first = text.read();
        if (first >= 0 && first != 0xFEFF) {
            text.unread(first);
        }
        return text;
    }

    /** Reads the root model, and the parts that it places objects from. */
    static FacetFile read(ZipParts parts, String part, FileRefusals refusals) throws IOException, XMLStreamException {
        InputStream in = parts.open(part, ZipParts.MOST_BYTES);
        if (in == null) {
            throw refusals.unreadable(
                    "a package without its model, " + part, "a whole 3MF package", "Export it again.", 0);
        }
        ThreeMfModel model = new ThreeMfModel(parts, in, refusals, null);
        model.readAll();
        if (model.weld.read() == 0) {
            String hint = "Export the body itself, not its supports.";
            throw refusals.unreadable("a build without a body", "at least one item to be made", hint, 0);
        }
        return new FacetFile(model.weld, false, Optional.of(model.unit), "", model.notices());
    }

    /** What was left out. */
    private List<Notice> notices() {
        if (leftOut == 0) {
            return List.of();
        }
        String objects = leftOut == 1
                ? " object is a support or a loose surface and was"
                : " objects are supports or loose surfaces and were";
        return List.of(new Notice("3mf-left-out", leftOut + objects + " left out."));
    }

    private void readAll() throws IOException, XMLStreamException {
        ModelObject object = new ModelObject(false);
        String id = null;
        boolean model = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw refused("a document type", "a model without one", AGAIN);
            }
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("object") && id != null) {
                if (objects.put(id, object) != null) {
                    throw refused("two objects " + id, "a number of its own for each", AGAIN);
                }
                id = null;
            }
            if (event != XMLStreamConstants.START_ELEMENT || !CORE.equals(xml.getNamespaceURI())) {
                continue;
            }
            switch (xml.getLocalName()) {
                case "model" -> {
                    model = true;
                    head();
                }
                case "object" -> {
                    object = object();
                    id = xml.getAttributeValue(null, "id");
                }
                case "vertex" -> object.triangles().vertex(number("x"), number("y"), number("z"));
                case "triangle" -> triangle(object);
                case "component" -> component(object);
                case "item" -> {
                    // what is built is said by the root alone
                    if (root == this) {
                        item();
                    }
                }
                default -> {
                    // what has no form: names, colours, groups
                }
            }
        }
        if (!model) {
            throw refused("no model in it", "a model of the 3MF core specification", AGAIN);
        }
    }

    private void head() {
        String named = Objects.requireNonNullElse(xml.getAttributeValue(null, "unit"), "millimeter");
        Unit known = UNITS.get(named);
        if (known == null) {
            throw refused(
                    "the unit " + named, "micron, millimeter, centimeter, inch, foot or meter", "Export it again.");
        }
        unit = known;
        String needed = xml.getAttributeValue(null, "requiredextensions");
        for (String prefix : needed == null ? new String[0] : needed.strip().split("\\s+")) {
            String space = prefix.isEmpty() ? CORE : xml.getNamespaceURI(prefix);
            if (space == null || !HARMLESS.contains(space)) {
                throw refused(
                        "an extension that the body needs (" + prefix + ")",
                        "triangles alone",
                        "Export it without lattices, slices or volumes, as a mesh: 3MF of the core specification, or STL.");
            }
        }
    }

    private ModelObject object() {
        String type = xml.getAttributeValue(null, "type");
        boolean solid = type == null || type.equals("model") || type.equals("solidsupport");
        return new ModelObject(solid);
    }

    private void triangle(ModelObject object) {
        int a = corner("v1", object);
        int b = corner("v2", object);
        int c = corner("v3", object);
        if (++root.facets > VertexWeld.MOST_FACETS) {
            throw refusals.tooLarge(VertexWeld.MOST_FACETS + 1L);
        }
        object.triangles().facet(a, b, c);
    }

    private int corner(String name, ModelObject object) {
        int v = ModelNumber.index(
                xml.getAttributeValue(null, name), object.triangles().vertices());
        if (v < 0) {
            throw refused(
                    name + "=" + xml.getAttributeValue(null, name),
                    "the number of a vertex, 0 to " + (object.triangles().vertices() - 1),
                    "The file is damaged there: export it again.");
        }
        return v;
    }

    private double number(String name) {
        double value = ModelNumber.of(xml.getAttributeValue(null, name));
        if (Double.isNaN(value)) {
            throw refused(
                    name + "=" + xml.getAttributeValue(null, name),
                    "a number such as -1.25e-3, up to 1000000 units of the file",
                    "The file is damaged there: export it again.");
        }
        return value;
    }

    /** The object that is named, which must be whole before: so none can hold itself. */
    private ModelObject known() throws IOException, XMLStreamException {
        String path = xml.getAttributeValue(PRODUCTION, "path");
        String id = xml.getAttributeValue(null, "objectid");
        ModelObject object = id == null ? null : (path == null ? this : other(path)).objects.get(id);
        if (object == null) {
            throw refused(
                    "the object " + id + (path == null ? "" : " of " + path),
                    path == null ? "an object of this model that stands before" : "an object of that part",
                    AGAIN);
        }
        return object;
    }

    /** Another part of the package, read when it is first named; of one unit with the root, which alone may name it. */
    private ThreeMfModel other(String path) throws IOException, XMLStreamException {
        ThreeMfModel known = others.get(path);
        if (known != null) {
            return known;
        }
        InputStream in = root == this ? parts.open(path, ZipParts.MOST_BYTES) : null;
        if (in == null) {
            throw refused(
                    "the part " + path,
                    root == this ? "a part of this package" : "objects of the same part",
                    "Export the bodies into one model, or as STL.");
        }
        ThreeMfModel other = new ThreeMfModel(parts, in, refusals, this);
        other.readAll();
        if (other.unit != unit) {
            throw refused(
                    "the part " + path + " in " + other.unit.symbol(),
                    "one unit for all parts, here " + unit.symbol(),
                    "Export the bodies into one model, or as STL.");
        }
        others.put(path, other);
        return other;
    }

    private Placement placement() {
        String text = xml.getAttributeValue(null, "transform");
        Placement placement = text == null ? Placement.NONE : Placement.of(text);
        if (placement == null || placement.volume() == 0) {
            throw refused("transform=" + text, "twelve numbers that leave a body its volume", AGAIN);
        }
        return placement;
    }

    private void item() throws IOException, XMLStreamException {
        ModelObject object = known();
        Placement placement = placement();
        if (!object.solid()) {
            leftOut++;
            return;
        }
        if (weld.read() + object.triangles().facets() > VertexWeld.MOST_FACETS) {
            throw refusals.tooLarge(VertexWeld.MOST_FACETS + 1L);
        }
        ModelObject built = new ModelObject(true);
        built.place(object, placement);
        if (!built.weld(weld)) {
            throw refused("a body placed far away", "coordinates up to 1000000 units of the file", AGAIN);
        }
    }

    /** Places an object in another one; what few words can make of many is limited. */
    private void component(ModelObject into) throws IOException, XMLStreamException {
        ModelObject object = known();
        Placement placement = placement();
        if (into.solid() && !object.solid()) {
            root.leftOut++;
            return;
        }
        root.placed += Math.max(object.triangles().facets(), object.triangles().vertices());
        if (root.placed > VertexWeld.MOST_FACETS) {
            throw refused(
                    root.placed + " facets of objects that are placed in others",
                    "up to " + VertexWeld.MOST_FACETS,
                    "Export one piece, as one body, with a coarser setting.");
        }
        into.place(object, placement);
    }

    private Refusal refused(String read, String allowed, String hint) {
        return refusals.unreadable(
                read, allowed, hint, Math.max(0, xml.getLocation().getLineNumber()));
    }
}
