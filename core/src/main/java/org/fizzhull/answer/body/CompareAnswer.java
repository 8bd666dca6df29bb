package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inCelsius;
import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.MadePiece;
import org.fizzhull.decide.Mould;
import org.fizzhull.decide.compare.ComparedPiece;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.result.Probability;
import org.fizzhull.quantity.check.Given;

/**
 * A comparison as the object of the command {@code compare}: the best row or null, the rows that are level with it, and all
 * rows from the best down. Keys and units: cli/docs/contract.md, 4. Immutable.
 *
 * @param comparison rows, ranks and verdict
 * @param said what the reader must know beside the nulls
 */
public record CompareAnswer(Comparison comparison, List<Notice> said) implements AnswerBody {
    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;
    /** Seconds in an hour. */
    private static final double HOUR = 3600;
    /** 1/cm in one 1/m. */
    private static final double PER_CENTIMETRE = 1e-2;

    /**
     * Copies the list.
     *
     * @param comparison rows, ranks and verdict
     * @param said what the reader must know beside the nulls
     */
    public CompareAnswer {
        Given.all("comparison, said", comparison, said);
        said = List.copyOf(said);
    }

    /**
     * {@return the answer to a question, with the notices of the comparison itself}
     *
     * @param comparison rows, ranks and verdict
     */
    public static CompareAnswer of(Comparison comparison) {
        return new CompareAnswer(comparison, comparison.notices());
    }

    @Override
    public String command() {
        return "compare";
    }

    @Override
    public void keys(AnswerWriter to) {
        to.draws(comparison.sampling()).text("sort", comparison.sort().word());
        // the best row, then the rows that are level with it, then all
        to.object("best", comparison.best(), best -> named(to, best))
                .objects("level", comparison.level(), row -> named(to, row))
                .objects("rows", comparison.rows(), row -> row(to, row));
    }

    /** Mould, recipe and shape, which together name a row. */
    private static void named(AnswerWriter to, ComparedPiece row) {
        to.text("name", row.mould().name())
                .text("recipe", row.recipe().map(recipe -> recipe.name()).orElse(null))
                .text("shape", row.shape().text());
    }

    /** One row: piece, chances in the bath, times, ranks, mould. */
    private static void row(AnswerWriter to, ComparedPiece row) {
        named(to, row);
        to.number("mass_g", inGrams(row.made().mass().median()))
                .interval("mass_interval_g", row.made().mass().times(GRAMS));
        to.interval("damp_mass_g", row.made().dampMass(), GRAMS)
                .whole("pieces_per_batch", row.made().perBatch());
        // in the bath, or in the panel of baths
        ComparedPiece.InBath bathed = row.bathed();
        FloatAnswer.probability(to, Optional.of(bathed.probability()));
        to.text(
                        "likelihood",
                        Probability.Likelihood.of(bathed.probability().floatsAtOnce())
                                .words())
                .text("likelihood_to_the_end", row.likelihood().words());
        to.interval("fizz_time_s", bathed.fizzTime(), 1);
        to.interval("ready_after_h", row.made().ready(), 1 / HOUR);
        to.number("surface_to_volume_per_cm", row.surfaceToVolume() * PER_CENTIMETRE)
                .number("cost_each", row.made().costEach());
        standing(to, row.standing());
        to.number("aim_for_g", bathed.aim(), GRAMS)
                .number("aim_for_damp_g", bathed.aimDamp(), GRAMS)
                .interval("critical_weight_g", bathed.critical().times(GRAMS))
                .interval("could_be_heavier_percent", bathed.headroom().times(100))
                .text(
                        "worst_bath",
                        bathed.worst().map(bath -> bath.kind().words()).orElse(null));
        to.objects(
                        "baths",
                        bathed.each(),
                        bath -> to.text("name", bath.bath().kind().words())
                                .number(
                                        "temperature_C",
                                        inCelsius(bath.bath().bath().temperature()))
                                .number("depth_cm", 100 * bath.bath().bath().depth())
                                .number("salt_g", inGrams(bath.bath().bath().salt()))
                                .number("floats_to_the_end", bath.floats()))
                .texts(
                        "special",
                        row.made().special().stream()
                                .map(MadePiece.Special::words)
                                .toList());
        mould(to, row.mould());
        to.notices(row.notices());
    }

    /** How sure the rank of a row is: chances 0 to 1, regret in pieces of a hundred. */
    private static void standing(AnswerWriter to, ComparedPiece.Rank standing) {
        to.number("better_than_next", standing.betterThanNext())
                .number("best_of_all", standing.chanceOfBest())
                .number("regret_pieces_per_100", 100 * standing.regret());
    }

    /** What the catalogue says of the mould; the price in its own money. */
    private static void mould(AnswerWriter to, Mould mould) {
        to.object("mould")
                .whole("cavities", mould.cavities())
                .number("price", mould.price())
                .filled("material", mould.material())
                .filled("note", mould.note())
                .end();
    }

    /** {@return what was said, and a notice for each null that has no meaning for some row} */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(said);
        // why best is null
        List<ComparedPiece> rows = comparison.rows();
        switch (comparison.verdict()) {
            case TOO_CLOSE ->
                notices.add(new Notice("too-close-to-call", "best is null: the rows listed in level are level."));
            case NONE_FLOATS ->
                notices.add(new Notice(
                        "none-floats", "best is null: no row floats to the end with a chance of 0.66 or more."));
            case NONE_DRIES ->
                notices.add(new Notice(
                        "none-dries",
                        "best is null: no row that floats with a chance of 0.66 or more ever dries here."));
            case BEST, ONE_ROW -> {}
        }
        // why a key is null in some row
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
