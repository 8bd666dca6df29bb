package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.conditioning.Conditioned;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.limit.ShapeCheck;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.model.CurveModel;
import org.fizzhull.forecast.model.OutcomeStatistics;
import org.fizzhull.forecast.model.PressModel;
import org.fizzhull.forecast.notice.Notices;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.pressing.powder.EarlyReaction;
import org.fizzhull.pressing.powder.LiquidScan;
import org.fizzhull.pressing.powder.MixingRoom;
import org.fizzhull.pressing.powder.Powders;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.pressing.powder.WindowScan;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.jspecify.annotations.Nullable;

/**
 * Answers what a mix weighs pressed into a mould, whether it holds together, how much liquid suits it, and how hard a
 * weighed fill was pressed.
 *
 * <pre>{@code
 * var making = new Moulded.Pressed(blend, 30e3, WeighedPiece.HAND, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none());
 * PressForecast press = PressPredictor.standard().forecast(ball, making);
 * double grams = Units.inGrams(press.piece().orElseThrow().dampMass().median());
 * }</pre>
 *
 * <p>One piece is pressed in each draw ({@link PressModel}); the curve of mass against pressure has its band from
 * {@link #BAND_DRAWS} draws ({@link CurveModel}). A weighed piece of the mix fixes the press scale of each draw
 * ({@link #with(WeighedPiece)}). Immutable; safe to share between threads. Equations and sources:
 * docs/physics/packing.md.
 */
public final class PressPredictor extends Predictor<PressPredictor> {
    /**
     * Pressures at the top of the mould at which the curve is drawn, Pa: a hand at 10 to 100 kPa, a kitchen press to
     * 200.
     */
    private static final double[] CURVE = {
        0, 2e3, 5e3, 10e3, 15e3, 20e3, 30e3, 40e3, 50e3, 60e3, 80e3, 100e3, 120e3, 150e3, 200e3
    };

    /** Draws of the curve's band: its ends are read to a pixel. */
    private static final int BAND_DRAWS = 512;

    /**
     * Difference of the solid fraction by two packing models above which a notice says so: two standard deviations of
     * the prior of the model's own error, 0.015.
     */
    private static final double MODELS_AGREE = 0.03;

    private static final Notice MIX_ALONE =
            new Notice("mix-alone", "Every weight is that of the mix alone, without the thing inside.");

    /** Air in which the pieces will dry: it decides how much liquid is too much. */
    private final MixingRoom room;
    /** A piece of the mix weighed straight from the mould, with others behind it; empty without. */
    private final Optional<WeighedPiece> weighed;

    private PressPredictor(
            Factors factors, Sampling sampling, Workers workers, MixingRoom room, Optional<WeighedPiece> weighed) {
        super(factors, sampling, workers);
        Given.all("room, weighed", room, weighed);
        this.room = room;
        this.weighed = weighed;
    }

    @Override
    protected PressPredictor drawing(Factors others, Sampling other, Workers by) {
        return new PressPredictor(others, other, by, room, weighed);
    }

    /**
     * {@return the usual predictor: the default priors, 4,096 draws from seed 1, on the calling thread, for pieces that
     * dry at 20 C and 50 %}
     */
    public static PressPredictor standard() {
        return new PressPredictor(
                Factors.standard(), Sampling.standard(), Workers.CALLER, MixingRoom.standard(), Optional.empty());
    }

    /**
     * {@return the same question for pieces that dry in that air: in damp air less water is too much}
     *
     * @param air air that the piece will dry in
     */
    public PressPredictor dryingIn(RoomAir air) {
        MixingRoom usual = MixingRoom.standard();
        MixingRoom in = new MixingRoom(
                air.saturationDensity(), air.humidity(), usual.filmActivity(), air.diffusivity(), usual.transfer());
        return new PressPredictor(factors, sampling, workers, in, weighed);
    }

    /**
     * {@return this predictor knowing one weighed piece of the same mix}
     *
     * @param piece a piece of known pressure, weighed straight from the mould
     */
    public PressPredictor with(WeighedPiece piece) {
        Given.all("piece", piece);
        return new PressPredictor(factors, sampling, workers, room, Optional.of(piece));
    }

    /**
     * {@return what the mix does in that mould at any pressure}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     * @param shape form of the piece
     */
    public PressForecast forecast(Blend blend, Shape shape) {
        return forecast(blend, shape, Optional.empty());
    }

    /**
     * {@return the same, and the piece of a {@link Moulded.Pressed} or {@link Moulded.Filled}}
     *
     * @param shape form of the piece
     * @param making how the piece is made
     */
    public PressForecast forecast(Shape shape, Making making) {
        return forecast(Moulded.of(making).blend(), shape, Optional.of(making));
    }

    /**
     * {@return the piece alone, without the curve and the liquid window, which take most of the time of a forecast}
     *
     * @param shape form of the piece
     * @param making how the piece is made
     */
    public PressForecast.PieceOut piece(Shape shape, Making making) {
        return piece(shape, making, null);
    }

