package org.fizzhull.mesh.measure;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;

/**
 * The surfaces that a closed mesh is made of, each joined by its corners, and the volume that each encloses: negative for
 * that of a closed hollow. The hollow of an open bowl is one surface with its outside and is not told apart. O(facets).
 */
public final class Shells {
    private final TriangleMesh mesh;
    private final DisjointSets joined;

    /** Volume that a surface encloses, m3, at the vertex that names it; 0 at all others. */
    private final double[] volume;

    /**
     * The surfaces of a mesh.
     *
     * @param mesh closed, facing outward
     */
    public Shells(TriangleMesh mesh) {
        this.mesh = mesh;
        joined = new DisjointSets(mesh.vertexCount());
        for (int f = 0; f < mesh.facetCount(); f++) {
            joined.join(mesh.corner(f, 0), mesh.corner(f, 1));
            joined.join(mesh.corner(f, 1), mesh.corner(f, 2));
        }
        volume = new double[mesh.vertexCount()];
        double low = mesh.box()[2];
        for (int f = 0; f < mesh.facetCount(); f++) {
            double lift = 0;
            for (int k = 0; k < 3; k++) {
                lift += mesh.at(mesh.corner(f, k), 2) - low;
            }
            volume[shell(f)] += FaceSets.shadow(mesh, f) * lift / 3;
        }
    }

    private int shell(int facet) {
        return joined.root(mesh.corner(facet, 0));
    }

    /** {@return the facets of closed hollows, by number} */
    public BitSet hollows() {
        BitSet set = new BitSet();
        for (int f = 0; f < mesh.facetCount(); f++) {
            set.set(f, volume[shell(f)] < 0);
        }
        return set;
    }

    /** {@return volume of the closed hollows, m3} */
    public double sealed() {
        return -Arrays.stream(volume).filter(one -> one < 0).sum();
    }

    /** {@return what fills the largest closed hollow, as a body of its own; empty where there is none} */
    public Optional<TriangleMesh> largestHollow() {
        int largest = IntStream.range(0, volume.length).reduce(0, (a, b) -> volume[b] < volume[a] ? b : a);
        return volume[largest] < 0
                ? Optional.of(mesh.part(f -> shell(f) == largest).insideOut())
                : Optional.empty();
    }
}
