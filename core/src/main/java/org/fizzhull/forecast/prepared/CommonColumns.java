package org.fizzhull.forecast.prepared;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;

/**
 * The uncertain inputs of several questions laid side by side, so that draw i is the same state of the world for all of
 * them (common random numbers). What two questions share has one column: an input by its name, the scores of a powder
 * by the powder. The amounts of a recipe are shared by the pieces of that recipe only.
 *
 * <p>Drawn are uniform numbers; each question turns them into values by its own priors. The columns stand in the order
 * of the first question, whose draws are therefore those of a forecast of it alone; what only later questions ask
 * follows. Immutable.
 *
 * <p>Used by {@link org.fizzhull.forecast.joint.JointPredictor}. Cost: one look at the rows of each question.
 */
public final class CommonColumns {
    /** Half of the coordinates that the Sobol points have. */
    private static final int MOST = 128;

    /**
     * What each common column stands for: an input, or an input with a powder or a recipe; equal keys share a column.
     */
    private final List<Object> keys = new ArrayList<>();
    /** For each question, in its order, where each of its columns stands among the common ones. */
    private final List<int[]> places = new ArrayList<>();

    /** Errors of one form or of one mould's size. */
    private static final Set<Input> OF_THE_MOULD = EnumSet.of(Input.MOULD_SIZE, Input.SURFACE, Input.DEPTH_PROFILE);

    /** Whether the errors of each mould stand for themselves. */
    private final boolean apart;

    /**
     * Of questions to priors; the error of size is shared by all moulds.
     *
     * @param questions what is asked, in the order of the answers
     * @param priors table of priors that the questions share
     * @throws Refusal {@code too-many} for more columns than the Sobol points have for them
     */
    public CommonColumns(List<Question> questions, Factors priors) {
        this(questions, priors, false);
    }

    /**
     * Of questions to priors.
     *
     * @param questions what is asked, in the order of the answers
     * @param priors table of priors that the questions share
     * @param apart whether the errors of size and form of each mould stand for themselves: what was measured on a piece of
     *     one mould then says nothing of the size of another
     */
    public CommonColumns(List<Question> questions, Factors priors, boolean apart) {
        this.apart = apart;
        Map<Object, Integer> known = new HashMap<>();
        for (Question question : questions) {
            List<Object> own = keys(question, priors.asked(question));
            int[] at = new int[own.size()];
            for (int i = 0; i < at.length; i++) {
                Object key = own.get(i);
                Integer place = known.get(key);
                if (place == null) {
                    place = keys.size();
                    known.put(key, place);
                    keys.add(key);
                }
                at[i] = place;
            }
            places.add(at);
        }
        if (keys.size() > MOST) {
            throw new Refusal(
                    "too-many",
                    "recipe",
                    keys.size() + " uncertain inputs in these recipes together",
                    "at most " + MOST,
                    "Compare fewer recipes at a time: each powder counts three.");
        }
    }

    /** What each column of a question stands for, in the order of its rows. */
    private List<Object> keys(Question question, Factors asked) {
        Optional<Blend> mix = question.making().mix();
        List<Object> keys = new ArrayList<>();
        for (Factor row : asked.rows()) {
            for (int k = 0; k < row.columns(); k++) {
                boolean own = apart && OF_THE_MOULD.contains(row.input());
                keys.add(own ? List.of(row.input(), question.shape().text()) : key(row, k, mix));
            }
        }
        return keys;
    }

    /**
     * What one column of a row stands for: of the scores of powders the kind of density and the powder, of those of a
     * recipe the line and the whole recipe.
     */
    private static Object key(Factor row, int column, Optional<Blend> mix) {
        if (row.input() == Input.POWDER_SCORES) {
            Blend blend = mix.orElseThrow();
            int powders = blend.powders().size();
            return List.of(
                    row.input(),
                    column / powders,
                    blend.powders().get(column % powders).name());
        }
        if (row.input() == Input.RECIPE_SCORES) {
            return List.of(row.input(), column, mix.orElseThrow().recipe());
        }
        return row.input();
    }

    /** {@return a uniform number from 0 to 1 for each column} */
    public List<Prior> uniforms() {
        return Collections.nCopies(keys.size(), Priors.uniform(0, 1));
    }

    /**
     * {@return where each column of a question stands, in the order of its rows}
     *
     * @param question number of the question, from 0
     */
    public int[] places(int question) {
        return places.get(question).clone();
    }
}
