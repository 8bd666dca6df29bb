package org.fizzhull.forecast.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.evidence.NoticeSearch.codes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.StatUtils;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.VoyageModel;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.junit.jupiter.api.Test;

/** BY DEFINITION: an answer of several says what the answer alone says; headroom BY HAND from draws made up here. */
class JointAnswersTest {
    private static final Sphere BALL = Sphere.ofDiameter(0.065);
    private static final Sampling FEW = new Sampling(1, 128);
    private static final JointPredictor JOINT = JointPredictor.standard().with(FEW);
    private static final Blend MIX = Blend.of(ExampleRecipes.lemon(IngredientTable.standard()));

    private static JointForecast answer(Question question) {
        return JOINT.forecast(List.of(question), List.of(), Workers.Progress.SILENT)
                .get(0);
    }

    private static Question filled(Shape shape, DryingPlan plan) {
        return Question.of(shape, new Moulded.Filled(MIX, 0.14, Optional.empty(), plan));
    }

    private static DryingPlan plan() {
        return DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 2 * 86400.0)
                .plan(BALL);
    }

    @Test
    void aPieceOnTheScaleIsNotDried() {
        Question question = Question.weighed(BALL, 0.14);
        JointForecast joint = answer(question);
        Forecast alone = FloatPredictor.standard().with(FEW).forecast(question);
        assertThat(joint.dried()).isFalse();
        assertThat(joint.ready()).isEmpty();
        assertThat(joint.damp()).isEmpty();
        assertThat(joint.piece()).isEqualTo(alone.piece());
        assertThat(joint.attitudes()).isEqualTo(alone.attitudes()).isNotEmpty();
        assertThat(codes(joint.notices())).isNotEmpty().isEqualTo(codes(alone.notices()));
        assertThat(joint.question()).isEqualTo(question);
    }

    @Test
    void aFilledPieceIsWeighedOutOfItsMouldAndDried() {
        JointForecast straight = answer(filled(BALL, DryingPlan.none()));
        assertThat(straight.dried()).isFalse();
        assertThat(straight.ready()).isEmpty();
        assertThat(straight.damp().orElseThrow().median()).isCloseTo(0.14, within(3e-4));
        JointForecast dried = answer(filled(BALL, plan()));
        DryForecast alone = DryPredictor.standard()
                .with(FEW)
                .forecast(BALL, filled(BALL, plan()).making());
        assertThat(dried.dried()).isTrue();
        assertThat(dried.ready()).isEqualTo(alone.ready());
        assertThat(dried.readyTimes()).hasSize(128);
        assertThat(dried.damp().orElseThrow().median()).isCloseTo(0.14, within(3e-4));
    }

    /** BY DEFINITION: out of the mould a fill weighs what was filled in, to the error of the scale, with the inset. */
    @Test
    void theDampWeightCountsMixLiquidAndInset() {
        Shape loaded = Loaded.with(BALL, new Inset(0.02, 5e-6));
        Question question = filled(loaded, DryingPlan.none());
        TimedMaker maker = new TimedMaker(question);
        assertThat(maker.damp()).isNaN();
        assertThat(maker.ready()).isNaN();
        Factors factors = PreparedQuestion.of(question, Factors.standard()).factors();
        Draw draw = Draw.of(factors.rows(), factors.medians());
        for (double ratio : new double[] {0.97, 1, 1.03}) {
            maker.nextDraw();
            Piece piece = maker.make(draw, ratio);
            assertThat(maker.damp()).isCloseTo(0.16, within(1e-9));
            // the prompt gas has left, below a gram
            assertThat(piece.mass()).isBetween(0.159, 0.16);
            // one draw, one piece, whatever mould is asked for
            assertThat(maker.make(draw, 1.1)).isSameAs(piece);
        }
        assertThat(maker.ready()).isNaN();
        TimedMaker weighed = new TimedMaker(Question.weighed(BALL, 0.14));
        assertThat(weighed.make(draw, 1).mass()).isCloseTo(0.14, within(1e-12));
        assertThat(weighed.damp()).isNaN();
    }

    /**
     * By hand: critical weights 10 % above and 5 % below 140 g. A piece of the scale that sinks by itself has no room, whatever the
     * critical weight says; of a batch of 140 g all lie below the one and above the other.
     */
    @Test
    void headroomIsTheRoomThatThePiecesAgreeWith() {
        double[][] columns = new double[VoyageModel.CRITICAL_WIDTH][16];
        Arrays.fill(columns[VoyageModel.MEAN], 0.14);
        for (int i = 0; i < 16; i++) {
            columns[VoyageModel.END][i] = 0.14 * (i % 2 == 0 ? 1.1 : 0.95);
        }
        Question piece = Question.weighed(BALL, 0.14);
        double[] single = headroom(piece, columns);
        double[] batch = headroom(piece.spread(Priors.normal(0, 1e-3)), columns);
        for (int i = 0; i < 16; i += 2) {
            assertThat(single[i]).isZero();
            assertThat(single[i + 1]).isCloseTo(-0.05, within(1e-12));
            assertThat(batch[i]).isCloseTo(0.1, within(1e-12));
            assertThat(batch[i + 1]).isCloseTo(-0.05, within(1e-12));
        }
    }

    private static double[] headroom(Question question, double[][] columns) {
        return OutcomeByDraw.of(PreparedQuestion.of(question, Factors.standard()), columns)
                .headroom();
    }

    /** OTHER LIBRARY: the scatter of the means of eight blocks over the root of eight, by Commons Math. */
    @Test
    void theErrorOfTheShare() {
        OutcomeByDraw bath = answer(Question.weighed(BALL, 0.142)).baths().get(0);
        double[] means = new double[8];
        for (int block = 0; block < 8; block++) {
            means[block] = StatUtils.mean(bath.shares(), 16 * block, 16);
        }
        assertThat(bath.error()).isCloseTo(Math.sqrt(StatUtils.variance(means) / 8), within(1e-12));
        assertThat(bath.headroomInterval().median()).isCloseTo(StatUtils.percentile(bath.headroom(), 50), within(2e-3));
        assertThat(bath.fizzTimes()).hasSize(128);
        assertThat(bath.into()).isEqualTo(Question.IntoBath.DROPPED);
    }

    /** BY DEFINITION: what was measured is told with every answer. */
    @Test
    void measurementsAreTold() {
        Observations seen = Observations.none().held(HeldPiece.of(0.147, 4));
        Question question = Question.weighed(BALL, 0.142);
        JointForecast joint = JOINT.with(List.of(new Observations.MeasuredPieces(question, seen)))
                .forecast(List.of(question), List.of(), Workers.Progress.SILENT)
                .get(0);
        assertThat(codes(joint.notices())).contains("measured-lift-as");
        assertThat(codes(answer(question).notices())).doesNotContain("measured-lift-as");
    }

    @Test
    void whatIsMissingIsRefused() {
        Making much = new Moulded.Filled(MIX, 0.5, Optional.empty(), DryingPlan.none());
        assertThatThrownBy(() -> answer(Question.of(BALL, much))).isInstanceOf(Refusal.class);
        assertThat(JOINT.sampling()).isEqualTo(FEW);
    }
}
