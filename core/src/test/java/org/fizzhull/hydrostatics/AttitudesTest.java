package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stable ways found, against validation/reference/afloat.py, which finds them by the energy of level chords. */
class AttitudesTest {
    private static List<Attitude> find(Hull hull, double s) {
        List<Attitude> found = Attitudes.find(hull, hull.centroid(), s);
        double sum = 0;
        for (Attitude it : found) {
            sum += it.share();
            assertThat(it.gmSmaller()).isNotNegative();
        }
        if (!found.isEmpty()) {
            assertThat(sum).isCloseTo(1, within(1e-12));
        }
        return found;
    }

    private static double[] tilts(Hull hull, double s) {
        return find(hull, s).stream()
                .mapToDouble(it -> Math.toDegrees(Math.acos(it.up().z())))
                .sorted()
                .toArray();
    }

    @Test
    void ballLiesAnyWay() {
        List<Attitude> ways = find(HullBodies.ball(.0325), .9);
        assertThat(ways).hasSize(1);
        assertThat(ways.get(0).turnsFreely()).isTrue();
        assertThat(ways.get(0).draft()).isCloseTo(.0325 * 1.608399789, within(2e-11));
    }

    /** ANALYTIC: a ball whose outline is a chain of chords lies any way up; one squashed by a hundredth on its flat side. */
    @ParameterizedTest
    @CsvSource({"12, 1, true", "18, 1, true", "36, 1, true", "72, 1, true", "36, 0.99, false", "72, 0.99, false"})
    void aBallByOutlineLiesAnyWay(int chords, double squash, boolean free) {
        Profile2D.Builder outline = Profile2D.builder();
        for (int i = 0; i < chords; i++) {
            double from = Math.PI * i / chords;
            double to = Math.PI * (i + 1) / chords;
            outline.line(
                    squash * .0325 * (1 - Math.cos(from)),
                    .0325 * Math.sin(from),
                    squash * .0325 * (1 - Math.cos(to)),
                    .0325 * Math.sin(to));
        }
        List<Attitude> ways = find(new RevolvedHull(outline.build()), .9);
        assertThat(ways).hasSize(free ? 1 : 2);
        assertThat(ways.get(0).turnsFreely()).isEqualTo(free);
    }

    /** Cone 30 by 60: up to three ways; whole degrees. */
    @ParameterizedTest
    @CsvSource({".4, '0,116'", ".5, '14,90,166'", ".55, '30,79,180'", ".7, '63,180'"})
    void cone(double s, String degrees) {
        double[] tilts = tilts(HullBodies.cone(30, 60), s);
        String[] wanted = degrees.split(",", -1);
        assertThat(tilts).hasSize(wanted.length);
        for (int i = 0; i < tilts.length; i++) {
            assertThat(tilts[i]).isCloseTo(Double.parseDouble(wanted[i]), within(.7));
        }
    }

    /** COMPUTED: a mesh of 128 segments, to one degree. */
    @ParameterizedTest
    @CsvSource({".72, 15", ".8, 37", ".9, 52", ".95, 62"})
    void tiltedCylinder(double length, double degrees) {
        double[] tilts = tilts(HullBodies.cylinder(1, length), .5);
        assertThat(tilts).hasSize(2);
        assertThat(tilts[0]).isCloseTo(degrees, within(1.));
        assertThat(tilts[1]).isCloseTo(180 - tilts[0], within(1e-9));
    }

    /** Both upright and on its side at s = .8, L/D = .88 (case 26). */
    @Test
    void cylinderInTheOverlap() {
        List<Attitude> ways = find(HullBodies.cylinder(1, .88), .8);
        assertThat(tilts(HullBodies.cylinder(1, .88), .8)).hasSize(3);
        assertThat(ways.get(0).turnsFreely()).isTrue();
        assertThat(ways.get(0).up().z()).isCloseTo(0, within(1e-12));
        assertThat(ways.get(1).looksLike(ways.get(2))).isTrue();
        assertThat(ways.get(0).looksLike(ways.get(1))).isFalse();
    }

    /** OTHER PROGRAM: 84.995 degrees by the level chords of validation/reference/afloat.py; the mesh is good to 0.005. */
    @Test
    void eggLiesAlmostLevelWithThePointRaised() {
        List<Attitude> ways = find(HullBodies.egg(25, 40, 25), .85);
        assertThat(ways).hasSize(1);
        assertThat(ways.get(0).turnsFreely()).isTrue();
        assertThat(ways.get(0).up().z()).isCloseTo(0.08725, within(0.005));
    }

    @Test
    void ringLiesFlatAndCapsuleOnItsSide() {
        assertThat(tilts(HullBodies.torus(22.5, 12.5), .5)).containsExactly(0, 180);
        assertThat(tilts(HullBodies.torus(22.5, 12.5), .9)).containsExactly(0, 180);
        List<Attitude> capsule = find(HullBodies.capsule(20, 40), .85);
        assertThat(capsule).hasSize(1);
        assertThat(capsule.get(0).up().z()).isCloseTo(0, within(1e-12));
        assertThat(capsule.get(0).turnsFreely()).isTrue();
    }

    /** Domes and bowls: flat up and flat down at every density, and nothing else. */
    @ParameterizedTest
    @CsvSource({".3", ".5", ".7", ".8", ".9", ".97"})
    void domeAndBowlBothWays(double s) {
        assertThat(tilts(HullBodies.dome(35, 25), s)).containsExactly(0, 180);
        assertThat(tilts(HullBodies.bowl(35, 20), s)).containsExactly(0, 180);
        assertThat(tilts(HullBodies.cup(1), s)).containsExactly(0, 180);
    }

