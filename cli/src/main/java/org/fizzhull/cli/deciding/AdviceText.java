package org.fizzhull.cli.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.answer.body.AdviceAnswer;
import org.fizzhull.answer.body.AdviceWords;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.NextWords;
import org.fizzhull.cli.floating.ExplainText;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.floating.NextText;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.decide.effect.Effect;

/**
 * Advice in a maker's words: how it stands, what to change, smallest first, what each change does besides, and what to type to
 * try it.
 *
 * @param advice what to say
 * @param line the {@code float} line for the design as it is
 */
public record AdviceText(Advice advice, TypedLine line) implements Answer {
    static final String CAUTION =
            "Floating is not a sign that a piece is dry or safe. Change one thing, press two pieces, try them.";

    /** The whole answer fits a small window. */
    private static final int MOST_LINES = 25;

    private static final int MOST_PROPOSALS = 4;

    @Override
    public String brief() {
        return Table.paragraph(AdviceSentence.of(advice)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        int shown = Math.min(MOST_PROPOSALS, advice.changes().size());
        String text = page(shown);
        while (shown > 1 && Table.lines(text).size() > MOST_LINES) {
            text = page(--shown);
        }
        return text;
    }

    private String page(int shown) {
        StringBuilder out = new StringBuilder(Table.paragraph(AdviceSentence.of(advice)));
        if (advice.need() != Advice.Need.NOTHING) {
            advice.forecast()
                    .next()
                    .ifPresent(next -> out.append(Table.paragraph("To know better: "
                            + NextText.what(next, advice.forecast()) + ". Then add   " + NextText.option(next))));
        }
        if (shown > 0) {
            Table table = new Table();
            for (Change change : advice.changes().subList(0, shown)) {
                table.row(
                        label(change),
                        capital(steps(change)) + besides(change) + caution(change) + ". Type " + options(change));
            }
            out.append('\n').append(table).append('\n');
            out.append(
                    Table.paragraph(
                            "To try one, type   " + TypedLine.unbroken(line.text("float"))
                                    + "   with its options, each in place of the same option where that stands there already (--change is added)."));
        }
        advice.notice().ifPresent(notice -> out.append(NoticeText.paragraph(notice)));
        return out.append(Table.paragraph("Caution: " + CAUTION)).toString();
    }

    /** A chance; of one that falls short of the goal, never in the words of the goal. */
    public static String chance(Advice advice, double chance) {
        String words = FloatSentence.chance(chance);
        boolean alike = chance < advice.goal().chance() && words.equals(AdviceSentence.goal(advice));
        return alike ? "just under " + words : words;
    }

    private String label(Change change) {
        String chance = chance(advice, change.appraisal().chance());
        return change.reachesGoal() || chance.startsWith("just") ? chance : "only " + chance;
    }

    private String options(Change change) {
        return TypedLine.unbroken(typed(change).beyond(line));
    }

    /** The line that asks for a changed design. */
    TypedLine typed(Change change) {
        return ChangedLine.of(line, advice.design(), change);
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\n");
        for (Change change : advice.changes()) {
            Advice.Appraisal then = change.appraisal();
            out.append(Table.paragraph(capital(steps(change)) + ": effort " + NumberText.tenths(change.effort())
                    + ", chance that a piece floats to the end " + NumberText.tenths(100 * then.chance())
                    + NumberText.UNIT + "%, that 9 of 10 of a batch do " + NumberText.tenths(100 * then.nineOfTen())
                    + NumberText.UNIT + "%."));
        }
        out.append(
                Table.paragraph(
                        "Efforts order the proposals; one gram in a hundred of the fill counts 1, a day of drying 2,"
                                + " five per cent of humidity 3, a word of pressing 3, five grams of a powder 1, a swap 2, another size of mould"
                                + " 6, another kind 12 [assumed]. The search asks 256 draws; what is shown is asked anew with all of them."));
        for (Advice.Forgone forgone : advice.forgone()) {
            out.append(Table.paragraph("Not proposed: " + steps(forgone.change()) + ", because "
                    + forgone.limit().broken() + '.'));
        }
        return out.append(ExplainText.of(advice.forecast())).toString();
    }

    @Override
    public AnswerBody body() {
        return new AdviceAnswer(advice, new Words());
    }

    /** What else moves, signed, and only what moves. */
    private String besides(Change change) {
        List<String> parts = new ArrayList<>();
        for (Effect effect : Effect.of(advice.now(), change.appraisal())) {
            if (effect.worthSaying()) {
                parts.add(EffectWords.of(effect));
            }
        }
        return parts.isEmpty() ? "" : "; " + String.join(", ", parts);
    }

    /** The steps of a change in words. */
    public static String steps(Change change) {
        List<String> words = new ArrayList<>();
        for (Change.Step step : change.steps()) {
            words.add(StepWords.of(step));
        }
        return String.join(", and ", words);
    }

    private static String caution(Change change) {
        Optional<Change.Caution> caution = change.caution();
        return caution.isPresent() ? ". " + caution.get().words() : "";
    }

    /** With a capital first letter. */
    public static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Sentences of the JSON. */
    private final class Words implements AdviceWords {
        @Override
        public Optional<String> answer(Advice said) {
            return Optional.of(NumberText.plain(AdviceSentence.of(said)));
        }

        @Override
        public Optional<String> note(Change change) {
            return Optional.of(NumberText.plain(steps(change)));
        }

        @Override
        public Optional<String> type(Change change) {
            return Optional.of(typed(change).text("float"));
        }

        @Override
        public NextWords next() {
            return NextText.words(line.text("float"));
        }
    }
}
