package org.fizzhull.drying.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.fizzhull.drying.Profiles;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.Opening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * ANALYTIC: the parts that the drying equations are put together of, each by its own formula; a slope against the difference
 * quotient of what it is the slope of.
 */
class SolverPartsTest {
    /** C = K a/(1 - ...) of tiny K is a straight line: 100 kg/m3 a unit of activity. */
    private static WaterActivity line(double film) {
        return new WaterActivity(SorptionMixture.of(1, 0.1 / 1e-9, 1, 1e-9), 1000, film);
    }

    private static final AcidHydration ACID = new AcidHydration(0.03, 1e-5, line(0.72));

    /** Half of all acid is hydrated at 60 % RH, none below 58 %, all above 62 %. */
    @Test
    void whatTheAcidBindsInEquilibrium() {
        assertThat(ACID.settled(57)).isZero();
        assertThat(ACID.settled(59)).isCloseTo(0.0075, within(1e-9));
        assertThat(ACID.settled(60)).isCloseTo(0.015, within(1e-9));
        assertThat(ACID.settled(63)).isEqualTo(0.03);
        assertThat(ACID.idle()).isFalse();
        assertThat(new AcidHydration(0, 1e-5, line(0.72)).idle()).isTrue();
        assertThat(new AcidHydration(0.03, 0, line(0.72)).idle()).isTrue();
        assertThat(new AcidHydration(0.03, 1e-5, line(0.55)).idle())
                .as("films drier than the transition")
                .isTrue();
    }

    /** The implicit step solves b1 = b + h k (settled - b1), and its slope is that of b1 by the content. */
    @ParameterizedTest
    @CsvSource({"1e3, 59.5", "1e5, 60", "1e6, 61.7"})
    void theImplicitStepOfTheAcid(double h, double content) {
        double b = ACID.implicit(0.004, h, content);
        assertThat(b).isCloseTo(0.004 + h * 1e-5 * (ACID.settled(content) - b), within(1e-12));
        double slope = (ACID.implicit(0.004, h, content + 0.01) - ACID.implicit(0.004, h, content - 0.01)) / 0.02;
        assertThat(ACID.slope(h)).isCloseTo(slope, withinPercentage(1e-4));
        assertThat(ACID.ramps(content)).isTrue();
    }

    /** A step over an end of the ramp, 58 to 62 kg/m3, stops a thousandth of its width beyond; one that stays goes on. */
    @Test
    void kinksOfTheRamp() {
        assertThat(ACID.ramps(57.9)).isFalse();
        assertThat(ACID.ramps(62.1)).isFalse();
        assertThat(ACID.sameSide(50, 57)).isTrue();
        assertThat(ACID.sameSide(59, 61)).isTrue();
        assertThat(ACID.sameSide(63, 70)).isTrue();
        assertThat(ACID.sameSide(57, 59)).isFalse();
        assertThat(ACID.sameSide(59, 57)).isFalse();
        assertThat(ACID.sameSide(61, 63)).isFalse();
        assertThat(ACID.sameSide(63, 61)).isFalse();
        assertThat(ACID.sameSide(57, 63)).isFalse();
        assertThat(ACID.sameSide(63, 57)).isFalse();
        assertThat(ACID.toKink(50, 61)).isCloseTo(58.004, within(1e-6));
        assertThat(ACID.toKink(50, 58.002)).isEqualTo(58.002);
        assertThat(ACID.toKink(50, 57)).isEqualTo(57);
        assertThat(ACID.toKink(70, 59)).isCloseTo(61.996, within(1e-6));
        assertThat(ACID.toKink(70, 61.998)).isEqualTo(61.998);
        assertThat(ACID.toKink(70, 65)).isEqualTo(65);
        assertThat(ACID.toKink(59, 70)).isEqualTo(70);
        assertThat(ACID.toKink(61, 50)).isEqualTo(50);
    }

