package org.fizzhull.mesh.reading;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Broken and odd STL files, each with the right answer. Volumes are ANALYTIC (boxes, and polyhedra swept round), in mm3
 * with the file read in millimetres.
 */
final class StlCorpus {
    /**
     * One file.
     *
     * @param volume right volume, mm3; NaN where the file must be refused
     * @param codes notices that must be there, or the one code of the refusal
     * @param says words the refusal (or the notices) must hold
     */
    record Case(String name, byte[] bytes, double volume, List<String> codes, List<String> says) {
        @Override
        public String toString() {
            return name;
        }
    }

    private final List<Case> cases = new ArrayList<>();

    private StlCorpus() {}

    static List<Case> cases() {
        StlCorpus corpus = new StlCorpus();
        corpus.headersAndCounts();
        corpus.text();
        corpus.brokenText();
        corpus.numbers();
        SurfaceCorpus.addTo(corpus);
        Set<String> names = new LinkedHashSet<>();
        corpus.cases.forEach(c -> names.add(c.name()));
        if (names.size() != corpus.cases.size()) {
            throw new IllegalStateException("a name is used twice");
        }
        return corpus.cases;
    }

    void good(String name, byte[] bytes, double volume, String codes, String... says) {
        List<String> list = codes.isEmpty() ? List.of() : List.of(codes.split(" "));
        cases.add(new Case(name, bytes, volume, list, List.of(says)));
    }

    void good(String name, String text, double volume, String codes, String... says) {
        good(name, text.getBytes(StandardCharsets.UTF_8), volume, codes, says);
    }

    void bad(String name, byte[] bytes, String code, String... says) {
        cases.add(new Case(name, bytes, Double.NaN, List.of(code), List.of(says)));
    }

    void bad(String name, String text, String code, String... says) {
        bad(name, text.getBytes(StandardCharsets.UTF_8), code, says);
    }

    static Soup cube() {
        return Soup.cube(40);
    }

    static final double CUBE = 64_000;

    private void headersAndCounts() {
        byte[] cube = cube().binary();
        good("plain binary cube", cube, CUBE, "");
        good("binary whose header says solid", cube().binary("solid cube", 12, 0), CUBE, "");
        good("solid and facet in a binary header", cube().binary("solid facet normal vertex", 12, 0), CUBE, "");
        good("header of bytes that are no UTF-8", cube().binary("\u00ff\u00fe\u00c3(\u0080", 12, 0), CUBE, "");
        good("trailing newline", cube().binary("solid x", 12, 1), CUBE, "stl-trailing", "1 bytes");
        good("forty-nine trailing bytes", cube().binary("x", 12, 49), CUBE, "stl-trailing", "49 bytes");
        good("padded with zeros to whole facets", cube().binary("x", 12, 100), CUBE, "stl-count mesh-collapsed");
        good("padded with zeros to 4096 bytes", cube().binary("x", 12, 4096 - 684), CUBE, "stl-trailing");
        good("count of zero over whole facets", cube().binary("x", 0, 0), CUBE, "stl-count", "counts 0 facets");
        good("count too small over whole facets", cube().binary("x", 3, 0), CUBE, "stl-count", "holds 12");
        good("count of two billion over whole facets", cube().binary("x", 2_000_000_000L, 0), CUBE, "stl-count");
        good("count of minus one over whole facets", cube().binary("x", -1, 0), CUBE, "stl-count", "4294967295");
        bad(
                "count of two billion, cut inside a facet",
                Arrays.copyOf(cube().binary("x", 2_000_000_000L, 0), 660),
                "stl-truncated",
                "2000000000",
                "facet 12");
        bad("count of two billion and nothing else", Soup.empty().binary("x", 2_000_000_000L, 0), "stl-truncated");
        bad("cut at the end of a facet", Arrays.copyOf(cube, 84 + 50 * 8), "stl-truncated", "counts 12", "holds 8");
        bad("cut inside a facet", Arrays.copyOf(cube, 84 + 50 * 8 + 17), "stl-truncated", "inside facet 9");
        bad("cut inside the header", Arrays.copyOf(cube, 50), "stl-unknown", "50 bytes");
        bad("header and count only", Arrays.copyOf(cube, 84), "stl-truncated", "12 facets");
        bad("empty file", new byte[0], "stl-empty", "0 bytes");
        bad("one byte", new byte[1], "stl-unknown", "1 bytes");
        bad("count of zero, no facets", Soup.empty().binary(), "stl-empty", "0 facets");
        bad("two thousand zero bytes", new byte[2000], "stl-empty");
        bad("picture bytes", pseudoRandom(5000), "stl-truncated");
        bad("spaces only", "   \n\n  ", "stl-unknown");
        bad("a zip archive", "PK\u0003\u0004" + "x".repeat(200), "3mf-unreadable", "3MF");
        bad("a STEP model", "ISO-10303-21;\nHEADER;\n" + "x".repeat(200), "stl-unknown", "STEP");
        bad("an OBJ mesh", "# made\nv 0 0 0\nv 1 0 0\n" + "f 1 2 3\n".repeat(20), "stl-unknown", "OBJ");
        bad("a PLY mesh", "ply\nformat ascii 1.0\n" + "0 0 0\n".repeat(20), "stl-unknown", "PLY");
        bad("an OFF mesh", "OFF\n4 4 6\n" + "0 0 0\n".repeat(20), "stl-unknown", "OFF");
        bad("an AMF body", "<?xml version=\"1.0\"?>\n<amf unit=\"mm\">" + " ".repeat(99), "stl-unknown", "AMF");
        bad("a GLB scene", "glTF\u0002" + "x".repeat(200), "stl-unknown", "GLB");
        bad("a web page", "<!DOCTYPE html><html><body>Not found</body></html>", "stl-unknown");
        bad(
                "two-byte characters",
                ("\ufeff" + cube().ascii()).getBytes(StandardCharsets.UTF_16LE),
                "stl-unknown",
                "UTF-8");
    }

