package org.fizzhull.forecast.attitude;

import static org.assertj.core.api.Assertions.assertThat;

import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * BY HAND: 2 g of salt of 2.165 g/cm3, packed to 0.55, lie 0.436 mm thick on the 38.48 cm2 of the flat top of a puck of
 * 70 x 30 mm.
 */
class ToppingPlaceTest {
    private static final Shape PUCK = Puck.ofDiameterAndHeight(0.07, 0.03);
    private static final Topping SALT = new Topping("salt", 0.002, 2165, 0.55);

    /** Salt up: from 30 mm to 30.436 mm across the water line. Salt down: the layer hangs from 0 to 0.436 mm below. */
    @ParameterizedTest
    @CsvSource({
        "1,0.0299,SHOWS", "1,0.0301,AT_WATER_LINE", "1,0.0304,AT_WATER_LINE", "1,0.0305,UNDER_WATER",
        "-1,0.0001,UNDER_WATER", "-1,0.02,UNDER_WATER", "-1,-0.0005,SHOWS", "-1,-0.0004,AT_WATER_LINE"
    })
    void draftsOfAPuck(double up, double draft, FloatingAttitude.Topping place) {
        Shape salted = Loaded.with(PUCK, SALT);
        assertThat(ToppingPlace.of(salted, PUCK.hull().orElseThrow(), new Vec3(0, 0, up), draft))
                .isEqualTo(place);
    }

    /** On its edge, 70 mm high, the covered end reaches from the lowest to the highest point. */
    @Test
    void onItsEdge() {
        Shape salted = Loaded.with(PUCK, SALT);
        assertThat(ToppingPlace.of(salted, PUCK.hull().orElseThrow(), new Vec3(1, 0, 0), 0.035))
                .isEqualTo(FloatingAttitude.Topping.AT_WATER_LINE);
        assertThat(ToppingPlace.of(salted, PUCK.hull().orElseThrow(), new Vec3(1, 0, 0), 0.0701))
                .isEqualTo(FloatingAttitude.Topping.UNDER_WATER);
    }

    @Test
    void withoutATopping() {
        Shape inset = Loaded.with(PUCK, new Inset(0.004, 2e-6));
        for (Shape bare : new Shape[] {PUCK, inset}) {
            assertThat(ToppingPlace.of(bare, PUCK.hull().orElseThrow(), new Vec3(0, 0, 1), 0.02))
                    .isEqualTo(FloatingAttitude.Topping.NONE);
        }
    }
}