    /** The piece of a making; {@code scan} gathers how other amounts of liquid would feel, null for none. */
    private PressForecast.PieceOut piece(Shape shape, Making making, @Nullable LiquidScan scan) {
        PieceLimits.checkPiece(shape, making);
        Factors asked = PressModel.factors(factors, shape, making);
        Optional<Conditioned> known = conditioned(shape, making, asked);
        Pressed central = central(shape, making, asked, known);
        if (sampling.samples() == 0) {
            return certain(shape, making, central, known);
        }
        double[][] y = new double[PressModel.WIDTH][sampling.samples()];
        Conditioned.draws(known, asked, sampling.samples(), sampling.seed(), workers)
                .draws(() -> new PressModel(making, shape, asked, room, y, scan));
        // the column holds 0 crumbles, 1 holds, 2 too wet
        Map<Pressed.Feel, Double> feel = new EnumMap<>(Pressed.Feel.class);
        double[] felt = y[PressModel.FEEL];
        double dry = 1 - Statistics.shareAbove(felt, 0.5);
        double wet = Statistics.shareAbove(felt, 1.5);
        feel.put(Pressed.Feel.CRUMBLES, dry);
        feel.put(Pressed.Feel.HOLDS, Math.max(0, 1 - dry - wet));
        feel.put(Pressed.Feel.TOO_WET, wet);
        return new PressForecast.PieceOut(
                making,
                central,
                OutcomeStatistics.intervalOf(y[PressModel.PRESSURE]),
                OutcomeStatistics.intervalOf(y[PressModel.SOLID_FRACTION]),
                OutcomeStatistics.intervalOf(y[PressModel.MASS]),
                OutcomeStatistics.intervalOf(y[PressModel.FORCE]),
                OutcomeStatistics.intervalOf(y[PressModel.SATURATION]),
                OutcomeStatistics.intervalOf(y[PressModel.STRENGTH]),
                feel,
                known.map(measured -> MeasurementEffect.pressed(
                        Observations.none().weighed(weighed.orElseThrow()),
                        measured.effective(),
                        OutcomeStatistics.intervalOf(
                                Conditioned.draws(Optional.empty(), asked, sampling.samples(), sampling.seed(), workers)
                                        .draws(() -> new PressModel(
                                                making,
                                                shape,
                                                asked,
                                                room,
                                                new double[PressModel.WIDTH][sampling.samples()]))))));
    }

    /** The forecast; {@code making} is empty where only the mix and the mould are known. */
    private PressForecast forecast(Blend blend, Shape shape, Optional<Making> making) {
        ShapeCheck.check(shape);
        MouldDimensions.Filling filling =
                making.map(way -> Moulded.of(way).filling(shape)).orElseGet(() -> MouldDimensions.Filling.usual(shape));
        // the curve is over the true pressure, so the hand of the piece asked about has no part in it
        Making firm = new Moulded.Pressed(blend, PressWord.FIRM.pressure(), 1, filling, DryingPlan.none());
        Factors asked = PressModel.factors(factors, shape, firm);
        Optional<Conditioned> known = conditioned(shape, firm, asked);
        // what holds of the mix alone: its curve, its window, how long it may stand
        Press press = press(blend, asked, known);
        List<Notice> notices = new ArrayList<>();
        if (shape instanceof Loaded loaded) {
            notices.add(MIX_ALONE);
            notices.addAll(Notices.ofThings(loaded));
        }
        known.ifPresent(measured -> notices.addAll(measured.notices()));
        // the piece asked for, or one pressed firmly by hand for the liquid window alone
        Making judged = making.orElseGet(() ->
                new Moulded.Pressed(blend, PressWord.FIRM.pressure(), WeighedPiece.HAND, filling, DryingPlan.none()));
        LiquidScan scan =
                sampling.samples() == 0 ? null : new LiquidScan(blend.liquid().ratio(), sampling.samples());
        PressForecast.PieceOut made = piece(shape, judged, scan);
        Optional<PressForecast.PieceOut> piece = making.map(way -> made);
        piece.ifPresent(out -> {
            notices.addAll(out.central().notices());
            notices.add(howPressed(press, shape, out.making()));
            if (weighed.isEmpty() && Math.abs(out.central().modelSpread()) > MODELS_AGREE) {
                notices.add(modelsDiffer(out));
            }
        });
        notices.addAll(blend.recipe().notices());
        MouldDimensions mould = MouldDimensions.of(shape, filling);
        Pressed.LiquidWindow window =
                scan == null ? WindowScan.of(press, made.central().topPressure(), mould) : scan.window();
        EarlyReaction reaction = EarlyReaction.standard(blend);
        return new PressForecastRecord(
                press.blend(),
                press.looseDensity(),
                press.tappedDensity(),
                shape,
                sampling,
                curve(press, mould, asked, known),
                window,
                reaction.workingTime(blend),
                reaction.scaled(2, 4).workingTime(blend),
                reaction.scaled(0.5, 0.25).workingTime(blend),
                piece,
                notices);
    }

