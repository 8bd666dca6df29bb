package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.forecast.DriedBall.BALL;
import static org.fizzhull.forecast.DriedBall.CENTRAL;
import static org.fizzhull.forecast.DriedBall.DAY;
import static org.fizzhull.forecast.DriedBall.DRAWN;
import static org.fizzhull.forecast.DriedBall.HOUR;
import static org.fizzhull.forecast.DriedBall.MIX;
import static org.fizzhull.forecast.DriedBall.ROOM;
import static org.fizzhull.forecast.DriedBall.codes;
import static org.fizzhull.forecast.DriedBall.filled;
import static org.fizzhull.forecast.DriedBall.forecast;
import static org.fizzhull.forecast.DriedBall.mix;
import static org.fizzhull.forecast.DriedBall.open;
import static org.fizzhull.forecast.DriedBall.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: what a drying forecast says of its plan and its course, and which sentence is told on either side of a limit. */
class DryForecastTest {
    private static final Wrap BAG = Wrap.named("polyethylene bag").orElseThrow();
    private static final Wrap JAR = Wrap.named("jar").orElseThrow();

    /** Open, wrapped, put away for ten days where it is damper. */
    private static DryingConditions stored(double open, double wrapped, Wrap wrap) {
        DryingConditions.Storage store = new DryingConditions.Storage(10 * DAY, RoomAir.of(Units.celsius(21), 0.58));
        return new DryingConditions(
                ROOM, Optional.empty(), Standing.RACK, false, open, wrap, wrapped, Optional.of(store));
    }

    private static DryingConditions wrapped(double open, double wrapped, Wrap wrap) {
        return new DryingConditions(
                ROOM, Optional.empty(), Standing.RACK, false, open, wrap, wrapped, Optional.empty());
    }

    @Test
    void aPieceThatLiesOpen() {
        DryForecast forecast = forecast(CENTRAL, open(6 * DAY));
        assertThat(forecast.end()).isEqualTo(6 * DAY);
        assertThat(forecast.dryingTime()).isEqualTo(6 * DAY);
        assertThat(forecast.wrappedAt()).isEmpty();
        assertThat(forecast.stored()).isFalse();
        assertThat(forecast.sealed()).isFalse();
        assertThat(forecast.store()).isEmpty();
        assertThat(forecast.dampestRoom()).isEqualTo(0.5);
        assertThat(forecast.roomAfter()).isEqualTo(0.5);
        assertThat(codes(forecast))
                .contains("central-values")
                .endsWith("label-average")
                .doesNotContain("sealed-jars-burst", "jar-pressure", "load-dry", "acid-takes-water", "pores-full")
                .doesNotContain("no-humidity-does", "not-ready", "ready-open-ended", "wrap-blows-up");
    }

    @Test
    void aPieceThatIsWrappedAndPutAway() {
        DryForecast forecast = forecast(CENTRAL, stored(2 * HOUR, HOUR, BAG));
        assertThat(forecast.wrappedAt()).hasValue(2 * HOUR);
        assertThat(forecast.dryingTime()).isEqualTo(3 * HOUR);
        assertThat(forecast.end()).isEqualTo(3 * HOUR + 10 * DAY);
        assertThat(forecast.stored()).isTrue();
        assertThat(forecast.sealed()).isFalse();
        assertThat(codes(forecast)).startsWith("sealed-jars-burst", "jar-pressure");
        // what it gained, and what of that left as gas: by the states of the course, 44.01 g/mol
        DryingCourse.State before = forecast.course().at(3 * HOUR);
        DryingCourse.State after = forecast.course().last();
        DryForecast.Store store = forecast.store().orElseThrow();
        assertThat(store.gain()).isCloseTo(after.mass() - before.mass(), within(1e-15));
        double gas =
                0.04401 * (after.extent() - before.extent()) * forecast.course().dryMass();
        assertThat(store.gas()).isCloseTo(gas, within(1e-4 * gas)).isPositive();
        assertThat(store.water()).isCloseTo(store.gain() + gas, within(1e-4 * gas));
        assertThat(forecast.roomAfter()).isEqualTo(before.roomHumidity());
    }

    @Test
    void aRigidVesselIsSealed() {
        DryForecast forecast = forecast(CENTRAL, wrapped(4 * DAY, DAY, JAR));
        assertThat(forecast.sealed()).isTrue();
        assertThat(forecast.stored()).isFalse();
        assertThat(codes(forecast)).startsWith("sealed-jars-burst", "jar-pressure");
    }