    private static long like(List<Attitude> ways, double largest) {
        return ways.stream()
                .filter(it -> Math.abs(Math.max(
                                        Math.abs(it.up().x()),
                                        Math.max(
                                                Math.abs(it.up().y()),
                                                Math.abs(it.up().z())))
                                - largest)
                        < 1e-9)
                .count();
    }

    /** Cube: faces, corners, and the tilted ring of every face, of which each is one family (2.3, 2.5). */
    @ParameterizedTest
    @CsvSource({".15,6,0", ".2,6,8", ".22,0,8", ".3,0,8", ".5,0,8", ".6,0,8", ".75,0,8", ".78,0,8", ".8,6,8", ".9,6,0"})
    void cube(double s, int faces, int corners) {
        List<Attitude> ways = find(HullBodies.block(1, 1, 1), s);
        assertThat(like(ways, 1)).isEqualTo(faces);
        assertThat(like(ways, 1 / Math.sqrt(3))).isEqualTo(corners);
        boolean ring = s == .22 || s == .78;
        assertThat(ways).hasSize(faces + corners + (ring ? 6 : 0));
        double tilt = Math.atan(Math.sqrt(12 * s * (1 - s) - 2));
        for (Attitude it : ways) {
            if (it.turnsFreely()) {
                assertThat(ring).isTrue();
                double near = Math.max(
                        Math.abs(it.up().x()),
                        Math.max(Math.abs(it.up().y()), Math.abs(it.up().z())));
                assertThat(Math.acos(near)).isCloseTo(tilt, within(1e-9));
            }
        }
    }

    /** COMPUTED, agrees with Reid 1963 (abstract seen): angles of a long square bar, degrees (2.3, case 9). */
    @ParameterizedTest
    @CsvSource({
        ".2125, 5.150652", ".22, 13.674945", ".23, 19.485619", ".24, 23.485487", ".25, 26.565051",
        ".26, 29.630476", ".27, 33.690068", ".28, 41.185925", ".29, 45", ".5, 45"
    })
    void squareBar(double s, double degrees) {
        List<Attitude> ways = find(HullBodies.block(1, 6, 1), s);
        assertThat(ways).hasSize(degrees == 45 ? 4 : 8);
        for (Attitude it : ways) {
            double x = Math.abs(it.up().x());
            double z = Math.abs(it.up().z());
            assertThat(it.up().y()).isCloseTo(0, within(1e-9));
            assertThat(Math.toDegrees(Math.atan2(Math.min(x, z), Math.max(x, z))))
                    .isCloseTo(degrees, within(1e-6));
        }
    }

    /** ANALYTIC: only the shortest axis of an ellipsoid stands; the mesh has two ways. */
    @Test
    void ellipsoidOnItsShortestAxis() {
        Hull mesh = new PolyhedronHull(HullBodies.ellipsoid(45, 30, 20, 32), .01);
        assertThat(tilts(mesh, .8)).hasSize(2);
        assertThat(tilts(mesh, .8)[0]).isCloseTo(0, within(1e-5));
    }

    /** Meshes of round bodies: the facets must not be taken for attitudes. */
    @Test
    void roundMeshesTurnFreely() {
        List<Attitude> ball = find(new PolyhedronHull(HullBodies.ellipsoid(1, 1, 1, 32), .01), .8);
        assertThat(ball).hasSize(1);
        assertThat(ball.get(0).turnsFreely()).isTrue();
        assertThat(ball.get(0).gmLarger()).isZero();
        double[][] can = {{0, 0}, {.5, 0}, {.5, .8}, {0, .8}};
        List<Attitude> tilted = find(new PolyhedronHull(HullBodies.turned(can, 96), 0), .5);
        assertThat(tilted).hasSize(2);
        assertThat(tilted.get(0).turnsFreely()).isTrue();
        assertThat(Math.toDegrees(Math.acos(Math.abs(tilted.get(0).up().z())))).isCloseTo(37, within(1.));
    }

    /** A topping off the axis turns a puck's flat way into a tilted one, over to the heavy side. */
    @Test
    void massOffTheAxis() {
        Hull puck = HullBodies.cylinder(.07, .03);
        Vec3 offset = puck.centroid().plus(new Vec3(.001, 0, 0));
        List<Attitude> ways = Attitudes.find(puck, offset, .8);
        assertThat(ways).hasSize(2);
        for (Attitude it : ways) {
            double gm = Stability.of(puck, puck.centroid(), Vec3.UP, .8 * puck.volume())
                    .gmSmaller();
            // list of a small moment: tan(heel) is about offset over GM, less what the walls stiffen
            double heel = Math.acos(Math.abs(it.up().z()));
            assertThat(heel).isBetween(.8 * .001 / gm, 1.01 * .001 / gm);
            assertThat(it.up().x()).isNegative();
        }
    }

    @Test
    void nothingFloatsFromTheDensityOfWaterOn() {
        assertThat(find(HullBodies.dome(35, 25), 1)).isEmpty();
        assertThat(find(HullBodies.block(1, 1, 1), 1.3)).isEmpty();
        Draft sunk = Draft.of(HullBodies.ball(1), Vec3.UP, 10);
        assertThat(sunk.submerged()).isTrue();
        assertThat(sunk.immersedFraction()).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> find(HullBodies.ball(1), Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Attitudes.find(HullBodies.ball(1), Vec3.ZERO, 1, Double.NaN));
    }

    @Test
    void sameQuestionSameAnswer() {
        Hull star = new PolyhedronHull(HullBodies.ellipsoid(3, 2, 1, 12), 0);
        assertThat(find(star, .6)).isEqualTo(find(star, .6));
    }
}
