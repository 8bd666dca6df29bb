package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.Hull;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;

/**
 * A kind whose surface is an outline turned about the z axis: r(z) of its sides, and level faces where the sides end off
 * the axis. Its hull follows from the outline alone, in closed form for lines and arcs ({@link RevolvedHull}).
 */
interface TurnedShape extends ClosedForm {
    /** {@return the outline that is turned about the z axis, m, the lowest point at height 0} */
    Profile2D meridian();

    /** A disc over the width of its box. */
    @Override
    default double planArea() {
        double width = extents().width();
        return Math.PI * width * width / 4;
    }

    @Override
    default Optional<Hull> hull() {
        return Optional.of(new RevolvedHull(meridian()));
    }
}
