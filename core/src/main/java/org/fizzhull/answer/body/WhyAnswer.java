package org.fizzhull.answer.body;

import static org.fizzhull.quantity.Units.inGrams;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.quantity.check.Given;

/**
 * What most likely happened, as the object of the command {@code why}: causes with their chances, the check that tells the
 * two likeliest apart, and the change that mends the likeliest. Keys and units: cli/docs/contract.md, 4; further:
 *
 * <ul>
 * <li>{@code as_planned}: chance of the symptom where all went as planned; null where it is not computed
 * <li>{@code causes}: {@code shows_it} is the chance that a batch with this cause shows the symptom; {@code most_likely} has {@code
 *     mass_g}, {@code limit_g} (heaviest weight that floats to the end), {@code water_g} left and {@code fizz_lost} (0 to 1) with it
 * <li>{@code best_check}: {@code if_first}, {@code if_second} say what it would show; {@code information_bit} what it tells, 0 to 1
 * <li>{@code advice}: what to do the next time
 * </ul>
 *
 * <p>Immutable.
 *
 * @param why causes with their chances
 * @param sampling seed and number of draws for each cause
 * @param words sentences for the answer, its causes and its check; {@link DiagnosisWords#NONE} leaves their keys null
 */
public record WhyAnswer(Why why, Sampling sampling, DiagnosisWords words) implements AnswerBody {
    /**
     * Refuses what is missing.
     *
     * @param why causes with their chances
     * @param sampling seed and number of draws for each cause
     * @param words sentences for the answer, its causes and its check; {@link DiagnosisWords#NONE} leaves their keys null
     */
    public WhyAnswer {
        Given.all("why, sampling, words", why, sampling, words);
    }

    /** Grams in a kilogram. */
    private static final double GRAMS = 1e3;

    /**
     * {@return the answer to a question, without sentences}
     *
     * @param why causes with their chances
     * @param sampling seed and number of draws for each cause
     */
    public static WhyAnswer of(Why why, Sampling sampling) {
        return new WhyAnswer(why, sampling, DiagnosisWords.NONE);
    }

    @Override
    public String command() {
        return "why";
    }

    @Override
    public void keys(AnswerWriter to) {
        to.draws(sampling)
                .text("saw", why.symptom().word())
                .text("answer", words.answer(why))
                .number("as_planned", why.asPlanned())
                .objects("causes", why.causes(), chance -> cause(to, chance))
                .object("best_check", why.best(), best -> check(to, best))
                .object("advice")
                .text("what", why.mend())
                .text("type", words.type())
                .end();
    }

    /** {@return the notices, and one for each null that has no meaning for this question} */
    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        why.fizzless().ifPresent(notices::add);
        why.symptom().notice(why.design()).ifPresent(notices::add);
        notices.addAll(why.notices());
        if (why.asPlanned().isEmpty()) {
            notices.add(Notice.remark("not-planned", "as_planned is null: whether the plan shows it is not computed."));
        }
        if (why.best().isEmpty()) {
            notices.add(new Notice("no-check", "best_check is null: no check tells the two likeliest causes apart."));
        }
        if (words == DiagnosisWords.NONE) {
            notices.add(Notice.remark(
                    "no-words",
                    "answer, because, if_first, if_second and type are null: the answer was asked for without words."));
        }
        return notices;
    }

    /** One cause: its chance, what points to it, and the likeliest way it came about. */
    private void cause(AnswerWriter to, Why.Chance chance) {
        Why.Way way = chance.way();
        to.text("cause", chance.cause().words())
                .number("probability", chance.probability())
                .text("because", words.because(why, chance))
                .text("check", chance.check().map(Why.Check::words))
                .number("shows_it", why.computed() ? OptionalDouble.of(chance.showsIt()) : OptionalDouble.empty())
                .object("most_likely")
                .number("mass_g", inGrams(way.mass().median()))
                .number("limit_g", inGrams(way.limit().median()))
                .number("water_g", way.water(), GRAMS)
                .number("fizz_lost", way.fizzLost())
                .end();
    }

    /** The best check, and what it would show if the first or the second cause were true. */
    private void check(AnswerWriter to, Why.BestCheck best) {
        List<Why.Chance> causes = why.causes();
        to.text("what", best.check().words())
                .text(
                        "splits",
                        causes.get(0).cause().words() + " | "
                                + causes.get(1).cause().words())
                .text("if_first", words.reading(best.check(), best.ifFirst()))
                .text("if_second", words.reading(best.check(), best.ifSecond()))
                .number("information_bit", best.information())
                .text("type", words.type(best));
    }
}
