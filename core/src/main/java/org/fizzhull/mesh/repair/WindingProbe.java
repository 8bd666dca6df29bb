package org.fizzhull.mesh.repair;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * Looks for places that a surface encloses twice, or inside out. Lines parallel to z stand on a grid over the body; going
 * up a line, the number of surfaces around must be 0 or 1 everywhere. So nested bodies, bodies that run into each other
 * and a surface that runs into itself are found by one rule, with a place.
 *
 * <p>An overlap whose shadow falls between the lines is missed: with 64 lines to a side that is one smaller than
 * about a 4000th of the body's shadow. An overlap of at most a thousandth of the volume is kept, with a notice, a
 * larger one refused.
 */
final class WindingProbe {
    /** Overlap kept with a notice, as a part of the volume. */
    static final double KEPT = 1e-3;

    /** Shortest stretch of a line that counts, as a part of the longest side: rounding may swap faces that lie nearer. */
    private static final double LEAST = 1e-5;

    /** Lines to a side. */
    private static final int LINES = 64;

    private final TriangleMesh mesh;
    private final double[] box;
    private double length;
    private String where = "";

    WindingProbe(TriangleMesh mesh) {
        this.mesh = mesh;
        box = mesh.box();
        double size = Math.max(box[5] - box[2], Math.max(box[3] - box[0], box[4] - box[1]));
        RayTable rays = RayTable.over(mesh, 2, box, LINES);
        for (int ray = 0; ray < LINES * LINES; ray++) {
            judge(rays, ray, LEAST * size);
        }
    }

    /** Whether any place is enclosed twice, or inside out. */
    boolean overlaps() {
        return length > 0;
    }

    /** Refuses a large overlap; adds a notice of a small one. */
    void check(MeshRefusals refusals, List<Notice> notices) {
        if (overlaps()) {
            double across = (box[3] - box[0]) * (box[4] - box[1]) / (LINES * LINES);
            double part = length * across / MassProperties.of(mesh).volume();
            String amount = "about " + Math.max(0.01, Math.rint(part * 1e4) / 1e2) + " %";
            if (!(part <= KEPT)) {
                throw refusals.overlap(where, amount);
            }
            notices.add(new Notice(
                    "mesh-overlap", "The surface runs into itself " + where + ", by " + amount + " of the volume."));
        }
    }

    /** Adds the length of a line that is enclosed twice or inside out, of one whose crossings add up. */
    private void judge(RayTable rays, int ray, double least) {
        int winding = 0;
        double wrong = 0;
        double place = 0;
        for (int i = rays.first(ray); i < rays.end(ray); i++) {
            winding += rays.leaves(i) ? -1 : 1;
            double gap = i + 1 < rays.end(ray) ? rays.height(i + 1) - rays.height(i) : 0;
            if ((winding < 0 || winding > 1) && gap > least) {
                wrong += gap;
                place = rays.height(i) + gap / 2;
            }
        }
        if (winding == 0 && wrong > 0) {
            where = where.isEmpty() ? "at " + PlaceWords.point(rays.u(ray), rays.v(ray), place) : where;
            length += wrong;
        }
    }
}
