package org.fizzhull.shape;

import java.util.OptionalDouble;
import org.fizzhull.mesh.distance.PoissonTime;

/**
 * Shape factor of drying, c = tau_exact / tau_profile: by how much diffusion along the depth profile is too fast (PHYSICS
 * 3; chain sheet, A 10 and E). 1 for a ball; series for sharp puck and sharp block; one Poisson solve for any other shape: in
 * radius and height for bodies of revolution, to about 0.2 %, in space for all others, to about 0.5 %; with a rounded
 * edge on a tray to 0.4 and 1 %.
 * Never below 1 but for these errors (Rayleigh's principle: the profile is a trial function).
 */
public final class DryingShapeFactor {
    private static final int STEPS = 4000;

    private DryingShapeFactor() {}

    /**
     * The factor; empty for a shape without a hull, whose form is not known, and for an open hollow that is closed. A
     * solve takes 5 to 100 ms in radius and height and 0.1 to 0.5 s in space: keep the result.
     */
    public static OptionalDouble of(Shape shape, Exposure exposure) {
        if (exactProfile(shape, exposure)) {
            return OptionalDouble.of(1);
        }
        DepthProfile profile = shape.depthProfile(exposure);
        OptionalDouble exact = exactTime(shape, exposure, profile.deepest());
        return exact.isPresent() ? OptionalDouble.of(exact.getAsDouble() / profileTime(profile)) : exact;
    }

    /** Time constant of diffusion along a profile for a diffusivity of 1 m2/s: (1/V) times the integral of V^2/A, m2. */
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

    private static OptionalDouble exactTime(Shape shape, Exposure exposure, double deepest) {
        boolean tray = exposure == Exposure.TRAY;
        OptionalDouble closed = exposure == Exposure.OUTSIDE ? OptionalDouble.empty() : closed(shape, tray);
        if (closed.isPresent()) {
            return closed;
        }
        if (exposure == Exposure.OUTSIDE && shape.hollow().isPresent()) {
            return OptionalDouble.empty();
        }
        if (shape instanceof RevolvedShape revolved) {
            return OptionalDouble.of(MeridianPoisson.time(revolved.meridian(), shape.volume(), tray));
        }
        Hull hull = shape.hull().orElse(null);
        if (hull instanceof RevolvedHull revolved) {
            return OptionalDouble.of(MeridianPoisson.time(Meridian.of(revolved.profile()), shape.volume(), tray));
        }
        if (hull instanceof PolyhedronHull polyhedron) {
            return OptionalDouble.of(PoissonTime.of(polyhedron.mesh(), tray, exposure == Exposure.OUTSIDE, deepest));
        }
        return OptionalDouble.empty();
    }

    /** Whether depth tells everything: a ball, and half of one on its closed flat face. */
    private static boolean exactProfile(Shape shape, Exposure exposure) {
        return (shape instanceof Sphere ball && ball.seam() == 0 && exposure != Exposure.OUTSIDE)
                || (shape instanceof Dome dome && exposure == Exposure.TRAY && dome.height() == dome.diameter() / 2);
    }

    /** What a series gives; on a tray the body and its mirror image dry as one of twice the height. */
    private static OptionalDouble closed(Shape shape, boolean tray) {
        double mirror = tray ? 2 : 1;
        if (shape instanceof Puck puck && puck.edge() == 0) {
            return OptionalDouble.of(DryingSeries.cylinder(puck.diameter(), mirror * puck.height()));
        }
        if (shape instanceof Block block && block.edge() == 0) {
            return OptionalDouble.of(DryingSeries.block(block.length(), block.width(), mirror * block.height()));
        }
        return OptionalDouble.empty();
    }
}
