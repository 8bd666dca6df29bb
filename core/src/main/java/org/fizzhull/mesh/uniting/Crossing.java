package org.fizzhull.mesh.uniting;

/**
 * A point at which an edge of a surface passes through a facet. {@link FacetEdges} says which is the lower corner of
 * an edge.
 */
final class Crossing {
    final int edge;
    final int facet;

    /** Whether the edge, from its lower corner on, passes from the front of the facet to its back. */
    final boolean enters;

    /** The new corner there; -1 until it is added. */
    int point = -1;

    /** Distance from the lower corner of the edge, m, in the sum norm |x| + |y| + |z|. */
    double distance;

    /** The smaller of the winding numbers of the surface on the edge in front of the facet and behind it. */
    int lowerWinding;

    Crossing(int edge, int facet, boolean enters) {
        this.edge = edge;
        this.facet = facet;
        this.enters = enters;
    }

    /** Change of the winding number at the crossing, from the lower corner of the edge on. */
    int step() {
        return enters ? 1 : -1;
    }
}
