package org.fizzhull.drying;

import org.fizzhull.shape.Block;
import org.fizzhull.shape.DepthProfile;
import org.fizzhull.shape.Exposure;
import org.fizzhull.shape.Hull;
import org.fizzhull.shape.Profile2D;
import org.fizzhull.shape.Puck;
import org.fizzhull.shape.RevolvedHull;
import org.fizzhull.shape.Ring;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.Sphere;

/**
 * The shape correction c = tau_exact / tau_profile by which diffusion along the depth profile is too fast: never below
 * 1 (Rayleigh's principle), 1 for ball, slab, ring and thin shell. With it times to 90 and 95 % are within 5 % (chain
 * sheet E).
 *
 * @param value c
 * @param spread relative standard uncertainty of c; 0.003 or less where it was computed
 */
public record ShapeFactor(double value, double spread) {
    /** A body for which nothing is computed: between cylinder and cube [assumed]. */
    private static final ShapeFactor ESTIMATE = new ShapeFactor(1.16, 0.05);

    private static final ShapeFactor ONE = new ShapeFactor(1, 0);
    private static final double SOLVED = 3e-3;

    /**
     * The correction of a shape: closed forms for ball, sharp puck and block, 1 for ring and shells, one Poisson solve
     * for other solids of revolution, else an estimate with its spread. The solve takes tens of milliseconds: keep the
     * result.
     */
    public static ShapeFactor of(Shape shape, Exposure exposure) {
        if (shape instanceof Ring || shape.hollow().isPresent()) {
            return ONE;
        }
        DepthProfile profile = shape.depthProfile(exposure);
        double tau = DryingTime.ofProfile(profile);
        boolean tray = profile.area(0) < shape.depthProfile(Exposure.ALL).area(0) * (1 - 1e-6);
        double mirror = tray ? 2 : 1;
        if (shape instanceof Puck puck && puck.edge() == 0) {
            return solved(DryingTime.cylinder(puck.diameter(), mirror * puck.height()) / tau, 1e-5);
        }
        if (shape instanceof Block block && block.edge() == 0) {
            return solved(DryingTime.block(block.length(), block.width(), mirror * block.height()) / tau, 1e-5);
        }
        Hull hull = shape.hull().orElse(null);
        if (shape instanceof Sphere && hull != null && hull.symmetry() == Hull.Symmetry.BALL) {
            return ONE;
        }
        if (hull instanceof RevolvedHull revolved && solid(revolved.profile())) {
            return solved(revolve(revolved.profile(), shape.volume(), tray) / tau, SOLVED);
        }
        return ESTIMATE;
    }

    /** This correction with the profile it belongs to. */
    public static Opening opening(Shape shape, Exposure exposure) {
        return new Opening(shape.depthProfile(exposure), of(shape, exposure).value());
    }

    /** Below 1 is numerical error: the profile is a trial function of the variational principle. */
    private static ShapeFactor solved(double ratio, double spread) {
        return new ShapeFactor(Math.max(1, ratio), spread);
    }

    private static boolean solid(Profile2D profile) {
        for (Profile2D.Piece piece : profile.pieces()) {
            if (piece.inner()) {
                return false;
            }
        }
        return true;
    }

    private static double revolve(Profile2D profile, double volume, boolean tray) {
        double bottom = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Profile2D.Piece piece : profile.pieces()) {
            bottom = Math.min(bottom, piece.z0());
            top = Math.max(top, piece.z1());
        }
        double widest = 0;
        for (int i = 0; i <= 200; i++) {
            widest = Math.max(widest, radius(profile, bottom + (top - bottom) * i / 200));
        }
        return new AxisymmetricPoisson(z -> radius(profile, z), widest, bottom, top, tray).mean(volume);
    }

    private static double radius(Profile2D profile, double z) {
        double largest = 0;
        for (Profile2D.Piece piece : profile.pieces()) {
            if (z >= piece.z0() && z <= piece.z1()) {
                largest = Math.max(largest, piece.radius(z));
            }
        }
        return largest;
    }
}
