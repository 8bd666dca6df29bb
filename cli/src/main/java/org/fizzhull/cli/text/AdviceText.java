package org.fizzhull.cli.text;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.decide.Advice;
import org.fizzhull.decide.Change;
import org.fizzhull.decide.Appraisal;
import org.fizzhull.decide.Step;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.MeasureNext;

/**
 * Advice in a maker's words: how it stands, what to change, smallest first, and what each change does besides.
 *
 * @param advice what to say
 * @param asked the {@code float} command for the design as it is, to which an option may be added
 */
public record AdviceText(Advice advice, String asked) implements Answer {
    private static final String CAUTION =
            "Floating is not a sign that a piece is dry or safe. Change one thing, press two pieces, try them.";

    /** A chance or a share that moves by less has not moved. */
    private static final double MOVED = 0.05;

    @Override
    public String brief() {
        return Table.paragraph(sentence()) + Table.paragraph("Caution: " + CAUTION);
    }

    @Override
    public String whole() {
        StringBuilder out = new StringBuilder();
        out.append(Table.paragraph(sentence()));
        advice.forecast()
                .next()
                .filter(next -> advice.need() != Advice.Need.NOTHING)
                .ifPresent(next -> out.append(Table.paragraph(measure(next))));
        if (!advice.changes().isEmpty()) {
            Table table = new Table();
            int number = 1;
            for (Change change : advice.changes()) {
                table.row(
                        number++ + (change.reachesGoal() ? "" : " (not enough)"),
                        capital(steps(change)) + ": " + chance(change.appraisal()) + moved(change)
                                + caution(change.caution()));
            }
            out.append('\n').append(table);
        }
        out.append('\n');
        return out.append(Table.paragraph("Caution: " + CAUTION)).toString();
    }

    @Override
    public String behind() {
        StringBuilder out = new StringBuilder("\n");
        for (Change change : advice.changes()) {
            Appraisal now = change.appraisal();
            out.append(Table.paragraph(capital(steps(change)) + ": effort " + Say.tenths(change.effort())
                    + ", chance that a piece floats to the end " + Say.tenths(100 * now.chance())
                    + " %, that 9 of 10 of a batch do " + Say.tenths(100 * now.nineOfTen()) + " %."));
        }
        return out.append(ExplainText.of(advice.forecast())).toString();
    }

    @Override
    public List<Notice> json(OutputStream out) {
        return AdviceJson.write(out, advice, asked);
    }

    /** How it stands and what to do, in one sentence or two. */
    private String sentence() {
        Appraisal now = advice.now();
        String piece = Say.grams(now.mass()) + " in "
                + ShapeWords.piece(advice.design().shape());
        String stands = piece + " floats to the end with a chance of " + FloatSentence.chance(now.chance());
        return switch (advice.need()) {
            case NOTHING -> "Nothing needs changing: " + stands + "; " + goal() + " was asked.";
            case A_CHANGE ->
                capital(steps(advice.best().orElseThrow())) + ". As it is, " + stands + "; then "
                        + FloatSentence.chance(
                                advice.best().orElseThrow().appraisal().chance()) + '.';
            case A_MEASUREMENT_FIRST ->
                "Measure first: " + stands
                        + ", since something that is the same for the whole batch is not known; nearly all float or nearly none."
                        + (advice.best().isPresent()
                                ? " What is sure to be enough: "
                                        + steps(advice.best().get()) + '.'
                                : "");
            case ANOTHER_DESIGN ->
                "No small change is enough: " + stands + ", and " + goal()
                        + " was asked. Give up the weight, the mould or the mix as it is: a lighter mix, a shape with more"
                        + " surface for its weight, or fewer of " + goal() + '.';
        };
    }

    private String goal() {
        return FloatSentence.chance(advice.goal().chance());
    }

    private String measure(MeasureNext next) {
        return "To know better: " + NextText.what(next, advice.forecast()) + "; then type   " + asked + ' '
                + NextText.option(next);
    }

    private static String chance(Appraisal standing) {
        return FloatSentence.chance(standing.chance()) + " float to the end";
    }

    /** What else moves, signed, and only what moves. */
    private String moved(Change change) {
        List<String> parts = new ArrayList<>();
        Appraisal before = advice.now();
        Appraisal after = change.appraisal();
        time(before.fizzTime(), after.fizzTime()).ifPresent(text -> parts.add("fizzes " + text));
        time(before.ready(), after.ready()).ifPresent(text -> parts.add("dry " + text));
        if (before.holds().isPresent() && after.holds().isPresent()) {
            double gain = after.holds().getAsDouble() - before.holds().getAsDouble();
            if (Math.abs(gain) > MOVED) {
                parts.add("holds with " + FloatSentence.chance(after.holds().getAsDouble()) + " in place of "
                        + FloatSentence.chance(before.holds().getAsDouble()));
            }
        }
        if (before.cost().isPresent() && after.cost().isPresent()) {
            double gain = after.cost().getAsDouble() - before.cost().getAsDouble();
            if (Math.abs(gain) >= 0.005) {
                parts.add((gain > 0 ? "+" : "-") + String.format(java.util.Locale.ROOT, "%.2f", Math.abs(gain))
                        + " of your money a piece");
            }
        }
        return parts.isEmpty() ? "" : "; " + String.join(", ", parts);
    }

    private static Optional<String> time(Optional<Interval> before, Optional<Interval> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double gain = after.get().median() - before.get().median();
        return Math.abs(gain) < MOVED * before.get().median()
                ? Optional.empty()
                : Optional.of(FateText.duration(Math.abs(gain)) + (gain > 0 ? " longer" : " less"));
    }

    static String steps(Change change) {
        List<String> words = new ArrayList<>();
        for (Step step : change.steps()) {
            words.add(StepWords.of(step));
        }
        return String.join(", and ", words);
    }

    private static String caution(Optional<Change.Caution> caution) {
        return caution.isPresent() ? ". " + words(caution.get()) : "";
    }

    static String words(Change.Caution caution) {
        return switch (caution) {
            case FOAMING_POWDER -> "Foaming powder dust irritates: wear a mask; the bath becomes slippery.";
            case ACID_DUST -> "Acid dust irritates eyes and airways: wear a mask and goggles.";
            case MAY_CRUMBLE -> "It is more likely to crumble: press one and look.";
            case LABEL -> "A changed mix needs a changed label, and local rules may ask for more.";
        };
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
