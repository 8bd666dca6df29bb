package org.fizzhull.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fizzhull.text.Commas;
import org.fizzhull.text.NearName;
import org.fizzhull.text.PrintableText;

/**
 * Words for what could not be read: one place for the sentences, the lists of units and the corrections, so that every
 * reader of this package refuses in the same words. For {@code 65} as a length: "65 has no unit; write 65 mm or 6.5
 * cm." A text is proposed only where the same reader takes it. The codes are listed in the package description.
 * Immutable, one to a text.
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
    /** Whether texts are proposed: not where a proposal itself is tried. */
    private final boolean proposing;

    RefusalWords(String field, String text, Dimension[] wanted) {
        this(field, text, wanted, true);
    }

    private RefusalWords(String field, String text, Dimension[] wanted, boolean proposing) {
        this.proposing = proposing;
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
        return because("missing-value", example());
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
        if (!reads(same)) {
            return because("missing-unit", shown(number) + " has no unit. " + example());
        }
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
        String converted = Decimals.text(other, 4) + " " + second.symbol();
        return because("missing-unit", has + same + (reads(converted) ? " or " + converted : "") + ".");
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
        boolean means = !near.isEmpty() && (number.isEmpty() || reads(mend));
        return because("unknown-unit", means ? says + " Did you mean " + mend + "?" : says);
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
        return because("not-a-number", why + " " + example());
    }

    /** A comma in or after a number: the whole text as it may be meant, with a point or without the comma. */
    Refusal comma(String plain, int comma) {
        if (!Commas.inNumber(plain, comma) && comma > 0) {
            String without = plain.substring(0, comma) + plain.substring(comma + 1);
            return because(
                    "comma-decimal",
                    reads(without)
                            ? "Leave out the comma: " + without + "."
                            : "Leave out the comma; decimals have a point. " + example());
        }
        String unit = " " + units(wanted[0]).get(0).symbol();
        List<String> meant = new ArrayList<>();
        for (String written : Commas.written(plain, comma)) {
            Stream.of(written, written + unit).filter(this::reads).findFirst().ifPresent(meant::add);
        }
        String hint = meant.isEmpty()
                ? "A number has one decimal sign, a point. " + example()
                : "Write " + meant.get(0) + ", with a point"
                        + (meant.size() > 1 ? ", or " + meant.get(1) + " for thousands." : ".");
        return because("comma-decimal", hint);
    }

    /** A dash between two numbers, which may be a minus. */
    Refusal dash(String low, String high) {
        String range = low + " to " + high;
        return because(
                "range-dash",
                "A dash could be a minus; for a range write " + (reads(range) ? range : "to, as in 4 to 8") + ".");
    }

    /** What follows a quantity that is complete without it. */
    Refusal extra(String before, String rest) {
        return because(
                "extra-text",
                reads(before)
                        ? "Leave out " + shown(rest) + " after " + before + "."
                        : "More stands here than one quantity. " + example());
    }

    /** Whether this package reads a text that is to be proposed, and a message shows all of it. */
    private boolean reads(String proposal) {
        if (!proposing || proposal.length() > LONGEST_SHOWN) {
            return false;
        }
        try {
            new QuantityReader(proposal, Measures.US_LEGAL, new RefusalWords(field, proposal, wanted, false), wanted)
                    .read();
            return true;
        } catch (Refusal refusal) {
            return false;
        }
    }

    /** A sentence with an example of what is needed. */
    private String example() {
        return "Write a number and a unit, such as " + wanted[0].example() + ".";
    }
}
