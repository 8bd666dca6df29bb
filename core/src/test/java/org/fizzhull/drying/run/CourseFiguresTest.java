package org.fizzhull.drying.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.Mixes;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.evidence.Notice;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Additives;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a course tells of itself, by balances of mass and volume and by the closed forms of core/docs/physics/drying.md. */
class CourseFiguresTest {
    private static final double DAY = 86400;
    private static final double VOLUME = 4 * Math.PI / 3 * Math.pow(0.0325, 3);
    private static final DryingParameters STANDARD = DryingParameters.standard();

    private static DryingInput mix(double water, Alcohol alcohol, Hydrates hydrates, double salts) {
        return new DryingInput(
                1100,
                0.4,
                0.33,
                water,
                alcohol,
                0,
                0,
                SorptionMixture.none(),
                4.6,
                false,
                salts,
                hydrates,
                Additives.NONE);
    }

    private static DryingCourse course(DryingInput mix, DryingParameters parameters, DryingPhase... phases) {
        return Drying.run(mix, List.of(phases), parameters, Resolution.FINE);
    }

    /** By definition: 2 % of water on powders that are in equilibrium with the room is what can leave; 5 % of it at ready. */
    @Test
    void removableAndExcess() {
        DryingCourse course = course(Mixes.starch(0.02, 0.1), Mixes.inert(), Mixes.open(0.5, 60));
        assertThat(course.dryMass()).isCloseTo(1100 * VOLUME, withinPercentage(0.01));
        assertThat(course.rhoDry()).isEqualTo(1100);
        assertThat(course.airPorosity()).isCloseTo(0.4 - 0.022, within(1e-12));
        assertThat(course.removable()).isCloseTo(0.02 * course.dryMass(), withinPercentage(1e-6));
        assertThat(course.excess(course.at(0))).isCloseTo(course.removable(), withinPercentage(1e-6));
        double ready = course.readyAfter().orElseThrow();
        assertThat(course.excess(course.at(ready))).isCloseTo(0.05 * course.removable(), withinPercentage(0.1));
        assertThat(course.toGo(course.at(0))).isCloseTo(0.95 * course.removable(), withinPercentage(1e-6));
        assertThat(course.toGo(course.at(ready))).isCloseTo(0, within(1e-4 * course.removable()));
        assertThat(course.soaked()).isFalse();
        assertThat(course.acidWater()).isZero();
        // a weight as at the start is met at the start or not at all
        assertThat(course.whenWeighing(course.at(0).mass()).orElseThrow().water())
                .isCloseTo(course.at(0).water(), within(1e-6));
    }

    /**
     * By definition: powders in air damper than that in which they were kept hold more in the end, which that air cannot take
     * back. A tenth of starch takes up what its isotherm says (the GAB equation, written out beside the check); nothing of
     * it is in excess, nothing is to go, and only what a damper store adds is. Each number within the water balance of a step.
     */
    @Test
    void waterTakenUpInDampAirIsNoExcess() {
        DryingCourse course = course(Mixes.starch(0, 0.1), Mixes.inert(), Mixes.open(0.6, 60));
        double taken = 0.1 * (gab(0.6) - gab(0.5)) * course.dryMass();
        assertThat(course.last().water() - course.at(0).water()).isCloseTo(taken, withinPercentage(1));
        assertThat(course.removable()).isZero();
        assertThat(course.excess(course.at(0))).isZero();
        assertThat(course.excess(course.last())).isCloseTo(0, within(0.01 * taken));
        assertThat(course.toGo(course.last())).isCloseTo(0, within(0.01 * taken));
        DryingCourse stored = course(
                Mixes.starch(0, 0.1),
                Mixes.inert(),
                Mixes.open(0.6, 60),
                Mixes.open(0.65, 90).stored());
        double more = 0.1 * (gab(0.65) - gab(0.6)) * course.dryMass();
        assertThat(stored.excess(stored.last())).isCloseTo(more, withinPercentage(2));
    }

    /** Water held by dry starch with the constants of {@code Mixes.starch}, kg/kg. */
    private static double gab(double activity) {
        double u = 0.72 * activity;
        return 0.088 * 20 * u / ((1 - u) * (1 - u + 20 * u));
    }

