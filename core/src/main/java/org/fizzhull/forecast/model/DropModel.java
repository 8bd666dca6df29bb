package org.fizzhull.forecast.model;

import java.util.Arrays;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.maker.Maker;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.voyage.DropBalance;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.QuickVoyage;
import org.jspecify.annotations.Nullable;

/**
 * The spare at the drop, kg, as a function of the uncertain inputs of one question: the output of which Sobol indices
 * are taken. It keeps the piece and parameters of the last values, from which voyages and pieces of other weights are
 * then asked ({@link #launch}).
 *
 * <p>A made piece is kept for the two last sets of values that made one, so that an input of the bath alone does not
 * press and dry it anew: the mixed rows of the indices, and every step of a solver change one input at a time. That is
 * why the inputs of making stand first among the columns. One instance serves one thread.
 */
public final class DropModel implements Model {
    /** Share of the grains' own density up to which a piece is looked at. */
    private static final double LEAST_PORES = 0.999;

    /** What is asked. */
    private final Question question;
    /** Its uncertain inputs. */
    private final Factors factors;
    /** The balance at the drop in its bath. */
    private final DropBalance balance;
    /** Makes the piece of a draw. */
    private final Maker maker;
    /** Whether a piece is pressed and dried, so that it is worth keeping. */
    private final boolean costly;
    /** Columns that decide what is made. */
    private final int[] makingColumns;
    /** Entered temperature of the bath, K. */
    private final double temperature;
    /** Whether it may float with a dry hollow. */
    private final boolean boat;
    /** Values of the making columns of the two pieces kept. */
    private final double[][] kept = {{}, {}};
    /** Those pieces; null before they are made. */
    private final @Nullable Piece[] pieces = new @Nullable Piece[2];
    /** Volume ratio of the mould of each. */
    private final double[] ratios = new double[2];
    /** Which of the two is overwritten next, 0 or 1. */
    private int oldest;

    /** Piece and parameters of the last values; null before the first. */
    private @Nullable Launch launch;

    /** The last values in the parameter records; null before the first. */
    private @Nullable Draw drawn;

    /**
     * Makes the pieces as the question says.
     *
     * @param prepared the prepared question
     */
    public DropModel(PreparedQuestion prepared) {
        this(
                prepared,
                Maker.of(prepared.question().making(), prepared.question().shape()));
    }

    /**
     * With pieces made otherwise than the question says.
     *
     * @param prepared the prepared question
     * @param maker what makes the piece of a draw
     */
    public DropModel(PreparedQuestion prepared, Maker maker) {
        question = prepared.question();
        factors = prepared.factors();
        Shape shape = question.shape();
        balance = new DropBalance(shape, prepared.rest(), question.bath());
        this.maker = maker;
        costly = !(question.making() instanceof Making.Weighed);
        makingColumns = factors.makingColumns();
        temperature = question.bath().temperature();
        boat = shape.hollow().isPresent() && question.into() == Question.IntoBath.PLACED;
    }

    @Override
    public double at(double[] inputs) {
        Draw draw = Draw.of(factors.rows(), inputs);
        drawn = draw;
        double ratio = balance.volumeRatio(draw.sizeError());
        // the true mould decides what is made in it; temperature and surface are those of the bath
        Piece piece = costly ? made(inputs, draw, ratio) : maker.make(draw, ratio);
        double kelvin = temperature + draw.temperatureError();
        Launch now = new Launch(piece, kelvin, ratio, draw.surfaceRatio(), draw.fizz(), draw.voyage());
        launch = now;
        return spare(now);
    }

    /** Spare of a launch, kg: of a boat that of its dry hollow where that is more. */
    private double spare(Launch of) {
        double mass = of.piece().mass();
        double kelvin = of.temperature();
        double ratio = of.volumeRatio();
        double flooded = question.stillWater() ? balance.still(mass, kelvin, ratio) : balance.fizzing(of);
        return boat ? Math.max(flooded, balance.boat(mass, kelvin, ratio)) : flooded;
    }

