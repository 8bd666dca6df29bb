package org.fizzhull.voyage;

import org.fizzhull.hydrostatics.Immersion;

/**
 * A flat face that is up and out of the water while a piece floats. If the piece keeps it there, only the other faces
 * recede, and it lasts longer than with every face wet: a thin slab twice as long, a cube a tenth.
 *
 * <p>The share phi of the surface that is flat and up follows from how the dry share f goes with the volume x out of the
 * water, whichever way the shape is listed: phi + a sqrt(x) + b x, the root of a rounded top, the linear term of upright
 * sides, so phi = 3 f(x) - 3 f(4 x) + f(9 x). The piece is then taken for the puck with that share, H/D = 1/(4 phi) - 1/2, of which a
 * hundredth is left after
 *
 * <pre>  (1 - 2 e/D)^2 (1 - 2 e/H) = 0.01   every face wet,      (1 - 2 t/D)^2 (1 - t/H) = 0.01   the top dry</pre>
 *
 * <p>t/e of a puck is exact, of a dome 1.96 for 1.77 and of a block of 60 x 40 x 30 mm 1.41 for 1.33. Checked by
 * {@code validation/reference/faces.py}; docs/physics/voyage.md, 1. Immutable.
 *
 * @param share phi of the surface, 0 without such a face
 * @param longer t/e - 1, 0 to 1
 */
record FlatTop(double share, double longer) {
    /** No face stays dry. */
    static final FlatTop NONE = new FlatTop(0, 0);

    /** Volume out of the water at which the dry share is read, and four and nine times it. */
    private static final double OUT = 1.0 / 64;

    /** What a rounded top leaves by the error of its tables. */
    private static final double LEAST = 0.03;

    static FlatTop of(Immersion afloat) {
        double share = 1 - 3 * afloat.wet(1 - OUT) + 3 * afloat.wet(1 - 4 * OUT) - afloat.wet(1 - 9 * OUT);
        if (!(share > LEAST)) {
            return NONE;
        }
        // H/D; a face cannot have more than half of the surface
        double height = Math.max(1e-3, 1 / (4 * Math.min(share, 0.499)) - 0.5);
        return new FlatTop(share, left(height, 1) / left(height, 2) - 1);
    }

    /** Way of a front until a hundredth of a puck 1 across is left, with so many of its ends wet. */
    private static double left(double height, int ends) {
        double low = 0;
        double high = Math.min(0.5, height / ends);
        for (int pass = 0; pass < 50; pass++) {
            double e = (low + high) / 2;
            if ((1 - 2 * e) * (1 - 2 * e) * (1 - ends * e / height) > Outcome.END) {
                low = e;
            } else {
                high = e;
            }
        }
        return low;
    }

    /** Life of a piece that keeps its side up over that of one with every face wet, while a share of it is wet. */
    double lasting(double wet) {
        return longer > 0 ? 1 + longer * Math.min(1, (1 - wet) / share) : 1;
    }
}
