package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.fizzhull.evidence.NoticeSearch;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.HullBodies;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Packages made here after the 3MF Core Specification (https://3mf.io/spec/, from memory), boxes of 20 x 30 x 40 units
 * whose volumes are elementary, and packages that would hurt a careless reader. ANALYTIC.
 */
class ThreeMfReaderTest {
    private static final double VOLUME = 20 * 30 * 40;
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private static final String PRODUCTION =
            "xmlns:p='http://schemas.microsoft.com/3dmanufacturing/production/2015/06' requiredextensions='p'";
    private static final String RELATIONSHIPS =
            "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
                    + "<Relationship Id='rel0' Target='/3D/body.model'"
                    + " Type='http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel'/></Relationships>";

    @ParameterizedTest
    @CsvSource({
        "unit='millimeter', 1e-3",
        "unit='inch', 25.4e-3",
        "unit='centimeter', 1e-2",
        "unit='micron', 1e-6",
        "'', 1e-3",
        "unit='foot', 0.3048",
        "unit='meter', 1"
    })
    void namesItsUnit(String unit, double metres) {
        MeshReader.Reading reading = read(model(unit, box(1), "<item objectid='1'/>"), null);
        double expected = VOLUME * Math.pow(metres, 3);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(expected, within(1e-6 * expected));
        assertThat(reading.ownUnit().orElseThrow().toSi(1)).isCloseTo(metres, within(1e-12));
        assertThat(reading.facetsRead()).isEqualTo(12);
    }

    /** What the question says counts, and a notice says that the file says otherwise. */
    @Test
    void theQuestionCounts() {
        byte[] file = model("unit='inch'", box(1), "<item objectid='1'/>");
        MeshReader.Reading reading = read(file, Unit.MILLIMETRE);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(VOLUME * 1e-9, within(1e-15));
        assertThat(codes(reading)).contains("3mf-unit");
        assertThat(codes(read(file, Unit.INCH))).doesNotContain("3mf-unit");
    }

    /** Scaled by 2 along x, a quarter turn about z, shifted; and as a mirror image, which is no body inside out. */
    @ParameterizedTest
    @CsvSource({
        "2 0 0 0 1 0 0 0 1 0 0 0, 2, 40, 30",
        "0 1 0 -1 0 0 0 0 1 5 6 7, 1, 30, 20",
        "-1 0 0 0 1 0 0 0 1 0 0 0, 1, 20, 30"
    })
    void placed(String transform, double grown, double x, double y) {
        MeshReader.Reading reading =
                read(model("", box(1), "<item objectid='1' transform='" + transform + "'/>"), null);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(grown * VOLUME * 1e-9, within(1e-13));
        double[] box = reading.mesh().box();
        assertThat(box[3] - box[0]).isCloseTo(x / 1000, within(1e-9));
        assertThat(box[4] - box[1]).isCloseTo(y / 1000, within(1e-9));
        assertThat(codes(reading)).doesNotContain("mesh-inverted", "mesh-winding");
    }

    /** Two of the same object in one, that one twice in the build: four bodies. A support is left out. */
    @Test
    void componentsAndSupports() {
        String pair = "<object id='2'><components><component objectid='1'/>"
                + "<component objectid='1' transform='1 0 0 0 1 0 0 0 1 100 0 0'/></components></object>";
        String support = box(3).replace("<object id='3'>", "<object id='3' type='support'>");
        MeshReader.Reading reading = read(
                model(
                        "",
                        box(1) + pair + support,
                        "<item objectid='2'/><item objectid='2' transform='1 0 0 0 1 0 0 0 1 0 100 0'/>"
                                + "<item objectid='3'/>"),
                null);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(4 * VOLUME * 1e-9, within(1e-12));
        assertThat(codes(reading)).contains("mesh-bodies", "3mf-left-out");
    }

    /** The order of the parts and the case of their names are free, other parts are passed over, colours are no form. */
    @Test
    void otherPartsAreFree() {
        String xml = text("", box(1).replace("v3='", "pid='9' p1='0' v3='"), "<item objectid='1'/>");
        byte[] file = zip("Metadata/picture.png", "none", "3d/BODY.model", xml, "_rels/.rels", RELATIONSHIPS);
        assertThat(MassProperties.of(read(file, null).mesh()).volume()).isCloseTo(VOLUME * 1e-9, within(1e-13));
    }

    /**
     * 3MF Production Extension 1.1, chapter 3 (https://github.com/3MFConsortium/spec_production): the root model places
     * objects of other parts, by components and in its build; what those parts would build does not count.
     */
    @Test
    void objectsOfOtherParts() {
        String pair = "<object id='7'><components><component p:path='/3D/Objects/two boxes.model' objectid='1'/>"
                + "<component objectid='2' p:path='/3D/Objects/two boxes.model' transform='1 0 0 0 1 0 0 0 1 100 0 0'/>"
                + "</components></object>";
        String items = "<item objectid='7'/>"
                + "<item objectid='2' p:path='/3D/objects/TWO boxes.model' transform='1 0 0 0 1 0 0 0 1 0 100 0'/>";
        MeshReader.Reading reading = read(
                zip(
                        "_rels/.rels",
                        RELATIONSHIPS,
                        "3D/body.model",
                        text(PRODUCTION, pair, items),
                        "3D/Objects/two boxes.model",
                        text("", box(1) + box(2), "<item objectid='1'/>")),
                null);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(3 * VOLUME * 1e-9, within(1e-12));
        assertThat(reading.facetsRead()).isEqualTo(36);
    }

    /** What changes a print and is no body, placed beside one in the same object, is left out and told. */
    @Test
    void placedModifiersAreLeftOut() {
        String other = box(2).replace("<object id='2'>", "<object id='2' type='other'>");
        String both =
                "<object id='3'><components><component objectid='1'/><component objectid='2'/></components></object>";
        MeshReader.Reading reading = read(model("", box(1) + other + both, "<item objectid='3'/>"), null);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(VOLUME * 1e-9, within(1e-13));
        assertThat(codes(reading)).contains("3mf-left-out");
    }

    /** ZIP application note, 4.4.4, bit 3: the header of an entry may leave its lengths to what stands behind it. */
    @Test
    void lengthsInTheDirectoryAlone() {
        byte[] file = stored("_rels/.rels", RELATIONSHIPS, "3D/body.model", text("", box(1), "<item objectid='1'/>"));
        ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = 0; at + 30 < file.length; at++) {
            if (bytes.getInt(at) == 0x04034b50) {
                bytes.putShort(at + 6, (short) (bytes.getShort(at + 6) | 8));
                bytes.putInt(at + 14, 0).putInt(at + 18, 0).putInt(at + 22, 0);
            }
        }
        assertThat(MassProperties.of(read(file, null).mesh()).volume()).isCloseTo(VOLUME * 1e-9, within(1e-13));
    }

    /** Open Packaging Conventions (ECMA-376-2): a part in XML is UTF-8 or UTF-16, whatever mark stands before it. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "x-UTF-16LE-BOM"})
    void textOfEitherKind(String charset) {
        assertThat(read(accented(Charset.forName(charset)), null).facetsRead()).isEqualTo(12);
        byte[] marked = packed("\uFEFF" + text("", box(1), "<item objectid='1'/>"));
        assertThat(read(marked, null).facetsRead()).isEqualTo(12);
    }

    private static byte[] accented(Charset charset) {
        String xml = text("", "<!-- na\u00efve -->" + box(1), "<item objectid='1'/>");
        return zip(ZipEntry.DEFLATED, charset, "_rels/.rels", RELATIONSHIPS, "3D/body.model", xml);
    }

    static Stream<Arguments> hostile() {
        String item = "<item objectid='1'/>";
        StringBuilder doubling = new StringBuilder(box(1));
        for (int i = 2; i < 70; i++) {
            doubling.append("<object id='" + i + "'><components><component objectid='" + (i - 1)
                    + "'/><component objectid='" + (i - 1) + "'/></components></object>");
        }
        String laughs = "<!DOCTYPE model [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>]>";
        String outside = "<!DOCTYPE model [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>";
        String xml = text("", box(1), item);
        byte[] whole = packed(xml);
        byte[] many = zip("_rels/.rels", " ".repeat(2 << 20) + RELATIONSHIPS);
        return Stream.of(
                bad("objects that double", model("", doubling.toString(), "<item objectid='69'/>"), "placed"),
                bad("entities", packed(laughs + text("", box(1), item)), "document type"),
                bad("an outside entity", packed(outside + text("", box(1), item)), "document type"),
                bad("relationships that blow up", many, "MiB"),
                bad("cut short", Arrays.copyOf(whole, whole.length / 2), "cut short"),
                bad("cut in the model", model("", box(1) + "<object", item), "XML"),
                bad("no package", zip("readme.txt", "hello"), "ZIP archive"),
                bad("no model", zip("_rels/.rels", RELATIONSHIPS), "without its model"),
                bad("empty", zip("_rels/.rels", RELATIONSHIPS, "3D/body.model", ""), "XML"),
                bad("other XML", packed("<html/>"), "no model"),
                bad("nothing built", model("", box(1), ""), "without a body"),
                bad(
                        "a vertex that is none",
                        model("", box(1).replaceFirst("v1='.'", "v1='8'"), item),
                        "number of a vertex"),
                bad(
                        "a negative vertex",
                        model("", box(1).replaceFirst("v1='.'", "v1='-1'"), item),
                        "number of a vertex"),
                bad("no number", model("", box(1).replace("x='10.0'", "x='NaN'"), item), "x=NaN"),
                bad("hexadecimal", model("", box(1).replace("x='10.0'", "x='0x1p3'"), item), "x=0x1p3"),
                bad("infinite", model("", box(1).replace("x='10.0'", "x='1e999'"), item), "x=1e999"),
                bad("far", model("", box(1), "<item objectid='1' transform='1 0 0 0 1 0 0 0 1 1e6 0 0'/>"), "far away"),
                bad("flat", model("", box(1), "<item objectid='1' transform='1 0 0 0 1 0 0 0 0 0 0 0'/>"), "twelve"),
                bad("eleven", model("", box(1), "<item objectid='1' transform='1 0 0 0 1 0 0 0 1 0 0'/>"), "twelve"),
                bad(
                        "itself",
                        model(
                                "",
                                "<object id='2'><components><component objectid='2'/></components></object>",
                                "<item objectid='2'/>"),
                        "stands before"),
                bad(
                        "later",
                        model(
                                "",
                                "<object id='2'><components><component objectid='1'/></components></object>" + box(1),
                                item),
                        "stands before"),
                bad("twice", model("", box(1) + box(1), item), "of its own"),
                bad("unknown unit", model("unit='furlong'", box(1), item), "furlong"),
                bad(
                        "a lattice",
                        model(
                                "xmlns:b='http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02' requiredextensions='b'",
                                box(1),
                                item),
                        "extension"),
                bad(
                        "a part that is missing",
                        model(PRODUCTION, box(1), "<item objectid='1' p:path='/3D/other.model'/>"),
                        "the part /3D/other.model"),
                bad("an object missing there", parts("", box(1), 2), "of /3D/other.model"),
                bad("another unit there", parts("unit='inch'", box(1), 1), "one unit"),
                bad(
                        "a part that names a part",
                        parts(
                                PRODUCTION,
                                "<object id='1'><components><component p:path='/3D/other.model' objectid='1'/></components></object>",
                                1),
                        "same part"),
                bad("ISO 8859-1", accented(StandardCharsets.ISO_8859_1), "UTF-8"),
                bad("a changed digit", changed(stored("_rels/.rels", RELATIONSHIPS, "3D/body.model", xml)), "damaged"),
                bad("a hole", model("", box(1).replaceFirst("<triangle [^>]*/>", ""), item), "open"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("hostile")
    void refused(String name, byte[] file, String said) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> read(file, null));
        assertThat(refusal).as(name).isNotNull();
        String message = String.valueOf(refusal.getMessage());
        assertThat(message).contains(said).hasSizeLessThan(1000);
        assertThat(refusal.file()).isEqualTo("a.3mf");
    }

    /** STL names no unit: the one who asks must. */
    @Test
    void stlNeedsAUnit() {
        ByteBuffer stl = StlWriter.binary(HullBodies.box(0.02, 0.03, 0.04), "a box", 1e-3);
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> MeshReader.read(stl.duplicate(), "a.stl", null));
        assertThat(refusal.code()).isEqualTo("missing-key");
        assertThat(MeshReader.read(stl, "a.stl", Unit.MILLIMETRE).ownUnit()).isEmpty();
    }

    /** Any flip of a byte is read or refused. */
    @Test
    void flippedBytes() {
        byte[] whole = whole();
        for (int i = 0; i < whole.length; i++) {
            byte[] flipped = whole.clone();
            flipped[i] ^= (byte) (1 << i % 8);
            StlAnswer.judge(flipped);
        }
        assertThat(StlAnswer.judge(whole)).isTrue();
    }

    /** A package without fault. */
    static byte[] whole() {
        return model("", box(1), "<item objectid='1'/>");
    }

    private static Arguments bad(String name, byte[] file, String said) {
        return Arguments.of(name, file, said);
    }

    private static MeshReader.Reading read(byte[] file, @Nullable Unit unit) {
        return MeshReader.read(ByteBuffer.wrap(file), "a.3mf", unit);
    }

    private static List<String> codes(MeshReader.Reading reading) {
        return NoticeSearch.codes(reading.notices());
    }

    private static byte[] model(String attributes, String objects, String items) {
        return packed(text(attributes, objects, items));
    }

    /** A root model that places an object of another part. */
    private static byte[] parts(String attributes, String objects, int placed) {
        return zip(
                "_rels/.rels",
                RELATIONSHIPS,
                "3D/body.model",
                text(PRODUCTION, "", "<item objectid='" + placed + "' p:path='/3D/other.model'/>"),
                "3D/other.model",
                text(attributes, objects, ""));
    }

    /** The same archive with the beginning of a number changed. */
    private static byte[] changed(byte[] file) {
        int at = new String(file, StandardCharsets.ISO_8859_1).indexOf("x='10.0'");
        file[at + 4] = '1';
        return file;
    }

    private static String text(String attributes, String objects, String items) {
        return "<model xmlns='" + CORE + "' " + attributes + "><resources>" + objects + "</resources><build>" + items
                + "</build></model>";
    }

    private static byte[] packed(String xml) {
        return zip("_rels/.rels", RELATIONSHIPS, "3D/body.model", xml);
    }

    private static String box(int id) {
        TriangleMesh box = HullBodies.box(20, 30, 40);
        StringBuilder text = new StringBuilder("<object id='" + id + "'><mesh><vertices>");
        for (int v = 0; v < box.vertexCount(); v++) {
            text.append("<vertex x='" + box.at(v, 0) + "' y='" + box.at(v, 1) + "' z='" + box.at(v, 2) + "'/>");
        }
        text.append("</vertices><triangles>");
        for (int f = 0; f < box.facetCount(); f++) {
            text.append("<triangle v1='" + box.corner(f, 0) + "' v2='" + box.corner(f, 1) + "' v3='" + box.corner(f, 2)
                    + "'/>");
        }
        return text.append("</triangles></mesh></object>").toString();
    }

    private static byte[] zip(String... namesAndTexts) {
        return zip(ZipEntry.DEFLATED, StandardCharsets.UTF_8, namesAndTexts);
    }

    private static byte[] stored(String... namesAndTexts) {
        return zip(ZipEntry.STORED, StandardCharsets.UTF_8, namesAndTexts);
    }

    private static byte[] zip(int method, Charset charset, String... namesAndTexts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                byte[] part = namesAndTexts[i + 1].getBytes(charset);
                CRC32 checksum = new CRC32();
                checksum.update(part);
                ZipEntry entry = new ZipEntry(Objects.requireNonNull(namesAndTexts[i]));
                entry.setMethod(method);
                entry.setSize(part.length);
                entry.setCrc(checksum.getValue());
                zip.putNextEntry(entry);
                zip.write(part);
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
