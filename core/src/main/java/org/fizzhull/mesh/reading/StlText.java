package org.fizzhull.mesh.reading;

import java.io.IOException;
import java.io.StreamTokenizer;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.fizzhull.quantity.Refusal;

/**
 * Facets of an ASCII STL: {@code solid}, then per facet {@code facet normal .. outer loop}, three times
 * {@code vertex x y z}, {@code endloop endfacet}, then {@code endsolid}. Case, spaces, line ends, names of any length and
 * several solids are taken as they come, and a missing {@code endsolid} is tolerated; a number that is none is refused
 * with its line. Normals are skipped unread.
 */
final class StlText {
    /** Longest word that is shown. */
    private static final int SHOWN = 64;

    private final StreamTokenizer tokens;
    private String word = "";
    private final String fileName;
    private final VertexWeld weld;
    private final float[] facet = new float[9];
    private boolean ended = true;
    private int trailingWords;

    private StlText(ByteBuffer bytes, int from, VertexWeld weld, String fileName) {
        tokens = new StreamTokenizer(new TextBytes(bytes.duplicate().position(from)));
        tokens.resetSyntax();
        tokens.whitespaceChars(0, ' ');
        tokens.wordChars(' ' + 1, 0xff);
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

    /** Moves to the next word; false at the end of the text. */
    private boolean next() {
        try {
            boolean more = tokens.nextToken() != StreamTokenizer.TT_EOF;
            word = more ? tokens.sval : "";
            return more;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether the word is this one, in any case. */
    private boolean is(String small) {
        return word.equalsIgnoreCase(small);
    }

    /** Line of the word, from 1. */
    private int line() {
        return tokens.lineno();
    }

    /** The word as it is shown, cut after 64 bytes. */
    private String shown() {
        byte[] bytes = word.getBytes(StandardCharsets.ISO_8859_1);
        String text = new String(bytes, 0, Math.min(bytes.length, SHOWN), StandardCharsets.UTF_8);
        return bytes.length > SHOWN ? text + "..." : text;
    }

    private void readAll() {
        boolean more = next();
        while (more) {
            if (is("facet")) {
                facet();
                more = afterFacet(line());
            } else if (is("solid")) {
                ended = false;
                more = skipName();
            } else if (is("endsolid")) {
                ended = true;
                more = skipName();
            } else {
                throw unexpected("facet, solid or endsolid");
            }
        }
    }

    /** Goes on after {@code endfacet}; some programs write a word of their own behind it, on its line. */
    private boolean afterFacet(int line) {
        boolean more = next();
        boolean stray = false;
        while (more && line() == line && !is("facet") && !is("endsolid") && !is("solid")) {
            stray = true;
            more = next();
        }
        trailingWords += stray ? 1 : 0;
        return more;
    }

    /** Skips the rest of the line, or up to {@code facet normal} where everything stands on one line. */
    private boolean skipName() {
        int line = line();
        boolean more = next();
        while (more && line() == line) {
            if (is("facet")) {
                more = next();
                if (more && is("normal")) {
                    corners();
                    return afterFacet(line());
                }
            } else {
                more = next();
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
        } while (!is("outer"));
        expect("loop");
        for (int corner = 0; corner < 3; corner++) {
            expect("vertex");
            for (int axis = 0; axis < 3; axis++) {
                facet[3 * corner + axis] = coordinate();
            }
        }
        step("endloop");
        if (is("vertex")) {
            throw StlRefusals.syntax(
                    "a facet with more than three corners",
                    "three",
                    "Let the program that wrote the file divide its facets into triangles.",
                    fileName,
                    line());
        }
        if (!is("endloop")) {
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
        double value = ModelNumber.decimal(word);
        if (Double.isNaN(value)) {
            throw notANumber();
        }
        if (!(Math.abs(value) <= VertexWeld.LARGEST)) {
            throw StlRefusals.number(shown(), fileName, line());
        }
        return (float) value;
    }

    private Refusal notANumber() {
        if (is("nan") || is("-nan") || is("inf") || is("-inf")) {
            return StlRefusals.number(shown(), fileName, line());
        }
        String hint = word.indexOf(',') >= 0
                ? "Write a decimal point, not a comma: set the program that wrote the file to English numbers."
                : "Three numbers belong after every vertex.";
        return StlRefusals.syntax(shown(), "a number such as -1.25e-3", hint, fileName, line());
    }

    private void expect(String word) {
        step(word);
        if (!is(word)) {
            throw unexpected(word);
        }
    }

    private void step(String expected) {
        if (!next()) {
            throw StlRefusals.truncated(
                    "the end of the file inside facet " + (weld.read() + 1), expected, fileName, line());
        }
    }

    private Refusal unexpected(String allowed) {
        String read = shown();
        int line = line();
        if (!next()) {
            return StlRefusals.truncated(
                    read + " and then the end of the file, in facet " + (weld.read() + 1), allowed, fileName, line);
        }
        return StlRefusals.syntax(
                read,
                allowed,
                "The text is damaged in facet " + (weld.read() + 1) + ": export the file again.",
                fileName,
                line);
    }
}