    private static byte[] pseudoRandom(int length) {
        byte[] bytes = new byte[length];
        new java.util.Random(3).nextBytes(bytes);
        return bytes;
    }

    private void text() {
        String cube = cube().ascii();
        good("plain ASCII cube", cube, CUBE, "");
        good("carriage returns alone", cube.replace("\n", "\r"), CUBE, "");
        good("carriage returns and line feeds", cube.replace("\n", "\r\n"), CUBE, "");
        good("all on one line", cube.replace("\n", " "), CUBE, "");
        good("byte order mark", "\ufeff" + cube, CUBE, "");
        good("blank lines before solid", "\r\n \t" + cube, CUBE, "");
        good("capital letters", cube.toUpperCase(java.util.Locale.ROOT), CUBE, "");
        good("tabs and form feeds for spaces", cube.replace(" ", "\t\f "), CUBE, "");
        good("exponents", cube().ascii("x", "%e"), CUBE, "");
        good("exponents with a capital letter and plus", cube().ascii("x", "%+E"), CUBE, "");
        good("many digits", cube().ascii("x", "%.40f"), CUBE, "");
        good("whole numbers", cube().ascii("x", "%.0f"), CUBE, "");
        good("numbers that begin with the point", Soup.cube(0.5).ascii().replace("0.5", ".5"), 0.125, "mesh-size");
        good("a name with spaces", cube().ascii("facet the endsolid thing 3,5", "%s"), CUBE, "");
        good("a name of ten thousand letters", cube().ascii("n".repeat(10_000), "%s"), CUBE, "");
        good("a name of seventy thousand letters", cube().ascii("n".repeat(70_000), "%s"), CUBE, "");
        good("no name", cube().ascii("", "%s"), CUBE, "");
        good("a name in other letters", cube().ascii("L\u00f6we \u2603", "%s"), CUBE, "");
        good("no endsolid", cube.substring(0, cube.indexOf("endsolid")), CUBE, "stl-no-end");
        good("no solid line", cube.substring(cube.indexOf('\n') + 1), CUBE, "");
        good("several solids make one body", split(cube().facets, 6), CUBE, "");
        good("several solids, two bodies", cube + Soup.box(50, 0, 0, 40, 40, 40).ascii(), 2 * CUBE, "mesh-bodies");
        good(
                "words behind endfacet",
                cube.replace("endfacet", "endfacet attr 12"),
                CUBE,
                "stl-trailing-words",
                "12 times");
        good("normals that are no numbers", cube.replace("normal 0 0 0", "normal nan -nan(ind) 1,#INF"), CUBE, "");
    }

    private static String split(List<float[]> facets, int at) {
        Soup first = Soup.empty();
        first.facets.addAll(facets.subList(0, at));
        Soup second = Soup.empty();
        second.facets.addAll(facets.subList(at, facets.size()));
        return first.ascii("top", "%s") + second.ascii("bottom", "%s");
    }