    /** By definition of excess: what acid has bound beyond what its air leaves it counts beside the free water. */
    @Test
    void excessOfBoundWater() {
        DryingInput acid = mix(0, Alcohol.NONE, new Hydrates(0, 0.03), 1);
        DryingParameters quick = Mixes.inert().but().acidHydration(1 / DAY).build();
        DryingCourse course =
                course(acid, quick, Mixes.open(0.45, 9), Mixes.open(0.68, 60).stored());
        assertThat(course.acidWater()).isCloseTo(0.03 * course.dryMass(), withinPercentage(1e-9));
        DryingCourse.State end = course.last();
        assertThat(end.bound()).isCloseTo(0.03 * course.dryMass(), withinPercentage(0.1));
        double settled = course.at(0).water() - course.removable();
        assertThat(course.excess(end)).isCloseTo(end.water() - settled, withinPercentage(1e-6));
        assertThat(course.excess(end)).isGreaterThan(end.bound());
        // damp powders in air of 66 %, where all of the acid's water is bound in the end: nothing of that is in excess
        DryingCourse damp = course(acid, quick.but().startActivity(0.7).build(), Mixes.open(0.66, 60));
        assertThat(damp.excess(damp.last())).isCloseTo(0, within(1e-3 * damp.acidWater()));
    }

    /** Balance of volume: alcohol of 787 kg/m3 leaves its place to air, water that of 1000 kg/m3. */
    @Test
    void alcoholLeavesPores() {
        Sphere ball = Sphere.ofDiameter(0.065);
        DryingInput spirit = mix(0, new Alcohol(Alcohol.Kind.ETHANOL, 0.04), Hydrates.NONE, 1);
        DryingCourse course = course(spirit, Mixes.inert(), Mixes.open(0.5, 5));
        for (double share : new double[] {0, 0.3, 1}) {
            double time = share * 0.4 * DAY;
            double gone = 0.04 * course.dryMass() - course.at(time).alcohol();
            assertThat(course.at(time).mass()).isCloseTo(course.dampMass() - gone, within(1e-9));
            Piece piece = course.piece(ball, time);
            assertThat(piece.porosity()).isCloseTo(0.33 + gone / 787 / VOLUME, within(1e-4));
        }
        assertThat(course.at(0).alcohol()).isCloseTo(0.04 * course.dryMass(), within(1e-12));
        assertThat(course.last().alcohol()).isCloseTo(0, within(1e-12));
        assertThat(course.notices()).extracting(Notice::code).contains("alcohol-burns");
    }

    /** The reaction number of a ball of free water w: k m (w R^2/(30 D drop) + w R/(6 h drop)), m water made a mole. */
    @ParameterizedTest
    @CsvSource({"6e-5, It dries faster than it reacts.", "1e-2, It reacts faster than it dries."})
    void reactionNumberOfABall(double rate, String sentence) {
        DryingParameters wet = STANDARD.but()
                .filmActivity(0.72)
                .startActivity(0.72)
                .promptYield(0)
                .filmRate(rate)
                .activationEnergy(0)
                .hydrateWaters(1)
                .build();
        DryingInput plain = Mixes.starch(0.02, 0);
        DryingPhase phase = Mixes.open(0.5, 1);
        DryingCourse course = course(plain, wet, phase);
        double drop = (0.72 - 0.5) * phase.air().saturationDensity();
        double pores = Drying.poreDiffusivity(phase.air().diffusivity(), plain, wet);
        double stay = 22 / drop * (0.0325 * 0.0325 / (30 * pores) + 0.0325 / (6 * wet.transfer()));
        double number = rate * 0.018015 * 2 / 3 * stay;
        assertThat(course.reactionNumber().orElseThrow()).isCloseTo(number, withinPercentage(1));
        assertThat(course.reactionSentence()).isEqualTo(sentence);
        DryingCourse none = course(Mixes.starch(0.01, 0.25), STANDARD, phase);
        assertThat(none.reactionSentence()).isEqualTo("No free water is left for the slow reaction.");
    }

    /**
     * By hand: 5 % of water make 0.35 mol/kg at once and 4.2 g/kg of water; 59.6 kg/m3 of liquid fill 0.149 of pores of 0.4, so
     * that 0.0063 of 9.3 volumes of gas stay: 5.8 % of the volume.
     */
    @Test
    void swellingOfACourse() {
        DryingParameters prompt = STANDARD.but().promptYield(7).filmRate(0).build();
        DryingInput wet = DryingInput.plain(1100, 0.4, 0.05, SorptionMixture.none(), 4.6);
        assertThat(course(wet, prompt, Mixes.open(0.5, 1)).swelling()).isEqualTo(DryingCourse.Swelling.SLIGHT);
        DryingParameters factor = prompt.but().retainedGas(2).build();
        assertThat(course(wet, factor, Mixes.open(0.5, 1)).swelling()).isEqualTo(DryingCourse.Swelling.PUFFS);
        assertThat(course(wet, Mixes.inert(), Mixes.open(0.5, 1)).swelling()).isEqualTo(DryingCourse.Swelling.NONE);
    }

