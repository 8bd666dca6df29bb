package org.fizzhull.hydrostatics;

import java.io.Serializable;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;

/**
 * How firmly a floating body holds a given attitude, whether or not it stays there.
 *
 * <pre>  GM = BM - BG,   BM = I/V</pre>
 *
 * <p>I least and largest second moment of the water-plane area about its centroid (m4), V displaced volume (m3), BG
 * height of the centre of mass above the centre of buoyancy (m). An attitude is stable where both GM are above 0; it is
 * an equilibrium only where {@code arm} is 0.
 * <pre>{@code
 * Stability upright = Stability.of(hull, massCentre, Vec3.UP, mass / bath.density());
 * boolean stays = upright.arm() < 1e-9 && upright.gmSmaller() > 0;
 * }</pre>
 *
 * <p>Error: that of the hull's cuts. Cost: one draft. Source: textbooks of naval architecture;
 * docs/physics/hydrostatics.md, 2. Immutable. Every stable attitude at once: {@link Attitudes}.
 *
 * @param level height of the water plane {@code up . x = level} in the body frame, m
 * @param energy height of the centre of mass above the centre of buoyancy, m; BG with its sign
 * @param bmSmaller the smaller metacentric radius I/V, m
 * @param bmLarger the larger metacentric radius, m
 * @param gmSmaller the smaller metacentric height BM - BG, m; below 0 the body leaves this attitude
 * @param gmLarger the larger metacentric height, m
 * @param arm distance of the centre of mass from the vertical through the centre of buoyancy, m; 0 in equilibrium
 */
public record Stability(
        double level, double energy, double bmSmaller, double bmLarger, double gmSmaller, double gmLarger, double arm)
        implements Serializable {

    /**
     * {@return the stability with {@code up} (a unit vector) pointing up}
     *
     * @param hull closed surface of the body
     * @param massCentre centre of mass in the body frame, m
     * @param up unit vector of the body frame that points up
     * @param displaced mass over water density, m3, above 0 and below the volume of the hull
     * @throws IllegalArgumentException where the volume is not above 0 and below that of the hull
     */
    public static Stability of(Hull hull, Vec3 massCentre, Vec3 up, double displaced) {
        Floating body = new Floating(hull, massCentre, displaced);
        body.at(up);
        double smaller = body.smallerGm();
        double larger = body.largerGm();
        return new Stability(
                body.level, body.energy, smaller + body.energy, larger + body.energy, smaller, larger, body.slope());
    }

    /**
     * {@return the righting arm GZ, m, after a heel from {@code up} about a level axis at constant displacement: above
     * 0 it turns the body back} It is the derivative of the energy by the heel. The heel turns {@code up} towards
     * {@code axis x up}.
     *
     * @param hull closed surface of the body
     * @param massCentre centre of mass in the body frame, m
     * @param up unit vector of the body frame that points up
     * @param axis unit vector at right angles to {@code up}, body frame
     * @param heel angle, rad
     * @param displaced mass over water density, m3, above 0
     * @throws IllegalArgumentException where the volume is not above 0 and below that of the hull
     */
    public static double rightingArm(Hull hull, Vec3 massCentre, Vec3 up, Vec3 axis, double heel, double displaced) {
        Floating body = new Floating(hull, massCentre, displaced);
        Vec3 side = axis.cross(up);
        Vec3 heeled = up.times(Math.cos(heel)).plus(side.times(Math.sin(heel)));
        Vec3 onward = side.times(Math.cos(heel)).minus(up.times(Math.sin(heel)));
        body.at(heeled);
        Vec3 buoyancy =
                new Vec3(body.cut.mx / body.cut.volume, body.cut.my / body.cut.volume, body.cut.mz / body.cut.volume);
        return massCentre.minus(buoyancy).dot(onward);
    }
}