    /** Nothing gives off more than there is, but for rounding; the curvature x p/most^2 of a step below 1e-4 is left out. */
    @Test
    void limitsOfTheReaction() {
        FilmReaction reaction = new FilmReaction(4, 2, 1);
        assertThat(reaction.exceeds(4)).isFalse();
        assertThat(reaction.exceeds(4 * (1 + 3e-9))).isTrue();
        // 2 step^2 <= 1e-8 x 16 up to 2.83e-4
        assertThat(reaction.nearlyLinear(2.8e-4)).isTrue();
        assertThat(reaction.nearlyLinear(-2.8e-4)).isTrue();
        assertThat(reaction.nearlyLinear(2.9e-4)).isFalse();
        assertThat(reaction.implicit(4, 3)).isEqualTo(4);
        assertThat(reaction.slope(4, 3)).isZero();
        // a long step of a low order: 1 - xi/4 = u solves u + 1e4/4 u^(1/2) = 1
        FilmReaction low = new FilmReaction(4, 0.5, 1);
        double u = 1 - low.implicit(0, 1e4) / 4;
        assertThat(u + 2500 * Math.sqrt(Math.max(0, u))).isCloseTo(1, within(1e-3));
        assertThat(reaction.waterPerMole()).isCloseTo(0.018015 * 2 / 3, within(1e-6));
    }

    /** With no resistance inside, a slab of four cells loses a fourth in each fourth of w V/(K S drop): half of it is the mean. */
    @Test
    void aFrontThatOnlyTheSkinHoldsBack() {
        RecedingFront front = new RecedingFront(new DryingGrid(Opening.face(0.01, 1), 4, 1));
        double all = 20 * 0.01 / (2e-3 * 4e-3);
        assertThat(front.time(20, 1e9, 2e-3, 4e-3)).isCloseTo(all, withinPercentage(1e-6));
        assertThat(front.meanStay(20, 1e9, 2e-3, 4e-3)).isCloseTo(all / 2, withinPercentage(1e-6));
        for (double share : new double[] {0.1, 0.25, 0.6, 0.99}) {
            assertThat(front.advance(0, share * all, 20, 1e9, 2e-3, 4e-3)).isCloseTo(share, within(1e-6));
            assertThat(front.advance(0.3, share * all, 20, 1e9, 2e-3, 4e-3))
                    .isCloseTo(Math.min(1, 0.3 + share), within(1e-6));
        }
        assertThat(front.advance(1, 1, 20, 1e9, 2e-3, 4e-3)).isEqualTo(1);
        assertThat(front.advance(0, 1.01 * all, 20, 1e9, 2e-3, 4e-3)).isEqualTo(1);
        // air as damp as the liquid, or a tight skin, takes nothing
        for (double[] shut : new double[][] {{2e-3, 0}, {2e-3, -1e-3}, {0, 4e-3}}) {
            assertThat(front.time(20, 1e-5, shut[0], shut[1])).isInfinite();
            assertThat(front.meanStay(20, 1e-5, shut[0], shut[1])).isInfinite();
            assertThat(front.advance(0.4, 1e9, 20, 1e-5, shut[0], shut[1])).isEqualTo(0.4);
        }
    }

    /** M (phi0 - phi)/h + E (phi_in - phi) - D + flux; a dehumidifier of 4e-6 kg/s from 50 % on, at full power at 55 %. */
    @ParameterizedTest
    @CsvSource({"0.45, 0", "0.52, 1.6e-6", "0.55, 4e-6", "0.7, 4e-6"})
    void theBalanceOfARoom(double humidity, double drawn) {
        RoomBalance room = new RoomBalance();
        room.close(0.4, 5e-5, 0.6, 4e-6, 0.5, 0.05);
        double surplus = 0.4 / 60 * (0.58 - humidity) + 5e-5 * (0.6 - humidity) - drawn + 3e-6;
        assertThat(room.surplus(1 / 60.0, 0.58, humidity, 3e-6)).isCloseTo(surplus, within(1e-15));
        assertThat(room.fixed()).isFalse();
        if (humidity != 0.55) {
            double h = 1e-6;
            double fall = (room.surplus(1 / 60.0, 0.58, humidity - h, 3e-6)
                            - room.surplus(1 / 60.0, 0.58, humidity + h, 3e-6))
                    / (2 * h);
            // the flux from the piece falls by 2e-5 a unit of humidity
            assertThat(room.slope(1 / 60.0, humidity, -2e-5)).isCloseTo(fall + 2e-5, within(1e-9));
        }
        room.fix();
        assertThat(room.fixed()).isTrue();
        assertThat(room.surplus(1 / 60.0, 0.58, humidity, 3e-6)).isZero();
        assertThat(room.slope(1 / 60.0, humidity, -2e-5)).isEqualTo(1);
    }

