package org.fizzhull.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.millimetres;

import org.fizzhull.shape.kind.Egg;
import org.junit.jupiter.api.Test;

/** By definition: what is left at a depth is never less than nothing, nor is its face. */
class DepthProfileTest {
    @Test
    void theLastOfABodyIsNotNegative() {
        DepthProfile egg = new Egg(millimetres(86.6), millimetres(83.5)).depthProfile(DepthProfile.Exposure.ALL);
        for (double share : new double[] {1 - 1e-9, 1 - 1e-12, 1 - 1e-15, Math.nextDown(1.0)}) {
            assertThat(egg.volume(share * egg.deepest())).isNotNegative();
            assertThat(egg.area(share * egg.deepest())).isNotNegative();
        }
        double before = Math.nextDown(egg.deepest());
        assertThat(egg.volume(before)).isNotNegative();
        assertThat(egg.area(before)).isNotNegative();
    }
}
