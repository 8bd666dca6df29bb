package org.fizzhull.forecast.conditioning;

import java.util.List;
import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.voyage.HeldUnder;

/**
 * What the scale under the bowl shows of one dunked piece, for any values of the inputs, at each of its readings. The
 * mould is that of the next piece, however well its size is known; what the piece has of its own is its reading of the
 * scale, its bowl, and what two pieces of one mould differ by ({@link HeldPiece#ownLift}). In the inputs scale and bowl
 * stand at their medians here, and the spread of all three is part of the covariance of the readings,
 * <pre>  C_ij = C_R,ij + s_own^2 + sum_k (dR_i/dx_k s_k) (dR_j/dx_k s_k),   k = scale, temperature,</pre>
 * C_R that of the readings themselves ({@link HeldPiece#covariance}), with the slopes taken at the medians of all inputs.
 * One instance serves one thread.
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
    /** The dunk: its readings, their spread, and when they were read. */
    private final HeldPiece piece;
    /** Columns of the inputs of {@link #OWN} that the question has. */
    private final int[] own;
    /** Medians of those inputs, SI. */
    private final double[] middle;
    /** Scratch: their values in the caller's array while the medians stand there. */
    private final double[] kept;
    /** Scratch: the readings of the last inputs, kg. */
    private final double[] all;
    /** Covariance of the readings around what the inputs make of them, kg2. */
    private final double[][] covariance;

    /**
     * The bowl of one dunk; takes the slopes of the readings at the medians of all inputs, one force balance an input and reading.
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
        // errors of the readings, what two pieces differ by, then the slope of each input times one standard deviation
        int count = piece.readings().size();
        covariance = new double[count][count];
        add((i, j) -> piece.covariance(i, j) + ownLift * ownLift);
        all = new double[count];
        double[] here = new double[count];
        double[] moved = new double[count];
        for (int i = 0; i < count; i++) {
            here[i] = held(inputs, i, true);
        }
        for (int k = 0; k < own.length; k++) {
            Prior prior = priors.get(own[k]);
            middle[k] = inputs[own[k]];
            inputs[own[k]] = prior.quantile(ONE_SIGMA);
            for (int i = 0; i < count; i++) {
                moved[i] = held(inputs, i, true) - here[i];
            }
            inputs[own[k]] = middle[k];
            add((i, j) -> moved[i] * moved[j]);
        }
    }

    /** A term of the covariance of two readings, kg2. */
    private interface Term {
        double of(int i, int j);
    }

    /** Adds a term to the covariance of the readings. */
    private void add(Term term) {
        for (int i = 0; i < covariance.length; i++) {
            for (int j = 0; j < covariance.length; j++) {
                covariance[i][j] += term.of(i, j);
            }
        }
    }

    /** Reading of a place in the dunk, kg, scale and bowl as the inputs have them. */
    private double held(double[] inputs, int i, boolean plumeFelt) {
        return voyage.held(inputs, held, piece.readings().get(i).seconds(), plumeFelt);
    }

    /** What the piece has to spare at the drop, kg. */
    double spare(double[] inputs) {
        return voyage.spare(inputs);
    }

    /** The first reading, kg, where the scale feels the plume. */
    double first(double[] inputs) {
        readings(inputs, true, all, 0);
        return all[0];
    }

    /** Puts the readings, kg, where the scale feels the plume or does not, into an array from a place on. */
    void readings(double[] inputs, boolean plumeFelt, double[] to, int from) {
        for (int k = 0; k < own.length; k++) {
            kept[k] = inputs[own[k]];
            inputs[own[k]] = middle[k];
        }
        for (int i = 0; i < covariance.length; i++) {
            to[from + i] = held(inputs, i, plumeFelt);
        }
        for (int k = 0; k < own.length; k++) {
            inputs[own[k]] = kept[k];
        }
    }

    /** Covariance of what the scale shows around that, kg2, as a square. */
    double[][] covariance() {
        return covariance;
    }
}
