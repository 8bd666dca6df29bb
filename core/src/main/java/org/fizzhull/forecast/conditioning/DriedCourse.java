package org.fizzhull.forecast.conditioning;

import org.fizzhull.drying.DryingCourse;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Packing;
import org.fizzhull.forecast.maker.PlannedDrying;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.shape.Shape;
import org.fizzhull.voyage.DropBalance;

/**
 * What the inputs of a draw make of a drying log of other pieces: the pieces are packed and dried with that draw, and its
 * likelihood is that of {@link DryLog.Fit}. The error of a mould's size counts only for pieces of the mould that is asked about.
 * Cost: a coarse course, about a millisecond. One instance serves one thread.
 */
final class DriedCourse {
    private final PreparedQuestion prepared;
    private final Observations.LoggedPieces piece;
    /** How densely the powders of a draw lie in those pieces. */
    private final Packing packing;
    /** Takes a damp piece through the air of the log. */
    private final PlannedDrying off;
    /** For the volume ratio of the mould alone. */
    private final DropBalance balance;
    /** Whether they are of the mould that is asked about. */
    private final boolean sameMould;

    DriedCourse(PreparedQuestion prepared, Observations.LoggedPieces piece) {
        this.prepared = prepared;
        this.piece = piece;
        Shape shape = piece.shape();
        packing = Packing.of(Moulded.of(piece.making()), shape);
        off = new PlannedDrying(shape, piece.plan());
        balance = new DropBalance(shape, prepared.question().bath());
        sameMould = shape.equals(prepared.question().shape().bare());
    }

    /** Logarithm of the likelihood of all weighings, less a constant, for values of the inputs, SI. */
    double logLikelihood(double[] inputs) {
        Draw draw = Draw.of(prepared.factors().rows(), inputs);
        double ratio = sameMould ? balance.volumeRatio(draw.sizeError()) : 1;
        Packing.Packed packed = packing.of(draw, ratio);
        DryingCourse course = off.course(off.input(packed), piece.plan().phases(), 0, packed.making());
        double sum = 0;
        for (DryLog.Series series : piece.log().pieces()) {
            sum += DryLog.Fit.deviation(series, DryLog.Fit.lost(course, series, ratio));
        }
        return -0.5 * sum;
    }
}
