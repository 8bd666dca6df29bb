package org.fizzhull.hydrostatics;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Vec3;

/**
 * An open shape that floats with its hollow dry, set down open side up and let go: it displaces with its hull closed by
 * the rim plane, until the rim goes under. It stays upright where that is a stable attitude, else it leans to the
 * nearest one: a hollow off its middle, or a tall cup.
 *
 * <p>Method: {@code Descent} from upright to the nearest minimum of the potential energy of the closed hull; the rim is
 * compared with the water plane there; the heel at which the rim first touches is found by {@code RimHeel}.
 *
 * <p>Range: still water, hollow dry, no fizz. Error: that of the hull's cuts; {@code rimDips} of a body that is not
 * round is found by a search over directions. Source: docs/physics/hydrostatics.md, 3. Immutable. How much mass it
 * carries: {@link BoatLimit}.
 *
 * @param up direction of the body frame that points up, a unit vector
 * @param level height of the water plane {@code up . x = level} in the body frame, m
 * @param draft depth of the lowest point below the water, m
 * @param rimFreeboard height of the lowest point of the rim above the water, m; from 0 down water gets in
 * @param immersedFraction displaced volume over the volume of the closed hull, 0 to 1
 * @param rimDips smallest heel from there at which the rim touches the water at constant displacement, rad; pi/2 where
 *     none below that does, 0 where it is under
 * @param gmSmaller the smaller metacentric height, m; below 0 the boat does not stay as it is
 * @param gmLarger the larger metacentric height, m
 */
public record Boat(
        Vec3 up,
        double level,
        double draft,
        double rimFreeboard,
        double immersedFraction,
        double rimDips,
        double gmSmaller,
        double gmLarger) {

    /**
     * {@return the mass at which the rim goes under of a boat held upright, kg: what it displaces then times the
     * water's kg/m3} A boat that leans ships water below that mass: {@link BoatLimit#displaced}.
     *
     * @param hollow hollow of the open shape
     * @param waterDensity density of the water, kg/m3
     */
    public static double limitMass(Hollow hollow, double waterDensity) {
        return hollow.carried() * waterDensity;
    }

    /**
     * {@return the boat at a mass}
     *
     * @param hollow hollow of the open shape
     * @param massCentre centre of mass in the body frame, m
     * @param displaced mass over water density, m3, above 0
     * @throws IllegalArgumentException where the closed hull does not displace so much: it swamps
     */
    public static Boat of(Hollow hollow, Vec3 massCentre, double displaced) {
        Floating body = settled(hollow, massCentre, displaced);
        Vec3 up = body.up();
        double freeboard = freeboard(hollow, body);
        return new Boat(
                up,
                body.level,
                body.level + hollow.closed().reach(-up.x(), -up.y(), -up.z()),
                freeboard,
                displaced / hollow.closed().volume(),
                freeboard > 0 ? new RimHeel(hollow, up, displaced).smallest() : 0,
                body.smallerGm(),
                body.largerGm());
    }

    /**
     * {@return whether a boat set down upright stays afloat with a dry rim; parameters as in {@link #of}}
     *
     * @param hollow hollow of the open shape
     * @param massCentre centre of mass in the body frame, m
     * @param displaced mass over water density, m3, above 0
     * @throws IllegalArgumentException where the volume is not above 0
     */
    public static boolean stands(Hollow hollow, Vec3 massCentre, double displaced) {
        if (displaced >= hollow.carried()) {
            return false;
        }
        Floating body = settled(hollow, massCentre, displaced);
        return body.smallerGm() >= 0 && freeboard(hollow, body) > 0;
    }

    /** Height of the lowest point of the rim above the water plane, m; below 0 the rim is under. */
    private static double freeboard(Hollow hollow, Floating body) {
        return hollow.rim().lowest(body.nx, body.ny, body.nz) - body.level;
    }

    /** The closed hull at the attitude to which it settles from upright. */
    private static Floating settled(Hollow hollow, Vec3 massCentre, double displaced) {
        Floating body = new Floating(hollow.closed(), massCentre, displaced);
        new Descent(body).from(0, 0, 1, GeneralSearch.neutral(body));
        return body;
    }
}
