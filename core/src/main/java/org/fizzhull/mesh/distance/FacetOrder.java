package org.fizzhull.mesh.distance;

import org.fizzhull.mesh.TriangleMesh;

/** The facets of a mesh in an order that a tree halves again and again at the median of their middles (quickselect). */
final class FacetOrder {
    final int[] facet;
    private final double[] centre;

    /** All facets of a mesh. */
    FacetOrder(TriangleMesh mesh) {
        facet = new int[mesh.facetCount()];
        centre = new double[3 * facet.length];
        for (int f = 0; f < facet.length; f++) {
            facet[f] = f;
            for (int k = 0; k < 3; k++) {
                centre[3 * f + k] =
                        mesh.at(mesh.corner(f, 0), k) + mesh.at(mesh.corner(f, 1), k) + mesh.at(mesh.corner(f, 2), k);
            }
        }
    }

    /** Puts the facets with the smaller middles along the longest axis before the half of them, and says where that is. */
    int halve(int from, int to) {
        int middle = (from + to) >>> 1;
        int axis = longest(from, to);
        int low = from;
        int high = to - 1;
        while (low < high) {
            double pivot = centre[3 * facet[(low + high) >>> 1] + axis];
            int i = low;
            int j = high;
            while (i <= j) {
                while (centre[3 * facet[i] + axis] < pivot) {
                    i++;
                }
                while (centre[3 * facet[j] + axis] > pivot) {
                    j--;
                }
                if (i <= j) {
                    int kept = facet[i];
                    facet[i++] = facet[j];
                    facet[j--] = kept;
                }
            }
            if (middle <= j) {
                high = j;
            } else if (middle >= i) {
                low = i;
            } else {
                return middle;
            }
        }
        return middle;
    }

    private int longest(int from, int to) {
        int axis = 0;
        double longest = -1;
        for (int k = 0; k < 3; k++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                double c = centre[3 * facet[i] + k];
                low = Math.min(low, c);
                high = Math.max(high, c);
            }
            if (high - low > longest) {
                longest = high - low;
                axis = k;
            }
        }
        return axis;
    }
}
