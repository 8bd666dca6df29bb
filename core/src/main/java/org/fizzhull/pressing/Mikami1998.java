package org.fizzhull.pressing;

/**
 * Mikami, Kamiya and Horio (1998), Chem. Eng. Sci. 53, 1927 (second-hand, as coded in public libraries; journal place from
 * memory), perfect wetting: F/(pi R gamma) = exp(A h + B) + C with A = -1.1 V^-0.53, B = -0.0082 ln V + 0.48,
 * C = 0.0018 ln V + 0.078.
 */
public final class Mikami1998 implements BridgeForce {
    @Override
    public double relative(double gap, double volume) {
        double log = Math.log(volume);
        return Math.exp(-1.1 * Math.pow(volume, -0.53) * gap - 0.0082 * log + 0.48) + 0.0018 * log + 0.078;
    }
}