    /** {@return piece, bath and parameters of the last values, from which a voyage starts} */
    public Launch launch() {
        if (launch == null) {
            throw new IllegalStateException("nothing was drawn yet");
        }
        return launch;
    }

    /** The last values with a piece of another weight, kg: the same mix and dryness, packed denser or looser. */
    Launch launch(double mass) {
        Launch last = launch();
        Piece piece = last.piece();
        return new Launch(
                new Piece(piece.shape(), mass, piece.makeup()),
                last.temperature(),
                last.volumeRatio(),
                last.surfaceRatio(),
                last.fizz(),
                last.voyage());
    }

    /** Spare at the drop of the last values with a piece of another weight, kg. */
    double spare(double mass) {
        return spare(launch(mass));
    }

    /** Weight of a piece of the last values without a pore, kg. */
    double solidMass() {
        Launch last = launch();
        Piece piece = last.piece();
        return piece.shape().insetMass()
                + piece.makeup().trueDensity() * piece.shape().volume() * last.volumeRatio() * LEAST_PORES;
    }

    /** Mean weight of the pieces of the batch that the last values describe, kg. */
    double mean(Scatter scatter) {
        return scatter.mean(draw(), mass(), question.shape().insetMass());
    }

    /** Weight into the bath per entered weight, of the last values. */
    double gain(Scatter scatter) {
        return scatter.gain(draw(), mass(), question.shape().insetMass());
    }

    /** Error of the mould's size in the last values, m. */
    double sizeError() {
        return draw().sizeError();
    }

    /** When a piece of another weight, kg, comes up, s: 0 where it floats at once, infinite where it stays down. */
    double rise(QuickVoyage voyage, double mass) {
        if (!(mass < solidMass())) {
            return Double.POSITIVE_INFINITY;
        }
        voyage.runUntilRise(launch(mass));
        return switch (voyage.outcome()) {
            case FLOATS_AT_ONCE -> 0;
            case RISES_LATER -> voyage.riseTime();
            case STAYS_DOWN -> Double.POSITIVE_INFINITY;
        };
    }

    /** The last values in the parameter records. */
    private Draw draw() {
        if (drawn == null) {
            throw new IllegalStateException("nothing was drawn yet");
        }
        return drawn;
    }

    /** Mass of the piece of the last values, kg as on the scale. */
    double mass() {
        return launch().piece().mass();
    }

    /** Share of its fizz that the piece of the last values still has. */
    double fizzLeft() {
        return launch().piece().makeup().fizzLeft();
    }

    /**
     * {@return the piece of a draw, kg as on the scale}
     *
     * @param inputs one value of each column, SI
     */
    public Piece piece(double[] inputs) {
        Draw draw = Draw.of(factors.rows(), inputs);
        return maker.make(draw, balance.volumeRatio(draw.sizeError()));
    }

    /**
     * {@return the piece of a draw with another weight, kg: the same mix and dryness, packed denser or looser}
     *
     * @param inputs one value of each column, SI
     * @param mass kg
     */
    public Piece piece(double[] inputs, double mass) {
        Piece piece = piece(inputs);
        return new Piece(piece.shape(), mass, piece.makeup());
    }

    /**
     * Puts a piece of another weight, kg, in the place of that of the last values.
     *
     * @param mass kg
     */
    public void weigh(double mass) {
        launch = launch(mass);
    }

    /** The piece of a draw in a mould of a volume ratio: one of the two kept where it is the same, else made. */
    private Piece made(double[] inputs, Draw draw, double ratio) {
        double[] making = new double[makingColumns.length];
        for (int k = 0; k < making.length; k++) {
            making[k] = inputs[makingColumns[k]];
        }
        for (int i = 0; i < kept.length; i++) {
            Piece piece = pieces[i];
            if (piece != null && ratio == ratios[i] && Arrays.equals(making, kept[i])) {
                return piece;
            }
        }
        Piece piece = maker.make(draw, ratio);
        kept[oldest] = making;
        pieces[oldest] = piece;
        ratios[oldest] = ratio;
        oldest = 1 - oldest;
        return piece;
    }
}
