package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.draw.MixedDraw;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Measured;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.numeric.Normal;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.voyage.DropBalance;

/**
 * Solves the press scale Pk for one weighed piece, in closed form, draw by draw. With m a draw of the true damp mass
 * (kg), m(Pk) the mass that the draw's packing gives and p the prior density of Pk, the weight of the draw is
 *
 * <pre>  w = p(Pk) |dPk/dm|     at m(Pk) = m</pre>
 *
 * <p>Further pieces weight the draw by their likelihood, a normal density of what the scale showed around what the draw
 * makes of them:
 *
 * <pre>  deviation^2 = scale^2 + (size of the mould)^2 + (dm/dlnP ln r)^2</pre>
 *
 * <p>with r the factor from one press to the next. The hand: pieces pressed by the same hand share its factor over the
 * word for it, each has its own factor of that press. The mould asked about has one size error for all its pieces;
 * another mould has its own. Cost: three closed forms a draw, two packings for each further piece. One instance serves
 * one thread. Equations: docs/physics/packing.md.
 */
public final class PressedWeightSolver {
    /** Prior probability beyond which a press scale is no answer. */
    private static final double RAREST = 1e-12;

    /** Step of the mass to both sides for dPk/dm, a share of it. */
    private static final double SLOPE_STEP = 1e-3;

    /** Factor of the pressure by which the slope of the mass of a further piece is taken. */
    private static final double PRESSURE_STEP = 1.05;

    /** Pieces behind the first. */
    private final List<FurtherPiece> further = new ArrayList<>();

    /** The piece that is solved for. */
    private final WeighedPiece piece;
    /** Uncertain inputs of the question. */
    private final Factors factors;
    /** Mixes the draws of the recipe. */
    private final MixedDraw mixed;
    /** Mould of the piece. */
    private final MouldDimensions mould;
    /** One standard deviation of that mould's volume, a share; 0 where it is the mould asked about. */
    private final double mouldDeviation;
    /** Whether one hand pressed this piece and will press the one that is asked about. */
    private final boolean sameHand;
    /** Column of the press scale. */
    private final int column;
    /** Prior of the press scale, Pa. */
    private final Prior prior;
    /** Least press scale that is an answer, Pa. */
    private final double softest;
    /** Largest, Pa. */
    private final double hardest;
    /** Pressure over the named one where the hand is another. */
    private final Prior ownPress;
    /** Pressure of this press over the hand's usual one. */
    private final Prior repeat;

    /**
     * Finds the press scale of a mix from a piece of it that was weighed.
     *
     * @param piece the weighed piece, with those behind it
     * @param making how the piece that is asked about is made
     * @param asked form of the mould that is asked about
     * @param factors priors of the question
     */
    public PressedWeightSolver(WeighedPiece piece, Making making, Shape asked, Factors factors) {
        this.piece = piece;
        this.factors = factors;
        mixed = new MixedDraw(Moulded.of(making).blend());
        mould = mould(piece, making, asked);
        mouldDeviation = mouldDeviation(piece);
        for (WeighedPiece other : piece.others()) {
            further.add(new FurtherPiece(other, mould(other, making, asked), mouldDeviation(other)));
        }
        sameHand = piece.byHand()
                && making instanceof Moulded.Pressed pressed
                && pressed.pressSpread() >= WeighedPiece.HAND;
        column = factors.column(Input.PRESS_SCALE);
        prior = factors.solved(Input.PRESS_SCALE);
        softest = prior.quantile(RAREST);
        hardest = prior.quantile(1 - RAREST);
        ownPress = Priors.lognormal(1, piece.pressSpread());
        repeat = Priors.lognormal(1, piece.repeat());
    }

    /**
     * {@return mass of the piece by one value of each input, kg: what was to be expected of the scale}
     *
     * @param inputs values of the inputs of the draw, SI
     * @param hand quantile of the pressure over the named one, where it is not that of the piece asked about
     * @param again quantile of the pressure over the hand's usual one
     */
    public double mass(double[] inputs, double hand, double again) {
        Draw draw = Draw.of(factors.rows(), inputs);
        MakingDraw made = draw.making();
        Press press = press(made);
        double mean = top(made, hand, again) * press.meanOverTop(mould);
        return press.dampDensity(press.solidFraction(mean)) * mould.volume() * volumeRatio(draw);
    }

