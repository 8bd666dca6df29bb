package org.fizzhull.shape.meshed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.hollow.OpenHollows;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.mesh.measure.Shells;

/**
 * What fills the largest hollow of a mesh, closed or open to the top or to the bottom, as a body of its own: the piece,
 * if the file is a mould and not the piece. Whether it is cannot be told from its form, a bowl is like half a mould: so
 * the maker is asked by a notice.
 *
 * <p>Hollows open to the bottom are looked for only where no other was found: the mesh is turned upside down and
 * searched once more. Stateless. Used by {@link MeshShape}.
 */
final class MouldFilling {
    /** Share of the volume of the material from which a hollow could be the cavity of a mould (assumed). */
    private static final double LEAST = 0.05;

    /** Smallest side of a piece, m: less is a dimple, a groove or a hole for a screw (assumed). */
    private static final double SMALLEST = 0.010;

    private MouldFilling() {}

    /**
     * The filling, a closed mesh that faces outward, in the place it has in the mould; empty where there is no hollow.
     *
     * @param mesh closed mesh that faces outward, m
     * @param open hollows of the mesh as it lies
     */
    public static Optional<TriangleMesh> of(TriangleMesh mesh, OpenHollows open) {
        // closed hollow, then open to the top, then to the bottom
        List<TriangleMesh> found = new ArrayList<>(2);
        new Shells(mesh).largestHollow().ifPresent(found::add);
        if (!open.none()) {
            found.add(open.filling());
        }
        if (found.isEmpty()) {
            OpenHollows below = OpenHollows.of(mesh.upsideDown());
            if (!below.none()) {
                found.add(below.filling().upsideDown());
            }
        }
        // the largest by volume
        TriangleMesh largest = null;
        for (TriangleMesh filling : found) {
            if (largest == null || volume(filling) > volume(largest)) {
                largest = filling;
            }
        }
        return Optional.ofNullable(largest);
    }

    /** Whether the filling is that of a hollow open to the bottom; arguments as for {@link #of}. */
    public static boolean below(TriangleMesh mesh, OpenHollows open) {
        return open.none() && new Shells(mesh).largestHollow().isEmpty();
    }

    /** Whether a filling could be a piece: large enough beside the material, m3, and in each of its sides. */
    public static boolean likely(TriangleMesh filling, double material) {
        double[] box = filling.box();
        double side = Math.min(box[5] - box[2], Math.min(box[3] - box[0], box[4] - box[1]));
        return volume(filling) >= LEAST * material && side >= SMALLEST;
    }

    /**
     * The notice {@code mesh-mould}, which asks, with both readings ready to type. A hollow that opens to the bottom could
     * also be that of a boat which lies upside down in its file, as bowls are printed.
     *
     * @param filling what fills the hollow
     * @param below whether the hollow opens to the bottom
     * @param body shape text of the body itself
     * @param hollow shape text of what fills its hollow
     */
    public static Notice asks(TriangleMesh filling, boolean below, String body, String hollow) {
        return new Notice(
                "mesh-mould",
                "Is this the mould? It has a hollow that holds " + Math.round(1e7 * volume(filling)) / 10.0
                        + " cm3 up to its rim. The answer is about the body itself, " + body
                        + (below
                                ? ", whose hollow opens to the bottom as filed and is taken as full of water; to ask"
                                        + " about it as a boat turn it over in the program it was drawn in"
                                : "")
                        + "; if the piece is what fills the hollow, write " + hollow + ".");
    }

    /** Enclosed volume, m3. */
    private static double volume(TriangleMesh mesh) {
        return MassProperties.of(mesh).volume();
    }
}
