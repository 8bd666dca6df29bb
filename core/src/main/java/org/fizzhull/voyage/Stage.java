package org.fizzhull.voyage;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.hydrostatics.Immersion;

/**
 * A part of a voyage during which the same faces are wet: every face, or the outer ones of a hollow that holds air.
 *
 * <p>The flooded stage has no air: its last three numbers are 0. Areas and volumes are those of the shape as computed;
 * a draw scales them. Immutable. Made by {@link VoyageForm}.
 *
 * @param profile what is left at each depth of those faces
 * @param grid the same on even depths
 * @param immersion of the hull, closed where the hollow holds air
 * @param facePerPlan area of those faces over the plan area
 * @param insetVolume what an inset displaces beside the body, m3
 * @param hollow volume of that air at the pressure of the surface, m3; 0 where there is none
 * @param above part of the hull, its hollow closed, that stays out of the water till the rim goes under, m3
 * @param wall how far those faces may recede before that air is let out, m
 * @param top what a flat face that is up and dry does to the life of a piece that keeps it there
 */
record Stage(
        DepthProfile profile,
        ErosionGrid grid,
        Immersion immersion,
        double facePerPlan,
        double insetVolume,
        double hollow,
        double above,
        double wall,
        FlatTop top) {

    /**
     * {@return the speed of the front along the depth profile over that of a wet face} Of a piece that turns about it is the
     * wet share, of one that keeps its side up what its life with that side dry comes to, between them by the slowness. A
     * ball that keeps its side up lasts as long as one wholly under: its dry cap is reached from below.
     *
     * @param wet share of the surface that is wet
     * @param turning 1 for turning about, 0 for keeping its side up
     */
    double receding(double wet, double turning) {
        return wet < 1 ? 1 / (turning / wet + (1 - turning) * top.lasting(wet)) : 1;
    }

    /** Depth at which the air is let out, m; endless where there is none. */
    double pierced() {
        return hollow > 0 ? wall : Double.POSITIVE_INFINITY;
    }
}
