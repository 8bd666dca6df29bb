package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drafts and metacentric heights of validation/reference/afloat.py and of closed forms, docs/physics/hydrostatics.md, 2
 * and 3.
 */
class StabilityTest {
    private static final Vec3 DOWN = new Vec3(0, 0, -1);

    private static Stability of(Hull hull, Vec3 up, double s) {
        return Stability.of(hull, hull.centroid(), up, s * hull.volume());
    }

    private static double draft(Hull hull, Vec3 up, double s) {
        return Draft.of(hull, up, s * hull.volume()).draft();
    }

    /** COMPUTED (cubic, table 2.1). */
    @ParameterizedTest
    @CsvSource({
        ".1, .391600211, .743832452",
        ".25, .652703645, .579988802",
        ".5, 1, .375",
        ".75, 1.347296355, .193329601",
        ".9, 1.608399789, .082648050",
        ".99, 1.882193728, .009311755"
    })
    void ball(double s, double depth, double bg) {
        Hull ball = HullBodies.ball(1);
        assertThat(draft(ball, Vec3.UP, s)).isCloseTo(depth, within(6e-10));
        assertThat(of(ball, Vec3.UP, s).energy()).isCloseTo(bg, within(6e-10));
        assertThat(of(ball, new Vec3(.6, 0, .8), s).gmLarger()).isCloseTo(0, within(1e-13));
    }

    /** COMPUTED (case 30): halves of density .95 and .85, 70 mm across: GM .729167 mm, the light half up. */
    @Test
    void ballOfTwoHalves() {
        Hull ball = HullBodies.ball(.035);
        Vec3 centre = new Vec3(0, 0, .035 - 3 * .035 / 8 * (.95 - .85) / (.95 + .85));
        Attitude it = Attitudes.find(ball, centre, .9).get(0);
        assertThat(it.gmSmaller()).isCloseTo(.729167e-3, within(5e-10));
        assertThat(it.up().z()).isCloseTo(1, within(1e-15));
        assertThat(it.turnsFreely()).isFalse();
    }

    /** SECOND-HAND (textbook exercises, cases 3, 4, 5, 7): printed to three or four digits, further ones computed. */
    @Test
    void uprightCylindersAndCube() {
        Stability slim = of(HullBodies.cylinder(.8, 1), Vec3.UP, .65);
        assertThat(slim.bmSmaller()).isCloseTo(.061538462, within(1e-9));
        assertThat(slim.gmSmaller()).isCloseTo(-.113461538, within(1e-9));
        assertThat(draft(HullBodies.cylinder(3, 2), Vec3.UP, .7)).isCloseTo(1.4, within(1e-12));
        assertThat(of(HullBodies.cylinder(3, 2), Vec3.UP, .7).gmSmaller()).isCloseTo(.101785714, within(1e-9));
        assertThat(of(HullBodies.cylinder(1, 2), Vec3.UP, .6).bmSmaller()).isCloseTo(.052083333, within(1e-9));
        assertThat(of(HullBodies.cylinder(1, 2), Vec3.UP, .6).gmSmaller()).isCloseTo(-.347916667, within(1e-9));
        assertThat(of(HullBodies.block(1, 1, 1), Vec3.UP, .8).bmSmaller()).isCloseTo(.104166667, within(1e-9));
        assertThat(of(HullBodies.block(1, 1, 1), Vec3.UP, .8).gmSmaller()).isCloseTo(.004166667, within(1e-9));
        assertThat(of(HullBodies.block(1, 1, 1), Vec3.UP, .9).gmSmaller()).isCloseTo(.0425926, within(5e-8));
    }

    /** SECOND-HAND (textbook, case 21): block 2.5 by 6 by 1.5 of 650 kg/m3; GM computed, b^2/12d + d/2 - KG. */
    @Test
    void boxBarge() {
        Hull box = HullBodies.block(2.5, 6, 1.5);
        assertThat(Draft.of(box, Vec3.UP, 14.625).draft()).isCloseTo(.975, within(1e-12));
        assertThat(Stability.of(box, Vec3.ZERO, Vec3.UP, 14.625).gmSmaller())
                .isCloseTo(2.5 * 2.5 / (12 * .975) + .975 / 2 - .75, within(1e-12))
                .isCloseTo(.271688, within(5e-7));
    }

    /** COMPUTED (2.3): half a ball both ways. */
    @ParameterizedTest
    @CsvSource({".5, .204988802, .204988802", ".7, .117563489, .131596724", ".9, .037960211, .049641141"})
    void halfABall(double s, double flatUp, double flatDown) {
        Hull cup = HullBodies.cup(1);
        assertThat(of(cup, Vec3.UP, s).energy()).isCloseTo(flatUp, within(1e-9));
        assertThat(of(cup, DOWN, s).energy()).isCloseTo(flatDown, within(1e-9));
        assertThat(of(cup, Vec3.UP, s).gmSmaller()).isCloseTo(3 / 8., within(1e-12));
        assertThat(of(cup, DOWN, s).gmSmaller()).isCloseTo(3 / 8. * (1 - s) / s, within(1e-12));
    }

    /** COMPUTED (case 16). */
    @Test
    void halfABallDrafts() {
        assertThat(draft(HullBodies.cup(1), Vec3.UP, .9)).isCloseTo(.933234126, within(1e-9));
        assertThat(draft(HullBodies.cup(1), DOWN, .9)).isCloseTo(.729299276, within(1e-9));
    }