    /** Of the classes: 3 % are seen, 10 % puff; each has its word. */
    @Test
    void classesOfSwelling() {
        assertThat(DryingCourse.Swelling.of(Math.nextDown(0.03))).isEqualTo(DryingCourse.Swelling.NONE);
        assertThat(DryingCourse.Swelling.of(0.03)).isEqualTo(DryingCourse.Swelling.SLIGHT);
        assertThat(DryingCourse.Swelling.of(Math.nextDown(0.1))).isEqualTo(DryingCourse.Swelling.SLIGHT);
        assertThat(DryingCourse.Swelling.of(0.1)).isEqualTo(DryingCourse.Swelling.PUFFS);
        assertThat(DryingCourse.Swelling.SLIGHT.leastGrowth()).isEqualTo(0.03);
        assertThat(List.of(DryingCourse.Swelling.values()))
                .extracting(DryingCourse.Swelling::word)
                .containsExactly("none", "slight", "puffs");
        assertThatThrownBy(() -> DryingCourse.Swelling.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Left where it lay: a piece packed away too soon would be ready when one is that is never packed away. */
    @Test
    void theReadyTimeDoesNotDependOnPackingAway() {
        DryingInput mix = Mixes.starch(0.02, 0.1);
        double ready = Drying.untilReady(mix, Mixes.open(0.5, 60), STANDARD, Resolution.FINE)
                .readyAfter()
                .orElseThrow();
        DryingPhase store = Mixes.open(0.5, 2)
                .in(Wrap.named("polypropylene bag").orElseThrow(), 0)
                .stored();
        List<DryingPhase> phases = List.of(Mixes.open(0.5, ready / DAY / 3), store);
        DryingCourse packed = Drying.runAndWait(mix, phases, 60 * DAY, STANDARD, Resolution.FINE);
        assertThat(packed.readyAfter().orElseThrow()).isCloseTo(ready, withinPercentage(0.5));
        assertThat(packed.end()).isCloseTo(ready / 3 + 2 * DAY, withinPercentage(1e-6));
        assertThat(Drying.runAndWait(mix, phases, 0.9 * ready, STANDARD, Resolution.FINE)
                        .readyAfter())
                .as("not within the wait")
                .isEmpty();
        assertThat(Drying.run(mix, phases, STANDARD, Resolution.FINE).readyAfter())
                .as("without a wait")
                .isEmpty();
        // a minute in the mould first changes next to nothing
        DryingPhase mould = DryingPhase.open(Opening.face(VOLUME, Math.PI * 0.0325 * 0.0325), Mixes.room(0.5), 60);
        assertThat(course(mix, STANDARD, mould, Mixes.open(0.5, 60))
                        .readyAfter()
                        .orElseThrow())
                .isCloseTo(ready, withinPercentage(0.5));
    }

    /** A piece that has soaked, its films and three tenths of its pores full, ends its course, whatever was to follow. */
    @Test
    void aSoakedPieceEndsItsCourse() {
        DryingInput mix = Mixes.starch(0.02, 0.1);
        DryingCourse course = course(
                mix,
                Mixes.inert(),
                Mixes.open(0.45, 5),
                Mixes.open(0.95, 60).stored(),
                Mixes.open(0.3, 5).stored());
        assertThat(course.soaked()).isTrue();
        assertThat(course.end()).isLessThan(65 * DAY);
        double films = 1100 * mix.sorbents().water(0.72);
        double limit = (0.3 * 1000 * 0.4 + films) * VOLUME;
        assertThat(course.last().water()).isGreaterThan(0.99 * limit);
        assertThat(course.at(course.time(course.steps() - 2)).water()).isLessThan(1.01 * limit);
    }

    /** What is told of a course goes with its cause: warm air, alcohol, air near its films, a salt with water to give. */
    @Test
    void noticesGoWithTheirCauses() {
        DryingInput plain = Mixes.starch(0.02, 0);
        assertThat(course(plain, STANDARD, Mixes.open(0.5, 1)).notices())
                .extracting(Notice::code)
                .containsExactly("reaction-unsure");
        assertThat(course(plain, STANDARD, Mixes.open(0.65, 1)).notices())
                .extracting(Notice::code)
                .containsExactly("near-film-humidity", "reaction-unsure");
        DryingPhase hot = DryingPhase.open(Mixes.BALL, RoomAir.of(319, 0.3), DAY);
        assertThat(course(plain, STANDARD, hot).notices())
                .extracting(Notice::code)
                .contains("too-hot");
        assertThat(course(plain, STANDARD, Mixes.open(0.8, 1)).notices())
                .anySatisfy(notice -> assertThat(notice.text()).contains(" 72 % relative humidity"));
        DryingInput salt = mix(0, Alcohol.NONE, new Hydrates(0.012, 0), 1);
        assertThat(course(salt, STANDARD, Mixes.open(0.45, 1)).notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).contains("up to 1.2 % of the dry mass"));
        assertThat(course(salt, STANDARD, Mixes.open(0.55, 1)).notices()).isEmpty();
        assertThat(course(mix(0, Alcohol.NONE, Hydrates.NONE, 0.9), STANDARD, Mixes.open(0.45, 1))
                        .notices())
                .extracting(Notice::code)
                .containsExactly("salts-keep-damp");
    }

    /** 60 % RH is where acid begins to take water, 51 % where Epsom salt stops giving it; 22 % below the films is safe. */
    @Test
    void safeAir() {
        DryingParameters wide = STANDARD.but().filmActivity(0.9).build();
        assertThat(Drying.safeHumidity(mix(0, Alcohol.NONE, new Hydrates(0, 0.03), 1), wide)
                        .below())
                .isCloseTo(0.60, within(1e-12));
        assertThat(Drying.safeHumidity(mix(0, Alcohol.NONE, Hydrates.NONE, 1), wide))
                .isEqualTo(new SafeHumidity(0.9 - 0.22, 0));
        assertThat(Drying.safeHumidity(mix(0, Alcohol.NONE, new Hydrates(0.01, 0), 1), wide)
                        .above())
                .isCloseTo(0.51, within(1e-12));
        assertThat(new SafeHumidity(0.5, 0.5).possible()).isFalse();
        assertThat(new SafeHumidity(0.5, 0.49).possible()).isTrue();
    }

    /** No air dries a ball in a minute. */
    @Test
    void noAirIsDryEnoughForAMinute() {
        assertThat(Drying.humidityFor(Mixes.starch(0.02, 0.1), Mixes.open(0.5, 1), STANDARD, 60))
                .isNaN();
    }

    /** By meaning: shares are 0 to 1, a jar has air in it and is not at 0 K; nothing in it gives nothing. */
    @Test
    void whatAJarMayBe() {
        assertThat(JarPressure.of(0, 0, 0, 1e-3, 293).overpressure()).isZero();
        assertThat(JarPressure.of(5, 0.1, 1, 1e-3, 293).gas()).isCloseTo(0.5, within(1e-12));
        for (double[] wrong : new double[][] {
            {-1, 0.1, 0.5, 1e-3, 293},
            {5, -0.1, 0.5, 1e-3, 293},
            {5, 0.1, -0.5, 1e-3, 293},
            {5, 0.1, 1.5, 1e-3, 293},
            {5, 0.1, 0.5, 0, 293},
            {5, 0.1, 0.5, 1e-3, 0}
        }) {
            assertThatThrownBy(() -> JarPressure.of(wrong[0], wrong[1], wrong[2], wrong[3], wrong[4]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** The ranges that the refusals state, ends included. */
    @Test
    void resolutionsAndAirChanges() {
        assertThat(new Resolution(4, 1, 1e-9).cells()).isEqualTo(4);
        assertThat(new Resolution(4000, 4, 0.1).cells()).isEqualTo(4000);
        for (double[] wrong :
                new double[][] {{3, 1, 1e-3}, {4001, 1, 1e-3}, {8, 0.9, 1e-3}, {8, 4.1, 1e-3}, {8, 1, 0}, {8, 1, 0.11}
                }) {
            assertThatThrownBy(() -> new Resolution((int) wrong[0], wrong[1], wrong[2]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(RoomText.parse("room", "25 m3, 0 changes/h", 1).airChanges()).isZero();
        assertThat(RoomText.parse("room", "25 m3, 100 changes/h", 1).airChanges())
                .isCloseTo(1 / 36.0, within(1e-12));
        assertThatThrownBy(() -> RoomText.parse("room", "25 m3, 101 changes/h", 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RoomText.parse("room", "25 m3", 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
