package org.fizzhull.cli.floating;

import org.fizzhull.cli.text.NumberText;
import org.fizzhull.cli.text.ShapeWords;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.forecast.FloatVerdict;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.forecast.result.Probability;

/**
 * The first sentences of a forecast: how likely it floats to the end, why, and what share of a batch does. Everything is
 * rendered from the values of the {@link FloatVerdict}.
 */
public final class FloatSentence {
    /** Above this chance what becomes of the last tenth is told. */
    private static final double AS_A_RULE = 0.5;

    private FloatSentence() {}

    static String of(Forecast forecast) {
        String piece = grams(forecast, forecast.piece().mass()) + " in "
                + ShapeWords.piece(forecast.question().shape());
        String limit = limit(forecast);
        String first = forecast.effervescence()
                .flatMap(Effervescence::notice)
                .map(notice -> notice.text() + ' ')
                .orElse("");
        if (forecast.probability().isEmpty()) {
            boolean floats = forecast.verdict().answer() == FloatVerdict.Answer.FLOATS;
            return first + "By the central values: " + piece
                    + (floats ? ", floats to the end: " : ", does not float to the end: ") + limit + reason(forecast)
                    + '.';
        }
        return first + opening(forecast, piece) + limit + reason(forecast) + '.' + chance(forecast) + last(forecast);
    }

    private static String opening(Forecast forecast, String piece) {
        boolean batch = forecast.share().isPresent();
        if (forecast.verdict().answer() == FloatVerdict.Answer.CANNOT_TELL) {
            return "Cannot tell yet: " + piece
                    + (batch
                            ? ", of which nearly all may float to the end or nearly none: "
                            : ", whether it floats to the end: ");
        }
        String word = word(forecast.likelihoodToTheEnd().orElseThrow());
        return word + ": " + piece + ", to float to the end: ";
    }

    /** A weight in the digits of the piece. */
    static String grams(Forecast forecast, double kilograms) {
        return NumberText.grams(kilograms, forecast.piece().mass());
    }

    /** The likelihood word as a sentence begins. */
    static String word(Probability.Likelihood likelihood) {
        String words = likelihood.words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** How far the piece is from the limit that governs. */
    static String limit(Forecast forecast) {
        Forecast.GoverningLimit limit = forecast.limit();
        String name = limit.kind() == Forecast.GoverningLimit.Kind.BOAT ? "rim limit" : "float limit";
        String mass = grams(forecast, limit.mass());
        String spare = grams(forecast, Math.abs(limit.spare()));
        if (spare.equals(grams(forecast, 0))) {
            return "just at its " + name + " of " + mass;
        }
        return spare + (limit.spare() > 0 ? " below its " : " over its ") + name + " of " + mass;
    }

    private static String reason(Forecast forecast) {
        boolean open = forecast.verdict().answer() == FloatVerdict.Answer.CANNOT_TELL
                || forecast.verdict().answer() == FloatVerdict.Answer.EITHER;
        return switch (forecast.verdict().reason()) {
            case LIGHT, HEAVY ->
                open && !forecast.question().stillWater() ? ", and clinging gas and soaking decide" : "";
            case GAS_LIFTS ->
                open
                        ? ", and whether the gas that clings to it lifts it decides"
                        : ", and the gas that clings to it lifts it";
            case SOAKS -> open ? ", and whether water soaks in decides" : ", but water soaks in and takes it down";
            case RIM ->
                forecast.spare() < 0
                        ? ", so its rim goes under"
                        : open
                                ? ", and whether its rim goes under on the way decides"
                                : ", but its rim goes under on the way";
            case LOAD -> ", but what it carries is heavier than water and takes it down";
        };
    }

    /** That the last of it goes down, of a piece that floats until then: crystals, or a shell that opens. */
    private static String last(Forecast forecast) {
        Probability p = forecast.probability().orElseThrow();
        double late = p.sinksLater().orElse(0) - (p.floatsAtOnce() - p.floatsToTheEnd());
        return forecast.verdict().answer() == FloatVerdict.Answer.FLOATS && late > AS_A_RULE
                ? " The last of it, less than a tenth, goes down."
                : "";
    }

    private static String chance(Forecast forecast) {
        if (forecast.share().isEmpty()) {
            return " The chance is "
                    + chance(forecast.probability().orElseThrow().floatsToTheEnd()) + '.';
        }
        CriticalWeights.BatchShare share = forecast.share().get();
        String text = " The chance that at least 9 of 10 of the batch float to the end is " + chance(share.nineOfTen());
        if (forecast.verdict().answer() == FloatVerdict.Answer.CANNOT_TELL) {
            return text + '.'; // which way is said already
        }
        if (share.undecided()) {
            return text
                    + (share.together()
                            ? "; either nearly all float or nearly none."
                            : "; nearly none may float, or nearly all.");
        }
        return text + "; of 100 pieces " + pieces(share) + " float.";
    }

    /** The share of a batch, as pieces of a hundred with its band. */
    static String pieces(CriticalWeights.BatchShare share) {
        long low = Math.round(100 * share.share().low());
        long high = Math.round(100 * share.share().high());
        String middle = NumberText.ofHundred(share.share().median());
        return low == high ? middle : middle + " (" + low + " to " + high + ')';
    }

    /** A chance in per cent; never 0 or 100, which draws cannot know. */
    public static String chance(double probability) {
        return NumberText.chance(probability);
    }
}
