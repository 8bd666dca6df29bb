package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inGramsPerCubicCentimetre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.PressForecast;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Blend;

/**
 * What a mix does under a press as the object of the command {@code press}: densities, the curve of mass against pressure,
 * the liquid window, working time and, with a press or a fill, the piece. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code curve}: central values, with {@code mass_low_g} and {@code mass_high_g}, the 95 % band; masses null without a shape
 * <li>{@code liquid_percent}: liquid of the recipe, per cent of the damp mix
 * <li>{@code liquid_best_g}, {@code liquid_best_holds}: amount of liquid for one mix at which most draws hold, and their share
 * <li>{@code working_time_min}: until 2 % of the fizz is gone; null where nothing reacts
 * <li>{@code feel_share}: share of the draws that crumble, hold, are too wet
 * <li>{@code model_spread}: solid fraction of a second packing model less that of the first; {@code second_opinion_g} the mass by it
 * <li>{@code dried_mass_g}, {@code ready_after_h}: what the piece becomes by drying, where that was asked for
 * </ul>
 *
 * <p>Immutable.
 *
 * @param report the forecast of mix and piece, and what drying makes of it
 */
public record PressAnswer(PressReport report) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param report the forecast of mix and piece, and what drying makes of it
     */
    public PressAnswer {
        Given.all("report", report);
    }

    /** Kilopascals in a pascal. */
    private static final double KILO = 1e-3;
    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;
    /** Seconds in a minute. */
    private static final double MINUTE = 60;
    /** Keys that are null without a piece. */
    private static final String[] OF_A_PIECE = {
        "pressure_kPa",
        "solid_fraction",
        "damp_mass_g",
        "hand_force_N",
        "saturation",
        "damp_strength_kPa",
        "feel",
        "feel_share",
        "model_spread",
        "second_opinion_g"
    };

    @Override
    public String command() {
        return "press";
    }

    @Override
    public void keys(AnswerWriter to) {
        PressForecast forecast = report.forecast();
        boolean mould = report.mould();
        Blend blend = forecast.blend();
        // liquid of the recipe, kg per kg of powder
        double ratio = blend.liquid().ratio();
        to.draws(forecast.sampling())
                .text("recipe", blend.recipe().name())
                .text("shape", mould ? forecast.shape().text() : null);
        LoadKeys.write(to, forecast.shape());
        to.number("true_density_g_per_cm3", inGramsPerCubicCentimetre(blend.trueDensity()))
                .number("loose_density_g_per_cm3", inGramsPerCubicCentimetre(forecast.looseDensity()))
                .number("tapped_density_g_per_cm3", inGramsPerCubicCentimetre(forecast.tappedDensity()));
        to.objects("curve", forecast.curve(), point -> {
            to.number("pressure_kPa", point.topPressure() * KILO)
                    .number("solid_fraction", point.solidFraction())
                    .number("damp_density_g_per_cm3", inGramsPerCubicCentimetre(point.dampDensity()));
            if (mould) {
                to.number("mass_g", inGrams(point.dampMass()))
                        .number("mass_low_g", inGrams(point.low()))
                        .number("mass_high_g", inGrams(point.high()));
            } else {
                to.nothing("mass_g").nothing("mass_low_g").nothing("mass_high_g");
            }
        });
        to.number("liquid_percent", 100 * ratio / (1 + ratio));
        window(to, forecast);
        workingTime(to, forecast);
        // the piece, with its keys null where none was asked for
        forecast.piece().ifPresentOrElse(piece -> piece(to, piece), () -> {
            for (String key : OF_A_PIECE) {
                to.nothing(key);
            }
        });
        DriedKeys.write(to, report.dried());
        MeasuredKeys.write(to, forecast.piece().flatMap(PressForecast.PieceOut::narrowing));
    }

    /** Time in which the damp mix may be pressed, min; null where nothing runs off. */
    static void workingTime(AnswerWriter to, PressForecast forecast) {
        double time = forecast.workingTime();
        to.number(
                "working_time_min",
                Double.isInfinite(time) ? OptionalDouble.empty() : OptionalDouble.of(time / MINUTE));
    }

    /** Amounts of the recipe's liquid for one mix, g; the window is null where no amount holds oftener than it fails. */
    private static void window(AnswerWriter to, PressForecast forecast) {
        double dry = forecast.blend().dryMass();
        Optional<Pressed.LiquidWindow> window = Optional.of(forecast.window()).filter(found -> !found.isEmpty());
        to.object(
                "liquid_window_g",
                window,
                found -> to.number("low", inGrams(found.low() * dry)).number("high", inGrams(found.high() * dry)));
        to.number("liquid_best_g", inGrams(forecast.window().best() * dry))
                .number("liquid_best_holds", forecast.window().share());
    }

    /** The piece out of the mould: 95 % intervals, likeliest feel, second packing model. */
    private static void piece(AnswerWriter to, PressForecast.PieceOut piece) {
        Pressed central = piece.central();
        to.interval("pressure_kPa", piece.topPressure().times(KILO))
                .interval("solid_fraction", piece.solidFraction())
                .interval("damp_mass_g", piece.dampMass().times(GRAMS))
                .interval("hand_force_N", piece.handForce())
                .interval("saturation", piece.saturation())
                .interval("damp_strength_kPa", piece.strength().times(KILO))
                .text("feel", piece.likeliest().words());
        feel(to, piece);
        to.number("model_spread", central.modelSpread()).number("second_opinion_g", piece.secondOpinion(), GRAMS);
    }

    /** Writes how the piece feels out of the mould, as shares of the draws that sum to 1. */
    static void feel(AnswerWriter to, PressForecast.PieceOut piece) {
        to.object("feel_share");
        for (Pressed.Feel feel : Pressed.Feel.values()) {
            to.number(feel.words().replace(' ', '_'), piece.feel().getOrDefault(feel, 0.0));
        }
        to.end();
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        PressForecast forecast = report.forecast();
        List<Notice> notices = new ArrayList<>(report.notices());
        if (report.dried().isEmpty()) {
            notices.add(new Notice(
                    "not-dried", "dried_mass_g and ready_after_h are null: no piece and no drying were given."));
        }
        if (report.dried().isPresent() && report.dried().get().ready().isEmpty()) {
            notices.add(DriedKeys.NOT_READY);
        }
        if (!report.mould()) {
            notices.add(new Notice(
                    "no-mould",
                    "shape and every mass_g are null: no shape given; the liquid window is that of a 65 mm ball."));
        }
        if (forecast.piece().flatMap(PressForecast.PieceOut::narrowing).isEmpty()) {
            notices.add(new Notice("not-measured", "measured is null: no weighed piece beside a press or fill."));
        }
        if (forecast.piece().isEmpty()) {
            notices.add(new Notice(
                    "no-press", "No pressed piece was asked for: " + String.join(", ", OF_A_PIECE) + " are null."));
        }
        if (forecast.piece().isPresent()
                && forecast.piece().get().secondOpinion().isEmpty()) {
            notices.add(new Notice("weighed-fill", "second_opinion_g is null: the fill was weighed."));
        }
        if (Double.isInfinite(forecast.workingTime())) {
            notices.add(new Notice(
                    "no-reaction", "working_time_min is null: without water or without gas nothing runs off."));
        }
        if (forecast.window().isEmpty()) {
            notices.add(new Notice(
                    "no-window",
                    "liquid_window_g is null: no amount of this liquid is likelier to hold than to fail."));
        }
        return notices;
    }
}
