package org.fizzhull.hydrostatics;

import java.io.Serializable;
import org.fizzhull.geometry.Vec3;

/**
 * One stable way a body floats in still water, as {@link Attitudes#find} lists them: which side is up, how deep it
 * lies, how firmly it holds. An attitude is a minimum of the potential energy over all directions at constant
 * displacement; both metacentric heights are above 0, or 0 where the body turns freely. Immutable.
 *
 * @param up unit vector of the body frame that points up; where the body turns freely, one of many
 * @param level height of the water plane {@code up . x = level} in the body frame, m
 * @param draft depth of the lowest point below the water, m
 * @param freeboard height of the highest point above the water, m
 * @param immersedFraction displaced volume over hull volume, 0 to 1
 * @param gmSmaller the smaller metacentric height, m; 0 where the body turns freely
 * @param gmLarger the larger metacentric height, m
 * @param turnsFreely true where the body can be turned, with its energy unchanged, through a family of attitudes: a
 *     ball any way, an egg about its axis
 * @param share fraction of random starts that end in this attitude, 0 to 1; exact for bodies of revolution, else in
 *     steps of a hundredth
 * @param energy height of the centre of mass above the centre of buoyancy, m: the potential energy over the weight
 */
public record Attitude(
        Vec3 up,
        double level,
        double draft,
        double freeboard,
        double immersedFraction,
        double gmSmaller,
        double gmLarger,
        boolean turnsFreely,
        double share,
        double energy)
        implements Serializable {

    /**
     * {@return whether the other attitude looks the same in every figure, as the two flat ways of a puck or the six of
     * a cube do: a report may count such ways together} The figures are compared relative to the height of the body.
     *
     * @param other an attitude of the same body
     */
    public boolean looksLike(Attitude other) {
        // draft and freeboard add up to the height of the body in this attitude
        double near = 1e-6 * (draft + freeboard);
        return Math.abs(draft - other.draft) < near
                && Math.abs(freeboard - other.freeboard) < near
                && Math.abs(energy - other.energy) < near
                && Math.abs(gmSmaller - other.gmSmaller) < near
                && Math.abs(gmLarger - other.gmLarger) < near
                && turnsFreely == other.turnsFreely;
    }
}
