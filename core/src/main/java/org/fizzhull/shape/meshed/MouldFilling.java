package org.fizzhull.shape.meshed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.FaceSets;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.hollow.OpenHollows;

/**
 * What fills the largest hollow of a mesh, closed or open to the top or to the bottom, as a body of its own: the piece,
 * if the file is a mould and not the piece. Whether it is cannot be told from its form, a bowl is like half a mould: so
 * the maker is asked.
 */
final class MouldFilling {
    /** Share of the volume of the material from which a hollow could be the cavity of a mould. */
    private static final double LEAST = 0.05;

    /** Smallest side of a piece, m: less is a dimple, a groove or a hole for a screw. */
    private static final double SMALLEST = 0.010;

    private MouldFilling() {}

    /**
     * The filling.
     *
     * @param open hollows of the mesh as it lies
     */
    public static Optional<TriangleMesh> of(TriangleMesh mesh, OpenHollows open) {
        List<TriangleMesh> found = new ArrayList<>(2);
        FaceSets.largestHollow(mesh).ifPresent(found::add);
        if (!open.none()) {
            found.add(open.filling());
        }
        if (found.isEmpty()) {
            OpenHollows below = OpenHollows.of(upsideDown(mesh));
            if (!below.none()) {
                found.add(upsideDown(below.filling()));
            }
        }
        TriangleMesh largest = null;
        for (TriangleMesh filling : found) {
            if (largest == null || volume(filling) > volume(largest)) {
                largest = filling;
            }
        }
        return Optional.ofNullable(largest);
    }

    /** Whether a filling could be a piece, for a material of a volume, m3. */
    public static boolean likely(TriangleMesh filling, double material) {
        double[] box = filling.box();
        double side = Math.min(box[5] - box[2], Math.min(box[3] - box[0], box[4] - box[1]));
        return volume(filling) >= LEAST * material && side >= SMALLEST;
    }

    /** Asks, with both readings ready to type. */
    public static Notice asks(TriangleMesh filling, String body, String hollow) {
        return new Notice(
                "mesh-mould",
                "Is this the mould? It has a hollow that holds " + Math.round(1e7 * volume(filling)) / 10.0
                        + " cm3 up to its rim. The answer is about the body itself, " + body
                        + "; if the piece is what fills the hollow, write " + hollow + ".");
    }

    private static double volume(TriangleMesh mesh) {
        return MassProperties.of(mesh).volume();
    }

    private static TriangleMesh upsideDown(TriangleMesh mesh) {
        return mesh.moved(new double[][] {{1, 0, 0}, {0, -1, 0}, {0, 0, -1}}, new double[3]);
    }
}
