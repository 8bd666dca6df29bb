package org.fizzhull.shape;

import org.fizzhull.geometry.DepthProfile;

/**
 * Diffusion out of a body that is thin everywhere, as a leaf or a wide lens: straight across its thickness t, which no
 * lattice of a bearable size would resolve. With one or both faces open
 *
 * <pre>  tau = INT t^3 dS/(12 V) or INT t^3 dS/(3 V)        both are        (1/V) INT d^2 A(d) dd</pre>
 *
 * <p>by parts, since half of A(d), or all of it, is the area S of the sheet that is thicker than 2 d, or d. d is the
 * inward depth (m), A the area left there (m2), V the volume (m3). Error: what leaves by the edges, the share of the
 * thickness in the width, below 2 % at the limit taken here. A wire, which no piece is, would be overrated by a third.
 */
final class ThinSheet {
    /** Volume over the cube of the largest depth from which on a body is thin: a sheet some fifty times as wide as thick. */
    private static final double THIN = 25_000;

    private static final int STEPS = 2000;

    private ThinSheet() {}

    /** Whether all that is left of a body lies near its open faces. */
    static boolean is(DepthProfile profile) {
        double deepest = profile.deepest();
        return profile.volume(0) > THIN * deepest * deepest * deepest;
    }

    /** Mean time constant of diffusion across it for a diffusivity of 1 m2/s, m2. */
    static double diffusionTime(DepthProfile profile) {
        double step = profile.deepest() / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double d = (i + 0.5) * step;
            sum += d * d * profile.area(d);
        }
        return sum * step / profile.volume(0);
    }
}
