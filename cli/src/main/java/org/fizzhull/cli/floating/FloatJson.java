package org.fizzhull.cli.floating;

import static org.fizzhull.quantity.Units.inCelsius;
import static org.fizzhull.quantity.Units.inCubicCentimetres;
import static org.fizzhull.quantity.Units.inGrams;
import static org.fizzhull.quantity.Units.inGramsPerCubicCentimetre;
import static org.fizzhull.quantity.Units.inMillimetres;
import static org.fizzhull.quantity.Units.inSquareCentimetres;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.LoadWords;
import org.fizzhull.cli.text.Say;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Driver;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.GoverningLimit;
import org.fizzhull.forecast.Likelihood;
import org.fizzhull.forecast.attitude.FloatingAttitude;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.model.BatchAim;
import org.fizzhull.forecast.model.BatchShare;
import org.fizzhull.forecast.model.CriticalWeights;
import org.fizzhull.forecast.model.Probability;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.Shape;

/** A forecast as the {@code float} object. */
public final class FloatJson {
    private static final double GRAMS = 1e3;

    private FloatJson() {}

    /** Writes the object; what to type for the next measurement, where there is one. */
    public static void write(OutputStream out, Forecast forecast, Optional<String> type) {
        Question question = forecast.question();
        try (Json json = Json.open(out, "float")) {
            json.whole("seed", forecast.sampling().seed())
                    .whole("samples", forecast.sampling().samples())
                    .text("shape", question.shape().text())
                    .number("volume_cm3", inCubicCentimetres(question.shape().volume()))
                    .number("surface_cm2", inSquareCentimetres(question.shape().surface()))
                    .number("mass_g", inGrams(forecast.piece().mass()))
                    .number(
                            "density_g_per_cm3",
                            inGramsPerCubicCentimetre(forecast.piece().density()));
            if (forecast.mass().isPresent()) {
                json.interval("mass_interval_g", forecast.mass().get().times(GRAMS));
            } else {
                json.nothing("mass_interval_g");
            }
            LoadWords.json(json, question.shape());
            json.object("bath")
                    .number("temperature_C", inCelsius(question.bath().temperature()))
                    .number(
                            "density_g_per_cm3",
                            inGramsPerCubicCentimetre(question.bath().density()))
                    .end();
            json.number("limit_mass_g", inGrams(forecast.limitMass()))
                    .number(
                            "spare_g",
                            inGrams(forecast.limitMass() - forecast.piece().mass()))
                    .number("boat_limit_mass_g", grams(forecast.boatLimitMass()))
                    .interval(
                            "critical_weight_g", forecast.critical().interval().times(GRAMS))
                    .interval("spare_at_drop_g", forecast.spareAtDrop().times(GRAMS));
            verdict(json, forecast);
            rests(json, question.shape(), forecast.rests());
            probability(json, forecast.probability());
            Optional<Likelihood> word = forecast.likelihood();
            json.text("likelihood", word.isPresent() ? word.get().words() : null);
            Optional<Likelihood> end = forecast.likelihoodToTheEnd();
            json.text("likelihood_to_the_end", end.isPresent() ? end.get().words() : null);
            share(json, forecast.share());
            aim(json, forecast.aim());
            json.text("weights_are", question.making() instanceof FilledMould ? "damp" : "dry");
            next(json, forecast, type);
            time(json, "rise_time_s", forecast.riseTime());
            time(json, "fizz_time_s", forecast.fizzTime());
            drivers(json, forecast.drivers());
            MeasuredJson.write(json, forecast.narrowing());
            json.notices(withNulls(forecast));
        }
    }

    private static OptionalDouble grams(OptionalDouble kilograms) {
        return kilograms.isPresent() ? OptionalDouble.of(inGrams(kilograms.getAsDouble())) : kilograms;
    }

    private static void verdict(Json json, Forecast forecast) {
        GoverningLimit limit = forecast.limit();
        json.object("governing_limit")
                .text("kind", limit.kind().word())
                .number("mass_g", inGrams(limit.mass()))
                .number("spare_g", inGrams(limit.spare()))
                .end();
        json.object("verdict")
                .text("answer", forecast.verdict().answer().word())
                .text("reason", forecast.verdict().reason().word())
                .end();
        json.object("critical_draws")
                .whole("not_monotone", forecast.critical().count(CriticalWeights.Met.NOT_MONOTONE))
                .whole("at_heavy_end", forecast.critical().count(CriticalWeights.Met.ABOVE_RANGE))
                .whole("at_light_end", forecast.critical().count(CriticalWeights.Met.BELOW_RANGE))
                .end();
    }

    private static void share(Json json, Optional<BatchShare> share) {
        if (share.isEmpty()) {
            json.nothing("share_of_batch");
            return;
        }
        Interval of = share.get().share();
        json.object("share_of_batch")
                .number("median", of.median())
                .number("low", of.low())
                .number("high", of.high())
                .number("mean", share.get().mean())
                .number("nine_of_ten", share.get().nineOfTen())
                .end();
    }

