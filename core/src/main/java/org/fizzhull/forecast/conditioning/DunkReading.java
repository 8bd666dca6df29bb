package org.fizzhull.forecast.conditioning;

import java.util.List;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.HeldUnder;

/**
 * What the scale under the bowl shows of one dunked piece, for any values of the inputs. The mould is that of the next
 * piece, however well its size is known; what the piece has of its own is its reading of the scale, its bowl, and what
 * two pieces of one mould differ by ({@link HeldPiece#ownLift}). In the inputs scale and bowl stand at their medians
 * here, and the spread of all three is part of the deviation,
 * <pre>  s^2 = s_R^2 + s_own^2 + sum_k (dR/dx_k s_k)^2,   k = scale, temperature,</pre>
 * with the slopes taken at the medians of all inputs. One instance serves one thread.
 */
final class DunkReading {
    /** Inputs that are errors of the dunked piece itself, not of the next one. */
    private static final List<Input> OWN = List.of(Input.SCALE, Input.BATH_TEMPERATURE);

    /** Quantiles one standard deviation of a normal law apart from the median. */
    private static final double ONE_SIGMA = 0.8413447460685429;

    /** Makes the dunked piece for any values of the inputs. */
    private final TimedVoyage voyage;
    /** What the scale shows of a piece. */
    private final HeldUnder held;
    /** The dunk: reading, its spread, and when it was read. */
    private final HeldPiece piece;
    /** Columns of the inputs of {@link #OWN} that the question has. */
    private final int[] own;
    /** Medians of those inputs, SI. */
    private final double[] middle;
    /** Scratch: their values in the caller's array while the medians stand there. */
    private final double[] kept;
    /** One standard deviation of the reading around what the inputs make of it, kg. */
    private final double deviation;

    /**
     * The bowl of one dunk; takes the slopes of the reading at the medians of all inputs, one force balance an input.
     */
    DunkReading(PreparedQuestion prepared, HeldPiece piece) {
        this.piece = piece;
        Factors factors = prepared.factors();
        voyage = new TimedVoyage(prepared, piece.mass());
        held = new HeldUnder(prepared.form(), prepared.question().bath());
        own = OWN.stream().mapToInt(factors::column).filter(at -> at >= 0).toArray();
        double[] inputs = factors.medians();
        middle = new double[own.length];
        kept = new double[own.length];
        List<Prior> priors = factors.priors();
        double ownLift = HeldPiece.ownLift(
                prepared.question().shape(), prepared.question().bath());
        // own reading, what two pieces differ by, then the slope of each input times one standard deviation of it
        double variance = piece.deviation() * piece.deviation() + ownLift * ownLift;
        double here = voyage.held(inputs, held, piece.seconds(), true);
        for (int k = 0; k < own.length; k++) {
            Prior prior = priors.get(own[k]);
            middle[k] = inputs[own[k]];
            inputs[own[k]] = prior.quantile(ONE_SIGMA);
            double moved = voyage.held(inputs, held, piece.seconds(), true) - here;
            inputs[own[k]] = middle[k];
            variance += moved * moved;
        }
        deviation = Math.sqrt(variance);
    }

    /** The reading, kg, where the scale feels the plume or does not. */
    double reading(double[] inputs, boolean plumeFelt) {
        for (int k = 0; k < own.length; k++) {
            kept[k] = inputs[own[k]];
            inputs[own[k]] = middle[k];
        }
        double reading = voyage.held(inputs, held, piece.seconds(), plumeFelt);
        for (int k = 0; k < own.length; k++) {
            inputs[own[k]] = kept[k];
        }
        return reading;
    }

    /** One standard deviation of what the scale shows around that, kg. */
    double deviation() {
        return deviation;
    }
}