    /** Two halves or one plunger is taken from the shape unless it was said; either way the far end gets less. */
    private static Notice howPressed(Press press, Shape shape, Making making) {
        Moulded made = Moulded.of(making);
        String share = Math.round(100 * press.meanOverTop(made.mould(shape)))
                + " % of the pressure gets into the mix on average.";
        return made.filling(shape) == MouldDimensions.Filling.TWO_HALVES
                ? new Notice("two-halves", "Taken as two halves, each pressed on its open face: " + share)
                : new Notice("one-plunger", "Taken as pressed from its open side alone: " + share);
    }

    /** That two packing models differ, in grams of the piece or, of a weighed fill, in solid fraction. */
    private static Notice modelsDiffer(PressForecast.PieceOut out) {
        String by = out.secondOpinion().isPresent()
                ? "a piece weighs " + grams(out.dampMass().median()) + " by this one and "
                        + grams(out.secondOpinion().getAsDouble()) + " by the other"
                : "by " + Math.round(Math.abs(out.central().modelSpread()) * 1e3) / 1e3 + " of the solid fraction";
        return new Notice(
                "models-differ",
                "Two ways to work out how these powders pack differ, " + by
                        + ". The range counts such a difference only in part: weigh one pressed piece.");
    }

    /** A mass, kg, in whole grams. */
    private static String grams(double kilograms) {
        return Math.round(kilograms * 1e3) + " g";
    }

    /** Points of the curve: mass by the central values, 95 % band over the draws. */
    private List<PressForecast.Point> curve(
            Press press, MouldDimensions mould, Factors asked, Optional<Conditioned> known) {
        int draws = Math.min(BAND_DRAWS, sampling.samples());
        double[][] y = new double[CURVE.length][draws];
        if (draws > 0) {
            Conditioned.draws(known, asked, draws, sampling.seed(), workers)
                    .draws(() -> new CurveModel(press.blend(), mould, asked, CURVE, y));
        }
        List<PressForecast.Point> points = new ArrayList<>(CURVE.length);
        for (int i = 0; i < CURVE.length; i++) {
            Pressed piece = press.pressDraw(CURVE[i], mould);
            double mass = piece.dampMass();
            double[] sorted = draws == 0 ? new double[] {mass} : Statistics.sorted(y[i]);
            points.add(new PressForecast.Point(
                    CURVE[i],
                    piece.solidFraction(),
                    piece.dampDensity(),
                    mass,
                    Statistics.quantile(sorted, 0.025),
                    Statistics.quantile(sorted, 0.975)));
        }
        return points;
    }

    /** The inputs after the weighed piece; empty without one. */
    private Optional<Conditioned> conditioned(Shape shape, Making making, Factors asked) {
        return weighed.map(piece -> Conditioned.pressed(making, shape, asked, piece, sampling, workers));
    }

    /** The mix by the central values, those that agree with the weighed piece where there is one. */
    private Press press(Blend blend, Factors asked, Optional<Conditioned> known) {
        Press press = Press.of(blend);
        if (known.isPresent()) {
            MakingDraw made = Draw.of(asked.rows(), known.get().centre()).making();
            press = Press.of(blend, Powders.of(blend).with(blend, made.densities()), made.pressing());
        }
        return press.in(room, EarlyReaction.standard(blend));
    }

    /** The piece by the central values; of a weighed piece pressed by hand, the hand's true pressure counts. */
    private Pressed central(Shape shape, Making making, Factors asked, Optional<Conditioned> known) {
        Moulded made = Moulded.of(making);
        Press press = press(made.blend(), asked, known);
        MouldDimensions mould = made.mould(shape);
        if (making instanceof Moulded.Pressed pressed) {
            double hand = known.isEmpty()
                    ? 1
                    : Draw.of(asked.rows(), known.get().centre()).making().pressRatio();
            return press.press(pressed.pressure() * hand, mould);
        }
        return press.fill(((Moulded.Filled) making).dampMass(), mould);
    }

    /** The piece without draws: each interval is a point. */
    private PressForecast.PieceOut certain(Shape shape, Making making, Pressed piece, Optional<Conditioned> known) {
        return new PressForecast.PieceOut(
                making,
                piece,
                Interval.certain(piece.topPressure()),
                Interval.certain(piece.solidFraction()),
                Interval.certain(piece.dampMass()),
                Interval.certain(piece.handForce()),
                Interval.certain(piece.saturation()),
                Interval.certain(piece.strength()),
                Map.of(piece.feel(), 1.0),
                known.map(measured -> MeasurementEffect.pressed(
                        Observations.none().weighed(weighed.orElseThrow()),
                        measured.effective(),
                        Interval.certain(
                                central(shape, making, PressModel.factors(factors, shape, making), Optional.empty())
                                        .dampMass()))));
    }
}
