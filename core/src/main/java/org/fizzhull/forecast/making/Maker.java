package org.fizzhull.forecast.making;

import org.fizzhull.forecast.prior.Draw;
import org.fizzhull.piece.Piece;

/**
 * Makes the piece of one draw; what a {@link Making} gives to the models. May keep scratch space: one maker serves one
 * thread.
 */
public interface Maker {
    /**
     * {@return the piece as it goes into the bath, in the shape as entered}
     *
     * @param draw of everything uncertain
     * @param volumeRatio true volume of the mould over the entered one; the mass is that of the true piece
     */
    Piece make(Draw draw, double volumeRatio);
}
