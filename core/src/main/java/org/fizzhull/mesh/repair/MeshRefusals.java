package org.fizzhull.mesh.repair;

import org.fizzhull.quantity.Refusal;

/** What is said when facets enclose no body whose volume could be trusted. */
final class MeshRefusals {
    private static final String FIELD = "mesh";

    private final String fileName;
    private final String doubt;

    /** @param doubt what was already suspicious about the file, or empty */
    MeshRefusals(String fileName, String doubt) {
        this.fileName = fileName;
        this.doubt = doubt;
    }

    Refusal open(int edges, String where) {
        String read = edges + " open edges, the first " + where;
        if (!doubt.isEmpty()) {
            return refusal(
                    "stl-truncated",
                    doubt + ", and these leave " + read,
                    "every facet the header counts",
                    "Facets are missing: copy or export the file again.");
        }
        return refusal(
                "mesh-open",
                read,
                "a closed surface",
                "A body with a hole has no volume: close it in the program it was drawn in, or repair it there as a solid.");
    }

    Refusal crowded(int edges, String where) {
        return refusal(
                "mesh-crowded",
                edges + " edges that three or more facets share, the first " + where,
                "two facets at every edge",
                "Remove inner walls and join the parts into one solid before the export.");
    }

    Refusal oneSided(String where) {
        return refusal(
                "mesh-one-sided",
                "a surface without an inside, near " + where,
                "a surface that has an inside and an outside",
                "Facets are joined wrongly there: repair the body in the program it was drawn in.");
    }

    Refusal flat(String read) {
        return refusal(
                "mesh-flat",
                read,
                "a body that encloses a volume",
                "Give the surface a thickness, or remove facets that lie back to back.");
    }

    Refusal nested(String where) {
        return refusal(
                "mesh-nested",
                "a surface inside out around " + where + " that lies in no body",
                "a cavity inside a body",
                "Turn or remove that surface in the program it was drawn in.");
    }

    Refusal overlap(String where, String amount) {
        return refusal(
                "mesh-overlap",
                "surfaces that overlap or are inside out " + where + ", " + amount + " of the volume in all",
                "a surface that does not pass through itself",
                "Unite the parts into one solid before the export, so that nothing is counted twice.");
    }

    Refusal fluxes(String where) {
        return refusal(
                "mesh-flux",
                "a surface around " + where + " whose volumes by x, y and z differ",
                "one volume",
                "Facets share edges in a way that has no inside: unite the parts into one solid before the export.");
    }

    Refusal manyBodies(int bodies, int most) {
        return refusal(
                "mesh-many-bodies",
                bodies + " separate bodies",
                "up to " + most,
                "Join the parts into one solid before the export.");
    }

    private Refusal refusal(String code, String read, String allowed, String hint) {
        return new Refusal(code, FIELD, read, allowed, hint).at(fileName, 0);
    }
}
