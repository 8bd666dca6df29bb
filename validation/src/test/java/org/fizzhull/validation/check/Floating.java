package org.fizzhull.validation.check;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.hydrostatics.Stability;

/**
 * A homogeneous body held in one attitude: what the library says of its draft, stability and water plane. SI.
 *
 * @param up body direction that points up, a unit vector
 * @param draft how deep it lies
 * @param stability how firmly
 * @param cut what lies below the water
 */
record Floating(Vec3 up, Draft draft, Stability stability, PlaneCut cut) {
    private static final int HALVINGS = 60;

    /** Of a density relative to the water. */
    static Floating of(Hull hull, double relativeDensity, Vec3 up) {
        double displaced = relativeDensity * hull.volume();
        Draft draft = Draft.of(hull, up, displaced);
        PlaneCut cut = new PlaneCut();
        hull.cut(up.x(), up.y(), up.z(), draft.level(), cut);
        return new Floating(up, draft, Stability.of(hull, hull.centroid(), up, displaced), cut);
    }

    /** Centre of the displaced volume, m. */
    Vec3 buoyancy() {
        return new Vec3(cut.mx / cut.volume, cut.my / cut.volume, cut.mz / cut.volume);
    }

    /** Where a function that changes sign between two ends is zero. */
    static double root(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        boolean rising = f.applyAsDouble(high) > 0;
        if (rising == f.applyAsDouble(low) > 0) {
            throw new IllegalStateException("no change of sign between " + from + " and " + to);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (f.applyAsDouble(middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
