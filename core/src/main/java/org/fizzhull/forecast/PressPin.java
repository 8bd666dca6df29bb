package org.fizzhull.forecast;

import org.fizzhull.pressing.Mould;
import org.fizzhull.pressing.Press;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;

/** Solves the press scale for one weighed piece, in closed form. */
final class PressPin {
    /** For the slope, share of the mass. */
    private static final double SLOPE_STEP = 1e-3;

    private final WeighedPiece piece;
    private final Factors factors;
    private final MixedDraw mixed;
    private final Mould mould;
    private final double mouldDeviation;
    private final boolean sameHand;
    private final int column;
    private final Prior prior;
    private final Prior ownPress;
    private final Prior repeat;

    PressPin(WeighedPiece piece, Making making, Shape asked, Factors factors) {
        this.piece = piece;
        this.factors = factors;
        mixed = new MixedDraw(PressModel.blend(making));
        Shape shape = piece.shape().orElse(asked);
        mould = piece.shape().isPresent()
                ? Mould.of(shape, Mould.Filling.usual(shape))
                : PressModel.mould(making, asked);
        // the mould asked about has one size, right or wrong; another one has its own error
        mouldDeviation = piece.shape().isPresent()
                ? 0.5 * shape.surface() * Measured.CALIPERS.sizeDeviation(shape.surface()) / shape.volume()
                : 0;
        sameHand = piece.pressSpread() >= WeighedPiece.HAND
                && making instanceof PressedMould pressed
                && pressed.pressSpread() >= WeighedPiece.HAND;
        column = factors.column(Input.PRESS_SCALE);
        prior = factors.solved(Input.PRESS_SCALE);
        ownPress = Priors.lognormal(1, piece.pressSpread());
        repeat = Priors.lognormal(1, piece.repeat());
    }

    /** Mass of the piece by one value of each input, kg: what was to be expected of the scale. */
    double mass(double[] inputs, double hand, double again) {
        Draw draw = factors.at(inputs);
        MakingDraw made = draw.making();
        Press press = press(made);
        double mean = top(made, hand, again) * press.meanOverTop(mould);
        return press.dampDensity(press.solidFraction(mean)) * mould.volume() * volumeRatio(draw);
    }

    /**
     * Puts the press scale into the inputs.
     *
     * @param scale quantile of the error of scale and mould
     * @param hand quantile of the pressure over the named one, where it is not that of the piece asked about
     * @param again quantile of the pressure over the hand's usual one
     * @return logarithm of the weight
     */
    double pin(double[] inputs, double scale, double hand, double again) {
        Draw draw = factors.at(inputs);
        MakingDraw made = draw.making();
        Press press = press(made);
        double deviation = Math.hypot(piece.deviation(), mouldDeviation * piece.dampMass());
        double mass = (piece.dampMass() + deviation * Normal.quantile(scale)) / volumeRatio(draw);
        double top = top(made, hand, again);
        double here = press.pressScaleDraw(mass, top, mould);
        double lighter = press.pressScaleDraw(mass * (1 - SLOPE_STEP), top, mould);
        double heavier = press.pressScaleDraw(mass * (1 + SLOPE_STEP), top, mould);
        if (!(here > 0 && (lighter > 0 || heavier > 0))) {
            return Double.NEGATIVE_INFINITY;
        }
        double slope =
                lighter > 0 && heavier > 0 ? (lighter - heavier) / 2 : lighter > 0 ? lighter - here : here - heavier;
        inputs[column] = here;
        return slope > 0 ? prior.logDensity(here) + Math.log(slope / (SLOPE_STEP * mass)) : Double.NEGATIVE_INFINITY;
    }

    /** True volume of the mould over the entered one, where it is the mould asked about and its size is drawn. */
    private double volumeRatio(Draw draw) {
        return mouldDeviation > 0 ? 1 : 1 + 0.5 * mould.surface() * draw.sizeError() / mould.volume();
    }

    private Press press(MakingDraw made) {
        MixedDraw.Mix mix = mixed.of(made);
        return Press.of(mix.blend(), mix.powders(), made.pressing());
    }

    private double top(MakingDraw made, double hand, double again) {
        double ratio = sameHand ? made.pressRatio() : ownPress.quantile(hand);
        return piece.pressure() * ratio * repeat.quantile(again);
    }
}
