package org.fizzhull.voyage;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.check.Given;

/**
 * One piece as it truly goes into the water, with the uncertain parameters by which it fares there: a draw of a
 * forecast is one launch.
 *
 * <p>The shape of the piece is the one as computed, and so are the tables of a {@link VoyageForm}; what the draw makes
 * of size and surface stands in the two ratios. Immutable.
 *
 * @param piece in the mould as it truly is; its shape is that of the form
 * @param temperature of the bath, K
 * @param volumeRatio true volume over the computed one
 * @param surfaceRatio true surface over the computed one
 * @param fizz how its surface fizzes
 * @param voyage how it floats
 */
public record Launch(
        Piece piece,
        double temperature,
        double volumeRatio,
        double surfaceRatio,
        FizzParameters fizz,
        VoyageParameters voyage) {
    /**
     * Refuses what is missing, and what is no number.
     *
     * @param piece in the mould as it truly is; its shape is that of the form
     * @param temperature of the bath, K
     * @param volumeRatio true volume over the computed one
     * @param surfaceRatio true surface over the computed one
     * @param fizz how its surface fizzes
     * @param voyage how it floats
     */
    public Launch {
        Given.all("piece, fizz, voyage", piece, fizz, voyage);
        Given.finite("temperature", temperature);
        Given.finite("volume ratio", volumeRatio);
        Given.finite("surface ratio", surfaceRatio);
    }

    /**
     * {@return a piece exactly as computed, in a bath exactly as told}
     *
     * @param piece in the mould as it truly is; its shape is that of the form
     * @param bath the water
     * @param fizz how its surface fizzes
     * @param voyage how it floats
     */
    public static Launch of(Piece piece, Bath bath, FizzParameters fizz, VoyageParameters voyage) {
        return new Launch(piece, bath.temperature(), 1, 1, fizz, voyage);
    }

    /** Density of the body, kg/m3, whose computed volume this is, m3. */
    double density(double volume) {
        return piece.bodyMass() / (volume * volumeRatio);
    }
}
