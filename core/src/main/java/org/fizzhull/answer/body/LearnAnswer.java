package org.fizzhull.answer.body;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.learn.Learned;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.check.Given;

/**
 * What trials taught, as the object of the command {@code learn}: each uncertain input before and after, the trials that
 * were left out, and how well the draws agree. Keys and units: cli/docs/contract.md, 4. Immutable.
 *
 * @param learned what {@code learn} found in the trials
 * @param seed seed of the draws
 * @param unused columns of the sheet that nothing was learned from
 * @param words sentences for what to measure next; {@link NextWords#NONE} leaves their keys null
 */
public record LearnAnswer(Learned learned, long seed, List<Unused> unused, NextWords words) implements AnswerBody {
    /**
     * A column of the sheet that nothing is learned from.
     *
     * @param name name of the column
     * @param instead what to write in its place, a whole sentence that goes on behind a colon
     */
    public record Unused(String name, String instead) {}

    /** Why {@code measure_next} is null. For readers of the object; a text leaves it out. */
    public static final Notice NOTHING_NEXT = new Notice(
            "no-next",
            "measure_next is null: even the piece nearest to its border is settled, or nothing more would tell much.");

    /** Effective draws below which the last digits of an interval are rough (assumed). */
    private static final double ROUGH = 200;

    /**
     * Copies the list.
     *
     * @param learned what {@code learn} found in the trials
     * @param seed seed of the draws
     * @param unused columns of the sheet that nothing was learned from
     * @param words sentences for what to measure next
     */
    public LearnAnswer {
        Given.all("learned, unused, words", learned, unused, words);
        unused = List.copyOf(unused);
    }

    /**
     * {@return the answer to a question, without words for what to measure next}
     *
     * @param learned what {@code learn} found in the trials
     * @param seed seed of the draws
     */
    public static LearnAnswer of(Learned learned, long seed) {
        return new LearnAnswer(learned, seed, List.of(), NextWords.NONE);
    }

    @Override
    public String command() {
        return "learn";
    }

    @Override
    public void keys(AnswerWriter to) {
        to.whole("seed", seed).whole("samples", learned.draws().draws().size());
        to.objects(
                "parameters",
                learned.draws().parameters(),
                parameter -> to.text("name", parameter.input().label())
                        .text("unit", parameter.input().unit())
                        .interval("before", parameter.before())
                        .interval("after", parameter.after())
                        .number("still_prior_percent", parameter.stillPriorPercent()));
        NextKeys.write(to, learned.next(), learned.asked(), words, NextKeys.LESS_THE_PIECES_OWN_ALONE);
        to.whole("trials_used", learned.used());
        to.objects(
                "trials",
                learned.fits(),
                fit -> to.text("trial", fit.name())
                        .text("shape", fit.shape().text())
                        .flag("inside", fit.inside())
                        .text("result", fit.result().word())
                        .number("result_chance", fit.chance())
                        .objects(
                                "signs",
                                fit.signs(),
                                sign -> to.text("what", sign.column()).number("standard_deviations", sign.off())));
        to.objects(
                "trials_refused",
                learned.left(),
                left -> to.text("trial", left.name())
                        .text("what", left.what())
                        .number("standard_deviations", left.off()));
        to.whole("inside_their_interval", learned.inside())
                .number("effective_draws", learned.effective())
                .number("log_evidence", learned.logEvidence());
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        for (Learned.Left left : learned.left()) {
            notices.add(new Notice(
                    "trial-left-out",
                    "The " + left.name() + " was left out: " + left.what() + " lies " + Decimals.text(left.off(), 2)
                            + " standard deviations off what the others allow. Check it."));
        }
        for (Unused column : unused) {
            notices.add(new Notice(
                    "columns-unused",
                    "Nothing is learned from " + column.name() + ": " + column.instead()
                            + " It may stay in the sheet."));
        }
        if (learned.effective() < ROUGH) {
            notices.add(new Notice(
                    "few-draws-agree",
                    "Few draws agree with all trials (worth " + Math.round(learned.effective())
                            + " independent ones): the last digits are rough."));
        }
        if (learned.next().isEmpty()) {
            notices.add(NOTHING_NEXT);
        }
        NextKeys.unworded(learned.next(), words).ifPresent(notices::add);
        return notices;
    }
}
