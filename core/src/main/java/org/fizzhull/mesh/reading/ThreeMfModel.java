package org.fizzhull.mesh.reading;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.measure.MeshBuilder;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * The model part of a 3MF package: objects of triangles or of other objects, and the items that are built, each placed.
 * What is not made (supports, loose surfaces) is left out and told; colours and other properties are passed over; what
 * would change the form and is not known here is refused. XML by the JDK's streaming parser, without document types and
 * outside entities (3MF Core Specification 1.3, chapters 3 and 4: https://3mf.io/spec/).
 */
final class ThreeMfModel {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    /** Extensions that leave the form of a body as it is: colours, parts in files, sets of triangles. */
    private static final Set<String> HARMLESS = Set.of(
            CORE,
            "http://schemas.microsoft.com/3dmanufacturing/material/2015/02",
            "http://schemas.microsoft.com/3dmanufacturing/production/2015/06",
            "http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07");

    private static final Map<String, Unit> UNITS = Map.of(
            "micron", Unit.MICROMETRE,
            "millimeter", Unit.MILLIMETRE,
            "centimeter", Unit.CENTIMETRE,
            "inch", Unit.INCH,
            "foot", Unit.FOOT,
            "meter", Unit.METRE);

    private final String fileName;
    private final XMLStreamReader xml;
    private final Map<String, ModelObject> objects = new HashMap<>();
    private final List<Notice> notices = new ArrayList<>();
    private final VertexWeld weld = new VertexWeld();
    private Unit unit = Unit.MILLIMETRE;

    /** Triangles that were read, and those of objects placed in others. */
    private long facets;

    private long placed;
    private int leftOut;
    private int items;

    private ThreeMfModel(InputStream in, String fileName) throws XMLStreamException {
        this.fileName = fileName;
        xml = parser(in);
    }

    /** A parser without document types, outside entities and the replacement of any. */
    static XMLStreamReader parser(InputStream in) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        return factory.createXMLStreamReader(in);
    }

    /** Reads a model part; the stream stays open. */
    static ThreeMfModel read(InputStream in, String fileName) throws XMLStreamException {
        ThreeMfModel model = new ThreeMfModel(in, fileName);
        model.all();
        return model;
    }

    private void all() throws XMLStreamException {
        ModelObject object = new ModelObject(false, new MeshBuilder());
        String id = null;
        boolean model = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw refused("a document type", "a model without one", "Export the body again.");
            }
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("object") && id != null) {
                if (objects.put(id, object) != null) {
                    throw refused("two objects " + id, "a number of its own for each", "Export the body again.");
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
                case "item" -> item();
                default -> {
                    // what has no form: names, colours, groups
                }
            }
        }
        if (!model) {
            throw refused("no model in it", "a model of the 3MF core specification", "Export the body again.");
        }
    }

    private void head() {
        String named = xml.getAttributeValue(null, "unit");
        if (named != null && UNITS.get(named) == null) {
            throw refused(
                    "the unit " + named, "micron, millimeter, centimeter, inch, foot or meter", "Export it again.");
        }
        unit = named == null ? Unit.MILLIMETRE : UNITS.getOrDefault(named, Unit.MILLIMETRE);
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
        return new ModelObject(solid, new MeshBuilder());
    }

    private void triangle(ModelObject object) {
        int a = corner("v1", object);
        int b = corner("v2", object);
        int c = corner("v3", object);
        if (++facets > StlReader.MOST_FACETS) {
            throw tooMany();
        }
        object.triangles().facet(a, b, c);
    }

    private Refusal tooMany() {
        return StlRefusals.tooLarge(StlReader.MOST_FACETS + 1L, fileName);
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
    private ModelObject known() {
        String elsewhere =
                xml.getAttributeValue("http://schemas.microsoft.com/3dmanufacturing/production/2015/06", "path");
        String id = xml.getAttributeValue(null, "objectid");
        ModelObject object = elsewhere == null && id != null ? objects.get(id) : null;
        if (object == null) {
            throw refused(
                    elsewhere != null ? "a part in another file, " + elsewhere : "the object " + id,
                    "an object of this model that stands before",
                    elsewhere != null ? "Export the bodies into one model, or as STL." : "Export the body again.");
        }
        return object;
    }

    private Placement placement() {
        String text = xml.getAttributeValue(null, "transform");
        Placement placement = text == null ? Placement.NONE : Placement.of(text);
        if (placement == null || placement.volume() == 0) {
            throw refused("transform=" + text, "twelve numbers that leave a body its volume", "Export the body again.");
        }
        return placement;
    }

    private void item() {
        ModelObject object = known();
        Placement placement = placement();
        items++;
        if (!object.solid()) {
            leftOut++;
            return;
        }
        if (weld.read() + object.triangles().facets() > StlReader.MOST_FACETS) {
            throw tooMany();
        }
        ModelObject built = new ModelObject(true, new MeshBuilder());
        built.place(object, placement);
        if (!built.weld(weld)) {
            throw refused(
                    "a body placed far away", "coordinates up to 1000000 units of the file", "Export the body again.");
        }
    }

    /** Places an object in another one; what few words can make of many is limited. */
    private void component(ModelObject into) {
        ModelObject object = known();
        placed += Math.max(object.triangles().facets(), object.triangles().vertices());
        if (placed > StlReader.MOST_FACETS) {
            throw refused(
                    placed + " facets of objects that are placed in others",
                    "up to " + StlReader.MOST_FACETS,
                    "Export one piece, as one body, with a coarser setting.");
        }
        into.place(object, placement());
    }

    private Refusal refused(String read, String allowed, String hint) {
        return ThreeMfReader.refused(
                read, allowed, hint, fileName, Math.max(0, xml.getLocation().getLineNumber()));
    }

    /** The facets of all items, in units of the file. */
    VertexWeld weld() {
        return weld;
    }

    /** The unit that the model names. */
    Unit unit() {
        return unit;
    }

    /** What was left out. */
    List<Notice> notices() {
        if (leftOut > 0) {
            notices.add(new Notice(
                    "3mf-left-out",
                    leftOut + " of " + items + " items are supports or loose surfaces and were left out."));
        }
        return notices;
    }
}
