package org.fizzhull.validation.check;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Attitude;
import org.fizzhull.hydrostatics.Attitudes;
import org.fizzhull.validation.table.Inputs;

/** The ways a homogeneous body rests, as angles in degrees of a body direction from the vertical. */
final class Ways {
    private static final double SAME_DEGREES = 0.01;

    private Ways() {}

    /** Angles of the direction {@code axis} of the row, each once, smallest first. */
    static List<Double> of(Inputs in) {
        Hull hull = Bodies.shape(in).hull().orElseThrow();
        Vec3 axis = Bodies.direction(in.word("axis"));
        List<Double> angles = new ArrayList<>();
        for (Attitude attitude : Attitudes.find(hull, hull.centroid(), in.number("s"))) {
            double angle = Math.toDegrees(
                    Math.acos(Math.max(-1, Math.min(1, attitude.up().dot(axis)))));
            if (angles.stream().noneMatch(known -> Math.abs(known - angle) < SAME_DEGREES)) {
                angles.add(angle);
            }
        }
        angles.sort(null);
        return angles;
    }
}
