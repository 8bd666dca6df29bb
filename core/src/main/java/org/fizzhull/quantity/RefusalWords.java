package org.fizzhull.quantity;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Words for what could not be read: one place for the sentences, the lists of units and the corrections, so that every
 * reader of this package refuses in the same words. For {@code 65} as a length: "65 has no unit; write 65 mm or 6.5
 * cm." The codes are listed in the package description. Immutable, one to a text.
 */
final class RefusalWords {
    /** Characters of an input that a message repeats. */
    private static final int LONGEST_SHOWN = 60;

    /** Name under which the value was given. */
    private final String field;
    /** What the person wrote. */
    private final String text;
    /** What may be measured, the likeliest first. */
    private final Dimension[] wanted;

    RefusalWords(String field, String text, Dimension[] wanted) {
        this.field = Objects.requireNonNull(field, "field");
        this.text = Objects.requireNonNull(text, "text");
        this.wanted = wanted;
    }

    /** What was read, on one line and of bounded length. */
    static String shown(String text) {
        return PrintableText.of(text, LONGEST_SHOWN);
    }

    /** A refusal with the correction as a sentence; empty when none is known. */
    Refusal because(String code, String hint) {
        return new Refusal(code, field, shown(text), allowed(wanted), hint);
    }

    /** Nothing was written. */
    Refusal missingValue() {
        return because("missing-value", "Write a number and a unit, such as " + wanted[0].example() + ".");
    }

    /**
     * A number without a unit, {@code 65} alone: proposes the same number in the first unit of the dimension, and that
     * amount in the second; of a temperature the same number in both, for 100 may be either.
     */
    Refusal missingUnit(String number, double value) {
        String has = number + " has no unit; write ";
        // a fraction has one unit alone: a number up to 1 may be meant as a part of one
        Unit first = units(wanted[0]).get(0);
        String same = number + " " + first.symbol();
        if (wanted[0] == Dimension.FRACTION) {
            boolean part = value > 0 && value <= 1;
            String whole = part ? ", or " + Decimals.text(100 * value, 6) + " % for that part of the whole." : ".";
            return because("missing-unit", has + same + whole);
        }
        if (wanted[0] == Dimension.TEMPERATURE) {
            return because("missing-unit", has + same + " or " + number + ' ' + Unit.FAHRENHEIT.symbol() + '.');
        }
        Unit second = units(wanted[0]).get(1);
        double other = second.fromSi(first.toSi(value));
        boolean finite = Double.isFinite(other);
        return because(
                "missing-unit",
                has + same + (finite ? " or " + Decimals.text(other, 4) + " " + second.symbol() : "") + ".");
    }

    /** A word that is no unit, after a number or alone: the nearest unit, or what the word leaves open. */
    Refusal unknownUnit(String number, String token) {
        // a word with two meanings is explained; any other is compared with the names of units
        String known = UnitNames.twoMeanings(token);
        if (!known.isEmpty()) {
            return because("unknown-unit", known);
        }
        String near = UnitNames.nearest(token, wanted);
        String says = shown(token) + " is no unit known here.";
        String mend = number.isEmpty() ? near : number + " " + near;
        return because("unknown-unit", near.isEmpty() ? says : says + " Did you mean " + mend + "?");
    }

    /** A unit of something else than was asked for, with the correction where two units are often mixed up. */
    Refusal wrongDimension(Unit read) {
        StringBuilder hint = new StringBuilder(read.symbol())
                .append(" measures ")
                .append(read.dimension().noun());
        hint.append(", and ").append(listed(Dimension::noun, wanted)).append(" is needed.");
        Dimension needed = wanted[0];
        if (read.dimension() == Dimension.VOLUME && needed == Dimension.MASS) {
            hint.append(" Weigh it and write g");
            hint.append(read == Unit.FLUID_OUNCE ? "; an ounce of mass is oz." : ".");
        } else if (read == Unit.OUNCE && needed == Dimension.VOLUME) {
            hint.append(" An ounce of liquid is fl oz.");
        } else if (read == Unit.METRE && needed == Dimension.DURATION) {
            hint.append(" Minutes are min.");
        } else if (read == Unit.MINUTE && needed == Dimension.LENGTH) {
            hint.append(" Metres are m.");
        }
        return because("wrong-dimension", hint.toString());
    }

    /**
     * What is allowed in words: {@code a length with a unit: mm, cm, m, in, ft or um}; of several kinds an example
     * each.
     */
    static String allowed(Dimension... dimensions) {
        if (dimensions.length > 1) {
            return listed(Dimension::noun, dimensions) + " with a unit, such as "
                    + listed(Dimension::example, dimensions);
        }
        List<String> symbols = units(dimensions[0]).stream().map(Unit::symbol).toList();
        return dimensions[0].noun() + " with a unit: " + NearName.list(symbols, "or");
    }

    /** Whether a dimension is one of several. */
    static boolean among(Dimension dimension, Dimension... dimensions) {
        return List.of(dimensions).contains(dimension);
    }

    /** What each dimension says, with commas and "or" between. */
    private static String listed(Function<Dimension, String> says, Dimension... dimensions) {
        return NearName.list(Stream.of(dimensions).map(says).toList(), "or");
    }

    /** Units of a dimension, the usual one first. */
    private static List<Unit> units(Dimension dimension) {
        return Stream.of(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .toList();
    }

    /** What stands where a number should, and why it is none. */
    Refusal notANumber(String why) {
        return because("not-a-number", why + " Write a number and a unit, such as " + wanted[0].example() + ".");
    }
}