    /** Conductances in series: D rho/half a cell and K rho; on a skin wetter than the film vapour meets the outer one alone. */
    @Test
    void theSkin() {
        DryingGrid slab = new DryingGrid(Opening.face(0.01, 1), 5, 1);
        VapourPath path = new VapourPath();
        path.lay(slab, 2e-7, 3e-5);
        double inside = 2e-7 / 1e-3;
        double series = inside * 3e-5 / (inside + 3e-5);
        assertThat(path.throughSkin(0.6, 0.02, 0.5, 0.7)).isCloseTo(series * 0.1, within(1e-15));
        assertThat(path.byWater).isCloseTo(series * 0.02, within(1e-15));
        assertThat(path.byRoom).isCloseTo(-series, within(1e-15));
        assertThat(path.throughSkin(0.69, 0.02, 0.9, 0.7)).as("dew").isCloseTo(-3e-5 * 0.2, within(1e-15));
        assertThat(path.byWater).isZero();
        assertThat(path.byRoom).isCloseTo(-3e-5, within(1e-15));
        assertThat(path.link[2]).as("a whole cell").isCloseTo(2e-7 / 2e-3, within(1e-15));
        path.lay(slab, 2e-7, 0);
        assertThat(path.throughSkin(0.6, 0.02, 0.5, 0.7)).isZero();
    }

    /** By rank of volume: what is even stays even, the outer half goes to the outer half, and the total is kept. */
    @Test
    void carriedFromOneGridToAnother() {
        DryingGrid ball = new DryingGrid(new Opening(Profiles.ball(0.03), 1), 8, 1);
        DryingGrid slab = new DryingGrid(Opening.face(2 * ball.total, 1e-3), 8, 1);
        double[] even = new double[8];
        Arrays.fill(even, 3);
        VolumeRank.carry(ball, slab, even);
        for (double value : even) {
            assertThat(value).isCloseTo(3, within(1e-9));
        }
        double[] rising = {1, 2, 3, 4, 5, 6, 7, 8};
        double before = ball.sum(rising) / ball.total;
        double[] carried = rising.clone();
        VolumeRank.carry(ball, slab, carried);
        assertThat(slab.sum(carried) / slab.total).isCloseTo(before, within(1e-9));
        assertThat(carried).isSorted();
        // from eight even cells: the outermost cell of the ball takes a part of the first ones
        double[] outer = {1, 1, 1, 1, 0, 0, 0, 0};
        VolumeRank.carry(slab, ball, outer);
        double sum = 0;
        for (int i = 0; i < 8; i++) {
            double share = Math.max(0, Math.min(1, (0.5 * ball.total - sum) / ball.volume[i]));
            assertThat(outer[i]).isCloseTo(share, within(1e-9));
            sum += ball.volume[i];
        }
    }

    /** Nodes of 1.5 % RH with a film of 72 %: the salt of 51 % RH is half hydrated there and wholly so one node on. */
    @Test
    void theStepOfAHydrate() {
        WaterActivity salt = new WaterActivity(SorptionMixture.none(), 1000, 0.72, 0.05);
        assertThat(salt.hydrated(0.3)).isZero();
        assertThat(salt.hydrated(0.5025)).isCloseTo(0.25, within(1e-9));
        assertThat(salt.hydrated(0.51)).isCloseTo(0.5, within(1e-9));
        assertThat(salt.hydrated(0.5175)).isCloseTo(0.75, within(1e-9));
        assertThat(salt.hydrated(0.9)).isEqualTo(1);
        assertThat(new WaterActivity(SorptionMixture.none(), 1000, 0.508, 0.05).hydrated(0.6))
                .as("films of 50.8 %: 0.5 - 0.2")
                .isCloseTo(0.3, within(1e-9));
        // 50 kg/m3 of the salt, and the least slope of 0.5 kg/m3 beside its two cells
        assertThat(salt.filmContent()).isCloseTo(50 + 0.5 * (0.72 - 0.03), within(1e-9));
    }

