package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.decide.effect.Effect;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.check.Given;

/**
 * Advice as an object: how the design stands, the changes that mend it (smallest first), those
 * that were forgone for a limit of the user's, and what to measure next. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code goal}: chance that was asked for, 0 to 1
 * <li>{@code now}: {@code probability} (to float to the end), {@code nine_of_ten} (chance that nine of ten pieces of the batch
 *     do), {@code mass_g}, {@code fizz_time_s}, {@code ready_after_h}, {@code holds} (chance to hold out of the mould), {@code
 *     cost_each} (own money)
 * <li>{@code changes}: each also has {@code nine_of_ten} and {@code type}, what to type to try it
 * <li>{@code forgone}: {@code steps} of a change that would reach the goal, and {@code because}, the limit it breaks
 * </ul>
 *
 * <p>Chances are 0 to 1. A change has its {@code effects} on everything it moves, so that nobody mends floating and spoils
 * drying unseen. Immutable.
 *
 * @param advice what the library found
 * @param words sentences for the answer and its proposals; {@link AdviceWords#NONE} leaves their keys null
 */
public record AdviceAnswer(Advice advice, AdviceWords words) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param advice what the library found
     * @param words sentences for the answer and its proposals; {@link AdviceWords#NONE} leaves their keys null
     */
    public AdviceAnswer {
        Given.all("advice, words", advice, words);
    }

    /** Seconds in an hour. */
    private static final double HOUR = 3600;

    /**
     * {@return the answer to a question, without sentences}
     *
     * @param advice what {@code decide.advise} found
     */
    public static AdviceAnswer of(Advice advice) {
        return new AdviceAnswer(advice, AdviceWords.NONE);
    }

    @Override
    public String command() {
        return "advise";
    }

    @Override
    public void keys(AnswerWriter to) {
        // the draws and what was asked
        to.draws(advice.forecast().sampling())
                .text("shape", advice.design().shape().text())
                .number("goal", advice.goal().chance())
                .text("answer", words.answer(advice))
                .object("now");
        standing(to, advice.now());
        to.end()
                .objects("changes", advice.changes(), change -> change(to, change))
                .objects("forgone", advice.forgone(), forgone -> {
                    steps(to, forgone.change());
                    to.text("because", forgone.limit().broken());
                });
        NextKeys.write(
                to,
                advice.forecast().next(),
                advice.forecast().question(),
                words.next(),
                NextKeys.OF_THE_CRITICAL_WEIGHT);
    }

    /** Chances and masses of the design as it is now. */
    private static void standing(AnswerWriter to, Advice.Appraisal now) {
        to.number("probability", now.chance())
                .number("nine_of_ten", now.nineOfTen())
                .number("mass_g", inGrams(now.mass()));
        times(to, now);
        to.number("holds", now.holds()).number("cost_each", now.cost());
    }

    /** One proposal: its steps, what they come to and what they move. */
    private void change(AnswerWriter to, Change change) {
        Advice.Appraisal then = change.appraisal();
        steps(to, change);
        to.number("probability", then.chance())
                .number("nine_of_ten", then.nineOfTen())
                .flag("reaches_goal", change.reachesGoal());
        to.objects(
                "effects",
                Effect.of(advice.now(), then),
                effect -> to.text("what", effect.what().label())
                        .number("before", effect.before())
                        .number("after", effect.after())
                        .text("unit", effect.unit()));
        times(to, then);
        to.text("caution", change.caution().map(Change.Caution::words))
                .text("note", words.note(change))
                .text("type", words.type(change));
    }

    /** Times of fizzing and drying, which a change must not spoil unseen. */
    private static void times(AnswerWriter to, Advice.Appraisal appraisal) {
        to.interval("fizz_time_s", appraisal.fizzTime(), 1).interval("ready_after_h", appraisal.ready(), 1 / HOUR);
    }

    /** What is changed, from which value to which, as texts with units. */
    private static void steps(AnswerWriter to, Change change) {
        to.objects(
                "steps",
                change.steps(),
                step -> to.text("change", step.label())
                        .text("from", step.from().text())
                        .text("to", step.to().text()));
    }

    /**
     * {@return the notices of the forecast and of what the advice came to, and one for each null that has no meaning for this
     * question}
     */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(advice.forecast().notices());
        if (!advice.design().stillWater()) {
            // a mix that does not fizz is told before all else
            advice.effervescence()
                    .flatMap(fizz -> fizz.notice())
                    .filter(notice -> !notices.contains(notice))
                    .ifPresent(notices::add);
        }
        switch (advice.need()) {
            case NOTHING -> notices.add(new Notice("goal-reached", "Nothing needs changing."));
            case A_MEASUREMENT_FIRST ->
                notices.add(new Notice("measure-first", "What decides is the same for the whole batch and not known."));
            case ANOTHER_DESIGN ->
                notices.add(new Notice("nothing-helps", "No reasonable change of this design reaches the goal."));
            case A_CHANGE -> {}
        }
        // then what is null
        advice.notice().ifPresent(notices::add);
        if (advice.forecast().next().isEmpty()) {
            notices.add(
                    new Notice("nothing-to-measure", "measure_next is null: no further measurement would tell much."));
        }
        if (words == AdviceWords.NONE) {
            notices.add(Notice.remark(
                    "no-words", "answer, note and type are null: the answer was asked for without words."));
        }
        return notices;
    }
}
