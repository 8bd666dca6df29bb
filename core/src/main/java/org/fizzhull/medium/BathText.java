package org.fizzhull.medium;

import java.util.List;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;

/**
 * A bath as people write it: {@code 38 C}, {@code 38 C, 35 cm}, {@code 100 F, 14 in}, {@code 38 C, 150 L, 35 cm}. The
 * temperature comes first; depth and volume follow in any order, each at most once, and are {@link Bath#DEFAULT_DEPTH}
 * and {@link Bath#DEFAULT_VOLUME} where they are left out.
 */
final class BathText {
    /** What is allowed, as messages word it. */
    private static final String FORM = "a temperature, then a depth or a volume or both, such as 38 C, 35 cm, 150 L";

    private BathText() {}

    /**
     * Reads a bath.
     *
     * @param field option or key that was read, for the refusal
     * @param text what the person wrote
     * @return the bath, without salt
     * @throws Refusal with a code of the package quantity, or {@code repeated-part}
     */
    static Bath parse(String field, String text) {
        Measures measures = Measures.US_LEGAL;
        List<String> parts = QuantityText.parts(text);
        double temperature = Bath.TEMPERATURE.parseExact(field, parts.get(0), measures);
        double depth = Double.NaN;
        double volume = Double.NaN;
        for (String part : parts.subList(1, parts.size())) {
            Amount amount = QuantityText.parseAny(field, part, measures, Dimension.LENGTH, Dimension.VOLUME);
            boolean isDepth = amount.dimension() == Dimension.LENGTH;
            double value = part(field, part, measures, isDepth);
            if (!Double.isNaN(isDepth ? depth : volume)) {
                String what = isDepth ? "depth" : "volume";
                throw new Refusal("repeated-part", field, text, FORM, "Give the " + what + " once.");
            }
            if (isDepth) {
                depth = value;
            } else {
                volume = value;
            }
        }
        return new Bath(
                temperature,
                Double.isNaN(depth) ? Bath.DEFAULT_DEPTH : depth,
                Double.isNaN(volume) ? Bath.DEFAULT_VOLUME : volume,
                0);
    }

    /** A depth or a volume; a refusal names the part. */
    private static double part(String field, String part, Measures measures, boolean isDepth) {
        try {
            return (isDepth ? Bath.DEPTH : Bath.VOLUME).parseExact(field, part, measures);
        } catch (Refusal refusal) {
            throw new Refusal(
                    refusal.code(),
                    refusal.field(),
                    refusal.read(),
                    (isDepth ? "a depth of the water " : "a volume of the water ") + refusal.allowed(),
                    refusal.hint());
        }
    }
}
