package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Units;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;

/** A fast reaction in damp air takes all the fizz there is and no more: conservation of acid and bicarbonate. */
class ExhaustionTest {
    /**
     * Balance of mass: a weak dehumidifier leaves the room damper than the films, and a piece takes up water for as long
     * as it lies there; the course ends once three tenths of its pores, 0.4 of the volume, are full.
     */
    @Test
    void dampAirFillsNoMoreThanThePores() {
        var input = DryingInput.plain(900, 0.4, 0.03, SorptionMixture.none(), 5.2);
        var opening = Opening.of(Sphere.ofDiameter(0.065), DepthProfile.Exposure.ALL);
        var room = new DryingPhase.ClosedRoom(25, 0.5 / 3600, 0.3 / 86400, 0.5, 1);
        var phase = DryingPhase.open(opening, RoomAir.of(Units.celsius(45), 0.99), 3000 * 86400.0)
                .in(room);
        var course = Drying.run(input, List.of(phase), DryingParameters.standard(), Resolution.COARSE);
        assertThat(course.soaked()).isTrue();
        assertThat(course.end()).isLessThan(3000 * 86400.0);
        double volume = Sphere.ofDiameter(0.065).volume();
        assertThat(course.last().water()).isBetween(0.3 * 1000 * 0.4 * volume, 0.4 * 1000 * 0.4 * volume);
    }

    @Test
    void noMoreGoesOffThanThereIs() {
        var input = DryingInput.plain(900, 0.4, 0.03, SorptionMixture.none(), 5.2);
        var opening = Opening.of(Sphere.ofDiameter(0.065), DepthProfile.Exposure.ALL);
        for (double rate : new double[] {6e-5, 1e-3, 5e-3}) {
            for (double humidity : new double[] {0.70, 0.75, 0.85}) {
                var phase = DryingPhase.open(opening, RoomAir.of(Units.celsius(25), humidity), 60 * 86400.0)
                        .stored();
                var parameters = DryingParameters.standard()
                        .but()
                        .filmActivity(0.72)
                        .promptYield(7)
                        .filmRate(rate)
                        .build();
                var course = Drying.run(input, List.of(phase), parameters, Resolution.COARSE);
                double before = 0;
                for (int i = 0; i < course.steps(); i++) {
                    double extent = course.at(course.time(i)).extent();
                    assertThat(extent).isBetween(before, 5.2 * (1 + 1e-8));
                    before = extent;
                }
                assertThat(course.balanceError()).isLessThan(1e-9);
            }
        }
    }
}
