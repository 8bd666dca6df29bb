package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Formats of bodies and archives that are distinguished from STL by their first bytes, as their specifications give
 * them.
 */
enum FileKind {
    /** A packed archive, 3MF among them. */
    ZIP(
            "a ZIP archive or a 3MF body",
            "Unpack it; a 3MF body is read where bodies of any format are.",
            "PK\u0003\u0004"),
    /** A packed file. */
    GZIP("a gzip file", "Unpack it first.", "\u001f\u008b"),
    /** ISO 10303-21. */
    STEP("a STEP model", "Open it in a program for construction and export STL or 3MF.", "ISO-10303-21"),
    /** Polygon file format. */
    PLY("a PLY mesh", "Open it in a mesh program and export STL or 3MF.", "ply\n", "ply\r"),
    /** Object file format. */
    OFF("an OFF mesh", "Open it in a mesh program and export STL or 3MF.", "OFF\n", "OFF\r", "OFF "),
    /** Binary glTF. */
    GLB("a GLB scene", "Export the body alone as STL or 3MF.", "glTF"),
    /** Additive manufacturing file format, ISO/ASTM 52915, as text. */
    AMF("an AMF body", "Open it in the program it came from and export STL or 3MF.", "<amf"),
    /** Wavefront object; it has no mark of its own, so its usual first words tell. */
    OBJ("an OBJ mesh", "Open it in a mesh program and export STL or 3MF.", "v ", "mtllib ", "o ", "g "),
    /** What a version control keeps in place of a large file: https://git-lfs.com, its specification. */
    POINTER("a pointer to a file that is kept elsewhere", "Download the file itself.", "version https://git-lfs"),
    /** None of them. */
    UNKNOWN("", "");

    private static final int LOOK = 1 << 10;

    private final String words;
    private final String mend;
    private final String[] marks;

    FileKind(String words, String mend, String... marks) {
        this.words = words;
        this.mend = mend;
        this.marks = marks;
    }

    /** The kind of some bytes. */
    static FileKind of(ByteBuffer bytes) {
        byte[] first = new byte[Math.min(LOOK, bytes.limit())];
        bytes.get(0, first);
        String text = new String(first, StandardCharsets.ISO_8859_1);
        String body = withoutComments(text);
        for (FileKind kind : values()) {
            for (String mark : kind.marks) {
                boolean inside = kind == AMF && text.startsWith("<?xml") && text.contains(mark);
                if (text.startsWith(mark) || inside || (kind == OBJ && body.startsWith(mark))) {
                    return kind;
                }
            }
        }
        return UNKNOWN;
    }

    /** What follows after lines that begin with a number sign. */
    private static String withoutComments(String text) {
        String left = text;
        while (left.startsWith("#") && left.indexOf('\n') >= 0) {
            left = left.substring(left.indexOf('\n') + 1).stripLeading();
        }
        return left;
    }

    String words() {
        return words;
    }

    String mend() {
        return mend;
    }
}
