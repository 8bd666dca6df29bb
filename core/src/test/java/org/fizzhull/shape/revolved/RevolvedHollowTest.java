package org.fizzhull.shape.revolved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.meshed.MeshDepthTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hollows of outlines against closed forms. ANALYTIC. */
class RevolvedHollowTest {
    private static RevolvedShape of(double[] r, double[] z) {
        return RevolvedShape.of("a.csv", ProfilePoints.profile(r, z));
    }

    /** A bowl from its outline, whose arcs are 64 chords (0.13 % of a ball), is the boat that bowl(...) is. */
    @ParameterizedTest
    @CsvSource({"90, 15", "80, 8"})
    void bowlFromItsOutline(double diameter, double wall) {
        Bowl bowl = Bowl.ofDiameterAndWall(diameter / 1000, wall / 1000);
        RevolvedShape turned =
                RevolvedShape.of("a.csv", ((RevolvedHull) bowl.hull().orElseThrow()).profile());
        Hollow exact = bowl.hollow().orElseThrow();
        Hollow found = turned.hollow().orElseThrow();
        assertThat(found.rimHeight()).isCloseTo(exact.rimHeight(), within(1e-12));
        assertThat(-found.rim().lowest(1, 0, 0)).isCloseTo(-exact.rim().lowest(1, 0, 0), within(1e-12));
        assertThat(turned.hullVolume()).isCloseTo(bowl.hullVolume(), within(2e-3 * bowl.hullVolume()));
        assertThat(found.volume()).isCloseTo(exact.volume(), within(4e-3 * exact.volume()));
        DepthProfile outside = bowl.depthProfile(DepthProfile.Exposure.OUTSIDE);
        MeshDepthTest.near("bowl outside", turned.depthProfile(DepthProfile.Exposure.OUTSIDE), outside, 0.0025, 0.005);
        assertThat(turned.notices()).isEmpty();
    }

    /** A cup of straight walls, its outline from either end: pi R^2 H closed, pi r^2 (H - b) of air. */
    @Test
    void cup() {
        double[] r = {0, 0.03, 0.04, 0.03, 0.02, 0};
        double[] z = {0, 0, 0.05, 0.05, 0.01, 0.01};
        Hollow up = of(r, z).hollow().orElseThrow();
        double closed = Math.PI * 0.05 / 3 * (0.03 * 0.03 + 0.03 * 0.04 + 0.04 * 0.04);
        double air = Math.PI * 0.04 / 3 * (0.02 * 0.02 + 0.02 * 0.03 + 0.03 * 0.03);
        assertThat(up.closed().volume()).isCloseTo(closed, within(1e-14));
        assertThat(up.volume()).isCloseTo(air, within(1e-14));
        assertThat(up.rimHeight()).isEqualTo(0.05);
        assertThat(-up.rim().lowest(1, 0, 0)).isEqualTo(0.04);
        double[] back = new double[6];
        double[] heights = new double[6];
        for (int i = 0; i < 6; i++) {
            back[i] = r[5 - i];
            heights[i] = z[5 - i];
        }
        assertThat(of(back, heights).hollow().orElseThrow().volume()).isCloseTo(air, within(1e-14));
    }

    /** A jar holds water up to its lip, under its shoulder too; a post in the middle stands in the water. */
    @Test
    void jarWithAPost() {
        double[] r = {0, 0.04, 0.04, 0.02, 0.02, 0.03, 0.03, 0.005, 0.005, 0};
        double[] z = {0, 0, 0.05, 0.06, 0.05, 0.04, 0.01, 0.01, 0.03, 0.03};
        Hollow jar = of(r, z).hollow().orElseThrow();
        double cone = Math.PI * 0.01 / 3;
        double closed = Math.PI * 0.04 * 0.04 * 0.05 + cone * (0.04 * 0.04 + 0.04 * 0.02 + 0.02 * 0.02);
        double air = Math.PI * 0.02 * 0.02 * 0.01
                + cone * (0.02 * 0.02 + 0.02 * 0.03 + 0.03 * 0.03)
                + Math.PI * 0.03 * 0.03 * 0.03
                - Math.PI * 0.005 * 0.005 * 0.02;
        assertThat(jar.closed().volume()).isCloseTo(closed, within(1e-14));
        assertThat(jar.volume()).isCloseTo(air, within(1e-14));
        assertThat(jar.rimHeight()).isEqualTo(0.06);
        assertThat(-jar.rim().lowest(1, 0, 0)).isEqualTo(0.02);
    }

    /** No boat: a cylinder, a tube open below, a ring, a bell with its mouth down; a dimple is named and fills. */
    @Test
    void noBoats() {
        assertThat(of(new double[] {0, 0.03, 0.03, 0}, new double[] {0, 0, 0.05, 0.05})
                        .hollow())
                .isEmpty();
        double[] ringR = {0.02, 0.03, 0.03, 0.02, 0.02};
        assertThat(of(ringR, new double[] {0, 0, 0.05, 0.05, 0}).hollow()).isEmpty();
        assertThat(of(new double[] {0, 0.02, 0.03, 0.03, 0}, new double[] {0.04, 0, 0, 0.05, 0.05})
                        .hollow())
                .isEmpty();
        RevolvedShape dimple = of(new double[] {0, 0.03, 0.03, 0}, new double[] {0, 0, 0.05, 0.045});
        assertThat(dimple.hollow()).isEmpty();
        // pi r^2 h / 3 of air in pi R^2 H: 0.005 / (3 x 0.05)
        assertThat(dimple.notices()).singleElement().satisfies(it -> {
            assertThat(it.code()).isEqualTo("dimple");
            assertThat(it.text()).contains("is 3 % of");
        });
        assertThat(dimple.depthProfile(DepthProfile.Exposure.OUTSIDE))
                .isSameAs(dimple.depthProfile(DepthProfile.Exposure.ALL));
    }
}
