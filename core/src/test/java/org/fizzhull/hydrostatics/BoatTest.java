package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bowl R35 r20, dry: ANALYTIC, docs/physics/hydrostatics.md, 3 (mm). */
class BoatTest {
    private final Hull shell = HullBodies.bowl(35, 20);
    private final Hollow hollow = Hollow.round(HullBodies.cup(35), 35, 35, 2 * Math.PI * 8000 / 3, 15);

    @ParameterizedTest
    @CsvSource({
        ".8, 8.305561, 13.7273",
        ".9, 6.320404, 10.4037",
        "1.0, 4.376552, 7.1833",
        "1.1, 2.459832, 4.0301",
        "1.2, .557870, .9133"
    })
    void freeboardAndRim(double s, double freeboard, double degrees) {
        Boat boat = Boat.of(hollow, shell.centroid(), s * shell.volume());
        assertThat(boat.rimFreeboard()).isCloseTo(freeboard, within(1e-6));
        assertThat(boat.draft()).isCloseTo(35 - freeboard, within(1e-6));
        assertThat(Math.toDegrees(boat.rimDips())).isCloseTo(degrees, within(6e-5));
        assertThat(boat.rimDips()).isCloseTo(Math.asin(boat.rimFreeboard() / 35), within(1e-12));
        assertThat(boat.gmSmaller()).isCloseTo(14.415322581, within(1e-9));
        assertThat(boat.gmLarger()).isCloseTo(14.415322581, within(1e-9));
    }

    @Test
    void swampsAtItsLimit() {
        assertThat(Boat.limitMass(hollow, 1) / shell.volume()).isCloseTo(1.229391, within(1e-6));
        double limit = hollow.closed().volume();
        assertThatIllegalArgumentException().isThrownBy(() -> Boat.of(hollow, shell.centroid(), limit));
        assertThat(Boat.of(hollow, shell.centroid(), .9999 * limit).rimFreeboard())
                .isPositive();
    }

    /** ANALYTIC: an open box of revolution; the rim of a wall-sided body dips at tan(heel) = freeboard/R. */
    @Test
    void rimOfACan() {
        Hollow can = Hollow.round(HullBodies.cylinder(2, 1), 1, 1, 1, 1);
        Boat boat = Boat.of(can, new Vec3(0, 0, .3), .7 * Math.PI);
        assertThat(boat.rimDips()).isCloseTo(Math.atan(.3), within(1e-12));
    }
}
