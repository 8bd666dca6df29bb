package org.fizzhull.mesh.uniting;

/** Where an edge of a surface passes through a facet. */
final class Crossing {
    final int edge;
    final int facet;

    /** Whether the edge passes from before the facet to behind it, going up from its lower corner. */
    final boolean enters;

    /** The new corner there; -1 until it is added. */
    int point = -1;

    /** How far from the lower corner of the edge, m, as the sum along the axes. */
    double far;

    /** The lower one of the winding numbers of the surface on the edge before and behind the facet. */
    int lowerWinding;

    Crossing(int edge, int facet, boolean enters) {
        this.edge = edge;
        this.facet = facet;
        this.enters = enters;
    }

    /** By how much the winding number rises here on the way up the edge. */
    int step() {
        return enters ? 1 : -1;
    }
}
