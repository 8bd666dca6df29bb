package org.fizzhull.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.drying.solver.WaterActivity;
import org.fizzhull.evidence.Notice;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Additives;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The course of whole pieces: identities, and common practice as directions and orders of magnitude. */
class CourseTest {
    /** A mix with a hydrated salt that lowers the humidity of its films, as Epsom salt does. */
    private static final DryingInput EPSOM = new DryingInput(
            1100,
            0.4,
            0.36,
            0.02,
            Alcohol.NONE,
            0,
            0,
            SorptionMixture.none(),
            4.6,
            false,
            0.883,
            new Hydrates(0.01, 0),
            Additives.NONE);

    private static final DryingParameters STANDARD = DryingParameters.standard();

    private static DryingCourse ready(DryingInput mix, DryingPhase phase, DryingParameters parameters) {
        return Drying.untilReady(mix, phase, parameters, Resolution.FINE);
    }

    private static double days(DryingCourse course) {
        return course.readyAfter().orElseThrow() / Mixes.DAY;
    }

    /** ANALYTIC: nothing added, powders at the room's own humidity: nothing moves. */
    @Test
    void withoutWaterNothingLeaves() {
        var course = Drying.run(Mixes.starch(0, 0.12), List.of(Mixes.open(0.5, 7)), STANDARD, Resolution.FINE);
        assertThat(course.last().mass()).isCloseTo(course.dampMass(), within(1e-12));
        assertThat(course.last().fizzLeft()).isEqualTo(1);
        assertThat(course.readyAfter()).hasValue(0);
    }

    /** ANALYTIC: an all-oil binder has nothing to dry and keeps its weight. */
    @Test
    void oilStays() {
        var mix = new DryingInput(
                1100,
                0.4,
                0.34,
                0,
                Alcohol.NONE,
                0.05,
                0.05,
                SorptionMixture.none(),
                4.6,
                false,
                1,
                Hydrates.NONE,
                Additives.NONE);
        var course = Drying.run(mix, List.of(Mixes.open(0.5, 7)), STANDARD, Resolution.FINE);
        assertThat(course.stays()).isCloseTo(0.05 * course.dryMass(), within(1e-12));
        assertThat(course.last().mass()).isCloseTo(course.dampMass(), within(1e-12));
    }

    /**
     * ANALYTIC: in the end all sorbed water is in equilibrium with the room, and the balance of masses is that of
     * moles.
     */
    @Test
    void endsInEquilibriumWithTheRoom() {
        var mix = Mixes.starch(0.02, 0.12);
        var course = Drying.run(mix, List.of(Mixes.open(0.4, 200)), STANDARD, Resolution.FINE);
        var table = new WaterActivity(mix.sorbents(), mix.rhoDry(), 0.72);
        DryingCourse.State end = course.last();
        assertThat(end.waterOfDry()).isCloseTo(table.contentAt(0.4) / mix.rhoDry(), within(1e-8));
        double made = 0.018015 * (2.0 / 3) * end.extent() * course.dryMass();
        double before = table.contentAt(0.5) / mix.rhoDry() * course.dryMass() + 0.02 * course.dryMass();
        double lost = before + made - end.water();
        assertThat(end.mass())
                .isCloseTo(course.dampMass() - lost - 0.044009 * end.extent() * course.dryMass(), within(1e-10));
    }

    /** ANALYTIC: without boundary layer and reaction, half the size dries in a quarter of the time. */
    @Test
    void timeGoesWithTheSquareOfTheSize() {
        var quick = Mixes.inert().but().transfer(1).build();
        var small = DryingPhase.open(new Opening(Profiles.ball(0.01625), 1), Mixes.room(0.5), 60 * Mixes.DAY);
        double ratio = days(ready(Mixes.starch(0.02, 0.1), Mixes.open(0.5, 60), quick))
                / days(ready(Mixes.starch(0.02, 0.1), small, quick));
        assertThat(ratio).isCloseTo(4, withinPercentage(0.5));
    }

    /** At or above the film humidity there is no answer in days, and it says which humidity would do. */
    @ParameterizedTest
    @CsvSource({"0.72", "0.80", "1"})
    void tooDampARoomNeverDries(double humidity) {
        var course = Drying.run(Mixes.starch(0.02, 0.1), List.of(Mixes.open(humidity, 30)), STANDARD, Resolution.FINE);
        assertThat(course.neverDries()).isTrue();
        assertThat(course.readyAfter()).isEmpty();
        assertThat(course.reactionNumber()).isEmpty();
        assertThat(course.reactionSentence()).isEqualTo("It reacts faster than it dries.");
        assertThat(course.notices()).extracting(Notice::code).contains("never-dries");
        double needed = Drying.humidityFor(Mixes.starch(0.02, 0.1), Mixes.open(humidity, 30), STANDARD, 3 * Mixes.DAY);
        assertThat(days(ready(Mixes.starch(0.02, 0.1), Mixes.open(needed, 30), STANDARD)))
                .isCloseTo(3, withinPercentage(3));
    }

