package org.fizzhull.voyage;

import org.fizzhull.hydrostatics.Immersion;

/**
 * A part of a voyage during which the same faces are wet: every face, or the outer ones of a hollow that holds air.
 *
 * <p>The flooded stage has no air: its last three numbers are 0. Areas and volumes are those of the shape as computed;
 * a draw scales them. Safe for several threads once {@link #evaluate} has been called. Made by {@link VoyageForm}.
 *
 * @param grid what is left of those faces at even depths
 * @param afloat how it recedes while it floats with a flat face up
 * @param immersion of the hull, closed where the hollow holds air
 * @param facePerPlan area of those faces over the plan area
 * @param insetVolume what an inset displaces beside the body, m3
 * @param hollow volume of that air at the pressure of the surface, m3; 0 where there is none
 * @param above part of the hull, its hollow closed, that stays out of the water till the rim goes under, m3
 * @param wall how far those faces may recede before that air is let out, m
 */
record Stage(
        ErosionGrid grid,
        AfloatFront afloat,
        Immersion immersion,
        double facePerPlan,
        double insetVolume,
        double hollow,
        double above,
        double wall) {

    /** Computes all tables now; without this call each value is computed at its first use. */
    void evaluate() {
        grid.evaluate();
        afloat.evaluate();
        immersion.evaluate();
    }

    /** Depth of the front at which it pierces the wall and the air escapes, m; infinite where there is no air. */
    double pierced() {
        return hollow > 0 ? wall : Double.POSITIVE_INFINITY;
    }
}
