package org.fizzhull.drying.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** ANALYTIC: the open faces of a cylinder of radius r and height h, and of a ball, which rests on a point. */
class OpeningsTest {
    private static final double R = 0.035;
    private static final double H = 0.03;
    private static final double FLAT = Math.PI * R * R;
    private static final double SIDE = 2 * Math.PI * R * H;
    private static final Shape PUCK = Puck.ofDiameterAndHeight(2 * R, H);

    /** Whatever it lay on, once it is taken off every face is open. */
    @ParameterizedTest
    @EnumSource
    void allAroundEveryFaceIsOpen(Standing standing) {
        Standing.Openings openings = Standing.Openings.of(PUCK, standing);
        assertThat(openings.standing()).isEqualTo(standing);
        assertThat(openings.around().profile().area(0)).isCloseTo(2 * FLAT + SIDE, within(1e-9 * SIDE));
        assertThat(openings.around().profile().volume(0)).isCloseTo(FLAT * H, within(1e-9 * FLAT * H));
    }

    @Test
    void onARackItLiesAsOpenAsAllAround() {
        Standing.Openings openings = Standing.Openings.of(PUCK, Standing.RACK);
        assertThat(openings.lying()).isEqualTo(openings.around());
    }

    @ParameterizedTest
    @EnumSource(names = {"TRAY", "CLOTH"})
    void whatItLiesOnIsClosed(Standing standing) {
        DepthProfile lying = Standing.Openings.of(PUCK, standing).lying().profile();
        assertThat(lying.area(0)).isCloseTo(FLAT + SIDE, within(1e-9 * SIDE));
        // only from above and the side: the last of it is at the middle of the bottom
        assertThat(lying.deepest()).isCloseTo(Math.min(R, H), within(1e-9));
    }

    /** A slab that is open on one side: its way out is as long as it is high, and no form makes it longer. */
    @Test
    void inItsMouldOneFaceIsOpen() {
        Opening lying = Standing.Openings.of(PUCK, Standing.MOULD).lying();
        assertThat(lying.profile().area(0)).isCloseTo(FLAT, within(1e-9 * FLAT));
        assertThat(lying.profile().deepest()).isCloseTo(H, within(1e-9));
        assertThat(lying.correction()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource
    void aBallIsOpenAllRound(Standing standing) {
        Standing.Openings openings = Standing.Openings.of(Sphere.ofDiameter(2 * R), standing);
        assertThat(openings.lying().profile().area(0)).isCloseTo(4 * FLAT, within(1e-9 * FLAT));
        assertThat(openings.lying()).isEqualTo(openings.around());
    }
}
