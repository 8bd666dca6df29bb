package org.fizzhull.mesh.hollow;

import java.util.BitSet;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * The local minima of the height on the surface of a closed mesh: the vertices without lower neighbours.
 *
 * <p>A horizontal plane a little higher cuts the facets around such a vertex in a closed polygon, whose signed area
 * tells whether air or material is inside it. A facet whose other two corners are higher by h and g (m) contributes
 * P/(h g), P the signed area of its horizontal projection (m2): proportional to its part of the polygon. The plain
 * sum of P would let a steep facet, however narrow at the vertex, outweigh a flat one.
 *
 * @param pits those with air just above them
 * @param undersides those with material just above them
 */
record LocalMinima(BitSet pits, BitSet undersides) {
    static LocalMinima of(TriangleMesh mesh, Neighbours near) {
        BitSet minima = new BitSet();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            minima.set(v, near.lower(v).length == 0);
        }
        double level = OpenHollows.LEVEL_TOLERANCE * FaceSets.diagonal(mesh.box());
        double[] air = new double[mesh.vertexCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                if (minima.get(v)) {
                    // corners level with the vertex count as slightly higher, as in the order of Neighbours
                    double h = Math.max(level, mesh.at(mesh.corner(f, (k + 1) % 3), 2) - mesh.at(v, 2));
                    double g = Math.max(level, mesh.at(mesh.corner(f, (k + 2) % 3), 2) - mesh.at(v, 2));
                    air[v] += FaceSets.shadow(mesh, f) / (h * g);
                }
            }
        }
        BitSet undersides = (BitSet) minima.clone();
        minima.stream().filter(v -> air[v] > 0).forEach(undersides::clear);
        minima.andNot(undersides);
        return new LocalMinima(minima, undersides);
    }
}
