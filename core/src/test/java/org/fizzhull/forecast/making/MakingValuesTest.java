package org.fizzhull.forecast.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.Missing;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.DryingPhase.ClosedRoom;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Standing.Openings;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.Making.Weighed;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece.Makeup;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** BY DEFINITION: what each way of making keeps, changes and refuses; durations are sums by hand. */
class MakingValuesTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);
    private static final RoomAir AIR = RoomAir.of(Units.celsius(21), 0.5);
    private static final RoomAir DAMP = RoomAir.of(Units.celsius(18), 0.7);
    private static final double DAY = 86400;
    private static final Wrap FILM = Wrap.film("film", 20e-6, 1.0, "invented");
    private static final ClosedRoom CUPBOARD = new ClosedRoom(1, 0.5 / 3600, 0, 0.5, 10);
    private static final Blend LEMON = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    private static DryingConditions wrapped(boolean fan, Optional<ClosedRoom> room) {
        return new DryingConditions(
                AIR,
                room,
                Standing.TRAY,
                fan,
                2 * DAY,
                FILM,
                DAY,
                Optional.of(new DryingConditions.Storage(10 * DAY, DAMP)));
    }

    /** Two days open, one wrapped, ten stored: three phases, each in its own air; 13 days in all, 3 of them drying. */
    @Test
    void aPlanOfThreePhases() {
        DryingConditions conditions = wrapped(false, Optional.empty());
        assertThat(conditions.drying()).isEqualTo(3 * DAY);
        DryingPlan plan = conditions.plan(BALL);
        assertThat(plan.duration()).isEqualTo(13 * DAY);
        assertThat(plan.phases()).extracting(DryingPhase::duration).containsExactly(2 * DAY, DAY, 10 * DAY);
        assertThat(plan.phases()).extracting(DryingPhase::air).containsExactly(AIR, AIR, DAMP);
        assertThat(plan.phases()).extracting(DryingPhase::wrap).containsExactly(Wrap.NONE, FILM, FILM);
        assertThat(plan.phases()).extracting(DryingPhase::storage).containsExactly(false, false, true);
        assertThat(plan.phases()).extracting(DryingPhase::fan).containsExactly(false, false, false);
        Openings ways = Openings.of(BALL, Standing.TRAY);
        assertThat(plan.phases().get(0).opening()).isEqualTo(ways.lying());
        assertThat(plan.phases().get(1).opening()).isEqualTo(ways.around());
        assertThat(plan.phases().get(2).opening()).isEqualTo(ways.around());
        assertThat(plan.notices()).isEmpty();
    }

    /** The fan blows at the open piece alone; the room closes round all but the store. */
    @Test
    void fanAndRoom() {
        DryingPlan plan = wrapped(true, Optional.of(CUPBOARD)).plan(BALL);
        assertThat(plan.phases()).extracting(DryingPhase::fan).containsExactly(true, false, false);
        assertThat(plan.phases())
                .extracting(DryingPhase::room)
                .containsExactly(Optional.of(CUPBOARD), Optional.of(CUPBOARD), Optional.empty());
    }

    @Test
    void otherConditions() {
        DryingConditions open = DryingConditions.open(AIR, DAY);
        assertThat(open.plan(BALL).phases()).hasSize(1);
        assertThat(open.openFor(2 * DAY).drying()).isEqualTo(2 * DAY);
        assertThat(open.in(DAMP).air()).isEqualTo(DAMP);
        assertThat(open.in(DAMP).open()).isEqualTo(DAY);
        assertThatThrownBy(() -> open.plan(BALL, Openings.of(BALL, Standing.CLOTH)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> open.openFor(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> open.openFor(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryingConditions(
                        AIR, Optional.empty(), Standing.RACK, false, DAY, Wrap.NONE, DAY, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryingConditions(
                        AIR, Optional.empty(), Standing.RACK, false, DAY, FILM, -1, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(refusal(() -> new DryingConditions.Storage(Double.NaN, AIR)).field())
                .isEqualTo("seconds");
        Shape none = Missing.value();
        assertThatNullPointerException().isThrownBy(() -> open.plan(none)).withMessage("shape is null");
        assertThatNullPointerException()
                .isThrownBy(() -> open.plan(none, Openings.of(BALL, Standing.RACK)))
                .withMessage("shape is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new DryingConditions.Storage(1, Missing.value()))
                .withMessage("air is null");
        assertThatNullPointerException()
                .isThrownBy(() -> DryingConditions.open(Missing.value(), DAY))
                .withMessage("air is null");
    }

    /** Only the first phase gets longer; notices are added behind those that are there. */
    @Test
    void changedPlans() {
        DryingPlan plan = wrapped(false, Optional.empty()).plan(BALL);
        assertThat(plan.openFor(5 * DAY).duration()).isEqualTo(16 * DAY);
        assertThat(plan.openFor(5 * DAY).phases().get(0).duration()).isEqualTo(5 * DAY);
        Notice first = new Notice("first", "one");
        Notice second = new Notice("second", "two");
        DryingPlan told = plan.noting(List.of(first)).noting(List.of(second));
        assertThat(told.notices()).containsExactly(first, second);
        assertThat(told.openFor(DAY).notices()).containsExactly(first, second);
        assertThat(told.phases()).isEqualTo(plan.phases());
        assertThat(DryingPlan.none().duration()).isZero();
        assertThatThrownBy(() -> DryingPlan.none().openFor(DAY)).isInstanceOf(IllegalArgumentException.class);
        assertThatNullPointerException()
                .isThrownBy(() -> plan.noting(Missing.value()))
                .withMessage("more is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new DryingPlan(List.of(), Missing.value()))
                .withMessage("notices is null");
    }

    @Test
    void filledAndPressed() {
        DryingPlan plan = DryingConditions.open(AIR, DAY).plan(BALL);
        Moulded.Filled filled = new Moulded.Filled(LEMON, 0.13, Optional.of(Priors.normal(0, 0.002)), plan);
        assertThat(filled.isDried()).isTrue();
        assertThat(filled.mix()).hasValue(LEMON);
        assertThat(filled.weighing(0.12)).isEqualTo(new Moulded.Filled(LEMON, 0.12, filled.hand(), plan));
        assertThat(filled.filling(BALL)).isEqualTo(MouldDimensions.Filling.usual(BALL));
        assertThat(filled.mould(BALL)).isEqualTo(MouldDimensions.of(BALL, MouldDimensions.Filling.usual(BALL)));
        assertThat(new Moulded.Filled(LEMON, 0.13, Optional.empty(), DryingPlan.none()).isDried())
                .isFalse();
        assertThat(refusal(() -> filled.weighing(Double.NaN)).field()).isEqualTo("damp mass");
        for (MouldDimensions.Filling way : MouldDimensions.Filling.values()) {
            Moulded.Pressed pressed = new Moulded.Pressed(LEMON, 5e4, 1, way, plan);
            assertThat(pressed.filling(BALL)).isEqualTo(way);
            assertThat(pressed.hand()).isEmpty();
            assertThat(pressed.weighing(0.1)).isSameAs(pressed);
        }
        assertThat(Moulded.of(filled)).isSameAs(filled);
        assertThatThrownBy(() -> Moulded.of(Weighed.of(0.13))).isInstanceOf(IllegalArgumentException.class);
        assertThatNullPointerException()
                .isThrownBy(() -> Moulded.of(Missing.value()))
                .withMessage("making is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Moulded.Filled(Missing.value(), 0.13, Optional.empty(), plan))
                .withMessage("blend is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Moulded.Pressed(LEMON, 5e4, 1, Missing.value(), plan))
                .withMessage("filling is null");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, Double.NaN, Double.POSITIVE_INFINITY})
    void spreadOfAPress(double spread) {
        MouldDimensions.Filling way = MouldDimensions.Filling.usual(BALL);
        assertThat(refusal(() -> new Moulded.Pressed(LEMON, 5e4, spread, way, DryingPlan.none()))
                        .field())
                .isEqualTo("spread of the press");
        assertThat(refusal(() -> new Moulded.Pressed(LEMON, -1, 1, way, DryingPlan.none()))
                        .code())
                .isEqualTo("out-of-range");
        assertThatThrownBy(() -> WeighedPiece.byGauge(0.13, 5e4, Math.min(spread, 0.9)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aWeight() {
        Weighed weighed = new Weighed(0.13, Optional.of(Priors.normal(0, 0.002)), Optional.of(LEMON));
        assertThat(weighed.isDried()).isFalse();
        assertThat(new Weighed(0.13, Optional.empty(), Optional.of(LEMON), Optional.of(Makeup.usual())).isDried())
                .isTrue();
        assertThat(weighed.mix()).hasValue(LEMON);
        assertThat(weighed.plan()).isEqualTo(DryingPlan.none());
        assertThat(weighed.weighing(0.12)).isEqualTo(new Weighed(0.12, weighed.hand(), weighed.blend()));
        assertThatNullPointerException()
                .isThrownBy(() -> new Weighed(0.13, Missing.value(), Optional.empty()))
                .withMessage("hand is null");
    }

    /** A gram of steps is half a gram of deviation; a hand presses to a factor 1.6, a gauge as it says. */
    @Test
    void weighedPieces() {
        WeighedPiece hand = WeighedPiece.byHand(0.13, 5e4);
        assertThat(hand.deviation()).isEqualTo(0.5e-3);
        assertThat(hand.byHand()).isTrue();
        assertThat(hand.repeat()).isEqualTo(1.15);
        WeighedPiece gauge = WeighedPiece.byGauge(0.13, 5e4, 1.1);
        assertThat(gauge.byHand()).isFalse();
        assertThat(gauge.repeat()).isEqualTo(1.05);
        assertThat(gauge.deviation()).isEqualTo(0.5e-3);
        assertThat(gauge.within(2e-3).deviation()).isEqualTo(2e-3);
        Shape dome = Dome.ofDiameter(0.08);
        assertThat(gauge.in(dome).shape()).hasValue(dome);
        WeighedPiece three = hand.and(gauge).and(gauge.in(dome));
        assertThat(three.others()).containsExactly(gauge, gauge.in(dome));
        assertThat(gauge.and(three).others()).containsExactly(hand, gauge, gauge.in(dome));
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(refusal(() -> new WeighedPiece(bad, 1e-3, 5e4, 1.6, 1.15, Optional.empty(), List.of()))
                            .read())
                    .isEqualTo(bad + " kg");
        }
        for (double bad : new double[] {0, -1, Double.NaN}) {
            assertThat(refusal(() -> WeighedPiece.byHand(0.13, bad)).read()).isEqualTo(bad + " Pa");
            assertThatThrownBy(() -> hand.within(bad)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new WeighedPiece(0.13, 1e-3, 5e4, 1, 0.9, Optional.empty(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new WeighedPiece(0.13, 1e-3, 5e4, 1, 1, Optional.empty(), List.of()).repeat())
                .isEqualTo(1);
        assertThatNullPointerException()
                .isThrownBy(() -> hand.in(Missing.value()))
                .withMessage("mould is null");
    }
}