    private static void next(Json json, Forecast forecast, Optional<String> type) {
        if (forecast.next().isEmpty()) {
            json.nothing("measure_next");
            return;
        }
        MeasureNext next = forecast.next().get();
        json.object("measure_next")
                .text("what", Say.plain(NextText.what(next, forecast)))
                .text("type", type.orElse(NextText.option(next)))
                .object("narrows")
                .text(
                        "what",
                        "width of the 95 % interval of the critical weight less the piece's own: low with, high without")
                .text("unit", "g")
                .number("low", inGrams(next.widthAfter()))
                .number("high", inGrams(next.widthBefore()))
                .end()
                .end();
    }

    private static void aim(Json json, Optional<BatchAim> aim) {
        if (aim.isPresent()) {
            json.number("aim_for_g", inGrams(aim.get().aimFor()))
                    .number("never_above_g", inGrams(aim.get().neverAbove()));
        } else {
            json.nothing("aim_for_g").nothing("never_above_g");
        }
    }

    static void time(Json json, String key, Optional<Interval> seconds) {
        if (seconds.isPresent()) {
            json.interval(key, seconds.get());
        } else {
            json.nothing(key);
        }
    }

    private static void rests(Json json, Shape shape, List<FloatingAttitude> rests) {
        json.array("attitudes");
        for (FloatingAttitude rest : rests) {
            json.object()
                    .numbers("up", rest.up().x(), rest.up().y(), rest.up().z())
                    .number("draft_mm", inMillimetres(rest.draft()))
                    .number("freeboard_mm", inMillimetres(rest.freeboard()))
                    .number("immersed_fraction", rest.immersedFraction())
                    .number("gm_mm", inMillimetres(rest.gm()))
                    .flag("turns_freely", rest.turnsFreely())
                    .number("share", rest.share())
                    .text("cavity", rest.cavity().word())
                    .text("lies", LiesWords.of(shape, rest))
                    .text("topping", rest.topping().word())
                    .end();
        }
        json.endArray();
    }

    public static void probability(Json json, Optional<Probability> known) {
        json.object("probability");
        if (known.isPresent()) {
            Probability p = known.get();
            json.number("floats_to_the_end", p.floatsToTheEnd())
                    .number("floats_at_once", p.floatsAtOnce())
                    .number("rises_later", p.risesLater())
                    .number("stays_down", p.staysDown())
                    .number("sinks_later", p.sinksLater())
                    .number("error", p.error());
        } else {
            json.nothing("floats_to_the_end")
                    .nothing("floats_at_once")
                    .nothing("rises_later")
                    .nothing("stays_down")
                    .nothing("sinks_later")
                    .nothing("error");
        }
        json.end();
    }

    private static void drivers(Json json, List<Driver> drivers) {
        json.array("drivers");
        for (Driver driver : drivers) {
            json.object()
                    .text("input", driver.input().label())
                    .text("kind", driver.input().kind() == Input.Kind.PIECE ? "piece" : "batch")
                    .number("first_order", driver.firstOrder())
                    .number(
                            "total",
                            Double.isNaN(driver.total()) ? OptionalDouble.empty() : OptionalDouble.of(driver.total()))
                    .number("error", driver.error())
                    .end();
        }
        json.endArray();
    }

    /** The forecast's notices and one for each null that has no meaning for this question. */
    private static List<Notice> withNulls(Forecast forecast) {
        List<Notice> notices = new ArrayList<>(forecast.notices());
        if (forecast.boatLimitMass().isEmpty()) {
            notices.add(new Notice("no-hollow", "boat_limit_mass_g is null: this shape has no hollow."));
        }
        if (forecast.mass().isEmpty()) {
            notices.add(new Notice("weighed-piece", "mass_interval_g is null: the piece was weighed."));
        }
        if (forecast.riseTime().isEmpty()) {
            notices.add(new Notice("no-rise", "rise_time_s is null: too few of the draws sink first and rise later."));
        }
        if (forecast.fizzTime().isEmpty()) {
            notices.add(new Notice("no-fizz-time", "fizz_time_s is null: still water, or a piece that does not fizz."));
        }
        if (forecast.aim().isEmpty()
                && forecast.question().making().hand().isPresent()
                && forecast.probability().isPresent()) {
            notices.add(new Notice("no-weight", "aim_for_g and never_above_g are null: no weight would be true."));
        }
        if (forecast.probability().isEmpty()) {
            notices.add(new Notice("not-drawn", "likelihood and likelihood_to_the_end are null: nothing was drawn."));
        }
        if (forecast.question().making().hand().isEmpty()
                || forecast.probability().isEmpty()) {
            notices.add(
                    new Notice(
                            "no-spread",
                            "aim_for_g and never_above_g are null: the weight was given without a spread, or nothing was drawn."));
        }
        if (forecast.share().isEmpty()) {
            notices.add(new Notice("no-batch", "share_of_batch is null: one weighed piece, or no draws."));
        }
        if (forecast.next().isEmpty()) {
            notices.add(new Notice(
                    "nothing-to-measure",
                    "measure_next is null: no further measurement would tell much, or no draws."));
        }
        if (forecast.narrowing().isEmpty()) {
            notices.add(
                    new Notice("not-measured", "measured is null: no fizz time, rise time, lift or weighed piece."));
        } else {
            notices.add(new Notice(
                    "first-order-only",
                    "After a measurement the inputs depend on one another: drivers have no total, and error is that of"
                            + " first_order."));
        }
        return notices;
    }
}
