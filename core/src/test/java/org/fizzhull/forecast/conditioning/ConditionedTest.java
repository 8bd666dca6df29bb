package org.fizzhull.forecast.conditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.DroppedPiece;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.ExactConditioning;
import org.fizzhull.uncertainty.sampling.Posterior;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: what a question cannot have is refused by name; what was measured comes back by the central values. */
class ConditionedTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Sampling CENTRAL = new Sampling(1, 0);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));
    private static final PreparedQuestion WEIGHED = prepared(Question.weighed(BALL, 0.142));
    private static final Making PRESSED =
            new Moulded.Pressed(MIX, 3e4, 1.6, MouldDimensions.Filling.usual(BALL), DryingPlan.none());
    private static final Making DRIED = new Moulded.Filled(
            MIX,
            0.146,
            Optional.empty(),
            DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 6 * 86400.0)
                    .plan(BALL));

    private static PreparedQuestion prepared(Question question) {
        return PreparedQuestion.of(question, Factors.standard());
    }

    private static Conditioned on(PreparedQuestion prepared, Observations seen) {
        return Conditioned.on(prepared, seen, CENTRAL, Workers.CALLER).orElseThrow();
    }

    private static Refusal refused(PreparedQuestion prepared, Observations seen) {
        List<Refusal> caught = new ArrayList<>();
        assertThatThrownBy(() -> on(prepared, seen)).isInstanceOfSatisfying(Refusal.class, caught::add);
        return caught.get(0);
    }

    private static Observations logged(Making making) {
        DryLog log = new DryLog(List.of(new DryLog.Series("A", List.of(0.0, 86400.0), List.of(0.15, 0.14), 1e-4)));
        return Observations.none().dried(new Observations.LoggedPieces(BALL, making, log));
    }

    @Test
    void nothingMeasuredIsNothingKnown() {
        assertThat(Conditioned.on(WEIGHED, Observations.none(), CENTRAL, Workers.CALLER))
                .isEmpty();
        assertThat(Conditioned.draws(Optional.empty(), WEIGHED.factors(), 64, 1, Workers.CALLER)
                        .draws(() -> inputs -> 1))
                .hasSize(64);
    }

    @Test
    void whatAQuestionCannotHaveIsRefused() {
        Observations none = Observations.none();
        PreparedQuestion pressed = prepared(Question.of(BALL, PRESSED));
        TimedPiece heavy = TimedPiece.fizzed(200).weighing(0.5);
        assertThat(refused(WEIGHED, none.fizzed(heavy)).field()).isEqualTo("measured fizz");
        assertThat(refused(pressed, none.fizzed(TimedPiece.fizzed(200))).field())
                .isEqualTo("measured fizz");
        assertThat(refused(pressed, none.rose(TimedPiece.rose(95))).field()).isEqualTo("measured rise");
        assertThat(refused(pressed, none.held(HeldPiece.of(0.15, 4))).field()).isEqualTo("measured lift");
        DroppedPiece dropped = new DroppedPiece(DroppedPiece.Result.SANK, OptionalDouble.empty());
        assertThat(refused(pressed, none.dropped(dropped)).field()).isEqualTo("measured result");
        PreparedQuestion still = prepared(Question.still(BALL, 0.142));
        assertThat(refused(still, none.fizzed(TimedPiece.fizzed(200)))).hasMessageContaining("still water");
        assertThat(refused(WEIGHED, none.weighed(WeighedPiece.byHand(0.15, 3e4)))
                        .field())
                .isEqualTo("weighed");
        assertThat(refused(WEIGHED, logged(DRIED)).field()).isEqualTo("drying log");
        assertThat(refused(pressed, logged(DRIED))).hasMessageContaining("no drying is told");
        Making other = new Moulded.Filled(
                Blend.of(ExampleRecipes.seaFoam(IngredientTable.standard())), 0.146, Optional.empty(), DRIED.plan());
        assertThat(refused(prepared(Question.of(BALL, other)), logged(DRIED))).hasMessageContaining("another mix");
    }

    @Test
    void howToMendIsThatOfTheMeasurement() {
        Observations none = Observations.none();
        Observations press = none.weighed(WeighedPiece.byHand(0.15, 3e4));
        assertThat(Conditioned.check(none.fizzed(TimedPiece.fizzed(200)))).contains("0.15 to 20 mm a minute");
        assertThat(Conditioned.check(press)).contains("the mould", "how hard it was pressed");
        assertThat(Conditioned.check(press.held(HeldPiece.of(0.15, 4)))).contains("0.15 to 20 mm a minute");
        assertThat(Conditioned.check(logged(DRIED))).contains("times of the log");
        // a piece on the scale is quickly asked again; one that is made in each draw is not
        assertThat(Conditioned.proposals(WEIGHED))
                .isGreaterThan(Conditioned.proposals(prepared(Question.of(BALL, PRESSED))));
    }

    @Test
    void theCentralValuesMeetWhatWasMeasured() {
        Conditioned known = on(WEIGHED, Observations.none().fizzed(TimedPiece.fizzed(250)));
        TimedVoyage voyage = new TimedVoyage(WEIGHED, OptionalDouble.empty());
        assertThat(voyage.fizz(known.centre())).isCloseTo(250, within(0.15));
        assertThat(known.posterior()).isEmpty();
        assertThat(known.effective()).isEmpty();
        assertThat(known.notices()).extracting(Notice::code).containsExactly("measured-fizz-as");
        // only the speed has moved
        double[] centre = known.centre();
        int speed = WEIGHED.factors().column(Input.RECESSION);
        centre[speed] = WEIGHED.factors().medians()[speed];
        assertThat(centre).containsExactly(WEIGHED.factors().medians());
        assertThat(refused(WEIGHED, Observations.none().fizzed(TimedPiece.fizzed(1))))
                .hasMessageContaining("none of the central values");
    }

    /** BY DEFINITION: the errors of this one piece, its mould, its mix and its bath keep their middle. */
    @Test
    void whatIsThePieceAloneKeepsItsMiddle() {
        Factors factors = WEIGHED.factors();
        double[] medians = factors.medians();
        double[] drawn = medians.clone();
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] += 1;
        }
        double[] agreed = Conditioned.agreed(factors, drawn);
        for (Input own : List.of(Input.SCALE, Input.SCALE_OFFSET, Input.MOULD_SIZE, Input.BATH_TEMPERATURE)) {
            assertThat(agreed[factors.column(own)]).isEqualTo(medians[factors.column(own)]);
        }
        for (Input shared : List.of(Input.RECESSION, Input.BUBBLE_SIZE, Input.PLUME, Input.TRUE_DENSITY)) {
            assertThat(agreed[factors.column(shared)]).isEqualTo(drawn[factors.column(shared)]);
        }
    }

    /** Draws of which every n-th of 1,024 agrees, equally: worth 1,024/n. */
    private static Posterior each(int n) {
        return Posterior.of(List.of(Factors.standard().rows().get(0).prior()), 1024, 1, Workers.CALLER, 1, () -> {
            int[] calls = {0};
            return new ExactConditioning() {
                @Override
                public int[] solved() {
                    return new int[0];
                }

                @Override
                public int uniforms() {
                    return 0;
                }

                @Override
                public double solve(double[] inputs, double[] uniforms) {
                    return calls[0]++ % n == 0 ? 0 : Double.NEGATIVE_INFINITY;
                }
            };
        });
    }

    /** 256 effective draws are many, 128 few, 16 too few: the limits are 200 and 24. */
    @Test
    void fewDrawsAreToldAndTooFewRefused() {
        List<Notice> notices = new ArrayList<>();
        assertThat(each(4).effective()).isCloseTo(256, within(1e-9));
        Conditioned.believed(each(4), notices, "Look again.");
        assertThat(notices).isEmpty();
        Conditioned.believed(each(8), notices, "Look again.");
        Conditioned.believed(each(32), notices, "Look again.");
        assertThat(notices).extracting(Notice::code).containsExactly("few-draws-agree", "few-draws-agree");
        assertThatThrownBy(() -> Conditioned.believed(each(64), notices, "Look again."))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.code()).isEqualTo("contradiction");
                    assertThat(refusal).hasMessageContaining("hardly any of 1024 draws");
                    assertThat(refusal).hasMessageContaining("Look again.");
                });
    }

    @Test
    void drawsAfterAMeasurement() {
        Observations seen = Observations.none().held(HeldPiece.of(0.147, 4));
        Conditioned known = Conditioned.on(WEIGHED, seen, new Sampling(1, 256), Workers.CALLER)
                .orElseThrow();
        Posterior posterior = known.posterior().orElseThrow();
        assertThat(known.effective().orElseThrow())
                .isEqualTo(posterior.effective())
                .isGreaterThan(50);
        assertThat(Conditioned.draws(Optional.of(known), WEIGHED.factors(), 128, 1, Workers.CALLER))
                .isInstanceOf(Posterior.class);
        // the central values meet the mean of the reading
        DunkReadings dunk = new DunkReadings(WEIGHED, seen.lift());
        assertThat(dunk.reading(known.centre(), true)).isCloseTo(0.147, within(1e-7));
        double[] centre = known.centre();
        centre[0] = -1;
        assertThat(known.centre()[0]).isNotEqualTo(-1);
    }

    @Test
    void aPressedPieceAlone() {
        Factors factors = Factors.standard().askedOfPress(Question.of(BALL, PRESSED));
        WeighedPiece piece = WeighedPiece.byHand(0.15, 3e4);
        Conditioned central = Conditioned.pressed(PRESSED, BALL, factors, piece, CENTRAL, Workers.CALLER);
        PressedWeightSolver solver = new PressedWeightSolver(piece, PRESSED, BALL, factors);
        assertThat(solver.mass(central.centre(), 0.5, 0.5)).isCloseTo(0.15, within(1e-9));
        assertThat(central.notices()).extracting(Notice::code).containsExactly("weighed-as");
        Conditioned drawn = Conditioned.pressed(PRESSED, BALL, factors, piece, new Sampling(1, 256), Workers.CALLER);
        assertThat(solver.mass(drawn.centre(), 0.5, 0.5)).isCloseTo(0.15, within(1e-9));
        WeighedPiece light = WeighedPiece.byHand(0.142, 3e4);
        assertThat(Conditioned.pressed(PRESSED, BALL, factors, light, new Sampling(1, 256), Workers.CALLER)
                        .notices())
                .extracting(Notice::code)
                .contains("weighed-as");
        assertThatThrownBy(() -> Conditioned.pressed(
                        PRESSED, BALL, factors, WeighedPiece.byHand(0.4, 3e4), new Sampling(1, 256), Workers.CALLER))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("how hard it was pressed");
    }
}