    /** ANALYTIC: n R T / V in the litre less the ball; a ball of 0.905 litres has a jar of twice its volume. */
    @Test
    void thePressureOfAllItsGas() {
        DryForecast forecast = forecast(CENTRAL, stored(4 * DAY, DAY, BAG));
        double free = 1e-3 - Math.PI / 6 * Math.pow(0.065, 3);
        double moles = MIX.moles().gas() * forecast.course().dryMass();
        assertThat(forecast.jarOverpressure())
                .isCloseTo(moles * 8.314462618 * 294.15 / free, within(1e-3 * forecast.jarOverpressure()));
        assertThat(forecast.jarVolume()).isEqualTo(1e-3);
        Sphere large = Sphere.ofDiameter(0.12);
        DryForecast big = CENTRAL.forecast(
                large, new Moulded.Filled(MIX, 0.92, Optional.empty(), open(DAY).plan(large)));
        assertThat(big.jarVolume()).isCloseTo(2 * Math.PI / 6 * Math.pow(0.12, 3), within(1e-12));
    }

    /** A closed room is made damp by what dries in it. */
    @Test
    void aClosedRoom() {
        DryingPhase.ClosedRoom room = new DryingPhase.ClosedRoom(0.5, 0.5 / HOUR, 0, 0.5, 20);
        DryForecast forecast = forecast(
                CENTRAL,
                new DryingConditions(
                        ROOM, Optional.of(room), Standing.RACK, false, 2 * DAY, Wrap.NONE, 0, Optional.empty()));
        double most = 0;
        for (int i = 0; i < forecast.course().steps(); i++) {
            most = Math.max(
                    most, forecast.course().at(forecast.course().time(i)).roomHumidity());
        }
        assertThat(forecast.dampestRoom()).isEqualTo(most).isGreaterThan(0.6);
        assertThat(forecast.roomAfter())
                .isEqualTo(forecast.course().at(2 * DAY).roomHumidity())
                .isLessThan(most);
    }

    /** By hand: at most 84 steps of a length that people like; 42 h in half hours, 42.25 h in hours and a rest, 6 days in 2 h. */
    @Test
    void timesThatPeopleLike() {
        List<Double> halves = forecast(CENTRAL, open(42 * HOUR)).times();
        assertThat(halves).hasSize(85).startsWith(0.0, HOUR / 2).endsWith(42 * HOUR);
        List<Double> rest = forecast(CENTRAL, open(42.25 * HOUR)).times();
        assertThat(rest).hasSize(44).startsWith(0.0, HOUR).endsWith(42 * HOUR, 42.25 * HOUR);
        List<Double> days = forecast(CENTRAL, open(6 * DAY)).times();
        assertThat(days).hasSize(73).startsWith(0.0, 2 * HOUR).endsWith(142 * HOUR, 144 * HOUR);
        // a rest of less than a second is none
        assertThat(forecast(CENTRAL, open(42 * HOUR - 0.5)).times()).hasSize(85).endsWith(42 * HOUR - 0.5);
    }

    /** BY DEFINITION: without draws all shares are 0 or 1, on either side of what the one course says. */
    @Test
    void theOneCourse() {
        DryForecast forecast = forecast(CENTRAL, open(6 * DAY));
        DryingCourse course = forecast.course();
        double ready = course.readyAfter().orElseThrow();
        assertThat(forecast.ready().orElseThrow().median()).isEqualTo(ready);
        assertThat(forecast.readyWithin(0.999 * ready)).isZero();
        assertThat(forecast.readyWithin(1.001 * ready)).isEqualTo(1);
        assertThat(forecast.dries()).isEqualTo(1);
        assertThat(forecast.late()).isZero();
        double lost = 1 - course.last().fizzLeft();
        assertThat(forecast.fizzLost().median()).isCloseTo(lost, within(1e-12));
        assertThat(forecast.losesMoreThan(0.999 * lost)).isEqualTo(1);
        assertThat(forecast.losesMoreThan(1.001 * lost)).isZero();
        assertThat(forecast.swells(DryingCourse.Swelling.NONE)).isEqualTo(1);
        assertThat(forecast.swells(DryingCourse.Swelling.PUFFS))
                .isEqualTo(course.swelling() == DryingCourse.Swelling.PUFFS ? 1 : 0);
        assertThat(forecast.damp().median()).isCloseTo(course.dampMass(), within(1e-12));
        assertThat(forecast.last().median()).isCloseTo(course.at(6 * DAY).mass(), within(1e-9));
        assertThat(forecast.swollenFilms()).isZero();
        assertThat(forecast.log()).isEmpty();
        assertThat(forecast.measured()).isEmpty();
        OptionalDouble coarse = CENTRAL.readyAfter(BALL, filled(open(6 * DAY)));
        assertThat(coarse.orElseThrow()).isCloseTo(ready, within(0.05 * ready));
    }

