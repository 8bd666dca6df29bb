package org.fizzhull.mesh.reading;

import java.io.IOException;
import java.io.StreamTokenizer;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.evidence.Notice;
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

    /** Numbers that some programs write for want of one. */
    private static final Set<String> NOT_FINITE = Set.of("nan", "-nan", "inf", "-inf");

    private final StreamTokenizer tokens;
    private final FileRefusals refusals;
    private final VertexWeld weld = new VertexWeld();
    private final float[] facet = new float[9];
    private String word = "";
    private boolean ended = true;

    /** Facets after whose {@code endfacet} other words stand, which are skipped. */
    private int trailingWords;

    private StlText(ByteBuffer bytes, FileRefusals refusals) {
        tokens = new StreamTokenizer(new TextBytes(bytes));
        tokens.resetSyntax();
        tokens.whitespaceChars(0, ' ');
        tokens.wordChars(' ' + 1, 0xff);
        this.refusals = refusals;
    }

    /** Reads the text from the position of a buffer (after a byte order mark) to its limit. */
    static FacetFile read(ByteBuffer bytes, FileRefusals refusals) {
        StlText text = new StlText(bytes, refusals);
        text.readAll();
        return new FacetFile(text.weld, true, Optional.empty(), "", text.notices());
    }

    private List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!ended) {
            notices.add(new Notice("stl-no-end", "The file has no endsolid; every facet in it is whole."));
        }
        if (trailingWords > 0) {
            notices.add(new Notice(
                    "stl-trailing-words",
                    "Other words stand behind endfacet " + trailingWords + " times and were skipped."));
        }
        return notices;
    }

    private void readAll() {
        boolean more = next();
        while (more) {
            if (is("facet")) {
                expect("normal");
                more = facet();
            } else if (is("solid") || is("endsolid")) {
                ended = is("endsolid");
                more = skipName();
            } else {
                throw unexpected("facet, solid or endsolid");
            }
        }
        if (weld.read() == 0) {
            throw refusals.empty("an ASCII STL without a facet");
        }
    }

    /** Skips the rest of the line, or up to {@code facet normal} where everything stands on one line. */
    private boolean skipName() {
        int line = line();
        boolean more = next();
        while (more && line() == line) {
            boolean facet = is("facet");
            more = next();
            if (facet && more && is("normal")) {
                return facet();
            }
        }
        return more;
    }

    /** Reads a facet from after {@code normal} on, and goes on after it; false at the end of the text. */
    private boolean facet() {
        do {
            step("outer");
        } while (!is("outer"));
        expect("loop");
        for (int i = 0; i < 9; i++) {
            if (i % 3 == 0) {
                expect("vertex");
            }
            facet[i] = coordinate();
        }
        step("endloop");
        if (is("vertex")) {
            String hint = "Let the program that wrote the file divide its facets into triangles.";
            throw refusals.syntax("a facet with more than three corners", "three", hint, line());
        }
        if (!is("endloop")) {
            throw unexpected("endloop");
        }
        expect("endfacet");
        if (weld.read() >= VertexWeld.MOST_FACETS) {
            throw refusals.tooLarge(weld.read() + 1L);
        }
        weld.add(facet);
        return afterFacet();
    }

    /** Goes on after {@code endfacet}; some programs write a word of their own behind it, on its line. */
    private boolean afterFacet() {
        int line = line();
        boolean more = next();
        boolean stray = false;
        while (more && line() == line && !is("facet") && !is("endsolid") && !is("solid")) {
            stray = true;
            more = next();
        }
        trailingWords += stray ? 1 : 0;
        return more;
    }

    private float coordinate() {
        step("a number");
        double value = ModelNumber.decimal(word);
        if (Double.isNaN(value) && !NOT_FINITE.contains(word.toLowerCase(Locale.ROOT))) {
            String hint = word.indexOf(',') >= 0
                    ? "Write a decimal point, not a comma: set the program that wrote the file to English numbers."
                    : "Three numbers belong after every vertex.";
            throw refusals.syntax(shown(), "a number such as -1.25e-3", hint, line());
        }
        if (!(Math.abs(value) <= VertexWeld.LARGEST)) {
            throw refusals.number(shown(), line());
        }
        return (float) value;
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

    /** Moves to the next word, which must be there. */
    private void step(String expected) {
        if (!next()) {
            throw refusals.truncated("the end of the file inside facet " + (weld.read() + 1), expected, line());
        }
    }

    /** Moves to the next word, which must be this one. */
    private void expect(String expected) {
        step(expected);
        if (!is(expected)) {
            throw unexpected(expected);
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

    /** Of a word that does not belong where it stands: a damaged text, or one cut short where no other word follows. */
    private Refusal unexpected(String allowed) {
        String read = shown();
        int line = line();
        String facet = "facet " + (weld.read() + 1);
        return next()
                ? refusals.syntax(read, allowed, "The text is damaged in " + facet + ": export the file again.", line)
                : refusals.truncated(read + " and then the end of the file, in " + facet, allowed, line);
    }
}
