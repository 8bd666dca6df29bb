package org.fizzhull.forecast.draw;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.voyage.VoyageParameters;

/**
 * One draw of everything uncertain, as the physics takes it: values of a row of Sobol points through the priors, or of
 * a posterior, in the parameter records. Made by {@link #of}. The arrays are not
 * copied: whoever writes into one changes the draw.
 *
 * @param massError true mass less the entered one, kg
 * @param sizeError true size across less the entered one, m
 * @param surfaceRatio true surface over the computed one, and what is left of it likewise: depths change the other way
 * @param temperatureError true bath temperature less the entered one, K
 * @param makeup of a weighed piece
 * @param fizz uncertain parameters of fizzing
 * @param voyage uncertain parameters of the piece in the bath
 * @param values a value of every input, SI, at {@link DrawValues#place}, for what is made before the bath
 * @param scores standard normal scores of the powders' densities; empty where none differs from the table
 * @param amounts standard normal scores of the lines of the recipe; empty where none has a spread
 */
public record Draw(
        double massError,
        double sizeError,
        double surfaceRatio,
        double temperatureError,
        Piece.Makeup makeup,
        FizzParameters fizz,
        VoyageParameters voyage,
        double[] values,
        double[] scores,
        double[] amounts) {
    /**
     * Refuses what is missing, and what is no number.
     *
     * @param massError true mass less the entered one, kg
     * @param sizeError true size across less the entered one, m
     * @param surfaceRatio true surface over the computed one, and what is left of it likewise: depths change the other way
     * @param temperatureError true bath temperature less the entered one, K
     * @param makeup of a weighed piece
     * @param fizz uncertain parameters of fizzing
     * @param voyage uncertain parameters of the piece in the bath
     * @param values a value of every input, SI, at {@link DrawValues#place}, for what is made before the bath
     * @param scores standard normal scores of the powders' densities; empty where none differs from the table
     * @param amounts standard normal scores of the lines of the recipe; empty where none has a spread
     */
    public Draw {
        Given.all("makeup, fizz, voyage, values, scores, amounts", makeup, fizz, voyage, values, scores, amounts);
        Given.finite("mass error", massError);
        Given.finite("size error", sizeError);
        Given.finite("surface ratio", surfaceRatio);
        Given.finite("temperature error", temperatureError);
    }

    /**
     * {@return what the physics takes for one value of each column, in order} An input without a row keeps its standard
     * value. Refuses a value outside its physical range.
     *
     * @param rows the inputs that are drawn, in the order of their columns
     * @param values one value for each column, SI
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}, naming the input
     */
    public static Draw of(List<Factor> rows, double[] values) {
        double[] all = DrawValues.standard();
        double[] scores = DrawValues.NO_SCORES;
        double[] amounts = DrawValues.NO_SCORES;
        int at = 0;
        for (int i = 0; i < rows.size(); i++) {
            Factor row = rows.get(i);
            if (row.input() == Input.POWDER_SCORES) {
                scores = Arrays.copyOfRange(values, at, at + row.columns());
            } else if (row.input() == Input.RECIPE_SCORES) {
                amounts = Arrays.copyOfRange(values, at, at + row.columns());
            } else {
                all[DrawValues.place(row.input())] = row.checked(values[at]);
            }
            at += row.columns();
        }
        return DrawValues.draw(all, scores, amounts);
    }

    /**
     * {@return the part of the mass error that every piece of the batch has, kg: the scale shows too little or too
     * much}
     */
    public double batchMassError() {
        return values[DrawValues.place(Input.SCALE_OFFSET)];
    }

    /**
     * {@return the same with another pressure over that of the hand's usual press}
     *
     * @param repeat pressure of another press by the same hand, over the usual one, above 0
     */
    public Draw pressedAgain(double repeat) {
        double[] changed = values.clone();
        changed[DrawValues.place(Input.PRESS_REPEAT)] = repeat;
        return new Draw(
                massError, sizeError, surfaceRatio, temperatureError, makeup, fizz, voyage, changed, scores, amounts);
    }

    /** {@return the pressure of the press over that of the hand's usual one} */
    public double pressRepeat() {
        return values[DrawValues.place(Input.PRESS_REPEAT)];
    }

    /** {@return what is uncertain before the bath} */
    public MakingDraw making() {
        return DrawValues.making(values, scores, amounts);
    }
}
