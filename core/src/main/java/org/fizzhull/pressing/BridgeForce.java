package org.fizzhull.pressing;

/** Pull of one liquid bridge between two equal, wetted spheres. */
public interface BridgeForce {
    /** Touching and perfectly wetted, pi d gamma: the upper limit, N. */
    static double most(double diameter, double surfaceTension) {
        return Math.PI * diameter * surfaceTension;
    }

    /**
     * Force over pi R gamma, without unit.
     *
     * @param gap between the spheres over their radius, 0 or more
     * @param volume of the bridge over the radius cubed, 1e-4 to 0.1
     */
    double relative(double gap, double volume);
}
