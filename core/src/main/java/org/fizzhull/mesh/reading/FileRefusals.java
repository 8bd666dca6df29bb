package org.fizzhull.mesh.reading;

import org.fizzhull.quantity.Refusal;

/**
 * What is said of a file that holds no readable body. Lines are counted from 1; 0 where the file has no lines.
 *
 * @param fileName name of the file, as it is shown
 */
record FileRefusals(String fileName) {
    private static final String STL = "STL file";

    private static final String COARSER =
            "Export with a coarser setting: 100 000 facets are plenty for a piece of this size.";

    Refusal number(String read, int line) {
        return new Refusal(
                        "stl-number",
                        STL,
                        read,
                        "finite coordinates up to 1000000 units of the file",
                        "Is the number meant? Then move the body to the origin in the program it was drawn in. Else the file"
                                + " is damaged there: export it again.")
                .at(fileName, line);
    }

    Refusal empty(String read) {
        String hint = "Export the body itself as STL, as a solid and not as a sketch or an empty layer.";
        return new Refusal("stl-empty", STL, read, "at least four facets", hint).at(fileName, 0);
    }

    Refusal truncated(String read, String allowed, int line) {
        String hint = "The file was cut short or is no STL: copy or export it again.";
        return new Refusal("stl-truncated", STL, read, allowed, hint).at(fileName, line);
    }

    Refusal notStl(String read, String hint) {
        return new Refusal("stl-unknown", STL, read, "binary or ASCII STL", hint).at(fileName, 0);
    }

    Refusal otherKind(FileKind kind) {
        return new Refusal("stl-unknown", "mesh file", kind.words(), "STL or 3MF", kind.mend()).at(fileName, 0);
    }

    Refusal tooLarge(long facets) {
        String allowed = "up to " + VertexWeld.MOST_FACETS + " facets";
        return new Refusal("stl-too-large", STL, facets + " facets", allowed, COARSER).at(fileName, 0);
    }

    Refusal syntax(String read, String allowed, String hint, int line) {
        return new Refusal("stl-syntax", STL, read, allowed, hint).at(fileName, line);
    }

    Refusal noUnit() {
        return new Refusal(
                        "missing-key",
                        "shape: unit",
                        "no unit",
                        "mm, cm, m, in, ft or um",
                        "A file of this kind carries no unit: most programs write millimetres, unit=mm.")
                .at(fileName, 0);
    }

    Refusal unreadable(String read, String allowed, String hint, int line) {
        return new Refusal("3mf-unreadable", "3MF file", read, allowed, hint).at(fileName, line);
    }

    Refusal unpacksToMore(long mebibytes) {
        return unreadable(
                "an archive that unpacks to more than a body needs",
                "up to " + mebibytes + " MiB, as of " + VertexWeld.MOST_FACETS + " facets",
                COARSER,
                0);
    }
}