    @Test
    void sharesOfTheDraws() {
        DryForecast forecast = forecast(DRAWN, open(6 * DAY));
        assertThat(forecast.dries() + forecast.late()).isCloseTo(1, within(1e-12));
        assertThat(forecast.readyWithin(forecast.ready().orElseThrow().median()))
                .isBetween(0.48, 0.52);
        assertThat(forecast.losesMoreThan(forecast.fizzLost().median())).isBetween(0.48, 0.52);
        assertThat(codes(forecast)).doesNotContain("central-values");
    }

    /**
     * BY DEFINITION: however badly the mould is known, here 14 % of its volume, a fill weighs what was filled in, to the scale, and loses
     * at most its water and the gas that it can make.
     */
    @Test
    void aFillWeighsWhatWasFilledIn() {
        Source invented = new Source("invented", "invented for this test", Source.Seen.ASSUMED);
        Factors wide = Factors.standard().with(new Factor(Input.MOULD_SIZE, Priors.normal(0, 3e-3), invented));
        DryForecast forecast = forecast(DRAWN.with(wide), open(6 * DAY));
        assertThat(forecast.damp().low()).isGreaterThan(0.146 - 1.5e-3);
        assertThat(forecast.damp().high()).isLessThan(0.146 + 1.5e-3);
        double water = 0.146 * 8 / 518;
        double gas = MIX.moles().gas() * 0.04401 * 0.146 * 510 / 518;
        double least = 0.1445 - water - forecast.fizzLost().high() * gas;
        Interval late = forecast.band().mass().get(forecast.band().mass().size() - 1);
        for (Interval mass : List.of(forecast.last(), forecast.label(), late)) {
            assertThat(mass.low()).isGreaterThan(least - 1.5e-3);
            assertThat(mass.high()).isLessThan(0.1475);
        }
    }

    /** Only what is settled before the bath is named by a drying forecast. */
    @Test
    void whatWasDrawn() {
        DryForecast forecast = forecast(CENTRAL, open(DAY));
        assertThat(forecast.factors().rows())
                .isNotEmpty()
                .allMatch(row -> row.input().isOfMaking());
        assertThat(forecast.factors().row(Input.FILM_ACTIVITY)).isPresent();
    }

    /** OTHER WAY: in the air that it needs, the coarse course is ready within the drying time; in air a twentieth damper it is not. */
    @Test
    void theAirThatItNeeds() {
        double open = 2 * DAY;
        double needs = forecast(CENTRAL, open(open)).needsHumidity().orElseThrow();
        for (double off : new double[] {-0.03, 0.03}) {
            DryingConditions other = open(open).in(RoomAir.of(Units.celsius(21), needs + off));
            double ready = CENTRAL.readyAfter(BALL, filled(other)).orElse(Double.POSITIVE_INFINITY);
            assertThat(ready < open).isEqualTo(off < 0);
        }
        DryForecast short1 = forecast(CENTRAL, open(0.5 * HOUR));
        assertThat(short1.needsHumidity()).isEmpty();
        assertThat(text(short1, "no-humidity-does")).endsWith("within 0 days.");
        assertThat(text(forecast(CENTRAL, open(0.1 * DAY)), "no-humidity-does")).endsWith("within 0.1 days.");
    }

