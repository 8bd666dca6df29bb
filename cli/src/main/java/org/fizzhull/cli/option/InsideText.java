package org.fizzhull.cli.option;

import java.util.OptionalDouble;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;

/**
 * A thing pressed into a piece as a person writes it: {@code 8 g, 25 mL[, 20 mm up][, 10 mm aside]}, in any order. Up is
 * from the lowest point as the shape is listed, aside from the upright line through its middle, along x.
 */
record InsideText(String field, Inset thing, OptionalDouble up, OptionalDouble aside) {
    private static final String ALLOWED =
            "a mass and a volume, such as 8 g, 25 mL or 8 g, 25 mL, 20 mm up, 10 mm aside";

    /** Reads one. */
    static InsideText read(String field, String text) {
        double[] value = new double[4];
        boolean[] met = new boolean[4];
        for (String words : QuantityText.parts(text)) {
            nameless(field, words);
            String way = words.endsWith(" up") ? " up" : words.endsWith(" aside") ? " aside" : "";
            int which;
            Amount amount;
            if (way.isEmpty()) {
                amount = QuantityText.parseAny(
                        field, words, Measures.US_LEGAL, Dimension.MASS, Dimension.VOLUME, Dimension.LENGTH);
                which = switch (amount.dimension()) {
                    case MASS -> 0;
                    case VOLUME -> 1;
                    default ->
                        throw new Refusal(
                                "unreadable",
                                field,
                                words,
                                ALLOWED,
                                "A length says where it lies: write " + words + " up or " + words + " aside.");
                };
            } else {
                String length = words.substring(0, words.length() - way.length());
                amount = QuantityText.parse(field, length, Dimension.LENGTH);
                which = way.equals(" up") ? 2 : 3;
            }
            if (!amount.isExact()) {
                throw new Refusal("spread-not-allowed", field, words, ALLOWED, "Write one value without a spread.");
            }
            if (met[which]) {
                throw new Refusal("repeated-part", field, text, ALLOWED, "Leave out one of the two: " + words + ".");
            }
            met[which] = true;
            value[which] = amount.value();
        }
        if (!met[0] || !met[1]) {
            throw new Refusal(
                    "missing-part",
                    field,
                    text,
                    ALLOWED,
                    met[0]
                            ? "Add its volume: put it in a full glass and weigh what runs over, 1 g is 1 mL."
                            : "Add its mass: put it on the scale.");
        }
        return new InsideText(
                field,
                new Inset(value[0], value[1]),
                met[2] ? OptionalDouble.of(value[2]) : OptionalDouble.empty(),
                met[3] ? OptionalDouble.of(value[3]) : OptionalDouble.empty());
    }

    /** A name is not asked for, and would hide the numbers behind it. */
    private static void nameless(String field, String words) {
        if (words.isEmpty() || !Character.isLetter(words.charAt(0))) {
            return;
        }
        int digit = 0;
        while (digit < words.length() && !Character.isDigit(words.charAt(digit))) {
            digit++;
        }
        String rest = words.substring(digit);
        throw new Refusal(
                "unreadable",
                field,
                words,
                ALLOWED,
                rest.isEmpty()
                        ? "Say what it weighs and how much room it takes; a name is not needed."
                        : "Leave out the name and write " + rest + ", with a comma before the next part.");
    }

    /** The shape with the thing in it, in the middle of its material unless told otherwise. */
    Loaded in(Shape shape) {
        if (up.isEmpty() && aside.isEmpty()) {
            return Loaded.with(shape, thing);
        }
        if (shape.hull().isEmpty()) {
            throw new Refusal(
                    "conflict",
                    field,
                    "a place in " + shape.text(),
                    "mass and volume alone",
                    "Which way up such a shape lies is not computed: leave out the place.");
        }
        Vec3 middle = shape.bare().centroid();
        return Loaded.with(shape, thing, new Vec3(middle.x() + aside.orElse(0), middle.y(), up.orElse(middle.z())));
    }
}
