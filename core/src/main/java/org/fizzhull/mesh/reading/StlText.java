package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import org.fizzhull.quantity.Refusal;

/**
 * Facets of an ASCII STL: {@code solid}, then per facet {@code facet normal .. outer loop}, three times
 * {@code vertex x y z}, {@code endloop endfacet}, then {@code endsolid}. Case, spaces, line ends, names of any length and
 * several solids are taken as they come, and a missing {@code endsolid} is tolerated; a number that is none is refused
 * with its line. Normals are skipped unread.
 */
final class StlText {
    private final TextTokens words;
    private final String fileName;
    private final VertexWeld weld;
    private final float[] facet = new float[9];
    private boolean ended = true;
    private int trailingWords;

    private StlText(ByteBuffer bytes, int from, VertexWeld weld, String fileName) {
        this.words = new TextTokens(bytes, from);
        this.weld = weld;
        this.fileName = fileName;
    }

    /** Reads the text from a byte on (after a byte order mark), and says what was missing or too much. */
    static StlText read(ByteBuffer bytes, int from, VertexWeld weld, String fileName) {
        StlText text = new StlText(bytes, from, weld, fileName);
        text.readAll();
        return text;
    }

    /** Whether the text ends as it should. */
    boolean ended() {
        return ended;
    }

    /** Facets after whose {@code endfacet} other words stood, which were skipped. */
    int trailingWords() {
        return trailingWords;
    }

    private void readAll() {
        boolean more = words.next();
        while (more) {
            if (words.is("facet")) {
                facet();
                more = afterFacet(words.line());
            } else if (words.is("solid")) {
                ended = false;
                more = skipName();
            } else if (words.is("endsolid")) {
                ended = true;
                more = skipName();
            } else {
                throw unexpected("facet, solid or endsolid");
            }
        }
    }

    /** Goes on after {@code endfacet}; some programs write a word of their own behind it, on its line. */
    private boolean afterFacet(int line) {
        boolean more = words.next();
        boolean stray = false;
        while (more && words.line() == line && !words.is("facet") && !words.is("endsolid") && !words.is("solid")) {
            stray = true;
            more = words.next();
        }
        trailingWords += stray ? 1 : 0;
        return more;
    }

    /** Skips the rest of the line, or up to {@code facet normal} where everything stands on one line. */
    private boolean skipName() {
        int line = words.line();
        boolean more = words.next();
        while (more && words.line() == line) {
            if (words.is("facet")) {
                more = words.next();
                if (more && words.is("normal")) {
                    corners();
                    return afterFacet(words.line());
                }
            } else {
                more = words.next();
            }
        }
        return more;
    }

    private void facet() {
        expect("normal");
        corners();
    }

    /** The facet from after {@code normal} on. */
    private void corners() {
        do {
            step("outer");
        } while (!words.is("outer"));
        expect("loop");
        for (int corner = 0; corner < 3; corner++) {
            expect("vertex");
            for (int axis = 0; axis < 3; axis++) {
                facet[3 * corner + axis] = coordinate();
            }
        }
        step("endloop");
        if (words.is("vertex")) {
            throw StlRefusals.syntax(
                    "a facet with more than three corners",
                    "three",
                    "Let the program that wrote the file divide its facets into triangles.",
                    fileName,
                    words.line());
        }
        if (!words.is("endloop")) {
            throw unexpected("endloop");
        }
        expect("endfacet");
        if (weld.read() >= StlReader.MOST_FACETS) {
            throw StlRefusals.tooLarge(weld.read() + 1L, fileName);
        }
        weld.add(facet);
    }

    private float coordinate() {
        step("a number");
        double value = words.number();
        if (Double.isNaN(value)) {
            throw notANumber();
        }
        if (!(Math.abs(value) <= VertexWeld.LARGEST)) {
            throw StlRefusals.number(words.text(), fileName, words.line());
        }
        return (float) value;
    }

    private Refusal notANumber() {
        if (words.is("nan") || words.is("-nan") || words.is("inf") || words.is("-inf")) {
            return StlRefusals.number(words.text(), fileName, words.line());
        }
        String hint = words.holds(',')
                ? "Write a decimal point, not a comma: set the program that wrote the file to English numbers."
                : "Three numbers belong after every vertex.";
        return StlRefusals.syntax(words.text(), "a number such as -1.25e-3", hint, fileName, words.line());
    }

    private void expect(String word) {
        step(word);
        if (!words.is(word)) {
            throw unexpected(word);
        }
    }

    private void step(String expected) {
        if (!words.next()) {
            throw StlRefusals.truncated(
                    "the end of the file inside facet " + (weld.read() + 1), expected, fileName, words.line());
        }
    }

    private Refusal unexpected(String allowed) {
        String word = words.text();
        int line = words.line();
        if (!words.next()) {
            return StlRefusals.truncated(
                    word + " and then the end of the file, in facet " + (weld.read() + 1), allowed, fileName, line);
        }
        return StlRefusals.syntax(
                word,
                allowed,
                "The text is damaged in facet " + (weld.read() + 1) + ": export the file again.",
                fileName,
                line);
    }
}
