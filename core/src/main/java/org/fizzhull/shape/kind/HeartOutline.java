package org.fizzhull.shape.kind;

/**
 * Square of side q with a half disc of diameter q on two sides that meet: area q^2 (1 + pi/4), perimeter q (2 + pi)
 * (docs/physics/hydrostatics.md, 1). With the tip at the origin and the straight sides on the axes, the half below the
 * diagonal is a half disc about (q, q/2), which shrinks alike, and a triangle bounded by its straight side and, about
 * the cleft (q, q), by an arc of radius d. The deepest point lies on the diagonal at q (2 - sqrt 2) from straight sides
 * and cleft alike.
 * <pre>
 *   a(d) = pi (q/2 - d)^2 + (q - d)^2 - pi d^2/4             up to d = q/2
 *   a(d) = w^2 - w s - d^2 (atan(w/s) - pi/4)                beyond, w = q - d, s = sqrt(q (2d - q))
 * </pre>
 * Elementary plane geometry, derived for this class. Immutable.
 *
 * @param q side of the square, m
 */
record HeartOutline(double q) implements Outline {
    /** Depth of the deepest point over the side. */
    private static final double REACH = 2 - Math.sqrt(2);

    @Override
    public double area(double d) {
        if (2 * d <= q) {
            // half discs and square are whole but smaller; an arc of radius d about the cleft takes away a quarter disc
            double r = q / 2 - d;
            return Math.PI * r * r + (q - d) * (q - d) - Math.PI * d * d / 4;
        }
        // the half discs are gone: a triangle bounded by the arc about the cleft
        double w = q - d;
        double s = Math.sqrt(q * (2 * d - q));
        return w * w - w * s - d * d * (Math.atan2(w, s) - Math.PI / 4);
    }

    @Override
    public double length(double d) {
        if (2 * d <= q) {
            return 2 * (Math.PI * (q / 2 - d) + (q - d) + Math.PI * d / 4);
        }
        double w = q - d;
        double s = Math.sqrt(q * (2 * d - q));
        return 2 * (w - s + d * (Math.atan2(w, s) - Math.PI / 4));
    }

    @Override
    public double[] breaks() {
        return new double[] {0, q / 2, q * REACH};
    }

    /**
     * Distance of the centroid from the nearest place of the outline, m: the cleft, which lies {@code q/sqrt 2} from
     * the middle of the square; the straight sides lie q/2 and more away, the lobes farther.
     */
    @Override
    public double reach() {
        return q / Math.sqrt(2) - lobeShift();
    }

    /** Distance of the centroid from the middle of the square towards the cleft, m. */
    double lobeShift() {
        return Math.sqrt(2) * q * (1.0 / 2 + 2 / (3 * Math.PI)) * (Math.PI / 8) / (1 + Math.PI / 4);
    }
}