    /** A straight isotherm: content and activity are proportional, a segment holds its lower end and not its upper one. */
    @Test
    void segmentsOfAnIsotherm() {
        WaterActivity line = line(0.72);
        assertThat(line.contentAt(0.5)).isCloseTo(50, within(1e-6));
        assertThat(line.contentAt(0.72)).isEqualTo(line.filmContent());
        assertThat(line.contentAt(0.9)).isCloseTo(72, within(1e-6));
        for (int guess : new int[] {0, 20, 48}) {
            assertThat(line.segment(51.1, guess)).isEqualTo(34);
            assertThat(line.segment(-1, guess)).isZero();
            assertThat(line.segment(90, guess)).isEqualTo(48);
            assertThat(line.segment(line.filmContent(), guess)).isEqualTo(48);
            assertThat(line.segment(line.contentAt(0.015 * 7), guess)).isEqualTo(7);
        }
        assertThat(line.holds(51.1, 34)).isTrue();
        assertThat(line.holds(51.1, 33)).isFalse();
        assertThat(line.holds(51.1, 35)).isFalse();
        assertThat(line.holds(-1, 0)).isTrue();
        assertThat(line.holds(90, 48)).isTrue();
        assertThat(line.holds(line.filmContent(), 48)).isTrue();
        assertThat(line.holds(line.filmContent(), 47)).isFalse();
        assertThat(line.activity(51.1, 34)).isCloseTo(0.511, within(1e-8));
        assertThat(line.slope(34)).isCloseTo(0.01, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"3, 1", "4001, 1", "8, 0.9", "8, NaN"})
    void aGridBeyondItsRangeIsRefused(int cells, double grading) {
        assertThatThrownBy(() -> new DryingGrid(Opening.face(0.01, 1), cells, grading))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Faces of a slab at deepest (i/cells)^grading; all cells add up to the slab. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2})
    void cellsOfASlab(double grading) {
        DryingGrid slab = new DryingGrid(Opening.face(0.01, 1), 4, grading);
        double above = 0;
        for (int i = 0; i < 4; i++) {
            double below = 0.01 * Math.pow((i + 1) / 4.0, grading);
            assertThat(slab.volume[i]).isCloseTo(below - above, within(1e-12));
            assertThat(slab.centre[i]).isCloseTo((below + above) / 2, within(1e-12));
            above = below;
        }
        assertThat(slab.sum(new double[] {1, 1, 1, 1})).isCloseTo(0.01, within(1e-12));
        assertThat(new DryingGrid(Opening.face(0.01, 1), 4000, 1).cells).isEqualTo(4000);
    }

    /** A copy holds the same figures and is not changed with the first. */
    @Test
    void aCopyIsKept() {
        Contents first = new Contents();
        first.cells(2);
        first.water[1] = 5;
        first.extent[0] = 0.3;
        first.bound[1] = 0.01;
        first.room = 0.4;
        first.lost = 1e-3;
        first.made = 2e-3;
        Contents kept = first.copy();
        first.water[1] = 6;
        first.room = 0.9;
        assertThat(kept.water).containsExactly(0, 5);
        assertThat(kept.extent).containsExactly(0.3, 0);
        assertThat(kept.bound).containsExactly(0, 0.01);
        assertThat(kept.room).isEqualTo(0.4);
        assertThat(kept.lost).isEqualTo(1e-3);
        assertThat(kept.made).isEqualTo(2e-3);
    }
}
