package org.fizzhull.cli.deciding;

import java.util.Optional;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.DiagnosisWords;
import org.fizzhull.answer.body.WhyAnswer;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.Table;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.decide.why.Cause;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;

/**
 * Causes in a maker's words: the likeliest, how it then went, the check that tells most, and what to do about it.
 */
public final class WhyText implements Answer {
    private static final String CAUTION =
            "A forecast, not an inspection: how often each cause happens is assumed. A piece that puffed may be under"
                    + " pressure in a closed jar: open it away from the face.";

    /** What was seen and measured. */
    public static final String SAW = "--saw";

    /** What was measured. */
    public static final String SEEN = "--seen";

    /** Causes below this chance get no line. */
    private static final double WORTH_NAMING = 0.03;

    private static final int MOST_CAUSES = 6;

    private static final int MOST_LINES = 25;

    private final Why why;
    private final Sampling sampling;
    private final TypedLine line;
    private final WhyNext next;

    /**
     * @param why what to say
     * @param sampling draws for each cause
     * @param line the line as it was typed for {@code why}
     */
    public WhyText(Why why, Sampling sampling, TypedLine line) {
        this.why = why;
        this.sampling = sampling;
        this.line = line;
        next = WhyNext.of(why);
    }

    @Override
    public String brief() {
        return Table.paragraph(sentence(why)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        int most = MOST_CAUSES;
        String text = page(most);
        while (most > 2 && Table.lines(text).size() > MOST_LINES) {
            text = page(--most);
        }
        return text;
    }

    /** With so many causes at most. */
    private String page(int most) {
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(why)));
        String way = way(why.causes().get(0));
        out.append(way.isEmpty() ? "" : Table.paragraph("It then most likely went so: a piece of about " + way + '.'));
        Table table = new Table();
        int named = 0;
        for (Why.Chance chance : why.causes()) {
            if (chance.probability() >= WORTH_NAMING && named++ < most) {
                String because = because(chance);
                table.row(
                        FloatSentence.chance(chance.probability()),
                        chance.cause().words() + (because.isEmpty() ? "" : ": " + because));
            }
        }
        out.append('\n').append(table).append('\n');
        why.best().ifPresent(best -> out.append(Table.paragraph(check(best))));
        return out.append(Table.paragraph(
                        "What to do: " + why.mend() + ". " + next.words + " type   " + TypedLine.unbroken(goOn())))
                .append(Table.paragraph("Caution: " + CAUTION))
                .toString();
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\n");
        for (Why.Chance chance : why.causes()) {
            out.append(Table.paragraph(chance.cause().words() + ": chance "
                    + NumberText.tenths(100 * chance.probability())
                    + " %, prior weight " + NumberText.tenths(chance.cause().weight()) + " [assumed]"
                    + (why.computed() ? ", shows this with " + NumberText.tenths(100 * chance.showsIt()) + " %" : "")
                    + (way(chance).isEmpty() ? "" : "; a piece of " + way(chance)) + '.'));
        }
        return out.append(Table.paragraph(
                        "How often each fault happens (prior weight) and how large it is are assumed: 5 to 15 % more"
                                + " mix, three times or a third of the pressure, a quarter of the drying time, 30 % of the fizz left,"
                                + " bubbles half as big, a mould 1 to 3 mm smaller, water four times as deep in the fizzing face, half as much liquid more or"
                                + " less, a room 18 % damper. The models are taken to be wrong in 4 of 100 cases, where any symptom is as"
                                + " likely as another, a reading to be a slip in 1 of 100. " + sampling.samples()
                                + " draws for each cause, seed " + sampling.seed()
                                + "."))
                .toString();
    }

    @Override
    public AnswerBody body() {
        return new WhyAnswer(why, sampling, new Words());
    }

    private Cause likeliest() {
        return why.causes().get(0).cause();
    }

    /** The line that helps on with the design as it most likely was. */
    String goOn() {
        TypedLine plan = line.without(SAW, SEEN);
        TypedLine was =
                ChangedLine.between(plan, why.design(), why.causes().get(0).made());
        return was.of(next.command.spec()).text(next.name);
    }

    /** What was likeliest at work, and whether the plan itself would show it. */
    public static String sentence(Why why) {
        Why.Chance first = why.causes().get(0);
        String likeliest = why.computed() && why.unexplained()
                ? "something that is not computed, or a rare case of the plan itself"
                : first.cause() == Cause.SOMETHING_ELSE
                        ? "the plan itself, all done as planned, or something that is not computed"
                        : first.cause().words();
        String fizzless = why.fizzless().map(notice -> notice.text() + ' ').orElse("");
        String text = "Most likely (" + FloatSentence.chance(first.probability()) + "): " + likeliest + '.';
        Optional<Notice> notice = why.symptom().notice(why.design());
        if (notice.isPresent()) {
            return fizzless + notice.get().text() + ' ' + text;
        }
        return fizzless + text + " As planned, it would happen with a chance of "
                + FloatSentence.chance(why.asPlanned().orElse(0)) + '.';
    }

    /** Weight, as read where it was, and under a cause limit, water and fizz; empty where the weight is all there is. */
    private String way(Why.Chance chance) {
        Why.Way way = chance.way();
        double mass = why.seen().mass().orElse(way.mass().median());
        boolean over =
                why.symptom().ofWeight() && !why.unexplained() && way.limit().median() < mass;
        if (!over && way.water().isEmpty() && way.fizzLost().isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder(NumberText.grams(mass));
        if (over) {
            boolean none = way.limit().median() < AdviceSentence.LOOSEST * mass;
            text.append(none ? ", where not even a loose one floats " : ", where ")
                    .append(none ? "" : NumberText.grams(way.limit().median()) + " is the most that floats ")
                    .append(why.symptom().ofTheDrop() ? "at once" : "to the end");
        }
        way.water()
                .ifPresent(water ->
                        text.append(", with ").append(NumberText.grams(water)).append(" of water left"));
        way.fizzLost()
                .ifPresent(lost ->
                        text.append(water(way)).append(NumberText.percent(lost)).append(" of its fizz lost"));
        return text.toString();
    }

    private static String water(Why.Way way) {
        return way.water().isPresent() ? " and " : ", with ";
    }

    /** What in the numbers points to a cause. */
    String because(Why.Chance chance) {
        boolean weighed = why.seen().mass().isPresent();
        String often = FloatSentence.chance(chance.showsIt());
        String shows = !why.computed()
                ? ""
                : weighed
                        ? "a piece as heavy as yours shows it with a chance of " + often
                        : "shows it with a chance of " + often;
        if (!weighed) {
            return shows;
        }
        return (shows.isEmpty() ? "" : shows + ", ") + "pieces then weigh "
                + NumberText.grams(chance.way().mass().low()) + " to "
                + NumberText.grams(chance.way().mass().high()) + ", yours "
                + NumberText.grams(why.seen().mass().getAsDouble());
    }

    private String check(Why.BestCheck best) {
        return "The check that tells most: " + best.check().words() + ", "
                + WhyWords.reading(best.check(), best.ifFirst()) + " for \""
                + likeliest().words() + "\", "
                + WhyWords.reading(best.check(), best.ifSecond()) + " for \""
                + why.causes().get(1).cause().words() + "\"; then give what you read, such as   "
                + TypedLine.unbroken(SEEN + " \"" + seen(best) + '"');
    }

    /** All that was measured, and what the check would read if the likeliest cause is at work. */
    String seen(Why.BestCheck best) {
        String before = line.value(SEEN).orElse("");
        String more = WhyWords.typed(best.check(), best.ifFirst().median());
        return before.isBlank() ? more : before + ", " + more;
    }

    /** Sentences of the JSON. */
    private final class Words implements DiagnosisWords {
        @Override
        public Optional<String> answer(Why said) {
            return Optional.of(NumberText.plain(sentence(said)));
        }

        @Override
        public Optional<String> because(Why said, Why.Chance chance) {
            return Optional.of(NumberText.plain(WhyText.this.because(chance)));
        }

        @Override
        public Optional<String> reading(Why.Check check, Interval value) {
            return Optional.of(NumberText.plain(WhyWords.reading(check, value)));
        }

        @Override
        public Optional<String> type(Why.BestCheck best) {
            return Optional.of(line.with(SEEN, seen(best)).text("why"));
        }

        @Override
        public Optional<String> type() {
            return Optional.of(goOn());
        }
    }
}
