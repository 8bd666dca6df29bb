package org.fizzhull.cli.deciding;

import java.util.Locale;
import java.util.OptionalDouble;
import org.fizzhull.cli.floating.FloatSentence;
import org.fizzhull.cli.floating.OutcomeText;
import org.fizzhull.cli.text.NumberText;
import org.fizzhull.decide.effect.Effect;

/** What a change does besides floating, in a maker's words. */
final class EffectWords {
    private EffectWords() {}

    /** What moves, signed. */
    static String of(Effect effect) {
        OptionalDouble before = effect.before();
        OptionalDouble after = effect.after();
        double gain = effect.gain();
        String sign = gain < 0 ? "-" : "+";
        return switch (effect.what()) {
            case WEIGHT -> sign + NumberText.tenths(Math.abs(gain)) + NumberText.UNIT + "g";
            case FIZZ -> "fizz " + sign + OutcomeText.duration(Math.abs(gain));
            case READY ->
                before.isEmpty()
                        ? "dry after " + hours(after.getAsDouble()) + ", was not within 60 days"
                        : after.isEmpty() ? "not dry within 60 days" : "dry " + sign + hours(Math.abs(gain));
            case HOLDS ->
                "holds " + FloatSentence.chance(after.getAsDouble()) + ", was "
                        + FloatSentence.chance(before.getAsDouble());
            case COST -> "cost " + sign + String.format(Locale.ROOT, "%.2f", Math.abs(gain));
        };
    }

    /** Hours up to two days, then days. */
    private static String hours(double hours) {
        return hours < 48
                ? NumberText.whole(hours) + NumberText.UNIT + 'h'
                : NumberText.tenths(hours / 24) + NumberText.UNIT + "days";
    }
}
