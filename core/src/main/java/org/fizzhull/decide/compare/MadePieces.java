package org.fizzhull.decide.compare;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.fizzhull.batch.Batch;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.evidence.Interval;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.joint.JointForecast;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.pressing.MouldDimensions.Filling;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Geode;

/** What a joint forecast tells of the piece before its bath, as a row of the table has it. Stateless. */
final class MadePieces {
    private MadePieces() {}

    /**
     * {@return the piece that a forecast tells of}
     *
     * @param answer forecast of making and bath in the same draws
     */
    static MadePiece of(JointForecast answer) {
        Question question = answer.question();
        Optional<Interval> damp = answer.damp();
        Optional<Recipe> recipe = question.making().mix().map(Blend::recipe);
        OptionalInt perBatch = OptionalInt.empty();
        OptionalDouble costEach = OptionalDouble.empty();
        if (recipe.isPresent()) {
            // mix that one piece takes, with what sticks to the bowl
            double pressed =
                    damp.orElse(answer.mass()).median() - question.shape().insetMass();
            double used = pressed * (1 + Batch.LOST_SHARE);
            perBatch = OptionalInt.of((int) Math.floor(recipe.get().mass() / used));
            costEach = MadePiece.cost(recipe.get(), used);
        }
        Optional<Effervescence> fizz = question.stillWater()
                ? Optional.empty()
                : question.making()
                        .mix()
                        .map(mix -> Effervescence.of(
                                mix.moles(), answer.piece().makeup().gasCapacity()));
        Interval drawn = answer.mass();
        // a weighed piece weighs what was entered, whatever the middle of the draws comes to
        Interval mass = question.making() instanceof Making.Weighed weighed
                ? new Interval(
                        weighed.mass(), Math.min(weighed.mass(), drawn.low()), Math.max(weighed.mass(), drawn.high()))
                : drawn;
        return new MadePiece(
                mass, damp, perBatch, costEach, MadePiece.dried(question), answer.ready(), special(answer), fizz);
    }

    /** What is worth knowing of shape, press and attitude. */
    private static Set<MadePiece.Special> special(JointForecast answer) {
        Question question = answer.question();
        Shape shape = question.shape();
        Set<MadePiece.Special> special = EnumSet.noneOf(MadePiece.Special.class);
        if (shape.hollow().isPresent() && question.into() == Question.IntoBath.PLACED) {
            special.add(MadePiece.Special.BOAT);
        }
        if (shape.bare() instanceof Geode) {
            special.add(MadePiece.Special.GEODE);
        }
        if (!answer.attitudes().isEmpty() && answer.attitudes().get(0).tippy()) {
            special.add(MadePiece.Special.TIPPY);
        }
        Filling filling =
                question.making() instanceof Moulded.Pressed pressed ? pressed.filling() : Filling.usual(shape);
        if (filling == Filling.TWO_HALVES) {
            special.add(MadePiece.Special.TWO_HALVES);
        }
        return special;
    }
}
