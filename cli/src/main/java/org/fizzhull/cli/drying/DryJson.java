package org.fizzhull.cli.drying;

import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.LoadWords;
import org.fizzhull.cli.text.Say;
import org.fizzhull.drying.DryState;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.model.DryLogFit;

/** A drying forecast as the {@code dry} object. */
public final class DryJson {
    private static final double GRAMS = 1e3;
    private static final double PERCENT = 100;
    private static final double HOUR = 3600;

    private DryJson() {}

    /** Writes the object. */
    public static void write(OutputStream out, DryReport report) {
        DryForecast f = report.forecast();
        try (Json json = Json.open(out, "dry")) {
            json.whole("seed", f.sampling().seed())
                    .whole("samples", f.sampling().samples())
                    .text("recipe", f.blend().recipe().name())
                    .text("shape", f.shape().text());
            LoadWords.json(json, f.shape());
            json.text("verdict", Say.plain(DryText.sentence(report)))
                    .interval("damp_mass_g", f.damp().times(GRAMS))
                    .interval("final_mass_g", f.last().times(GRAMS))
                    .interval("label_mass_g", f.label().times(GRAMS))
                    .number("never_dries_g", inGrams(f.course().stays()));
            interval(json, "ready_after_h", report.ready(), 1 / HOUR);
            json.number("dries_fraction", f.readyWithin(Double.MAX_VALUE))
                    .number("needs_humidity_below_percent", percent(f.needsHumidity()))
                    .interval("fizz_lost_percent", f.fizzLost().times(PERCENT))
                    .text("swelling", f.course().swelling().word());
            json.number("reaction_number", f.course().reactionNumber());
            json.number("keep_below_percent", PERCENT * f.safe().below())
                    .number("keep_above_percent", PERCENT * f.safe().above());
            grams(json, "store_gain_g", f.store().map(DryForecast.Store::gain));
            grams(json, "store_gas_lost_g", f.store().map(DryForecast.Store::gas));
            grams(json, "store_water_gain_g", f.store().map(DryForecast.Store::water));
            json.interval("water_gone_g", f.drawn().waterGone().times(GRAMS))
                    .number("wrap_blows_up", f.drawn().swollenFilms())
                    .number("room_dampest_percent", PERCENT * f.dampestRoom())
                    .number("room_after_percent", PERCENT * f.roomAfter());
            jar(json, f);
            dates(json, report);
            interval(json, "still_to_go_g", report.weighed().map(DryLogFit::stillToGo), GRAMS);
            series(json, f);
            json.notices(withNulls(report));
        }
    }

    private static void jar(Json json, DryForecast f) {
        json.object("jar")
                .number("volume_L", 1e3 * f.jarVolume())
                .number("one_percent_kPa", f.jar().overpressure() / PERCENT / 1e3)
                .number("all_kPa", f.jar().overpressure() / 1e3)
                .end();
    }

    private static void dates(Json json, DryReport report) {
        json.text("start", report.start().map(Days::iso).orElse(null));
        Optional<Interval> ready = report.ready();
        if (report.start().isPresent() && ready.isPresent()) {
            json.object("ready_at")
                    .text(
                            "median",
                            report.at(ready.get().median()).map(Days::iso).orElse(null))
                    .text("low", report.at(ready.get().low()).map(Days::iso).orElse(null))
                    .text("high", report.at(ready.get().high()).map(Days::iso).orElse(null))
                    .end();
        } else {
            json.nothing("ready_at");
        }
        String by = report.readyBy().map(Days::iso).orElse(null);
        json.text("ready_by", by).text("sell_by", by).number("ready_by_then", report.inTime());
    }

    private static void series(Json json, DryForecast f) {
        json.array("series");
        double inset = f.shape().insetMass();
        for (double time : f.drawn().times()) {
            if (time > f.course().end()) {
                break;
            }
            DryState state = f.course().at(time);
            json.object()
                    .number("hour", time / HOUR)
                    .number("mass_g", inGrams(state.mass() + inset))
                    .number("water_percent_of_dry", PERCENT * state.waterOfDry())
                    .number("fizz_left_percent", PERCENT * state.fizzLeft())
                    .end();
        }
        json.endArray();
    }

    private static void interval(Json json, String key, Optional<Interval> value, double factor) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(factor));
        } else {
            json.nothing(key);
        }
    }

    private static void grams(Json json, String key, Optional<Double> kilograms) {
        json.number(key, kilograms.isPresent() ? OptionalDouble.of(inGrams(kilograms.get())) : OptionalDouble.empty());
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(PERCENT * share.getAsDouble()) : share;
    }

    /** The notices, and one for each null that has no meaning for this question. */
    private static List<Notice> withNulls(DryReport report) {
        List<Notice> notices = new ArrayList<>(report.forecast().notices());
        if (report.start().isEmpty()) {
            notices.add(new Notice("no-start", "start and ready_at are null: no --start was given."));
        }
        if (report.readyBy().isEmpty()) {
            notices.add(new Notice(
                    "no-ready-by", "ready_by, sell_by and ready_by_then are null: no --ready-by was given."));
        }
        if (!report.forecast().stored()) {
            notices.add(new Notice(
                    "no-store",
                    "store_gain_g, store_gas_lost_g and store_water_gain_g are null: no --stored was given."));
        }
        if (report.ready().isEmpty()) {
            notices.add(new Notice("not-ready", "ready_after_h and ready_at are null: it is not dry within 60 days."));
        }
        if (report.forecast().course().reactionNumber().isEmpty()) {
            notices.add(new Notice(
                    "no-reaction-number", "reaction_number is null: it never dries, so there is no time of drying."));
        }
        if (report.forecast().needsHumidity().isEmpty()) {
            notices.add(new Notice(
                    "no-humidity",
                    "needs_humidity_below_percent is null: no air dries it in that time, or it is dry."));
        }
        if (report.forecast().asked().weighings().isEmpty()) {
            notices.add(new Notice("no-log", "still_to_go_g is null: no --log was given."));
        }
        return notices;
    }
}
