package org.fizzhull.cli.deciding;

import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.shape.text.ShapeText;

/** A step in a maker's words, and as the options that do it. */
final class StepWords {
    private StepWords() {}

    /** What to do: {@code 5 g less damp mix: 141 g in place of 146 g}. */
    static String of(Change.Step step) {
        String from = setting(step.from());
        String to = setting(step.to());
        return switch (step.kind()) {
            case WEIGHT -> "make each piece lighter: " + to + " in place of " + from;
            case PRESS -> "press less hard: " + to + " in place of " + from;
            case LIQUID ->
                to(step) > from(step)
                        ? "more " + step.subject() + ": " + to + " in place of " + from
                        : "less " + step.subject() + ": " + to + " in place of " + from;
            case POWDER ->
                from(step) <= 0
                        ? "put in " + to + " of " + step.subject()
                        : to(step) <= 1e-6
                                ? "leave out the " + step.subject() + " (" + from + ")"
                                : (to(step) > from(step) ? "more " : "less ") + step.subject() + ": " + to
                                        + " in place of " + from;
            case SWAP -> swap(step);
            case DRYING_TIME -> "dry longer: " + to + " in place of " + from;
            case ROOM_HUMIDITY -> "dry in drier air: " + to + " humidity in place of " + from;
            case MOULD_SIZE, MOULD_KIND -> "take another mould: " + to;
            case INTO_BATH -> "set it down on the water, open side up, in place of dropping it in";
        };
    }

    private static String swap(Change.Step step) {
        return NumberText.grams(from(step) - to(step)) + " of " + step.replacement() + " in place of as much "
                + step.subject();
    }

    /** A setting in its unit. */
    static String setting(Change.Step.Setting setting) {
        if (setting instanceof Change.Step.Setting.Amount amount) {
            return amount.number() + NumberText.UNIT + amount.unit().symbol();
        }
        String text = setting.text();
        return text.indexOf('(') > 0 ? ShapeWords.piece(ShapeText.read(text)) : text;
    }

    static double from(Change.Step step) {
        return ((Change.Step.Setting.Amount) step.from()).si();
    }

    static double to(Change.Step step) {
        return ((Change.Step.Setting.Amount) step.to()).si();
    }
}