    /** By hand: 150 of 510 g of powder are acid, which binds 18.015/192.12 of its mass; damp is air above 55 %. */
    @Test
    void acidInDampAir() {
        DryForecast forecast = forecast(CENTRAL, open(3 * DAY).in(RoomAir.of(Units.celsius(21), 0.56)));
        double acid = forecast.course().dryMass() * 150 / 510;
        assertThat(1e3 * acid * 18.015 / 192.12).isCloseTo(4.0, within(0.05));
        assertThat(text(forecast, "acid-takes-water")).contains("about 60 %", "up to 4 g a piece");
        assertThat(codes(forecast(CENTRAL, open(3 * DAY).in(RoomAir.of(Units.celsius(21), 0.54)))))
                .doesNotContain("acid-takes-water");
    }

    @Test
    void whatNeverDriesIsToldSo() {
        DryForecast damp = forecast(DRAWN, open(3 * DAY).in(RoomAir.of(Units.celsius(21), 0.9)));
        assertThat(damp.ready()).isEmpty();
        assertThat(text(damp, "not-ready")).contains("in " + Math.round(100 * damp.late()) + " of 100 draws");
        assertThat(codes(damp)).doesNotContain("ready-open-ended");
        assertThat(codes(damp).contains("no-reaction-number"))
                .isEqualTo(damp.course().reactionNumber().isEmpty());
        // somewhere between dry and damp a part of the draws is late
        for (double humidity = 0.6; humidity < 0.85; humidity += 0.05) {
            DryForecast some = forecast(DRAWN, open(3 * DAY).in(RoomAir.of(Units.celsius(21), humidity)));
            boolean told = some.ready().isPresent() && some.late() > 0.025;
            assertThat(codes(some).contains("ready-open-ended")).isEqualTo(told);
            if (told) {
                assertThat(text(some, "ready-open-ended")).contains("In " + Math.round(100 * some.late()) + " of 100");
            }
            assertThat(codes(some).contains("no-safe-air")).isEqualTo(!some.keeps());
            assertThat(some.keeps()).isEqualTo(some.keepsAbove() < some.keepsBelow());
        }
    }

    @Test
    void aFilmAroundADampPieceBlowsUp() {
        DryForecast damp = forecast(DRAWN, wrapped(HOUR, 5 * DAY, BAG));
        assertThat(damp.swollenFilms()).isGreaterThan(0.025);
        assertThat(text(damp, "wrap-blows-up"))
                .contains("in " + Math.round(100 * damp.swollenFilms()) + " of 100 cases");
        assertThat(codes(forecast(DRAWN, open(5 * DAY)))).doesNotContain("wrap-blows-up");
    }

    @Test
    void aLoadIsTakenToBeDry() {
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        DryForecast forecast = CENTRAL.forecast(
                loaded,
                new Moulded.Filled(MIX, 0.14, Optional.empty(), open(DAY).plan(loaded)));
        assertThat(codes(forecast)).contains("load-dry").doesNotContain("inside-large");
        // every weight counts the inset, by the states of the course
        DryingCourse course = forecast.course();
        DryingCourse.State last = course.at(DAY);
        assertThat(forecast.damp().median()).isCloseTo(0.16, within(1e-9));
        assertThat(forecast.last().median()).isCloseTo(last.mass() + 0.02, within(1e-9));
        double label = last.mass() - course.excess(last) - last.alcohol() + 0.02;
        assertThat(forecast.label().median()).isCloseTo(label, within(1e-9));
        assertThat(forecast.waterGone().median()).isCloseTo(course.at(0).water() - last.water(), within(1e-9));
        int noon = forecast.band().times().indexOf(DAY / 2);
        assertThat(forecast.band().mass().get(noon).median())
                .isCloseTo(course.at(DAY / 2).mass() + 0.02, within(1e-9));
        assertThat(forecast.band().fizzLeft().get(noon).median())
                .isCloseTo(course.at(DAY / 2).fizzLeft(), within(1e-12));
    }

    /** Water in place of air: of so wet a mix how it dries is outside the model. */
    @Test
    void fullPoresAreToldSo() {
        Blend wet = mix("60 g");
        for (double fill = 0.15; fill < 0.26; fill += 0.01) {
            try {
                DryForecast forecast = CENTRAL.forecast(
                        BALL,
                        new Moulded.Filled(
                                wet, fill, Optional.empty(), open(DAY).plan(BALL)));
                boolean tight = forecast.course().airPorosity() < 0.02;
                assertThat(codes(forecast).contains("pores-full")).isEqualTo(tight);
            } catch (Refusal full) {
                assertThat(fill).isGreaterThan(0.2);
            }
        }
    }
}
