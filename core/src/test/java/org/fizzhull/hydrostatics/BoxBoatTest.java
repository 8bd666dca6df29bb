package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Rim;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ANALYTIC: an open box, 4 by 6 and 2 high, that floats with its hollow dry. While its walls alone are cut (a draft of more than half the height), a heel phi about an axis
 * through the middle of the water plane keeps the displacement, and a corner at the distance r to the low side goes down by r
 * tan(phi); with b the breadth, GM tan(phi) + BM tan^3(phi)/2 is the offset of the centre of mass (wall-sided formula [from
 * memory]).
 */
class BoxBoatTest {
    private static final double B = 4;
    private static final double L = 6;
    private static final double H = 2;
    private static final double PLANE = B * L;

    private static final Hollow BOX = new Hollow(
            HullBodies.block(B, L, H),
            H / 2,
            new Rim.Corners(new double[] {2, 3, 1, -2, 3, 1, -2, -3, 1, 2, -3, 1}),
            40,
            B * L * H,
            0.1);

    /** The corner goes under first: at tan(phi) = freeboard over half the diagonal. */
    @ParameterizedTest
    @CsvSource({"1.1", "1.4", "1.7"})
    void theCornerOfTheRimDipsFirst(double draft) {
        Boat boat = Boat.of(BOX, new Vec3(0, 0, -0.5), PLANE * draft);
        assertThat(boat.up().z()).isCloseTo(1, within(1e-12));
        assertThat(boat.draft()).isCloseTo(draft, within(1e-9));
        assertThat(boat.rimFreeboard()).isCloseTo(H - draft, within(1e-9));
        assertThat(boat.immersedFraction()).isCloseTo(draft / H, within(1e-12));
        assertThat(boat.level()).isCloseTo(draft - H / 2, within(1e-9));
        // to 1e-6 rad of the side on which it dips
        assertThat(boat.rimDips()).isCloseTo(Math.atan((H - draft) / Math.hypot(B / 2, L / 2)), within(1e-9));
        double bg = -0.5 - (draft / 2 - H / 2);
        assertThat(boat.gmSmaller()).isCloseTo(B * B / 12 / draft - bg, within(1e-9));
        assertThat(boat.gmLarger()).isCloseTo(L * L / 12 / draft - bg, within(1e-9));
    }

    /** A mass off the middle leans it over; the rim on that side comes down by half the breadth times the slope. */
    @ParameterizedTest
    @CsvSource({"0.1, 0", "0, 0.2"})
    void aMassOffTheMiddleLeansIt(double x, double y) {
        double draft = 1;
        Boat boat = Boat.of(BOX, new Vec3(x, y, -0.5), PLANE * draft);
        double breadth = x > 0 ? B : L;
        double bm = breadth * breadth / 12 / draft;
        double gm = bm - (-0.5 + H / 2 - draft / 2);
        double offset = Math.max(x, y);
        double tan = offset / gm;
        for (int i = 0; i < 50; i++) {
            tan = offset / (gm + bm * tan * tan / 2);
        }
        double heel = Math.atan(tan);
        // it leans to the side of the mass, whose wall then looks down
        assertThat(Math.acos(boat.up().z())).isCloseTo(heel, within(1e-7));
        assertThat(x > 0 ? boat.up().x() : boat.up().y()).isCloseTo(-Math.sin(heel), within(1e-7));
        assertThat(boat.rimFreeboard()).isCloseTo((H - draft - breadth / 2 * tan) * Math.cos(heel), within(1e-6));
        assertThat(boat.rimDips()).isBetween(0.0, Math.atan((H - draft) / Math.hypot(B / 2, L / 2)));
    }

    /** It stands below what it carries, and not once that is reached, or where no height of its mass lets it stand. */
    @Test
    void whetherItStands() {
        Vec3 low = new Vec3(0, 0, -0.5);
        assertThat(Boat.stands(BOX, low, 0.99 * B * L * H)).isTrue();
        assertThat(Boat.stands(BOX, low, B * L * H)).isFalse();
        // half immersed: BM is 16/12, B at -1/2: stable up to a mass 16/12 above it
        assertThat(Boat.stands(BOX, new Vec3(0, 0, 16 / 12.0 - 0.5 - 0.01), PLANE))
                .isTrue();
        assertThat(Boat.stands(BOX, new Vec3(0, 0, 3), PLANE)).isFalse();
        // a mass at the side leans it until the rim is under: the slope at which the wall dips is 0.1/2
        double draft = 1.9;
        double gm = B * B / 12 / draft + 0.5 - H / 2 + draft / 2;
        double dips = gm * 0.05 + B * B / 12 / draft * 0.05 * 0.05 * 0.05 / 2;
        assertThat(Boat.stands(BOX, new Vec3(0.95 * dips, 0, -0.5), PLANE * draft))
                .isTrue();
        assertThat(Boat.stands(BOX, new Vec3(1.05 * dips, 0, -0.5), PLANE * draft))
                .isFalse();
        assertThat(Boat.of(BOX, new Vec3(1.05 * dips, 0, -0.5), PLANE * draft).rimDips())
                .isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> Boat.stands(BOX, low, 0));
    }

    /** A round bowl stays upright, so that it carries what its closed half ball displaces. */
    @Test
    void limitOfABowl() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        double closed = 2 * Math.PI / 3 * 0.045 * 0.045 * 0.045;
        assertThat(BoatLimit.displaced(bowl, 1000)).isCloseTo(closed, within(1e-9));
        assertThat(BoatLimit.stands(bowl, 999 * closed, 1000)).isTrue();
        assertThat(BoatLimit.stands(bowl, 1001 * closed, 1000)).isFalse();
        assertThat(Boat.limitMass(bowl.hollow().orElseThrow(), 990)).isCloseTo(990 * closed, within(1e-6));
    }
}
