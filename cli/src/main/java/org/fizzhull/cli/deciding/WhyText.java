package org.fizzhull.cli.deciding;

import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.fizzhull.answer.DiagnosisWords;
import org.fizzhull.answer.WhyAnswer;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.cli.text.Say;
import org.fizzhull.cli.text.Table;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.decide.why.Cause;
import org.fizzhull.decide.why.Check;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;

/**
 * Causes in a maker's words: the likeliest, how it then went, the check that tells most, and what to do about it.
 *
 * @param why what to say
 * @param sampling draws for each cause
 * @param line the line as it was typed for {@code why}
 */
public record WhyText(Why why, Sampling sampling, TypedLine line) implements Answer {
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

    @Override
    public String brief() {
        return Table.paragraph(sentence(why)) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder(Table.paragraph(sentence(why)));
        out.append(Table.paragraph(
                "It then most likely went so: " + way(why.causes().get(0)) + '.'));
        Table table = new Table();
        int named = 0;
        for (Why.Chance chance : why.causes()) {
            if (chance.probability() >= WORTH_NAMING && named++ < MOST_CAUSES) {
                String because = because(chance);
                table.row(
                        FloatSentence.chance(chance.probability()),
                        chance.cause().words() + (because.isEmpty() ? "" : ": " + because));
            }
        }
        out.append('\n').append(table).append('\n');
        why.best().ifPresent(best -> out.append(Table.paragraph(check(best))));
        return out.append(Table.paragraph(
                        "What to do: " + likeliest().mend() + ". For the smallest change type   " + advise()))
                .append(Table.paragraph("Caution: " + CAUTION))
                .toString();
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\n");
        for (Why.Chance chance : why.causes()) {
            out.append(Table.paragraph(chance.cause().words() + ": chance "
                    + Say.tenths(100 * chance.probability())
                    + " %, prior weight " + Say.tenths(chance.cause().weight()) + " [assumed]"
                    + (why.computed() ? ", shows this with " + Say.tenths(100 * chance.showsIt()) + " %" : "") + "; "
                    + way(chance) + '.'));
        }
        return out.append(Table.paragraph(
                        "How often each fault happens (prior weight) and how large it is are assumed: 8 % more"
                                + " mix, three times or a third of the pressure, a quarter of the drying time, 30 % of the fizz left,"
                                + " bubbles half as thick, a mould 2 mm smaller, 15 to 50 % of the pores wet, half as much liquid more or"
                                + " less, a room 18 % damper. A model is taken to be wrong in 2 of 100 cases, a reading to be a slip in 1"
                                + " of 100. " + sampling.samples() + " draws for each cause, seed " + sampling.seed()
                                + "."))
                .toString();
    }

    @Override
    public List<Notice> json(OutputStream out) {
        WhyAnswer answer = new WhyAnswer(why, sampling, new Words());
        JsonSink.write(out, answer);
        return answer.notices();
    }

    private Cause likeliest() {
        return why.causes().get(0).cause();
    }

    /** The line that advises on the design as it most likely was. */
    String advise() {
        TypedLine plan = line.without(SAW, SEEN);
        return ChangedLine.between(plan, why.design(), why.causes().get(0).made())
                .text("advise");
    }

    /** What was likeliest at work, and whether the plan itself would show it. */
    public static String sentence(Why why) {
        Why.Chance first = why.causes().get(0);
        String likeliest = first.cause() == Cause.SOMETHING_ELSE
                ? "the plan itself, all done as planned, or something that is not computed"
                : first.cause().words();
        String text = "Most likely (" + FloatSentence.chance(first.probability()) + "): " + likeliest + '.';
        if (why.symptom().notice().isPresent()) {
            return why.symptom().notice().get().text() + ' ' + text;
        }
        return text + " As planned, it would happen with a chance of "
                + FloatSentence.chance(why.asPlanned().orElse(0)) + '.';
    }

    /** Weight, as read where it was, limit, water and fizz under a cause. */
    private String way(Why.Chance chance) {
        Why.Way way = chance.way();
        StringBuilder text = new StringBuilder("a piece of about "
                + Say.grams(why.seen().mass().orElse(way.mass().median())) + ", where "
                + Say.grams(way.limit().median()) + " is the most that floats to the end");
        way.water()
                .ifPresent(
                        water -> text.append(", with ").append(Say.grams(water)).append(" of water left"));
        way.fizzLost()
                .ifPresent(lost ->
                        text.append(water(way)).append(Say.percent(lost)).append(" of its fizz lost"));
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
                        ? "a piece as heavy as yours shows it with " + often
                        : "shows it in " + often + " of such pieces";
        if (!weighed) {
            return shows;
        }
        return (shows.isEmpty() ? "" : shows + ", ") + "pieces then weigh "
                + Say.grams(chance.way().mass().low()) + " to "
                + Say.grams(chance.way().mass().high()) + ", yours "
                + Say.grams(why.seen().mass().getAsDouble());
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
            return Optional.of(Say.plain(sentence(said)));
        }

        @Override
        public Optional<String> because(Why said, Why.Chance chance) {
            return Optional.of(Say.plain(WhyText.this.because(chance)));
        }

        @Override
        public Optional<String> reading(Check check, Interval value) {
            return Optional.of(Say.plain(WhyWords.reading(check, value)));
        }

        @Override
        public Optional<String> type(Why.BestCheck best) {
            return Optional.of(line.with(SEEN, seen(best)).text("why"));
        }

        @Override
        public Optional<String> type() {
            return Optional.of(advise());
        }
    }
}
