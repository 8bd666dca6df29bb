package org.fizzhull.forecast.attitude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.question.IntoBath;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;

/** ARCHIMEDES: drafts and shares under water by hand; wet shares of a puck by hand. */
class FloatingAttitudesTest {
    private static List<FloatingAttitude> of(Question question, double mass) {
        return FloatingAttitudes.of(question, new Piece(question.shape(), mass, Makeup.usual()));
    }

    /** A plate of 100 x 80 x 20 mm at four fifths of the water's density stands 16 mm deep and 4 mm out, either face up. */
    @Test
    void aPlate() {
        Shape plate = Block.ofSides(0.1, 0.08, 0.02);
        Question question = Question.still(plate, 0.1);
        double mass = 0.8 * question.bath().density() * plate.volume();
        List<FloatingAttitude> found = of(question, mass);
        assertThat(found).isNotEmpty();
        for (FloatingAttitude one : found) {
            assertThat(Math.abs(one.up().z())).isCloseTo(1, within(1e-6));
            assertThat(one.draft()).isCloseTo(0.016, within(1e-6));
            assertThat(one.freeboard()).isCloseTo(0.004, within(1e-6));
            assertThat(one.immersedFraction()).isCloseTo(0.8, within(1e-9));
            assertThat(one.cavity()).isEqualTo(FloatingAttitude.Cavity.NONE);
            assertThat(one.rimDips()).isEmpty();
            // metacentre of a plate, I/V less the height of the centre of mass: b^2/(12 T) - (h - T)/2, b the shorter
            // side
            assertThat(one.gm()).isCloseTo(0.08 * 0.08 / (12 * 0.016) - 0.002, within(1e-6));
        }
        // what weighs as much as its water goes under
        assertThat(of(question, question.bath().density() * plate.volume())).isEmpty();
        assertThat(of(question, 1.01 * question.bath().density() * plate.volume()))
                .isEmpty();
    }

    /**
     * 30 g of 120 g lie 20 mm below the middle of a ball: so does its centre of mass, by a quarter of that and of where the
     * rest of the body has its own. A ball's metacentre is its middle.
     */
    @Test
    void anInsetOffTheMiddle() {
        Shape ball = Sphere.ofDiameter(0.065);
        Shape loaded = Loaded.with(ball, new Inset(0.03, 3e-6), new Vec3(0, 0, 0.0125));
        List<FloatingAttitude> found = of(Question.still(loaded, 0.12), 0.12);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).up().z()).isCloseTo(1, within(1e-6));
        double low = (0.03 * 0.0125 + 0.09 * loaded.centroid().z()) / 0.12;
        assertThat(found.get(0).gm()).isCloseTo(0.0325 - low, within(1e-6));
    }

    /** A bowl of 80/12 mm set down floats rim up and dry while it is lighter than its closed hull; dropped, it is flooded. */
    @Test
    void aBowl() {
        Shape bowl = Bowl.ofDiameterAndWall(0.08, 0.012);
        double mass = 0.07;
        Question placed = Question.weighed(bowl, mass);
        List<FloatingAttitude> found = of(placed, mass);
        FloatingAttitude boat = found.get(0);
        assertThat(boat.cavity()).isEqualTo(FloatingAttitude.Cavity.DRY);
        assertThat(boat.up().z()).isCloseTo(1, within(1e-9));
        double closed = bowl.hollow().orElseThrow().closed().volume();
        assertThat(boat.immersedFraction()).isCloseTo(mass / placed.bath().density() / closed, within(1e-6));
        assertThat(boat.rimDips()).isPresent();
        assertThat(boat.share()).isEmpty();
        List<FloatingAttitude> dropped = of(placed.into(IntoBath.DROPPED), mass);
        assertThat(dropped).noneMatch(one -> one.cavity() == FloatingAttitude.Cavity.DRY);
        assertThat(dropped).hasSize(found.size() - 1).allMatch(one -> one.cavity() == FloatingAttitude.Cavity.FLOODED);
        // as heavy as what the rim carries: no boat
        double carried = bowl.hollow().orElseThrow().carried() * placed.bath().density();
        assertThat(of(placed, carried)).noneMatch(one -> one.cavity() == FloatingAttitude.Cavity.DRY);
    }

    /** What lies on top beside the hull is lifted by its own water: 2 g of grains of 2.165 g/cm3 push 0.92 cm3 aside. */
    @Test
    void aTopping() {
        Shape puck = Puck.ofDiameterAndHeight(0.07, 0.03);
        Shape salted = Loaded.with(puck, new Topping("salt", 0.002, 2165, 0.55));
        Question question = Question.still(salted, 0.1);
        double water = question.bath().density();
        double lift = water * (salted.insetVolume() - salted.insetInsideHull());
        for (FloatingAttitude one : of(question, 0.1)) {
            assertThat(one.immersedFraction()).isCloseTo((0.1 - lift) / (water * puck.volume()), within(1e-9));
        }
        // three grams that float on two grams of cork, which push four grams of water aside: the hull carries nothing
        Shape corked = Loaded.with(puck, new Topping("cork", 0.002, 500, 0.55));
        assertThat(of(Question.still(corked, 0.1), 0.003)).isEmpty();
    }

    /**
     * A puck of 70 x 30 mm is down to 1 % of its volume where (1 - 2d/70)^2 (1 - 2d/30) = 0.01, d = 14.56 mm, with every side
     * wet, and where (1 - 2d/70)^2 (1 - d/30) = 0.01, d = 25.73 mm, with a flat side dry: 43 % sooner.
     */
    @Test
    void aFlatSideThatStaysDry() {
        assertThat(WhichSideUp.notice(Puck.ofDiameterAndHeight(0.07, 0.03))
                        .orElseThrow()
                        .text())
                .contains("43 % shorter");
    }

    /** A ball wets as much either way up, a pointed cone does not. */
    @Test
    void whichSideIsUp() {
        assertThat(WhichSideUp.notice(Cone.ofDiameterAndHeight(0.06, 0.06)))
                .map(Notice::code)
                .hasValue("side-up");
        assertThat(WhichSideUp.notice(Sphere.ofDiameter(0.065))).isEmpty();
    }
}
