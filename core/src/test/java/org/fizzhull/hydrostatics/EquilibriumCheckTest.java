package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EquilibriumCheckTest {
    private static final Hull[] HULLS = {
        HullBodies.cone(1, 2),
        HullBodies.bowl(1, .6),
        HullBodies.torus(.7, .3),
        HullBodies.egg(1, 1.6, .9),
        HullBodies.capsule(.5, 1),
        HullBodies.block(1, 2, 1.5)
    };

    /** Archimedes: the pressure on the wet surface, summed, is the weight of the displaced water at its centre. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void pressureAgreesWithVolume(int which) {
        Hull hull = HULLS[which];
        WaterThrust thrust = new WaterThrust();
        PlaneCut cut = new PlaneCut();
        for (double a = 0; a < 3.2; a += .13) {
            double nx = Math.sin(a) * .6;
            double ny = Math.sin(a) * .8;
            double nz = Math.cos(a);
            double low = -hull.reach(-nx, -ny, -nz);
            double high = hull.reach(nx, ny, nz);
            for (double share = .07; share < 1; share += .17) {
                double c = low + share * (high - low);
                hull.cut(nx, ny, nz, c, cut);
                assertThat(thrust.on(hull, nx, ny, nz, c)).isTrue();
                double v = cut.volume;
                double force = new Vec3(thrust.fx - v * nx, thrust.fy - v * ny, thrust.fz - v * nz).norm();
                Vec3 turning = new Vec3(cut.mx, cut.my, cut.mz).cross(new Vec3(nx, ny, nz));
                double moment =
                        new Vec3(thrust.mx, thrust.my, thrust.mz).minus(turning).norm();
                assertThat(force).isLessThan(2e-7 * hull.volume());
                assertThat(moment).isLessThan(2e-7 * hull.volume());
            }
        }
    }

    private static Attitude with(Attitude it, Vec3 up, double level) {
        return new Attitude(
                up,
                level,
                it.draft(),
                it.freeboard(),
                it.immersedFraction(),
                it.gmSmaller(),
                it.gmLarger(),
                it.turnsFreely(),
                it.share(),
                it.energy());
    }

    @Test
    void catchesWhatIsNotAtRest() {
        for (Hull hull : HULLS) {
            double displaced = .8 * hull.volume();
            List<Attitude> ways = Attitudes.find(hull, hull.centroid(), .8);
            Attitude good = ways.get(0);
            assertThatNoException().isThrownBy(() -> EquilibriumCheck.verify(hull, hull.centroid(), displaced, good));
            Attitude high = with(good, good.up(), good.level() + 1e-4);
            assertThatIllegalStateException()
                    .isThrownBy(() -> EquilibriumCheck.verify(hull, hull.centroid(), displaced, high))
                    .withMessageContaining("force");
            Vec3 off = hull.centroid().plus(new Vec3(.003, .002, .001));
            assertThatIllegalStateException()
                    .isThrownBy(() -> EquilibriumCheck.verify(hull, off, displaced, good))
                    .withMessageContaining("moment");
        }
    }

    /** At rest but not stable: a slim cylinder upright, a cube on its edge. */
    @Test
    void catchesASaddle() {
        Hull slim = HullBodies.cylinder(1, 2);
        Draft upright = Draft.of(slim, Vec3.UP, .6 * slim.volume());
        Attitude top =
                new Attitude(Vec3.UP, upright.level(), upright.draft(), upright.freeboard(), .6, 0, 0, false, 1, 0);
        assertThatIllegalStateException()
                .isThrownBy(() -> EquilibriumCheck.verify(slim, slim.centroid(), .6 * slim.volume(), top))
                .withMessageContaining("energy next door");
        Hull cube = HullBodies.block(1, 1, 1);
        Vec3 edge = new Vec3(1, 0, 1).unit();
        Attitude tipping = with(top, edge, Draft.of(cube, edge, .6).level());
        assertThatIllegalStateException()
                .isThrownBy(() -> EquilibriumCheck.verify(cube, Vec3.ZERO, .6, tipping))
                .withMessageContaining("energy next door");
    }
}