    /**
     * A dome on a rack dries about twice as fast as on its tray (2.17 at 90 % with constant D: series of
     * validation/reference/diffusion.py).
     */
    @Test
    void rackBeatsTray() {
        var rack = DryingPhase.open(new Opening(Profiles.domeOnRack(0.04), 1.14), Mixes.room(0.5), 60 * Mixes.DAY);
        var tray = DryingPhase.open(new Opening(Profiles.domeOnTray(0.04), 1), Mixes.room(0.5), 60 * Mixes.DAY);
        var mix = Mixes.starch(0.02, 0.1);
        assertThat(days(ready(mix, tray, STANDARD)) / days(ready(mix, rack, STANDARD)))
                .isBetween(1.7, 2.3);
    }

    /**
     * ANALYTIC: a front that has taken 95 % of a ball stands at r = R 0.05^(1/3) and has spent 0.95 w R/(3 h drv) outside
     * and w (R^2/6 - r^2/2 + r^3/(3 R))/(D drv) inside (docs/physics/drying.md, 3); a fan that doubles h saves half of the
     * first. The sorbed water moves it by less than 0.01.
     */
    @Test
    void aFanHelpsALittle() {
        var mix = Mixes.starch(0.02, 0.1);
        double still = days(ready(mix, Mixes.open(0.5, 60), STANDARD));
        double fan = days(ready(mix, Mixes.open(0.5, 60).withFan(), STANDARD));
        double pores = Drying.poreDiffusivity(Mixes.room(0.5).diffusivity(), mix, STANDARD);
        double radius = 0.0325;
        double left = Math.cbrt(0.05);
        double inside = radius * radius * (1.0 / 6 - left * left / 2 + 0.05 / 3) / pores;
        double outside = 0.95 * radius / (3 * STANDARD.transfer());
        double saved = outside * (1 - 1 / STANDARD.fanFactor()) / (inside + outside);
        assertThat(1 - fan / still).isCloseTo(saved, within(0.01));
    }

    /** Wrapped before it is dry: water leaves hundreds of times slower, and the slow reaction goes on. */
    @Test
    void wrappedTooSoonItKeepsItsWater() {
        var film = Wrap.named("thin polyethylene bag").orElseThrow();
        var mix = Mixes.starch(0.03, 0.05);
        var open = Drying.run(mix, List.of(Mixes.open(0.5, 0.5), Mixes.open(0.5, 10)), STANDARD, Resolution.FINE);
        var wrapped = Drying.run(
                mix, List.of(Mixes.open(0.5, 0.5), Mixes.open(0.5, 10).in(film, 1e-3)), STANDARD, Resolution.FINE);
        double atWrap = wrapped.at(0.5 * Mixes.DAY).water();
        assertThat(atWrap - wrapped.last().water())
                .isLessThan(0.3 * (atWrap - open.last().water()));
        assertThat(wrapped.last().fizzLeft()).isLessThan(open.last().fizzLeft() - 0.01);
    }

    /** Left in its half mould first, then on the rack: nothing is lost in the change, and it takes longer. */
    @Test
    void fromTheMouldToTheRack() {
        double volume = 2 * Math.PI / 3 * Math.pow(0.04, 3);
        var mould = DryingPhase.open(Opening.face(volume, Math.PI * 0.04 * 0.04), Mixes.room(0.5), Mixes.DAY);
        var rack = DryingPhase.open(new Opening(Profiles.domeOnRack(0.04), 1.14), Mixes.room(0.5), 9 * Mixes.DAY);
        var mix = Mixes.starch(0.02, 0.1);
        var course = Drying.run(mix, List.of(mould, rack), STANDARD, Resolution.FINE);
        assertThat(course.balanceError()).isLessThan(1e-9);
        assertThat(days(course)).isGreaterThan(days(ready(mix, rack, STANDARD)));
    }

    /** COMMON PRACTICE, no source: salts and humid air bring weight back; a dry store keeps. */
    @Test
    void storage() {
        var mix = Mixes.starch(0.02, 0.1);
        var dry = Drying.run(
                mix, List.of(Mixes.open(0.45, 5), Mixes.open(0.45, 60).stored()), STANDARD, Resolution.FINE);
        var damp =
                Drying.run(mix, List.of(Mixes.open(0.45, 5), Mixes.open(0.80, 2).stored()), STANDARD, Resolution.FINE);
        double packedAway = dry.at(5 * Mixes.DAY).mass();
        assertThat(dry.last().mass()).isCloseTo(packedAway, withinPercentage(0.1));
        assertThat(dry.last().fizzLeft()).isCloseTo(dry.at(5 * Mixes.DAY).fizzLeft(), within(1e-6));
        assertThat(damp.last().mass()).isGreaterThan(packedAway + 0.002);
        assertThat(damp.last().fizzLeft()).isLessThan(dry.last().fizzLeft());
        var soaked = Drying.run(
                mix, List.of(Mixes.open(0.45, 5), Mixes.open(0.95, 60).stored()), STANDARD, Resolution.FINE);
        assertThat(soaked.soaked()).isTrue();
        assertThat(soaked.notices()).extracting(Notice::code).contains("soaked");
    }

