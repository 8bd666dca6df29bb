package org.fizzhull.mesh.reading;

import org.fizzhull.quantity.Refusal;

/** What is said when a file holds no readable STL. */
final class StlRefusals {
    private static final String FIELD = "STL file";

    private StlRefusals() {}

    static Refusal number(String read, String fileName, int line) {
        return new Refusal(
                        "stl-number",
                        FIELD,
                        read,
                        "finite coordinates up to 1000000 units of the file",
                        "Is the number meant? Then move the body to the origin in the program it was drawn in. Else the file"
                                + " is damaged there: export it again.")
                .at(fileName, line);
    }

    static Refusal empty(String read, String fileName) {
        return new Refusal(
                        "stl-empty",
                        FIELD,
                        read,
                        "at least four facets",
                        "Export the body itself as STL, as a solid and not as a sketch or an empty layer.")
                .at(fileName, 0);
    }

    static Refusal truncated(String read, String allowed, String fileName, int line) {
        return new Refusal(
                        "stl-truncated",
                        FIELD,
                        read,
                        allowed,
                        "The file was cut short or is no STL: copy or export it again.")
                .at(fileName, line);
    }

    static Refusal notStl(String read, String hint, String fileName) {
        return new Refusal("stl-unknown", FIELD, read, "binary or ASCII STL", hint).at(fileName, 0);
    }

    static Refusal otherKind(FileKind kind, String fileName) {
        return new Refusal("stl-unknown", "mesh file", kind.words(), "STL or 3MF", kind.mend()).at(fileName, 0);
    }

    static Refusal tooLarge(long facets, String fileName) {
        return new Refusal(
                        "stl-too-large",
                        FIELD,
                        facets + " facets",
                        "up to " + StlReader.MOST_FACETS + " facets",
                        "Export with a coarser setting: 100 000 facets are plenty for a piece of this size.")
                .at(fileName, 0);
    }

    static Refusal syntax(String read, String allowed, String hint, String fileName, int line) {
        return new Refusal("stl-syntax", FIELD, read, allowed, hint).at(fileName, line);
    }
}
