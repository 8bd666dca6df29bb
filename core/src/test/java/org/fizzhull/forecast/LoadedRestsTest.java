package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.forecast.attitude.FloatingAttitudes;
import org.fizzhull.forecast.model.DropModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;

/** How pieces float that carry something. ANALYTIC. */
class LoadedRestsTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    /** A ball with a heavy thing off its middle turns it straight down and displaces its whole mass with its whole hull. */
    @Test
    void heavyThingTurnsDown() {
        Vec3 side = new Vec3(0.01, 0, 0.0325);
        Question question = Question.still(Loaded.with(BALL, new Inset(0.04, 5e-6), side), 0.12);
        List<FloatingAttitude> rests = rests(question);
        assertThat(rests).hasSize(1);
        assertThat(rests.get(0).up().x()).isCloseTo(-1, within(1e-6));
        double share = 0.12 / (question.bath().density() * BALL.volume());
        assertThat(rests.get(0).immersedFraction()).isCloseTo(share, within(1e-9));
    }

    /** A thing as dense as the rest, in the middle, changes nothing. */
    @Test
    void thingLikeTheRestChangesNothing() {
        Shape puck = Puck.ofDiameterAndHeight(0.07, 0.03);
        double density = 900;
        double mass = density * puck.volume();
        Loaded loaded = Loaded.with(puck, new Inset(density * 10e-6, 10e-6));
        FloatingAttitude plain = rests(Question.still(puck, mass)).get(0);
        FloatingAttitude with = rests(Question.still(loaded, mass)).get(0);
        assertThat(with.draft()).isCloseTo(plain.draft(), within(1e-9));
        assertThat(with.gm()).isCloseTo(plain.gm(), within(1e-9));
    }

    /** Salt on one face of a puck: that face shows less often than it did, the other one more often. */
    @Test
    void saltedFaceTurnsDown() {
        Shape puck = Puck.ofDiameterAndHeight(0.07, 0.03);
        double mass = 900 * puck.volume();
        double plain = shareUp(Question.still(puck, mass));
        double salted =
                shareUp(Question.still(Loaded.with(puck, new Topping("salt", 0.006, 2165, 0.55)), mass + 0.006));
        assertThat(plain).isCloseTo(0.5, within(0.05));
        assertThat(salted).isLessThan(plain - 0.05);
    }

    /** A flat puck shows its layer or drowns it; a long one lies on its side, the water line across the salted end. */
    @Test
    void whereTheToppingLies() {
        Topping salt = new Topping("salt", 0.002, 2165, 0.55);
        Shape flat = Puck.ofDiameterAndHeight(0.07, 0.03);
        for (FloatingAttitude rest : rests(Question.still(Loaded.with(flat, salt), 900 * flat.volume()))) {
            assertThat(rest.topping())
                    .isEqualTo(
                            rest.up().z() > 0 ? FloatingAttitude.Topping.SHOWS : FloatingAttitude.Topping.UNDER_WATER);
        }
        Shape rod = Puck.ofDiameterAndHeight(0.03, 0.09);
        List<FloatingAttitude> lying = rests(Question.still(Loaded.with(rod, salt), 500 * rod.volume()));
        assertThat(lying).hasSize(1);
        assertThat(lying.get(0).topping()).isEqualTo(FloatingAttitude.Topping.AT_WATER_LINE);
        assertThat(rests(Question.still(rod, 0.03)).get(0).topping()).isEqualTo(FloatingAttitude.Topping.NONE);
        Shape cube = Block.ofSides(0.06, 0.05, 0.03);
        for (FloatingAttitude rest : rests(Question.still(Loaded.with(cube, salt), 800 * cube.volume()))) {
            assertThat(rest.topping())
                    .isEqualTo(
                            rest.up().z() > 0 ? FloatingAttitude.Topping.SHOWS : FloatingAttitude.Topping.UNDER_WATER);
        }
    }

    /** Archimedes: the limit of a loaded piece is the water its hull and its grains push aside. */
    @Test
    void limitCountsTheLoad() {
        Loaded loaded = Loaded.with(Loaded.with(BALL, new Inset(0.008, 25e-6)), new Topping("salt", 0.006, 2165, 0.55));
        Forecast forecast = FloatPredictor.standard().with(new Sampling(1, 0)).forecast(Question.still(loaded, 0.13));
        double water = forecast.question().bath().density();
        assertThat(forecast.limitMass()).isCloseTo(water * (BALL.volume() + 0.006 / 2165), within(1e-12));
        assertThat(forecast.spareAtDrop().median()).isCloseTo(forecast.limitMass() - 0.13, within(1e-9));
    }

    private static List<FloatingAttitude> rests(Question question) {
        PreparedQuestion prepared = PreparedQuestion.of(question, Factors.standard());
        return FloatingAttitudes.of(
                question, new DropModel(prepared).piece(prepared.factors().medians()));
    }

    private static double shareUp(Question question) {
        double sum = 0;
        for (FloatingAttitude rest : rests(question)) {
            sum += rest.up().z() > 0.9 ? rest.share().orElseThrow() : 0;
        }
        return sum;
    }
}
