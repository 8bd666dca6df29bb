package org.fizzhull.pressing;

import org.fizzhull.recipe.EarlyRates;

/**
 * The air the piece will dry in, as far as the largest useful amount of water asks.
 *
 * @param saturation water vapour in saturated air, kg/m3; 0.01729 at 20 C
 * @param humidity relative, 0 to 1
 * @param filmActivity water activity of the films, see {@link EarlyRates#FILM_ACTIVITY}
 * @param vapourDiffusivity in air, m2/s; 2.475e-5 at 20 C (Massman 1998, second-hand)
 * @param transfer from skin to room, m/s, see {@link EarlyRates#SKIN_TRANSFER}
 */
public record MixingRoom(
        double saturation, double humidity, double filmActivity, double vapourDiffusivity, double transfer) {

    /**
     * Refuses values without meaning.
     *
     * @param saturation water vapour in saturated air, kg/m3; 0.01729 at 20 C
     * @param humidity relative, 0 to 1
     * @param filmActivity water activity of the films, see {@link EarlyRates#FILM_ACTIVITY}
     * @param vapourDiffusivity in air, m2/s; 2.475e-5 at 20 C (Massman 1998, second-hand)
     * @param transfer from skin to room, m/s, see {@link EarlyRates#SKIN_TRANSFER}
     */
    public MixingRoom {
        boolean sound = saturation > 0
                && humidity >= 0
                && humidity <= 1
                && filmActivity > 0
                && filmActivity <= 1
                && vapourDiffusivity > 0
                && transfer > 0;
        if (!sound) {
            throw new IllegalArgumentException("mixing room out of range");
        }
    }

    /** {@return the room in which nothing else is known: 20 C and 50 % relative humidity} */
    public static MixingRoom standard() {
        return new MixingRoom(0.01729, 0.50, EarlyRates.FILM_ACTIVITY, 2.475e-5, EarlyRates.SKIN_TRANSFER);
    }

    /**
     * Seconds to dry the free water out of a ball of the same volume over surface: the receding front of
     * docs/physics/drying.md, 3, (V/A)2 1.5 w/(D_e drop) + (V/A) w/(h drop). Without end where the room is as damp as
     * the films.
     *
     * @param water free water, kg per m3 of piece
     */
    double dryingTime(double water, double airPorosity, double volumeOverSurface) {
        double drop = (filmActivity - humidity) * saturation;
        if (!(drop > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double inside = vapourDiffusivity * Math.pow(airPorosity, 4.0 / 3);
        double v = volumeOverSurface;
        return water / drop * (1.5 * v * v / inside + v / transfer);
    }
}
