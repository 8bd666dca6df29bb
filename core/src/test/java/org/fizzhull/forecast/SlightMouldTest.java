package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.fizzhull.quantity.Units.grams;

import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.meshed.MeshShape;
import org.junit.jupiter.api.Test;

/**
 * A plate of area S and thickness h is measured to s: its volume is open to about s / h (ANALYTIC, its rim neglected). The refusal
 * names a way that does, where there is one.
 */
class SlightMouldTest {
    @Test
    void namesAWayThatDoes() {
        // 0.9 mm: open to 78 % by a ruler, to 22 % by calipers
        Refusal refusal = refused(0.9e-3, Measured.RULER);
        assertThat(refusal.getMessage()).contains("ruler", "another way");
        assertThat(ask(0.9e-3, Measured.CALIPERS).probability()).isPresent();
    }

    @Test
    void saysWhereNoWayDoes() {
        // 0.1 mm: open to 200 % by calipers; 1 cm3 of water is open to 100 %
        assertThat(refused(0.1e-3, Measured.CALIPERS).getMessage()).contains("No way measures so thin a body");
        assertThat(refused(0.1e-3, Measured.WATER).getMessage()).contains("No way measures so thin a body");
    }

    private static Refusal refused(double thick, Measured way) {
        return catchThrowableOfType(Refusal.class, () -> ask(thick, way));
    }

    private static Forecast ask(double thick, Measured way) {
        Shape plate = MeshShape.of("plate.stl", "mm", HullBodies.box(0.1, 0.1, thick));
        return FloatPredictor.standard()
                .with(new Sampling(1, 128))
                .forecast(
                        Question.weighed(plate, grams(0.95e6 * plate.volume())).measured(way));
    }
}
