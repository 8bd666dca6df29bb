package org.fizzhull.mesh;

/** The facets around each vertex of a mesh, in the order of the facets. */
final class VertexStars {
    private final TriangleMesh mesh;
    private final int[] start;
    private final int[] facets;

    VertexStars(TriangleMesh mesh) {
        this.mesh = mesh;
        start = new int[mesh.vertexCount() + 1];
        int corners = 3 * mesh.facetCount();
        for (int i = 0; i < corners; i++) {
            start[mesh.corner(i / 3, i % 3) + 1]++;
        }
        for (int v = 0; v < mesh.vertexCount(); v++) {
            start[v + 1] += start[v];
        }
        facets = new int[corners];
        int[] used = new int[mesh.vertexCount()];
        for (int i = 0; i < corners; i++) {
            int v = mesh.corner(i / 3, i % 3);
            facets[start[v] + used[v]++] = i / 3;
        }
    }

    /** Number of facets at a vertex. */
    int count(int vertex) {
        return start[vertex + 1] - start[vertex];
    }

    /** The one of two vertices with fewer facets: those at an edge are found there sooner. */
    int fewer(int a, int b) {
        return count(a) <= count(b) ? a : b;
    }

    /** One of the facets at a vertex. */
    int facet(int vertex, int k) {
        return facets[start[vertex] + k];
    }

    /** Corner (0, 1, 2) of a facet that is the vertex, or -1. */
    int corner(int facet, int vertex) {
        for (int k = 0; k < 3; k++) {
            if (mesh.corner(facet, k) == vertex) {
                return k;
            }
        }
        return -1;
    }
}
