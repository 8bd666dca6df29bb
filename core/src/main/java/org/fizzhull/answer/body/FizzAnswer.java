package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.FizzForecast;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.voyage.result.Voyage;

/**
 * How a piece fizzes as the object of the command {@code fizz}: gas and what runs out first, pH of the bath, time, what it
 * leaves in the water, and the central course as a series. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code co2_max_mol}, {@code co2_max_g}, {@code gas_max_L}: what the piece can give at most as it goes into the bath
 * <li>{@code fizz_lost_percent}, {@code fizz_lost_band_percent}: share of the fizz of the powders that is gone before the bath
 * <li>{@code tap_alkalinity_mmol_per_L}: of the water before the piece
 * <li>{@code bath_ph_closed}, {@code bath_ph_open}: with all carbon dioxide still in it; after hours in air
 * <li>{@code in_the_bath}: grams that one piece brings into one bath; {@code limits} are the user's own, {@code kept} whether the
 *     share is within them
 * </ul>
 *
 * <p>Immutable.
 *
 * @param forecast gas, bath and times of one piece
 */
public record FizzAnswer(FizzForecast forecast) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param forecast gas, bath and times of one piece
     */
    public FizzAnswer {
        Given.all("forecast", forecast);
    }

    /** Litres in a cubic metre. */
    private static final double LITRES = 1e3;
    /** L/min in one m3/s. */
    private static final double LITRES_A_MINUTE = 60e3;
    /** Millimetres in a metre. */
    private static final double MILLIMETRES = 1e3;

    @Override
    public String command() {
        return "fizz";
    }

    @Override
    public void keys(AnswerWriter to) {
        // gas is told as dry gas at the bath's temperature and 1 atm
        double kelvin = forecast.question().bath().temperature();
        boolean fizzes = forecast.effervescence().fizzes();
        to.draws(forecast.sampling())
                .text("recipe", forecast.blend().recipe().name())
                .text("shape", forecast.question().shape().text());
        LoadKeys.write(to, forecast.question().shape());
        to.number("mass_g", inGrams(forecast.piece().mass()))
                .text("limiting", fizzes ? forecast.gasYield().limiting().word() : null)
                .number("co2_max_mol", forecast.gasYield().carbonDioxide())
                .number("co2_max_g", inGrams(forecast.gasYield().gasMass()))
                .number("fizz_lost_percent", 100 * forecast.drawn().fizzLost().median())
                .interval("fizz_lost_band_percent", forecast.drawn().fizzLost().times(100))
                .number("gas_max_L", LITRES * forecast.gasYield().dryVolume(kelvin))
                .number("tap_alkalinity_mmol_per_L", forecast.question().bath().alkalinity())
                .number("bath_ph_closed", forecast.bath().closedPh())
                .number("bath_ph_open", forecast.bath().openPh());
        to.interval("fizz_time_s", fizzes ? Optional.of(forecast.fizzTime()) : Optional.empty(), 1)
                .interval("gas_peak_L_per_min", forecast.drawn().peak().times(LITRES_A_MINUTE));
        bathful(to, forecast.bath().bathful());
        series(to, forecast.voyage());
        MeasuredKeys.write(to, forecast.narrowing());
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(forecast.notices());
        if (forecast.narrowing().isEmpty()) {
            notices.add(new Notice("not-measured", "measured is null: neither a fizz time nor a rise time was given."));
        }
        if (!forecast.effervescence().fizzes()) {
            notices.add(
                    new Notice(
                            "no-fizz-time",
                            "fizz_time_s and limiting are null: of a piece that does not fizz, or hardly, they have no meaning."));
        }
        return notices;
    }

    /** What a bath holds of the piece, g, and how that stands to the limits the user entered. */
    private static void bathful(AnswerWriter to, FizzForecast.BathLoad bath) {
        to.object("in_the_bath")
                .number("oil_g", inGrams(bath.oil()))
                .number("surfactant_g", inGrams(bath.surfactant()))
                .number("emulsifier_g", inGrams(bath.emulsifier()))
                .number("fragrance_g", inGrams(bath.fragrance()))
                .number("salt_g", inGrams(bath.salt()))
                .number("colour_g", inGrams(bath.colour()))
                .objects(
                        "limits",
                        bath.limits(),
                        limit -> to.text("ingredient", limit.ingredient())
                                .number("mass_g", inGrams(limit.mass()))
                                .number("percent", 100 * limit.share())
                                .number("limit_percent", 100 * limit.limit())
                                .flag("kept", limit.kept()))
                .end();
    }

    /** The central course: depth of the centre, gas as dry volume at bath temperature, mass. */
    private static void series(AnswerWriter to, Voyage voyage) {
        Voyage.Series s = voyage.series();
        to.objects(
                "series",
                () -> IntStream.range(0, s.rows()).iterator(),
                i -> to.number("t_s", s.time()[i])
                        .number("depth_mm", MILLIMETRES * s.centreDepth()[i])
                        .number("gas_L_per_min", LITRES_A_MINUTE * voyage.dryVolume(s.gasRate()[i]))
                        .number("gas_L", LITRES * voyage.dryVolume(s.gas()[i]))
                        .number("mass_g", inGrams(s.mass()[i])));
    }
}
