package org.fizzhull.shape.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** What a piece carries. ANALYTIC. */
class LoadedTest {
    private static final Shape PUCK = Puck.ofDiameterAndHeight(0.07, 0.03);

    /** 6 g of salt at 2.165 g/cm3 push 2.771 mL aside; at 0.55 they lie 5.04 mL deep over 38.48 cm2: 1.309 mm. */
    @Test
    void saltOnTop() {
        Loaded loaded = Loaded.with(PUCK, new Topping("salt", 0.006, 2165, 0.55));
        assertThat(loaded.volume()).isEqualTo(PUCK.volume());
        assertThat(loaded.insetMass()).isEqualTo(0.006);
        assertThat(loaded.insetVolume()).isCloseTo(2.7714e-6, within(1e-10));
        assertThat(loaded.insetInsideHull()).isZero();
        assertThat(loaded.insetCentroid().z()).isCloseTo(0.03 + 1.3093e-3 / 2, within(1e-7));
        assertThat(loaded.text()).isEqualTo(PUCK.text());
    }

    /** What a shape answers by default, a load asks of the shape it lies on; else a topped ball would be no ball. */
    @Test
    void leavesNoDefaultToChance() {
        List<String> declared = Arrays.stream(Loaded.class.getDeclaredMethods())
                .map(Method::getName)
                .toList();
        assertThat(Arrays.stream(Shape.class.getMethods())
                        .filter(Method::isDefault)
                        .map(Method::getName)
                        .toList())
                .contains("mouldedInHalves", "diffusionTime")
                .isSubsetOf(declared);
    }

    /** A ball with salt on it is pressed in two halves as the bare ball is. */
    @Test
    void aToppedBallIsPressedAsTheBall() {
        Shape ball = Sphere.ofDiameter(0.065);
        Shape topped = Loaded.with(ball, new Topping("salt", 0.006, 2165, 0.55));
        assertThat(topped.mouldedInHalves()).isTrue();
        assertThat(topped.diffusionTime(DepthProfile.Exposure.ALL))
                .isEqualTo(ball.diffusionTime(DepthProfile.Exposure.ALL));
    }

    /** A thing of 25 mL low in a ball: hull, surface and first moment of the whole volume stay. */
    @Test
    void thingInside() {
        Sphere ball = Sphere.ofDiameter(0.065);
        Vec3 low = new Vec3(0, 0, 0.022);
        Loaded loaded = Loaded.with(ball, new Inset(0.008, 25e-6), low);
        assertThat(loaded.volume() + loaded.insetVolume()).isCloseTo(ball.volume(), within(1e-18));
        assertThat(loaded.insetInsideHull()).isEqualTo(25e-6);
        double moment = loaded.volume() * loaded.centroid().z() + 25e-6 * 0.022;
        assertThat(moment).isCloseTo(ball.volume() * 0.0325, within(1e-18));
        assertThat(loaded.insetCentroid()).isEqualTo(low);
        assertThat(loaded.hullVolume()).isEqualTo(ball.volume());
        assertThat(Loaded.with(ball, new Inset(0.008, 25e-6)).centroid().z()).isCloseTo(0.0325, within(1e-15));
    }

    /** The front meets the thing where a ball of 25 mL is left: at R - (3 v/4 pi)^(1/3). */
    @Test
    void frontEndsAtTheThingInside() {
        Sphere ball = Sphere.ofDiameter(0.065);
        DepthProfile left = Loaded.with(ball, new Inset(0.008, 25e-6)).depthProfile(DepthProfile.Exposure.ALL);
        assertThat(left.volume(0)).isCloseTo(ball.volume() - 25e-6, within(1e-17));
        assertThat(left.area(0)).isEqualTo(ball.surface());
        assertThat(left.deepest()).isCloseTo(0.0325 - Math.cbrt(75e-6 / (4 * Math.PI)), within(1e-9));
        double d = 0.01;
        double expected = 4 * Math.PI / 3 * Math.pow(0.0225, 3) - 25e-6;
        assertThat(left.volume(d)).isCloseTo(expected, within(1e-9 * ball.volume()));
        assertThat(left.volume(0.999999 * left.deepest())).isBetween(0.0, 1e-5 * ball.volume());
    }

