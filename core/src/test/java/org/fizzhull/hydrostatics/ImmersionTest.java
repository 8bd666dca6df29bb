package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** ANALYTIC: of a ball x of the height deep, x^2 (3 - 2x) of the volume and x of the surface are under water. */
class ImmersionTest {
    @Test
    void aBall() {
        Hull ball = Sphere.ofDiameter(0.065).hull().orElseThrow();
        Immersion immersion = new Immersion(ball, Vec3.UP, Math.PI * 0.065 * 0.065);
        for (double x = 0.02; x < 1; x += 0.02) {
            double fraction = x * x * (3 - 2 * x);
            assertThat(immersion.fraction(x)).isCloseTo(fraction, within(1e-9));
            if (fraction > 0.2 && fraction < 63.0 / 64) {
                assertThat(immersion.wet(fraction)).isCloseTo(x, within(1e-3));
                assertThat(immersion.depth(fraction)).isCloseTo(x, within(1e-3));
            }
        }
        assertThat(immersion.plane(0.5)).isCloseTo(1.5, within(1e-6));
        assertThat(immersion.wet(1)).isEqualTo(1);
        assertThat(immersion.fraction(0)).isZero();
    }

    @Test
    void aBlockHasADryTopUntilItIsAwash() {
        Hull block = Block.ofSides(0.06, 0.06, 0.02).hull().orElseThrow();
        double whole = 2 * 0.06 * 0.06 + 4 * 0.06 * 0.02;
        Immersion immersion = new Immersion(block, Vec3.UP, whole);
        assertThat(immersion.fraction(0.37)).isCloseTo(0.37, within(1e-8));
        assertThat(immersion.wet(0.5)).isCloseTo((0.06 * 0.06 + 4 * 0.06 * 0.01) / whole, within(1e-6));
        assertThat(immersion.wet(0.98)).isLessThan(0.7);
        assertThat(immersion.wet(1)).isEqualTo(1);
    }
}
