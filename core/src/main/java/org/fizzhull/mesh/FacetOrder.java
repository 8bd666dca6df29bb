package org.fizzhull.mesh;

/** Some facets of a mesh in an order that trees halve again and again by their middles. */
final class FacetOrder {
    final int[] facet;
    private final double[] centre;

    /** The facets that are flagged; at least one must be. */
    FacetOrder(TriangleMesh mesh, boolean[] wanted) {
        int n = 0;
        for (boolean want : wanted) {
            n += want ? 1 : 0;
        }
        if (n == 0) {
            throw new IllegalArgumentException("a tree needs at least one facet");
        }
        facet = new int[n];
        centre = new double[3 * mesh.facetCount()];
        int at = 0;
        for (int f = 0; f < wanted.length; f++) {
            if (wanted[f]) {
                facet[at++] = f;
                for (int k = 0; k < 3; k++) {
                    centre[3 * f + k] = mesh.at(mesh.corner(f, 0), k)
                            + mesh.at(mesh.corner(f, 1), k)
                            + mesh.at(mesh.corner(f, 2), k);
                }
            }
        }
    }

    int count() {
        return facet.length;
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
