package org.fizzhull.drying.factor;

import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;

/**
 * Shape factor of drying,
 *
 * <pre>
 *   c = tau_exact / tau_profile,  tau_exact = (1/V) INT u dV, laplacian u = -1, u = 0 on the open faces (m2)
 *                                 tau_profile = (1/V) INT V(d)^2 / A(d) dd over the inward depth d (m2)
 * </pre>
 *
 * by how much diffusion along the depth profile is too fast. 1 for a ball and a half ball on its closed flat face;
 * series for a sharp puck and a sharp block; one Poisson solve for anything else ({@link Shape#diffusionTime}): in
 * radius and height for bodies of revolution, to about 0.2 %, in space for all others, to about 0.5 %; with a rounded
 * edge on a tray to 0.4 and 1 %. Never below 1 but for these errors, since the profile is a trial function in
 * Rayleigh's principle (docs/physics/drying.md, 4).
 */
public final class DryingShapeFactor {
    /** Steps of the integral over the profile: its error stays below that of the solves. */
    private static final int STEPS = 4000;

    private DryingShapeFactor() {}

    /**
     * {@return the factor, at least 1 but for the errors of a solve; empty for a shape without a hull, whose form is
     * not known, and for an open hollow that is closed} A solve takes 5 to 100 ms in radius and height and 0.1 to 0.5 s
     * in space: keep the result.
     *
     * @param shape form of the piece
     * @param exposure which faces vapour leaves through
     */
    public static OptionalDouble of(Shape shape, DepthProfile.Exposure exposure) {
        Given.all("shape, exposure", shape, exposure);
        OptionalDouble exact = shape.diffusionTime(exposure);
        return exact.isPresent()
                ? OptionalDouble.of(exact.getAsDouble() / profileTime(shape.depthProfile(exposure)))
                : exact;
    }

    /**
     * {@return the time constant of diffusion along a profile for a diffusivity of 1 m2/s: (1/V) times the integral of
     * V^2/A, m2}
     *
     * @param profile what is left of the shape at each inward depth
     */
    public static double profileTime(DepthProfile profile) {
        double sum = 0;
        double step = profile.deepest() / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double d = (i + 0.5) * step;
            double left = profile.volume(d);
            double area = profile.area(d);
            // V^2/A falls to 0 with V; at the very end of a measured table A may be 0 first
            sum += area > 0 ? left * left / area : 0;
        }
        return sum * step / profile.volume(0);
    }
}