    /** COMPUTED (case 19, 2.4): dome R35 h25 both ways. */
    @Test
    void dome() {
        Hull dome = HullBodies.dome(35, 25);
        assertThat(of(dome, DOWN, .9).gmSmaller()).isCloseTo(18.984375, within(1e-9));
        assertThat(of(dome, Vec3.UP, .9).gmSmaller()).isCloseTo(2.109375, within(1e-9));
        assertThat(of(dome, Vec3.UP, .7).gmSmaller()).isCloseTo(8.136161, within(5e-7));
    }

    /** OTHER PROGRAM: flooded bowl R35 r20 both ways; energies of a mesh, good to 1 %. */
    @Test
    void floodedBowl() {
        Hull bowl = HullBodies.bowl(35, 20);
        assertThat(of(bowl, Vec3.UP, .8).gmSmaller()).isCloseTo(14.415322581, within(1e-9));
        assertThat(of(bowl, DOWN, .8).gmSmaller()).isCloseTo(3.603831, within(5e-7));
        assertThat(of(bowl, Vec3.UP, .8).energy()).isCloseTo(2.8989, within(.01 * 2.8989));
        assertThat(of(bowl, DOWN, .8).energy()).isCloseTo(3.1354, within(.01 * 3.1354));
    }

    /** COMPUTED (case 25): torus flat, half immersed: BM - 4r/(3 pi). */
    @Test
    void torus() {
        Stability it = of(HullBodies.torus(22.5, 12.5), Vec3.UP, .5);
        assertThat(it.energy()).isCloseTo(4 * 12.5 / (3 * Math.PI), within(1e-11));
        assertThat(it.gmSmaller()).isCloseTo(28.435684, within(1e-6));
    }

    /** COMPUTED (case 20): ellipsoid 45/30/20; here the two spheroids that share one pair of axes each, exactly. */
    @Test
    void ellipsoid() {
        // GM = b1 (a^2 - c^2)/c with b1 the BG of the unit ball at the same s, a the axis it heels along
        double b1 = .157118912;
        assertThat(of(HullBodies.spheroid(30, 20), Vec3.UP, .8).gmSmaller())
                .isCloseTo(b1 * (30 * 30 - 20 * 20) / 20, within(3e-8))
                .isCloseTo(3.927973, within(5e-7));
        assertThat(of(HullBodies.spheroid(45, 20), Vec3.UP, .8).gmSmaller()).isCloseTo(12.765912, within(5e-7));
        assertThat(draft(HullBodies.spheroid(30, 20), Vec3.UP, .8)).isCloseTo(28.514371, within(5e-7));
    }

    /** ... and as a mesh: facets of the angle a change areas by a^2/6 each way, so GM by less than a^2. */
    @Test
    void ellipsoidMesh() {
        for (int n = 32; n <= 128; n *= 2) {
            Stability it = of(new PolyhedronHull(HullBodies.ellipsoid(45, 30, 20, n), 0), Vec3.UP, .8);
            double facet = 2 * Math.PI / n;
            assertThat(it.gmSmaller()).isCloseTo(3.927973, within(3.9 * facet * facet));
            assertThat(it.gmLarger()).isCloseTo(12.765912, within(12.8 * facet * facet));
        }
    }

    /** FROM MEMORY (naval architecture), ANALYTIC: wall-sided GZ = sin(t)(GM + BM tan^2 t / 2). */
    @Test
    void rightingArmOfAWallSidedBody() {
        Hull box = HullBodies.block(3, 8, 2);
        Stability it = Stability.of(box, Vec3.ZERO, Vec3.UP, 24);
        for (double t = .05; t < .55; t += .1) {
            double arm = Stability.rightingArm(box, Vec3.ZERO, Vec3.UP, new Vec3(0, 1, 0), t, 24);
            double tan = Math.tan(t);
            assertThat(arm).isCloseTo(Math.sin(t) * (it.gmSmaller() + it.bmSmaller() * tan * tan / 2), within(1e-13));
        }
    }

    private static Hull paraboloid(double height, int rings) {
        Profile2D.Builder meridian = Profile2D.builder();
        double radius = Math.sqrt(height);
        for (int i = 0; i < rings; i++) {
            double r0 = radius * i / rings;
            double r1 = radius * (i + 1) / rings;
            meridian.line(r0 * r0, r0, r1 * r1, r1);
        }
        return new RevolvedHull(meridian.build());
    }

    /**
     * Archimedes II in Heath (critical density, seen); tilt COMPUTED: tan^2 = 8 (H - H sqrt s)/(3p) - 2 with a dry
     * base. The paraboloid r^2 = p z is made of N = 96 frusta: r^2 is too small by up to (R/N)^2/4 = 3e-5 H, GM by
     * less than four times that, and the tilt by less than 0.02 degrees.
     */
    @ParameterizedTest
    @CsvSource({
        "1, .05, .0625, 14.858063",
        "1.5, .1, .25, 40.608904",
        "1.8, .2, .340277778, 38.949163",
        "2, .3, .390625, 32.699906"
    })
    void paraboloidOfArchimedes(double height, double s, double critical, double degrees) {
        Hull body = paraboloid(height, 96);
        assertThat(of(body, Vec3.UP, critical).gmSmaller()).isCloseTo(0, within(height / (96 * 96)));
        double tilt = Attitudes.find(body, body.centroid(), s).stream()
                .mapToDouble(it -> Math.toDegrees(Math.acos(it.up().z())))
                .min()
                .orElse(Double.NaN);
        assertThat(tilt).isCloseTo(degrees, within(.02));
    }
}
