package org.fizzhull.pressing.powder;

/**
 * The air the piece will dry in, as far as pressing asks: whether the reaction makes water faster than the air removes it
 * ({@link DampFeel}). The full course of drying is in {@code drying}; here a closed form of the receding front is enough.
 * Immutable.
 *
 * @param saturation water vapour in saturated air, kg/m3; 0.01729 at 20 C
 * @param humidity relative humidity, 0 to 1
 * @param filmActivity water activity of the films, see {@link EarlyRates#FILM_ACTIVITY}
 * @param vapourDiffusivity of water vapour in air, m2/s; 2.475e-5 at 20 C (Massman 1998, second-hand)
 * @param transfer mass transfer coefficient from surface to room, m/s, see {@link EarlyRates#SKIN_TRANSFER}
 */
public record MixingRoom(
        double saturation, double humidity, double filmActivity, double vapourDiffusivity, double transfer) {

    /**
     * Checks the values.
     *
     * @param saturation water vapour in saturated air, kg/m3
     * @param humidity relative humidity, 0 to 1
     * @param filmActivity water activity of the films, above 0, at most 1
     * @param vapourDiffusivity of water vapour in air, m2/s
     * @param transfer mass transfer coefficient from surface to room, m/s
     * @throws IllegalArgumentException for a value outside its range, or NaN
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

    /** {@return the room taken where none is known: 20 C and 50 % relative humidity} */
    public static MixingRoom standard() {
        return new MixingRoom(0.01729, 0.50, EarlyRates.FILM_ACTIVITY, 2.475e-5, EarlyRates.SKIN_TRANSFER);
    }

    /**
     * {@return the time to dry the free water out of a ball of the same volume over surface, s; infinite where the room is as
     * damp as the films}
     *
     * <pre>
     * tau = w/drop (1.5 L^2/D_e + L/h),   L = V/A,   drop = (a_film - RH) rho_sat,   D_e = D_va eps_g^(4/3)
     * </pre>
     *
     * The receding front of docs/physics/drying.md, 3, w free water (kg/m3), rho_sat saturated vapour (kg/m3).
     *
     * @param water w, free water, kg per m3 of piece, above 0
     * @param airPorosity eps_g, volume of air over that of the piece
     * @param volumeOverSurface L, m
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
