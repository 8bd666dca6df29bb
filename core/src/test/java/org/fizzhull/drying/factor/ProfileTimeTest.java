package org.fizzhull.drying.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.fizzhull.drying.Profiles;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** ANALYTIC: the time constant along a depth profile, (1/V) INT V^2/A dd, in closed form. */
class ProfileTimeTest {
    /** A ball (R - d)^3/3 deep in each part: R^2/15; a long cylinder R^2/8; a slab open on one side H^2/3. */
    @Test
    void ballCylinderAndSlab() {
        assertThat(DryingShapeFactor.profileTime(Profiles.ball(0.03))).isCloseTo(9e-4 / 15, withinPercentage(0.01));
        assertThat(DryingShapeFactor.profileTime(Profiles.longCylinder(0.02)))
                .isCloseTo(4e-4 / 8, withinPercentage(0.01));
        assertThat(DryingShapeFactor.profileTime(Opening.face(2e-4, 1e-2).profile()))
                .isCloseTo(4e-4 / 3, withinPercentage(0.01));
    }

    /** The factor is the exact time over that of the profile: 1 for a ball, and by their ratio for a sharp block. */
    @Test
    void theFactorIsTheirRatio() {
        assertThat(DryingShapeFactor.of(Sphere.ofDiameter(0.06), Exposure.ALL).orElseThrow())
                .isCloseTo(1, withinPercentage(0.01));
        Block block = Block.ofSides(0.06, 0.04, 0.03);
        double exact = block.diffusionTime(Exposure.ALL).orElseThrow();
        double along = DryingShapeFactor.profileTime(block.depthProfile(Exposure.ALL));
        // 1.199 by validation/reference/diffusion.py, to three digits
        assertThat(exact / along).isCloseTo(1.199, withinPercentage(0.1));
        assertThat(DryingShapeFactor.of(block, Exposure.ALL).orElseThrow()).isCloseTo(1.199, withinPercentage(0.1));
    }
}