    /**
     * Alcohol leaves several times faster than water (6 to 8 times by evaporation, M p D^(2/3)) and leaves alone.
     */
    @Test
    void alcoholLeavesFirst() {
        var mix = new DryingInput(
                1100,
                0.4,
                0.36,
                0,
                new Alcohol(Alcohol.Kind.ISOPROPANOL, 0.02),
                0,
                0,
                SorptionMixture.none(),
                4.6,
                false,
                1,
                Hydrates.NONE,
                Additives.NONE);
        var course = Drying.run(mix, List.of(Mixes.open(0.5, 3)), STANDARD, Resolution.FINE);
        double gone = 0;
        for (int i = 0; i < course.steps() && gone == 0; i++) {
            if (course.at(course.time(i)).alcohol() < 0.05 * 0.02 * course.dryMass()) {
                gone = course.time(i) / Mixes.DAY;
            }
        }
        double water = days(ready(Mixes.starch(0.02, 0), Mixes.open(0.5, 60), STANDARD));
        assertThat(water / gone).isBetween(5.0, 20.0);
        assertThat(course.last().mass()).isCloseTo(course.dryMass(), within(1e-9));
        assertThat(course.last().fizzLeft()).isEqualTo(1);
    }

    /** Salt and hydrates speak up. */
    @Test
    void notices() {
        var course = Drying.run(EPSOM, List.of(Mixes.open(0.45, 3)), STANDARD, Resolution.COARSE);
        assertThat(course.filmActivity()).isCloseTo(0.72 * 0.883, within(1e-12));
        assertThat(course.notices())
                .extracting(Notice::code)
                .contains("salts-keep-damp", "hydrate-gives-water", "reaction-unsure");
    }

    /** Cautions come first and always: a rigid jar, an oven, alcohol. */
    @Test
    void cautions() {
        var oven = DryingPhase.open(Mixes.BALL, RoomAir.of(323.15, 0.2), Mixes.DAY);
        var jar = Mixes.open(0.5, 1).in(Wrap.named("jar").orElseThrow(), 0);
        var course = Drying.run(Mixes.starch(0.02, 0), List.of(oven, jar), STANDARD, Resolution.COARSE);
        assertThat(course.notices()).extracting(Notice::code).startsWith("sealed-jars-burst", "too-hot");
    }

    /** A wet evening first, then a dry week: the dry week is what counts. */
    @Test
    void theDryPhaseCounts() {
        var course = Drying.run(
                Mixes.starch(0.02, 0.1), List.of(Mixes.open(0.8, 0.5), Mixes.open(0.5, 9)), STANDARD, Resolution.FINE);
        assertThat(course.neverDries()).isFalse();
        assertThat(days(course))
                .isGreaterThan(0.5)
                .isLessThan(0.7 + days(ready(Mixes.starch(0.02, 0.1), Mixes.open(0.5, 60), STANDARD)));
    }

    /** COMMON PRACTICE, no source: store below 50 % RH; with Epsom salt not far below 51 % either. */
    @Test
    void safeHumidity() {
        var plain = Drying.safeHumidity(Mixes.starch(0.02, 0.1), STANDARD);
        assertThat(plain.below()).isCloseTo(0.50, within(1e-12));
        assertThat(plain.possible()).isTrue();
        assertThat(Drying.safeHumidity(EPSOM, STANDARD).possible()).isFalse();
    }

