package org.fizzhull.cli.deciding;

import static org.fizzhull.quantity.Units.inCelsius;
import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.cli.floating.FloatJson;
import org.fizzhull.cli.text.Json;
import org.fizzhull.decide.Mould;
import org.fizzhull.decide.compare.BathedPiece;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.decide.compare.Standing;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.Likelihood;

/** A comparison as the {@code compare} object. */
final class CompareJson {
    private static final double GRAMS = 1e3;
    private static final double HOUR = 3600;
    private static final double PER_CENTIMETRE = 1e-2;

    private CompareJson() {}

    static List<Notice> write(OutputStream out, Comparison comparison, List<Notice> said) {
        List<Notice> notices = new ArrayList<>(said);
        notices.addAll(ofNulls(comparison));
        try (Json json = Json.open(out, "compare")) {
            json.whole("seed", comparison.sampling().seed())
                    .whole("samples", comparison.sampling().samples())
                    .text("sort", comparison.sort().word());
            Optional<ComparedPiece> best = comparison.best();
            if (best.isPresent()) {
                json.object("best");
                named(json, best.get());
                json.end();
            } else {
                json.nothing("best");
            }
            json.array("level");
            for (ComparedPiece row : comparison.level()) {
                json.object();
                named(json, row);
                json.end();
            }
            json.endArray().array("rows");
            for (ComparedPiece row : comparison.rows()) {
                row(json, row);
            }
            json.endArray().notices(notices);
        }
        return notices;
    }

    private static void named(Json json, ComparedPiece row) {
        json.text("name", row.mould().name())
                .text("recipe", row.recipe().map(recipe -> recipe.name()).orElse(null))
                .text("shape", row.shape().text());
    }

    private static void row(Json json, ComparedPiece row) {
        json.object();
        named(json, row);
        json.number("mass_g", inGrams(row.made().mass().median()))
                .interval("mass_interval_g", row.made().mass().times(GRAMS));
        interval(json, "damp_mass_g", row.made().dampMass(), GRAMS);
        if (row.made().perBatch().isPresent()) {
            json.whole("pieces_per_batch", row.made().perBatch().getAsInt());
        } else {
            json.nothing("pieces_per_batch");
        }
        BathedPiece bathed = row.bathed();
        FloatJson.probability(json, Optional.of(bathed.probability()));
        json.text(
                        "likelihood",
                        Likelihood.of(bathed.probability().floatsAtOnce()).words())
                .text("likelihood_to_the_end", row.likelihood().words());
        interval(json, "fizz_time_s", bathed.fizzTime(), 1);
        interval(json, "ready_after_h", row.made().ready(), 1 / HOUR);
        json.number("surface_to_volume_per_cm", row.surfaceToVolume() * PER_CENTIMETRE)
                .number("cost_each", row.made().costEach());
        standing(json, row.standing());
        json.number("aim_for_g", grams(bathed.aim()))
                .number("aim_for_damp_g", grams(bathed.aimDamp()))
                .interval("critical_weight_g", bathed.critical().times(GRAMS))
                .interval("could_be_heavier_percent", bathed.headroom().times(100))
                .text(
                        "worst_bath",
                        bathed.worst().map(bath -> bath.kind().words()).orElse(null));
        json.array("baths");
        for (BathedPiece.InNamedBath bath : bathed.each()) {
            json.object()
                    .text("name", bath.bath().kind().words())
                    .number("temperature_C", inCelsius(bath.bath().bath().temperature()))
                    .number("depth_cm", 100 * bath.bath().bath().depth())
                    .number("salt_g", inGrams(bath.bath().bath().salt()))
                    .number("floats_to_the_end", bath.floats())
                    .end();
        }
        json.endArray().texts("special", CompareWords.special(row));
        mould(json, row.mould());
        json.notices(row.notices()).end();
    }

    private static void standing(Json json, Standing standing) {
        json.number("better_than_next", standing.betterThanNext())
                .number("best_of_all", standing.chanceOfBest())
                .number("regret_pieces_per_100", 100 * standing.regret());
    }

    private static void mould(Json json, Mould mould) {
        json.object("mould")
                .whole("cavities", mould.cavities())
                .number("price", mould.price())
                .text("material", mould.material().isEmpty() ? null : mould.material())
                .text("note", mould.note().isEmpty() ? null : mould.note())
                .end();
    }

    private static void interval(Json json, String key, Optional<Interval> interval, double unit) {
        if (interval.isPresent()) {
            json.interval(key, interval.get().times(unit));
        } else {
            json.nothing(key);
        }
    }

    private static OptionalDouble grams(OptionalDouble kilograms) {
        return kilograms.isPresent() ? OptionalDouble.of(inGrams(kilograms.getAsDouble())) : kilograms;
    }

    /** A notice for each null that has no meaning for some row. */
    private static List<Notice> ofNulls(Comparison comparison) {
        List<Notice> notices = new ArrayList<>();
        List<ComparedPiece> rows = comparison.rows();
        switch (comparison.verdict()) {
            case TOO_CLOSE ->
                notices.add(new Notice("too-close-to-call", "best is null: the rows listed in level are level."));
            case NONE_FLOATS ->
                notices.add(new Notice("none-floats", "best is null: no row is likely to float to the end."));
            case NONE_DRIES ->
                notices.add(new Notice("none-dries", "best is null: no row that is likely to float ever dries here."));
            case BEST, ONE_ROW -> {}
        }
        if (rows.stream().anyMatch(row -> row.made().ready().isEmpty())) {
            notices.add(new Notice(
                    "not-ready", "ready_after_h is null where a piece is not dried, or not dry within 60 days."));
        }
        if (rows.stream().anyMatch(row -> row.made().costEach().isEmpty())) {
            notices.add(new Notice("no-prices", "cost_each is null: the recipe has no prices."));
        }
        if (rows.stream().anyMatch(row -> row.recipe().isEmpty())) {
            notices.add(new Notice("no-recipe", "recipe and pieces_per_batch are null: no recipe was given."));
        }
        if (rows.stream().anyMatch(row -> row.made().dampMass().isEmpty())) {
            notices.add(new Notice("not-made", "damp_mass_g is null: the density was given, not how it was made."));
        }
        if (rows.stream().anyMatch(row -> row.bathed().aim().isEmpty())) {
            notices.add(new Notice(
                    "no-aim",
                    "aim_for_g is null where no weight, or every weight, of a pressed piece floats 9 times of 10."));
        }
        if (rows.stream().anyMatch(row -> row.bathed().fizzTime().isEmpty())) {
            notices.add(new Notice(
                    "no-fizz-time", "fizz_time_s is null in still water, and of a piece that does not fizz."));
        }
        if (rows.stream().anyMatch(row -> row.bathed().worst().isEmpty())) {
            notices.add(new Notice("one-bath", "worst_bath is null: all rows go into one bath."));
        }
        notices.add(new Notice("last-row", "better_than_next of the last row is null: no row follows."));
        return notices;
    }
}
