package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.drying.solver.WaterActivity;
import org.fizzhull.medium.RoomAir;

/** ANALYTIC: water before and made is water there and gone, to 1e-9, for any mix through any phases. */
class BalanceProperties {
    @Property(tries = 60)
    void waterIsNeitherMadeNorLost(
            @ForAll @DoubleRange(min = 0, max = 0.08) @Scale(6) double water,
            @ForAll @DoubleRange(min = 0, max = 0.3) @Scale(6) double starch,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) @Scale(6) double first,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) @Scale(6) double second,
            @ForAll @DoubleRange(min = 5, max = 40) @Scale(6) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(6) double days,
            @ForAll @DoubleRange(min = 0, max = 0.06) @Scale(6) double acid,
            @ForAll @IntRange(min = 8, max = 40) int cells,
            @ForAll @IntRange(min = 0, max = 6) int wrap) {
        var mix = Mixes.binding(water, starch, acid);
        double kelvin = celsius + 273.15;
        var rack = new Opening(Profiles.domeOnRack(0.03), 1.14);
        double volume = rack.profile().volume(0);
        var phases = List.of(
                DryingPhase.open(Opening.face(volume, Math.PI * 9e-4), RoomAir.of(kelvin, first), 5000),
                DryingPhase.open(rack, RoomAir.of(kelvin, first), days * Mixes.DAY),
                DryingPhase.open(rack, RoomAir.of(kelvin, second), days * Mixes.DAY)
                        .in(Wrap.named().get(wrap), 1e-3)
                        .stored());
        var course = Drying.run(mix, phases, DryingParameters.standard(), new Resolution(cells, 1, 5e-3));
        assertThat(course.balanceError()).isLessThan(1e-9);
        DryingCourse.State start = course.at(0);
        double extent = 0;
        for (int i = 0; i < course.steps(); i++) {
            DryingCourse.State now = course.at(course.time(i));
            // fizz only falls, and no course gives water back that was not there or made
            assertThat(now.extent()).isGreaterThanOrEqualTo(extent - 1e-9);
            assertThat(now.water()).isGreaterThanOrEqualTo(0);
            // the second-order scheme overshoots by a part of a long step's decay
            double most = acid * course.dryMass();
            assertThat(now.bound()).isBetween(-0.02 * most - 1e-12, 1.02 * most + 1e-12);
            extent = now.extent();
        }
        DryingCourse.State end = course.last();
        double made = 0.018015 * 2 / 3 * (end.extent() - start.extent()) * course.dryMass();
        double lost = start.water() + made - end.water();
        double carbon = 0.044009 * end.extent() * course.dryMass();
        assertThat(course.dampMass() - end.mass()).isCloseTo(lost + carbon, within(1e-9 * course.dampMass()));
    }

    /**
     * ANALYTIC: a tight room holds what its pieces gave: N lost = V rho_sat (RH - RH0), and both end at one activity.
     */
    @Property(tries = 20)
    void aTightRoomHoldsWhatThePiecesGave(
            @ForAll @DoubleRange(min = 0.1, max = 0.6) @Scale(6) double humidity,
            @ForAll @IntRange(min = 1, max = 200) int pieces,
            @ForAll @DoubleRange(min = 0.5, max = 40) @Scale(6) double volume) {
        var mix = Mixes.starch(0.02, 0.1);
        var room = new DryingPhase.ClosedRoom(volume, 0, 0, 0.5, pieces);
        var phase = DryingPhase.open(Mixes.BALL, Mixes.room(humidity), 3000 * Mixes.DAY)
                .in(room);
        var course = Drying.run(mix, List.of(phase), Mixes.inert(), Resolution.COARSE);
        DryingCourse.State end = course.last();
        double given = pieces * (course.at(0).water() - end.water());
        double held = volume * Mixes.room(0.5).saturationDensity() * (end.roomHumidity() - humidity);
        assertThat(given).isCloseTo(held, within(1e-9 * pieces * course.at(0).water()));
        var table = new WaterActivity(mix.sorbents(), mix.rhoDry(), 0.72);
        if (end.roomHumidity() < 0.7199) {
            assertThat(end.waterOfDry() * mix.rhoDry()).isCloseTo(table.contentAt(end.roomHumidity()), within(1e-3));
        }
    }
}
