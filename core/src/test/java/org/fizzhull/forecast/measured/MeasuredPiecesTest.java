package org.fizzhull.forecast.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.Missing;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.Observations.LoggedPieces;
import org.fizzhull.forecast.measured.Observations.MeasuredPieces;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** BY DEFINITION: the limits of what a person may have measured; BY HAND: the spreads that stand beside each test. */
class MeasuredPiecesTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    /** A fizz time is good to 3 s and 3 %, a rise time to 4 s and 5 %: of 100 s, sqrt(9 + 9) and sqrt(16 + 25) s. */
    @Test
    void spreadOfATime() {
        assertThat(TimedPiece.fizzed(100).deviation()).isCloseTo(Math.sqrt(18), within(1e-12));
        assertThat(TimedPiece.fizzed(100).time()).isEqualTo(100);
        assertThat(TimedPiece.rose(100).deviation()).isCloseTo(Math.sqrt(41), within(1e-12));
        assertThat(TimedPiece.rose(100).within(7).deviation()).isEqualTo(7);
        assertThat(TimedPiece.rose(100).weighing(0.1).mass()).hasValue(0.1);
        assertThat(TimedPiece.rose(100).leaving(0.04).left()).hasValue(0.04);
        assertThat(TimedPiece.rose(100).weighing(0.1).leaving(0.04).within(7))
                .isEqualTo(new TimedPiece(100, 7, OptionalDouble.of(0.1), OptionalDouble.of(0.04)));
    }

    /** A normal law of 5 mm: one deviation off is exp(-1/2), two are exp(-2); nothing is told where no width was read. */
    @Test
    void widthThatIsLeft() {
        TimedPiece piece = TimedPiece.rose(100).leaving(0.040);
        assertThat(piece.logWidth(0.040)).isZero();
        assertThat(piece.logWidth(0.045)).isCloseTo(-0.5, within(1e-9));
        assertThat(piece.logWidth(0.030)).isCloseTo(-2, within(1e-9));
        assertThat(TimedPiece.rose(100).logWidth(1)).isZero();
    }

    /** A piece that is up within 20 s floats at once, and has no rise time. */
    @Test
    void limitsOfATime() {
        assertThat(TimedPiece.rose(20.1).time()).isEqualTo(20.1);
        assertThat(refusal(() -> TimedPiece.rose(20)).allowed()).isEqualTo("more than 20 s");
        assertThat(refusal(() -> TimedPiece.rose(0)).allowed()).isEqualTo("more than 0 s");
        assertThat(refusal(() -> TimedPiece.fizzed(Double.POSITIVE_INFINITY)).field())
                .isEqualTo("time");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(refusal(() -> TimedPiece.fizzed(100).within(bad)).read()).isEqualTo("a spread of " + bad + " s");
            assertThat(refusal(() -> TimedPiece.fizzed(100).leaving(bad)).read())
                    .isEqualTo(1e3 * bad + " mm left");
        }
        assertThat(refusal(() -> TimedPiece.fizzed(100).weighing(0)).field()).isEqualTo("mass");
        assertThat(refusal(() -> TimedPiece.fizzed(100).weighing(-0.1)).read()).isEqualTo("-0.1 kg");
    }

    /** Half of 0.15 mm on the whole surface of a ball, in water of its density: rho pi d^2 0.075 mm. */
    @Test
    void ownLiftOfAHeldPiece() {
        Bath bath = Bath.at(Units.celsius(38));
        double layer = Math.PI * 0.065 * 0.065 * 0.075e-3;
        assertThat(HeldPiece.ownLift(BALL, bath)).isCloseTo(bath.density() * layer, within(1e-9));
    }

    /** Read between 2 and 5 s, both included; held for at most 30 s. */
    @ParameterizedTest
    @CsvSource({"1.9,false", "2,true", "5,true", "5.1,false", "30,false"})
    void heldPieces(double seconds, boolean timely) {
        HeldPiece held = HeldPiece.of(0.012, seconds);
        assertThat(held.timely()).isEqualTo(timely);
        assertThat(held.first().deviation()).isEqualTo(2e-3);
        assertThat(held.within(1e-3).first().deviation()).isEqualTo(1e-3);
        assertThat(held.weighing(0.1)).isEqualTo(new HeldPiece(held.readings(), OptionalDouble.of(0.1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void whatNoScaleShows(double bad) {
        assertThat(refusal(() -> HeldPiece.of(bad, 3)).read()).isEqualTo(1e3 * bad + " g");
        assertThat(refusal(() -> HeldPiece.of(0.01, 3).within(bad)).read())
                .isEqualTo("a spread of " + 1e3 * bad + " g");
        assertThat(refusal(() -> HeldPiece.of(0.01, bad)).read()).isEqualTo(bad + " s");
        if (!(bad > 0)) {
            assertThat(refusal(() -> HeldPiece.of(0.01, 3).weighing(bad)).read())
                    .isEqualTo(1e3 * bad + " g before");
            assertThat(refusal(() -> DroppedPiece.of(DroppedPiece.Result.SANK, bad))
                            .read())
                    .isEqualTo(1e3 * bad + " g");
        }
    }

    /**
     * One result in a hundred is written down wrongly: at no spare both are as likely, far off 99 %. One standard deviation
     * of spare is 0.8413447 of the normal law (tables), and what floats and what sinks make the whole.
     */
    @Test
    void chanceOfAResult() {
        assertThat(DroppedPiece.chance(true, 0, 0.002)).isCloseTo(0.5, within(1e-12));
        assertThat(DroppedPiece.chance(true, 1, 0.002)).isCloseTo(0.99, within(1e-12));
        assertThat(DroppedPiece.chance(false, 1, 0.002)).isCloseTo(0.01, within(1e-12));
        assertThat(DroppedPiece.chance(true, 0.002, 0.002)).isCloseTo(0.01 + 0.98 * 0.8413447, within(1e-7));
        assertThat(DroppedPiece.chance(false, 0.002, 0.002)).isCloseTo(0.01 + 0.98 * 0.1586553, within(1e-7));
    }

    @Test
    void wordsOfAResult() {
        assertThat(DroppedPiece.Result.named("rose")).hasValue(DroppedPiece.Result.ROSE);
        assertThat(DroppedPiece.Result.named("flew")).isEmpty();
        assertThat(DroppedPiece.Result.SANK.word()).isEqualTo("sank");
        assertThatNullPointerException()
                .isThrownBy(() -> DroppedPiece.Result.named(Missing.value()))
                .withMessage("word is null");
    }

    /** Each measurement stands in its own list, in the order it was told; none replaces another. */
    @Test
    void observationsAddUp() {
        TimedPiece gone = TimedPiece.fizzed(200);
        TimedPiece up = TimedPiece.rose(100);
        HeldPiece held = HeldPiece.of(0.012, 3);
        DroppedPiece dropped = DroppedPiece.of(DroppedPiece.Result.SANK, 0.14);
        Observations none = Observations.none();
        assertThat(none.isEmpty()).isTrue();
        assertThat(none.bathed()).isFalse();
        for (Observations one : List.of(none.fizzed(gone), none.rose(up), none.held(held), none.dropped(dropped))) {
            assertThat(one.bathed()).isTrue();
            assertThat(one.isEmpty()).isFalse();
        }
        Observations all =
                none.fizzed(gone).rose(up).held(held).dropped(dropped).held(held);
        assertThat(all.fizz()).containsExactly(gone);
        assertThat(all.rise()).containsExactly(up);
        assertThat(all.lift()).containsExactly(held, held);
        assertThat(all.results()).containsExactly(dropped);
        assertThat(Observations.first(all.lift())).hasValue(held);
        assertThat(Observations.behind(all.lift())).containsExactly(held);
        assertThat(Observations.first(List.of())).isEmpty();
        assertThat(Observations.behind(List.of())).isEmpty();
        Observations weighed = none.weighed(WeighedPiece.byHand(0.13, 5e4));
        assertThat(weighed.bathed()).isFalse();
        assertThat(weighed.isEmpty()).isFalse();
    }

    /** Of one piece the rise comes before the end; two pieces of different weight may have any times. */
    @Test
    void aRiseComesBeforeTheEnd() {
        Observations gone = Observations.none().fizzed(TimedPiece.fizzed(100));
        assertThat(refusal(() -> gone.rose(TimedPiece.rose(100))).field()).isEqualTo("measured rise");
        assertThat(gone.rose(TimedPiece.rose(99)).rise()).hasSize(1);
        assertThat(gone.rose(TimedPiece.rose(120).weighing(0.13)).rise()).hasSize(1);
        assertThat(gone.fizzed(TimedPiece.fizzed(90)).rose(TimedPiece.rose(120)).rise())
                .hasSize(1);
    }

    @Test
    void nothingMayBeNull() {
        Observations none = Observations.none();
        assertThatNullPointerException()
                .isThrownBy(() -> none.fizzed(Missing.value()))
                .withMessage("piece is null");
        assertThatNullPointerException()
                .isThrownBy(() -> none.rose(Missing.value()))
                .withMessage("piece is null");
        assertThatNullPointerException()
                .isThrownBy(() -> none.held(Missing.value()))
                .withMessage("piece is null");
        WeighedPiece nothing = Missing.value();
        assertThatNullPointerException().isThrownBy(() -> none.weighed(nothing)).withMessage("piece is null");
        assertThatNullPointerException()
                .isThrownBy(() -> none.weighedIn(Missing.value()))
                .withMessage("mould is null");
        assertThatNullPointerException()
                .isThrownBy(() -> none.eachWeighed(Missing.value()))
                .withMessage("look is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new MeasuredPieces(Missing.value(), Observations.none()))
                .withMessage("like is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new DroppedPiece(Missing.value(), OptionalDouble.empty()))
                .withMessage("result is null");
    }

    /** Three weighed pieces stay three, in order; those of which no mould is told get the mould of the question. */
    @Test
    void weighedPieces() {
        Shape other = Sphere.ofDiameter(0.05);
        Observations three = Observations.none()
                .weighed(WeighedPiece.byHand(0.13, 5e4))
                .weighed(WeighedPiece.byHand(0.06, 5e4).in(other))
                .weighed(WeighedPiece.byHand(0.14, 5e4));
        List<WeighedPiece> seen = new ArrayList<>();
        three.weighedIn(BALL).eachWeighed(seen::add);
        assertThat(seen).extracting(WeighedPiece::dampMass).containsExactly(0.13, 0.06, 0.14);
        assertThat(seen)
                .extracting(WeighedPiece::shape)
                .containsExactly(Optional.of(BALL), Optional.of(other), Optional.of(BALL));
        assertThat(Observations.none().weighedIn(BALL).weighed()).isEmpty();
    }

    /** A piece that dried for an hour has weighings within that hour. */
    @Test
    void weighingsWhileItDries() {
        Blend blend = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
        DryingPlan hour =
                DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 3600).plan(BALL);
        Moulded.Filled dried = new Moulded.Filled(blend, 0.13, Optional.empty(), hour);
        assertThat(new LoggedPieces(BALL, dried, log(3600)).plan()).isEqualTo(hour);
        assertThat(refusal(() -> new LoggedPieces(BALL, dried, log(7200))).read())
                .isEqualTo("a weighing after 2.0 h of a piece that dried for 1.0 h");
    }

    private static DryLog log(double seconds) {
        return new DryLog(List.of(new DryLog.Series("a", List.of(0.0, seconds), List.of(0.13, 0.129), 1e-3)));
    }
}
