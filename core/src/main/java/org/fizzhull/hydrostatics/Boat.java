package org.fizzhull.hydrostatics;

import org.fizzhull.mesh.PlaneCut;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Hollow;
import org.fizzhull.shape.Hull;

/**
 * An open shape that floats with its hollow dry, open side up: it displaces with its hull closed by the rim plane,
 * until the rim goes under. The rim is a circle about the z axis.
 *
 * @param level height of the water plane above the origin of the body frame, m
 * @param draft depth of the lowest point below the water, m
 * @param rimFreeboard height of the rim above the water, m
 * @param immersedFraction displaced volume over the volume of the closed hull, 0 to 1
 * @param rimDips smallest heel at which the rim touches the water at constant displacement, rad; pi/2 where none below
 *     that does
 * @param gmSmaller the smaller metacentric height, m; below 0 the boat does not stay upright
 * @param gmLarger the larger metacentric height, m
 */
public record Boat(
        double level,
        double draft,
        double rimFreeboard,
        double immersedFraction,
        double rimDips,
        double gmSmaller,
        double gmLarger) {

    private static final int STEPS = 90;

    /** Mass at which the rim goes under, kg: the closed hull times the density of the water in kg/m3. */
    public static double limitMass(Hollow hollow, double waterDensity) {
        return hollow.closed().volume() * waterDensity;
    }

    /**
     * The boat at a mass.
     *
     * @param massCentre centre of mass in the body frame, m
     * @param displaced mass over water density, m3, above 0
     * @throws IllegalArgumentException where it is at or above the limit: it swamps
     */
    public static Boat of(Hollow hollow, Vec3 massCentre, double displaced) {
        Hull hull = hollow.closed();
        Floating body = new Floating(hull, massCentre, displaced);
        body.at(0, 0, 1);
        return new Boat(
                body.level,
                body.level + hull.reach(0, 0, -1),
                hollow.rimHeight() - body.level,
                displaced / hull.volume(),
                rimDips(hollow, displaced),
                body.smallerGm(),
                body.largerGm());
    }

    /** Height of the lowest rim point above the water after a heel, by bracketing its first zero. */
    private static double rimDips(Hollow hollow, double displaced) {
        PlaneCut cut = new PlaneCut();
        double dry = 0;
        double heel = 0;
        double level = Double.NaN;
        for (int i = 0; i <= STEPS; i++) {
            heel = Math.PI / 2 * i / STEPS;
            level = Draft.level(hollow.closed(), Math.sin(heel), 0, Math.cos(heel), displaced, level, cut);
            if (above(hollow, heel, level) <= 0) {
                break;
            }
            dry = heel;
        }
        if (dry == heel) {
            return Math.PI / 2;
        }
        double wet = heel;
        while (wet - dry > 1e-13) {
            double middle = (dry + wet) / 2;
            level = Draft.level(hollow.closed(), Math.sin(middle), 0, Math.cos(middle), displaced, level, cut);
            if (above(hollow, middle, level) > 0) {
                dry = middle;
            } else {
                wet = middle;
            }
            if (middle <= Math.nextUp(dry) && middle >= Math.nextDown(wet)) {
                break;
            }
        }
        return (dry + wet) / 2;
    }

    private static double above(Hollow hollow, double heel, double level) {
        return hollow.rimHeight() * Math.cos(heel) - hollow.rimRadius() * Math.sin(heel) - level;
    }
}