    /** Both together: masses add, and their centre is that of the two. */
    @Test
    void bothInEitherOrder() {
        Topping salt = new Topping("salt", 0.006, 2165, 0.55);
        Inset toy = new Inset(0.002, 5e-6);
        Loaded one = Loaded.with(Loaded.with(PUCK, salt), toy);
        Loaded two = Loaded.with(Loaded.with(PUCK, toy), salt);
        assertThat(one.insetMass()).isCloseTo(0.008, within(1e-18));
        assertThat(one.insetVolume()).isCloseTo(two.insetVolume(), within(1e-20));
        double top = Loaded.with(PUCK, salt).insetCentroid().z();
        assertThat(one.insetCentroid().z()).isCloseTo(0.75 * top + 0.25 * 0.015, within(1e-15));
        assertThat(two.insetCentroid().z()).isCloseTo(one.insetCentroid().z(), within(1e-15));
    }

    /** A stone in the foot of a geode lies where there is shell; in its middle there is none, and its rim is no top. */
    @Test
    void geodeKeepsItsCrystals() {
        Geode geode = Geode.ofDiameterWallAndCrystals(0.08, 0.014, 0.02);
        Inset stone = new Inset(0.004, 2e-6);
        Loaded loaded = Loaded.with(geode, stone, new Vec3(0, 0, 0.007));
        assertThat(loaded.insetMass()).isCloseTo(0.024, within(1e-18));
        assertThat(loaded.insetVolume()).isCloseTo(0.02 / 2165 + 2e-6, within(1e-18));
        assertThat(loaded.hollow()).isPresent();
        assertThat(loaded.bare()).isSameAs(geode);
        assertThatThrownBy(() -> Loaded.with(geode, stone))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("material")
                .hasMessageContaining("mm up");
        assertThatThrownBy(() -> Loaded.with(geode, new Topping("salt", 0.004, 2165, 0.55)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("crystals");
    }

    /** 6 g of salt and 2 g of petals of 0.4 g/cm3, a quarter of them solid, over 38.48 cm2: 1.309 and 5.197 mm. */
    @Test
    void toppingsMix() {
        Loaded loaded = Loaded.with(
                Loaded.with(PUCK, new Topping("salt", 0.006, 2165, 0.55)), new Topping("petals", 0.002, 400, 0.25));
        assertThat(loaded.toppings()).hasSize(2);
        assertThat(loaded.toppingMass()).isEqualTo(0.008);
        assertThat(loaded.toppingVolume()).isCloseTo(0.006 / 2165 + 5e-6, within(1e-18));
        assertThat(loaded.toppingHeight()).isCloseTo(1.3093e-3 + 5.1969e-3, within(1e-7));
        assertThat(loaded.insetCentroid().z()).isCloseTo(0.03 + 6.5062e-3 / 2, within(1e-7));
    }

    /** The middle of a ring is empty; its tube, 30 mm off the axis, is not, and 14 mm of radius fit there. */
    @Test
    void placesInARing() {
        Ring ring = Ring.ofDiameterAndTube(0.09, 0.03);
        Inset toy = new Inset(0.008, 4 * Math.PI / 3 * 0.014 * 0.014 * 0.014);
        assertThatThrownBy(() -> Loaded.with(ring, toy))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("mm up, 29 mm aside");
        assertThat(Loaded.with(ring, toy, new Vec3(0, -0.03, 0.015)).sticksOut())
                .isFalse();
        assertThat(Loaded.with(ring, toy, new Vec3(0.028, 0, 0.015)).sticksOut())
                .isTrue();
        assertThatThrownBy(() -> Loaded.with(ring, toy, new Vec3(0, 0.014, 0.015)))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new Topping("salt", -0.006, 2165, 0.55)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Topping("salt", 0.006, Double.NaN, 0.55)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Topping("salt", 0.006, 2165, 1.2)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Inset(0.008, 0)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Inset(8, 25e-6))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("625 g");
        assertThatThrownBy(() -> Loaded.with(PUCK, new Topping("salt", 0.6, 2165, 0.5)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("144 mm");
        assertThatThrownBy(() -> Loaded.with(PUCK, new Inset(0.008, 200e-6)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("200");
    }
}
