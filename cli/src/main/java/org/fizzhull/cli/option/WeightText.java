package org.fizzhull.cli.option;

import java.util.Arrays;
import java.util.List;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Unit;

/**
 * A weight as it is typed: of one piece, with or without a spread, or of several pieces of one batch with commas between.
 * Several are taken as their mean with the standard deviation of the sample.
 */
final class WeightText {
    private static final Allowed WEIGHT = Allowed.above(0, Unit.GRAM);

    private WeightText() {}

    static Amount read(String option, String text) {
        List<String> parts = parts(text);
        if (parts.size() == 1) {
            return WEIGHT.parse(option, text);
        }
        double[] weights = parts.stream()
                .mapToDouble(part -> WEIGHT.parseExact(option, part))
                .toArray();
        double mean = Arrays.stream(weights).average().orElseThrow();
        double squares =
                Arrays.stream(weights).map(weight -> Math.pow(weight - mean, 2)).sum();
        return Amount.normal(Dimension.MASS, mean, Math.sqrt(squares / (weights.length - 1)));
    }

    /** One of the last place as typed, kg; of several weights that of the first. */
    static double step(String option, String text) {
        return WEIGHT.parse(option, parts(text).get(0)).step();
    }

    /** The weights; the whole text where a part of it is empty. */
    private static List<String> parts(String text) {
        List<String> parts = QuantityText.parts(text);
        return parts.contains("") ? List.of(text) : parts;
    }
}
