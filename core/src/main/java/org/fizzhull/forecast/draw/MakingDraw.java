package org.fizzhull.forecast.draw;

import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.pressing.powder.DensityScores;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.quantity.check.Given;

/**
 * One draw of what is uncertain before the bath, for a piece that is filled or pressed and dried ({@link Draw#making}).
 *
 * @param densities errors of the powders' densities, standard deviations of the table
 * @param amounts standard deviations of each line of the recipe from its middle; empty where none has a spread
 * @param pressing uncertain parameters of pressing
 * @param pressRatio true pressure over the named one, the same for all pieces of a hand
 * @param pressRepeat pressure of this press over that of the hand's usual one
 * @param drying uncertain parameters of drying
 * @param humidityError true relative humidity of the room less the entered one, -1 to 1
 * @param temperatureError true temperature of the room less the entered one, K
 */
public record MakingDraw(
        DensityScores densities,
        double[] amounts,
        PressingParameters pressing,
        double pressRatio,
        double pressRepeat,
        DryingParameters drying,
        double humidityError,
        double temperatureError) {
    /**
     * Refuses what is missing, and what is no number.
     *
     * @param densities errors of the powders' densities, standard deviations of the table
     * @param amounts standard deviations of each line of the recipe from its middle; empty where none has a spread
     * @param pressing uncertain parameters of pressing
     * @param pressRatio true pressure over the named one, the same for all pieces of a hand
     * @param pressRepeat pressure of this press over that of the hand's usual one
     * @param drying uncertain parameters of drying
     * @param humidityError true relative humidity of the room less the entered one, -1 to 1
     * @param temperatureError true temperature of the room less the entered one, K
     */
    public MakingDraw {
        Given.all("densities, amounts, pressing, drying", densities, amounts, pressing, drying);
        Given.finite("press ratio", pressRatio);
        Given.finite("press repeat", pressRepeat);
        Given.finite("humidity error", humidityError);
        Given.finite("temperature error", temperatureError);
    }
}
