package org.fizzhull.mesh.reading;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.repair.MeshBody;
import org.fizzhull.mesh.repair.Where;

/**
 * Says when a body looks as if its unit were wrong, or as if it were the mould and not the piece. The bounds are those of
 * the hydrostatics sheet, section 6 rule 9 (assumed): pieces lie between 10 and 300 mm.
 */
final class SizeHints {
    private static final double SMALLEST = 0.010;
    private static final double LARGEST = 0.300;

    /**
     * Below this part of its box a body is more likely a shell around the piece than the piece: a cone fills 0.26, the
     * corner of a cube 0.17, a half mould of 1.5 mm around a 70 mm ball 0.07 (computed).
     */
    private static final double THIN = 0.12;

    private static final double[] UNITS = {1e-3, 1e-2, 25.4e-3, 1};
    private static final String[] NAMES = {"mm", "cm", "in", "m"};

    private SizeHints() {}

    static void add(List<MeshBody> bodies, double metresPerUnit, List<Notice> notices) {
        MeshBody box = MeshBody.around(bodies);
        double x = box.highX() - box.lowX();
        double y = box.highY() - box.lowY();
        double z = box.highZ() - box.lowZ();
        double largest = Math.max(x, Math.max(y, z));
        if (largest < SMALLEST || largest > LARGEST) {
            notices.add(new Notice(
                    "mesh-size",
                    "The body is " + Where.millimetres(largest) + " mm long, which is unlikely for a piece."
                            + otherUnits(largest / metresPerUnit, metresPerUnit)));
        }
        double part = box.volume() / (x * y * z);
        if (part < THIN) {
            notices.add(new Notice(
                    "mesh-thin",
                    "The body fills only " + Math.rint(part * 1e3) / 10
                            + " % of its box. If this is the mould and not the piece, export the piece."));
        }
    }

    private static String otherUnits(double units, double metresPerUnit) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < UNITS.length; i++) {
            double length = units * UNITS[i];
            if (UNITS[i] != metresPerUnit && length >= SMALLEST && length <= LARGEST) {
                text.append(text.length() == 0 ? " With " : ", with ")
                        .append("unit=")
                        .append(NAMES[i])
                        .append(" it would be ")
                        .append(Where.millimetres(length))
                        .append(" mm");
            }
        }
        return text.length() == 0 ? "" : text.append('.').toString();
    }
}
