package org.fizzhull.pressing;

/**
 * Willett, Adams, Johnson and Seville (2000), Langmuir 16, 9396 (from memory), the simple closed form for perfect wetting:
 * F = 2 pi R gamma/(1 + 1.05 s + 2.5 s2) with s = h sqrt(R/V). The bridge breaks at a gap of V^(1/3); 0 beyond.
 */
public final class Willett2000 implements BridgeForce {
    @Override
    public double relative(double gap, double volume) {
        if (gap > Math.cbrt(volume)) {
            return 0;
        }
        double s = gap / Math.sqrt(volume);
        return 2 / (1 + s * (1.05 + 2.5 * s));
    }
}
