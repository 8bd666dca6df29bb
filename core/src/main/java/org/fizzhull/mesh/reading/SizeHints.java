package org.fizzhull.mesh.reading;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.repair.LikelyUnits;
import org.fizzhull.mesh.repair.MeshCheck;

/**
 * Says when a body looks as if its unit were wrong, or as if it were the mould and not the piece. Pieces lie
 * between 10 and 300 mm ({@link LikelyUnits}).
 */
final class SizeHints {
    /**
     * Below this part of its box a body is more likely a shell around the piece than the piece: a cone fills 0.26, the
     * corner of a cube 0.17, a half mould of 1.5 mm around a 70 mm ball 0.07 (computed).
     */
    private static final double THIN = 0.12;

    private SizeHints() {}

    static void add(MeshCheck body, double metresPerUnit, List<Notice> notices) {
        double[] box = body.mesh().box();
        double x = box[3] - box[0];
        double y = box[4] - box[1];
        double z = box[5] - box[2];
        double largest = Math.max(x, Math.max(y, z));
        if (largest < LikelyUnits.SMALLEST || largest > LikelyUnits.LARGEST) {
            notices.add(new Notice(
                    "mesh-size",
                    ("The body is " + LikelyUnits.rounded(largest) + " mm long, which is unlikely for a piece. "
                                    + LikelyUnits.of(largest, metresPerUnit))
                            .trim()));
        }
        double part = body.volume() / (x * y * z);
        if (part < THIN) {
            notices.add(new Notice(
                    "mesh-thin",
                    "The body fills only " + Math.rint(part * 1e3) / 10
                            + " % of its box. If this is the mould and not the piece, export the piece."));
        }
    }
}
