package org.fizzhull.mesh.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;

/**
 * The closed surfaces that a facet list is made of.
 *
 * @param xyz coordinates x, y, z of one vertex after another, m
 * @param corners three vertices a facet, in the order of the file
 * @param label number of the surface of each facet
 * @param list the surfaces
 */
record Surfaces(double[] xyz, int[] corners, int[] label, List<Surface> list) {
    /** Divides a facet list into its connected surfaces. */
    static Surfaces of(double[] xyz, int[] corners, FacetComponents joined) {
        // half way between two vertices
        int half = xyz.length / 6 * 3;
        double[] origin = {(xyz[0] + xyz[half]) / 2, (xyz[1] + xyz[half + 1]) / 2, (xyz[2] + xyz[half + 2]) / 2};
        TriangleMesh mesh = new TriangleMesh(xyz, corners);
        int[] label = joined.labels();
        List<Surface> list = new ArrayList<>();
        for (int b = 0; b < joined.bodies(); b++) {
            list.add(new Surface());
        }
        for (int f = 0; f < label.length; f++) {
            list.get(label[f]).add(mesh, f, origin);
        }
        return new Surfaces(xyz, corners, label, list);
    }

    int count() {
        return list.size();
    }

    Surface get(int i) {
        return list.get(i);
    }

    /** Signed volume of all, m3. */
    double volume() {
        return list.stream().mapToDouble(Surface::volume).sum();
    }

    /** These surfaces without some of them. */
    Surfaces without(Collection<Surface> dropped) {
        if (dropped.isEmpty()) {
            return this;
        }
        List<Surface> left = new ArrayList<>(list);
        left.removeAll(dropped);
        int[] renamed = list.stream().mapToInt(left::indexOf).toArray();
        int[] kept = MeshMending.without(corners, f -> renamed[label[f]] < 0);
        int[] labels =
                Arrays.stream(label).map(b -> renamed[b]).filter(b -> b >= 0).toArray();
        return new Surfaces(xyz, kept, labels, left);
    }

    /** Turns some surfaces, with their facets, to face the other way. */
    void turn(Collection<Surface> turned) {
        turned.forEach(Surface::turn);
        boolean[] which = new boolean[count()];
        IntStream.range(0, which.length).forEach(b -> which[b] = turned.contains(get(b)));
        for (int f = 0; f < label.length; f++) {
            if (which[label[f]]) {
                turn(corners, f);
            }
        }
    }

    /** Turns one facet of a list to face the other way. */
    static void turn(int[] corners, int facet) {
        int kept = corners[3 * facet + 1];
        corners[3 * facet + 1] = corners[3 * facet + 2];
        corners[3 * facet + 2] = kept;
    }

    /** One mesh of all. */
    TriangleMesh mesh() {
        return new TriangleMesh(xyz, corners);
    }
}