    /**
     * Puts the press scale into the inputs.
     *
     * @param inputs values of the inputs of the draw, SI; changed
     * @param scale quantile of the error of scale and mould
     * @param hand quantile of the pressure over the named one, where it is not that of the piece asked about
     * @param again quantile of the pressure over the hand's usual one
     * @return logarithm of the weight; minus infinity where no press scale gives this mass
     */
    double solve(double[] inputs, double scale, double hand, double again) {
        Draw draw = Draw.of(factors.rows(), inputs);
        MakingDraw made = draw.making();
        Press press = press(made);
        // the true mass of this draw, and the press scales of that mass and of two beside it
        double deviation = Math.hypot(piece.deviation(), mouldDeviation * piece.dampMass());
        double mass = (piece.dampMass() + deviation * Normal.quantile(scale)) / volumeRatio(draw);
        double top = top(made, hand, again);
        double here = press.pressScaleDraw(mass, top, mould);
        double lighter = press.pressScaleDraw(mass * (1 - SLOPE_STEP), top, mould);
        double heavier = press.pressScaleDraw(mass * (1 + SLOPE_STEP), top, mould);
        if (!(here >= softest && here <= hardest && (lighter > 0 || heavier > 0))) {
            return Double.NEGATIVE_INFINITY;
        }
        // from the piece to both sides; to one where the other is beyond what the packing can give
        double slope =
                lighter > 0 && heavier > 0 ? (lighter - heavier) / 2 : lighter > 0 ? lighter - here : here - heavier;
        inputs[column] = here;
        double others = 0;
        for (FurtherPiece other : further) {
            others += logLikelihood(other, inputs, hand);
        }
        return slope > 0
                ? prior.logDensity(here) + Math.log(slope / (SLOPE_STEP * mass)) + others
                : Double.NEGATIVE_INFINITY;
    }

    /** Logarithm of the likelihood of all weighed pieces where nothing is solved for, less a constant. */
    double logLikelihood(double[] inputs) {
        double sum = logLikelihood(new FurtherPiece(piece, mould, mouldDeviation), inputs, 0.5);
        for (FurtherPiece other : further) {
            sum += logLikelihood(other, inputs, 0.5);
        }
        return sum;
    }

    /** The mould that a weighed piece came from. */
    private static MouldDimensions mould(WeighedPiece piece, Making making, Shape asked) {
        return piece.shape()
                .map(shape -> MouldDimensions.of(shape, MouldDimensions.Filling.usual(shape)))
                .orElseGet(() -> Moulded.of(making).mould(asked));
    }

    /**
     * One standard deviation of the volume of a mould, a share. The mould asked about has one size, right or wrong: 0;
     * another one has its own error, as calipers leave it.
     */
    private static double mouldDeviation(WeighedPiece piece) {
        return piece.shape()
                .map(shape -> 0.5 * shape.surface() * Measured.CALIPERS.sizeDeviation(shape.surface()) / shape.volume())
                .orElse(0.0);
    }

    /**
     * Logarithm of the likelihood of one weighed piece, less a constant.
     *
     * @param hand quantile of the factor of a hand that is not the one asked about
     */
    private double logLikelihood(FurtherPiece other, double[] inputs, double hand) {
        Draw draw = Draw.of(factors.rows(), inputs);
        MakingDraw made = draw.making();
        Press press = press(made);
        WeighedPiece weighed = other.piece();
        // one hand, one factor over the word; a press that shows its pressure has its own
        boolean shared = weighed.byHand() && (sameHand || piece.byHand());
        double ratio = !shared ? 1 : sameHand ? made.pressRatio() : ownPress.quantile(hand);
        double spread = Math.hypot(Math.log(weighed.repeat()), shared ? 0 : Math.log(weighed.pressSpread()));
        double volume = other.mouldDeviation() > 0 ? 1 : volumeRatio(draw);
        double expected = volume * pressed(press, other.mould(), weighed.pressure() * ratio);
        double harder = volume * pressed(press, other.mould(), weighed.pressure() * ratio * PRESSURE_STEP);
        double byPress = (harder - expected) / Math.log(PRESSURE_STEP) * spread;
        double deviation =
                Math.hypot(Math.hypot(weighed.deviation(), other.mouldDeviation() * weighed.dampMass()), byPress);
        double away = (weighed.dampMass() - expected) / deviation;
        return -0.5 * away * away - Math.log(deviation);
    }

    /** Damp mass under a pressure at the top of the mould, Pa, in kg. */
    private static double pressed(Press press, MouldDimensions mould, double top) {
        return press.dampDensity(press.solidFraction(top * press.meanOverTop(mould))) * mould.volume();
    }

    /**
     * A further piece.
     *
     * @param piece as weighed
     * @param mould it came from
     * @param mouldDeviation one standard deviation of that mould's volume, a share
     */
    private record FurtherPiece(WeighedPiece piece, MouldDimensions mould, double mouldDeviation) {}

    /** True volume of the mould over the entered one, where it is the mould asked about and its size is drawn. */
    private double volumeRatio(Draw draw) {
        return mouldDeviation > 0 ? 1 : DropBalance.volumeRatio(mould.surface(), mould.volume(), draw.sizeError());
    }

    /** The packing of a draw. */
    private Press press(MakingDraw made) {
        MixedDraw.Mix mix = mixed.of(made);
        return Press.of(mix.blend(), mix.powders(), made.pressing());
    }

    /** Pressure at the top of the mould of the piece, Pa. */
    private double top(MakingDraw made, double hand, double again) {
        double ratio = sameHand ? made.pressRatio() : ownPress.quantile(hand);
        return piece.pressure() * ratio * repeat.quantile(again);
    }
}
