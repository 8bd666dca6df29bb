package org.fizzhull.mesh;

import org.fizzhull.quantity.Refusal;

/**
 * Facets of an ASCII STL: {@code solid}, then per facet {@code facet normal .. outer loop}, three times
 * {@code vertex x y z}, {@code endloop endfacet}, then {@code endsolid}. Case, spaces, line ends, names of any length and
 * several solids are taken as they come, and a missing {@code endsolid} is tolerated; a number that is none is refused
 * with its line. Normals are skipped unread.
 */
final class StlText {
    /** Bytes of a facet with numbers of one digit: a guess at how many will come, on which nothing but time depends. */
    private static final int SHORT = 80;

    private final TextTokens words;
    private final String fileName;
    private final VertexWeld weld = new VertexWeld(64);
    private final FacetSurvey survey;
    private final FacetBlocks blocks;
    private FacetBits bits;
    private int filled;
    private boolean ended = true;

    private StlText(ByteSource bytes, long from, String fileName, double metresPerUnit, Errands errands) {
        this.words = new TextTokens(bytes, from);
        this.fileName = fileName;
        long most = bytes.size() / SHORT + 1;
        survey = new FacetSurvey(weld, (int) Math.min(most, StlReader.MOST_FACETS), metresPerUnit, errands);
        blocks = new FacetBlocks(most, errands);
        bits = blocks.next();
    }

    /** Reads the text from a byte on (after a byte order mark). */
    static StlFacets read(ByteSource bytes, long from, String fileName, double metresPerUnit, Errands errands) {
        StlText text = new StlText(bytes, from, fileName, metresPerUnit, errands);
        text.readAll();
        text.flush();
        return new StlFacets(text.weld, text.survey, true, text.ended);
    }

    /** Hands on the facets that were read. */
    private void flush() {
        weld.add(bits, filled);
        survey.advance(bits, filled);
        filled = 0;
    }

    private void readAll() {
        boolean more = words.next();
        while (more) {
            if (words.is("facet")) {
                facet();
                more = words.next();
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

    /** Skips the rest of the line, or up to {@code facet normal} where everything stands on one line. */
    private boolean skipName() {
        int line = words.line();
        boolean more = words.next();
        while (more && words.line() == line) {
            if (words.is("facet")) {
                more = words.next();
                if (more && words.is("normal")) {
                    corners();
                    return words.next();
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
                bits.array(filled)[bits.at(filled) + 3 * corner + axis] = coordinate();
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
        if (facets() >= StlReader.MOST_FACETS) {
            throw StlRefusals.tooLarge(facets() + 1L, fileName);
        }
        filled++;
        if (filled == blocks.facets()) {
            flush();
            bits = blocks.next();
        }
    }

    private int facets() {
        return weld.added() + filled;
    }

    private int coordinate() {
        step("a number");
        double value = words.number();
        if (Double.isNaN(value)) {
            throw notANumber();
        }
        if (!(Math.abs(value) <= VertexWeld.LARGEST)) {
            throw StlRefusals.number(words.text(), fileName, words.line());
        }
        return Float.floatToRawIntBits((float) value);
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
                    "the end of the file inside facet " + (facets() + 1), expected, fileName, words.line());
        }
    }

    private Refusal unexpected(String allowed) {
        String word = words.text();
        int line = words.line();
        if (!words.next()) {
            return StlRefusals.truncated(
                    word + " and then the end of the file, in facet " + (facets() + 1), allowed, fileName, line);
        }
        return StlRefusals.syntax(
                word,
                allowed,
                "The text is damaged in facet " + (facets() + 1) + ": export the file again.",
                fileName,
                line);
    }
}