    private void brokenText() {
        String cube = cube().ascii();
        bad("decimal commas", cube.replace("40.0", "40,0"), "stl-syntax", "40,0", "comma", "line 5");
        bad("a word for a number", cube.replaceFirst("40\\.0", "forty"), "stl-syntax", "forty", "line 5");
        bad("a hexadecimal number", cube.replaceFirst("40\\.0", "0x1p3"), "stl-syntax", "0x1p3");
        bad("a number with a letter", cube.replaceFirst("40\\.0", "40.0f"), "stl-syntax", "40.0f");
        bad("a number of two points", cube.replaceFirst("40\\.0", "4.0.0"), "stl-syntax", "4.0.0");
        bad("a lone minus", cube.replaceFirst("40\\.0", "-"), "stl-syntax");
        bad("an exponent without digits", cube.replaceFirst("40\\.0", "4e"), "stl-syntax", "4e");
        bad("nan in text", cube.replaceFirst("40\\.0", "NaN"), "stl-number", "NaN", "line 5");
        bad("infinity in text", cube.replaceFirst("40\\.0", "-inf"), "stl-number", "-inf");
        bad("1e31 in text", cube.replaceFirst("40\\.0", "1e31"), "stl-number", "1e31", "line 5");
        bad("1e999999999999 in text", cube.replaceFirst("40\\.0", "1e999999999999"), "stl-number");
        bad("a vertex with two numbers", cube.replaceFirst("40\\.0 0\\.0\n", "40.0\n"), "stl-syntax", "endloop|vertex");
        bad("a facet with two corners", cube.replaceFirst("  vertex.*\n", ""), "stl-syntax", "endloop", "facet 1");
        bad(
                "a facet with four corners",
                cube.replaceFirst(" endloop", "  vertex 0 0 0\n endloop"),
                "stl-syntax",
                "more than three");
        bad(
                "cut in the middle of a facet",
                cube.substring(0, cube.indexOf("loop", cube.length() / 2) + 4),
                "stl-truncated",
                "inside facet",
                "line");
        bad(
                "cut between facets",
                cube.substring(0, cube.indexOf("\nfacet", cube.length() / 2)),
                "mesh-open",
                "open edges");
        bad("cut inside a word", cube.substring(0, cube.indexOf("facet", cube.length() / 2)), "stl-truncated");
        bad("an overwritten keyword", cube.replaceFirst("outer loop", "outer l\u00f6\u00f6p"), "stl-syntax", "line 3");
        bad("solid and nothing more", "solid nothing\nendsolid nothing\n", "stl-empty");
        bad("a number of a thousand digits", cube.replaceFirst("40\\.0", "4".repeat(1000)), "stl-syntax");
    }

    private void numbers() {
        bad("NaN", cube().set(4, 5, Float.NaN).binary(), "stl-number", "facet 5", "corner 2", "z = NaN");
        bad("infinity", cube().set(11, 0, Float.POSITIVE_INFINITY).binary(), "stl-number", "facet 12", "x = Infinity");
        bad("minus infinity", cube().set(0, 8, Float.NEGATIVE_INFINITY).binary(), "stl-number", "facet 1");
        bad("1e31", cube().set(7, 4, 1e31f).binary(), "stl-number", "facet 8", "1.0E31");
        bad("just above a million", cube().set(1, 0, 1_000_000.1f).binary(), "stl-number", "facet 2");
        good("minus zero beside zero", minusZeros(), CUBE, "");
        good("subnormal numbers for zero", subnormals(), CUBE, "");
        good("far from the origin", cube().shifted(500_000, -250_000, 100_000).binary(), CUBE, "");
        good("a cube of two million", Soup.box(-1e6, -1e6, -1e6, 2e6, 2e6, 2e6).binary(), 8e18, "mesh-size");
        good("a cube of 1e-30", Soup.cube(1e-30).binary(), 1e-90, "mesh-size");
    }

    private static byte[] minusZeros() {
        Soup cube = cube();
        for (int f = 0; f < 12; f += 2) {
            float[] facet = cube.facets.get(f);
            for (int i = 0; i < 9; i++) {
                facet[i] = facet[i] == 0 ? -0f : facet[i];
            }
        }
        return cube.binary();
    }

    private static byte[] subnormals() {
        Soup cube = cube();
        cube.facets.forEach(f -> {
            for (int i = 0; i < 9; i++) {
                f[i] = f[i] == 0 ? Float.MIN_VALUE : f[i];
            }
        });
        return cube.binary();
    }
}
