package org.fizzhull.forecast;

import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.BathWater;
import org.fizzhull.fizz.Reagents;
import org.fizzhull.fizz.Yield;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;
import org.fizzhull.voyage.Voyage;

/**
 * How a piece fizzes and what its bath becomes. SI.
 *
 * @param question what was asked
 * @param blend the mix
 * @param sampling the draws of the fizz time
 * @param piece by the central values
 * @param reagents that went into the piece, mol
 * @param yield what they can still give at most
 * @param closed the bath with everything dissolved before gas leaves
 * @param open the bath after hours in a room's air
 * @param bathful what the bath gets
 * @param voyage by the central values, in full
 * @param fizzTime s
 * @param peak largest rate of gas at the surface, m3/s dry at the bath's temperature and 1 atm
 * @param band rate of gas against time, m3/s
 * @param narrowing what measurements did; empty where there are none
 * @param notices what the reader must know
 */
public record FizzForecast(
        Question question,
        Blend blend,
        Sampling sampling,
        Piece piece,
        Reagents reagents,
        Yield yield,
        BathWater closed,
        BathWater open,
        Bathful bathful,
        Voyage voyage,
        Interval fizzTime,
        Interval peak,
        List<Point> band,
        Optional<Narrowing> narrowing,
        List<Notice> notices) {

    /** Copies the lists. */
    public FizzForecast {
        band = List.copyOf(band);
        notices = List.copyOf(notices);
    }

    /** Share of the recipe's fizz that was gone before the bath, by the central values. */
    public double fizzLost() {
        double fresh = Yield.of(reagents).carbonDioxide();
        return fresh == 0 ? 0 : 1 - yield.carbonDioxide() / fresh;
    }

    /**
     * Gas per entering water, a check ({@link org.fizzhull.fizz.Gas#perEnteringWater}), by the central values just under the
     * surface of a fizzing bath.
     */
    public double gasPerEnteringWater() {
        return EnteringWater.gas(question.bath(), piece);
    }

    /**
     * A time of the band.
     *
     * @param time s
     * @param rate of gas at the surface, m3/s
     */
    public record Point(double time, Interval rate) {}
}