    /**
     * ANALYTIC: solids and what stays fill the rest of the volume, before as after; the fizz left goes with the piece.
     */
    @Test
    void thePieceForTheBath() {
        var ball = Sphere.ofDiameter(0.065);
        var mix = Mixes.starch(0.03, 0);
        var course = Drying.run(mix, List.of(Mixes.open(0.3, 200)), STANDARD, Resolution.FINE);
        Piece damp = course.piece(ball, 0);
        assertThat(damp.porosity()).isCloseTo(mix.airPorosity(), within(1e-9));
        Piece dry = course.piece(ball, course.end());
        assertThat(dry.mass()).isEqualTo(course.last().mass());
        // the 3 % of water and what the reaction made of it have left their place to air
        double made = course.last().extent() * 0.018015 * 2 / 3;
        assertThat(dry.porosity()).isCloseTo(mix.porosity() + made * 1.1, within(5e-4));
        assertThat(dry.makeup().gasCapacity()).isEqualTo(course.last().gasCapacity());
        assertThatThrownBy(() -> course.piece(Sphere.ofDiameter(0.07), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** ANALYTIC: the state found by a weight is the state at that time. */
    @Test
    void aWeightTellsTheWaterLeft() {
        var course = Drying.run(Mixes.starch(0.03, 0.1), List.of(Mixes.open(0.4, 9)), STANDARD, Resolution.FINE);
        DryingCourse.State half = course.at(0.7 * Mixes.DAY);
        DryingCourse.State found = course.whenWeighing(half.mass()).orElseThrow();
        assertThat(found.water()).isCloseTo(half.water(), within(1e-9));
        assertThat(found.time()).isCloseTo(half.time(), within(1.0));
        assertThat(course.whenWeighing(course.at(0).mass() + 1e-6)).isEmpty();
        assertThat(course.whenWeighing(course.last().mass() - 1e-6)).isEmpty();
        assertThat(course.whenWeighing(Double.NaN)).isEmpty();
    }

    /**
     * ANALYTIC: a rack opens all faces, a tray all but the flat one, a half mould only that; a ball in its mould
     * nothing.
     */
    @Test
    void standings() {
        var dome = Dome.ofDiameter(0.08);
        double cap = 2 * Math.PI * 0.04 * 0.04;
        double base = Math.PI * 0.04 * 0.04;
        assertThat(Standing.RACK.opening(dome).profile().area(0)).isCloseTo(cap + base, withinPercentage(0.01));
        assertThat(Standing.CLOTH.opening(dome).profile().area(0)).isCloseTo(cap, withinPercentage(0.01));
        assertThat(Standing.MOULD.opening(dome).profile().area(0)).isCloseTo(base, withinPercentage(0.01));
        var ball = Sphere.ofDiameter(0.065);
        var shut = Standing.MOULD.phase(ball, Standing.MOULD.opening(ball), Mixes.room(0.5), Mixes.DAY);
        var course = Drying.run(Mixes.starch(0.02, 0), List.of(shut), Mixes.inert(), Resolution.COARSE);
        assertThat(course.last().mass()).isCloseTo(course.dampMass(), within(1e-12));
        assertThat(course.notices()).extracting(Notice::code).doesNotContain("sealed-jars-burst");
        assertThat(Standing.named("rack")).contains(Standing.RACK);
        assertThat(Standing.named("Rack!")).isEmpty();
    }

    /** ANALYTIC: what is left per kilogram of piece times the piece is what is left. */
    @Test
    void gasCapacityIsPerKilogramOfThePieceNow() {
        var course = Drying.run(Mixes.starch(0.03, 0.1), List.of(Mixes.open(0.5, 9)), STANDARD, Resolution.COARSE);
        DryingCourse.State end = course.last();
        assertThat(end.gasCapacity() * end.mass()).isCloseTo(end.fizzLeft() * 4.6 * course.dryMass(), within(1e-12));
    }

    /** The coarse course of the Monte Carlo runs is within 2 % of the fine one. */
    @ParameterizedTest
    @CsvSource({"0.01, 0, 0.4", "0.03, 0, 0.6", "0.02, 0.12, 0.5", "0.03, 0.25, 0.65", "0.05, 0.05, 0.5"})
    void coarseAgreesWithFine(double water, double starch, double humidity) {
        var mix = Mixes.starch(water, starch);
        var phases = List.of(Mixes.open(humidity, 14));
        var fine = Drying.run(mix, phases, STANDARD, Resolution.FINE);
        var coarse = Drying.run(mix, phases, STANDARD, Resolution.COARSE);
        double range = fine.at(0).mass() - fine.last().mass();
        for (double t = Mixes.HOUR; t < 14 * Mixes.DAY; t *= 1.3) {
            assertThat(coarse.at(t).mass()).isCloseTo(fine.at(t).mass(), within(0.02 * Math.abs(range)));
            assertThat(coarse.at(t).fizzLeft()).isCloseTo(fine.at(t).fizzLeft(), within(0.002));
        }
        if (fine.readyAfter().isPresent()) {
            assertThat(coarse.readyAfter().orElseThrow())
                    .isCloseTo(fine.readyAfter().getAsDouble(), withinPercentage(2));
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> Mixes.starch(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DryingPhase.open(Mixes.BALL, RoomAir.of(293, 0.5), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Drying.run(Mixes.starch(0.01, 0), List.of(), STANDARD, Resolution.FINE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Opening(Profiles.ball(1), 0.9)).isInstanceOf(IllegalArgumentException.class);
    }
}
