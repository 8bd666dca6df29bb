package org.fizzhull.forecast.prior;

import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.pressing.DensityScores;
import org.fizzhull.pressing.PressingParameters;

/**
 * One draw of what is uncertain before the bath.
 *
 * @param densities errors of the powders' densities
 * @param amounts of the recipe, standard deviations of each line; empty where none has a spread
 * @param pressing weak numbers of pressing
 * @param pressRatio true pressure over the named one
 * @param pressRepeat pressure of this press over that of the hand's usual one
 * @param drying weak numbers of drying
 * @param humidityError of the room, 0 to 1
 * @param temperatureError of the room, K
 */
public record MakingDraw(
        DensityScores densities,
        double[] amounts,
        PressingParameters pressing,
        double pressRatio,
        double pressRepeat,
        DryingParameters drying,
        double humidityError,
        double temperatureError) {}
