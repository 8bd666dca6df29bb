package org.fizzhull.cli.option;

import org.fizzhull.quantity.Refusal;

/**
 * Why a measurement cannot count for what is asked: one of a bench file is passed over with it, one that was typed is refused.
 *
 * @param shortly of one in a bench file
 * @param code of the refusal
 * @param beside what stands against the measurement, behind its text in the refusal; empty for nothing
 * @param allowed what would be accepted
 * @param hint how to mend it
 */
public record Unfit(String shortly, String code, String beside, String allowed, String hint) {
    static final Unfit SEVERAL_BATHS = new Unfit(
            "several baths are asked about",
            "conflict",
            " and several baths",
            "one of the two",
            "A measurement is of one bath: leave out --baths, or learn from it (--bench bench.yaml).");

    static final Unfit STILL_WATER = new Unfit(
            "still water does not fizz",
            "conflict",
            " and " + QuestionOptions.NO_FIZZ,
            "one of the two",
            "Still water neither fizzes nor lifts a sunk piece: leave out one of them.");

    static final Unfit OTHER_MOULD = new Unfit(
            "of another mould",
            "conflict",
            "",
            "a piece of the mould that is asked about",
            "What a piece of another mould tells goes into compare, or into a sheet of trials for learn.");

    /** A measurement is of one mix, and so many recipes are compared. */
    public static Unfit severalRecipes(int recipes) {
        return new Unfit(
                "several recipes are compared",
                "conflict",
                " for " + recipes + " recipes",
                "one recipe",
                "A measurement is of one mix. Compare the moulds of one recipe, or write it into a sheet of trials and"
                        + " learn from that: --bench bench.yaml.");
    }

    /** Several moulds are asked about, and the measurement, repeated in the correction, names none. */
    public static Unfit withoutMould(String text) {
        return new Unfit(
                "names no mould",
                "missing-value",
                "",
                "the mould of that piece behind it, such as " + text + " in sphere(diameter=65 mm)",
                "Several moulds are compared: say which of them, or which other mould, it came from.");
    }

    /** The refusal of a measurement that was typed. */
    public Refusal refusal(String option, String text) {
        return new Refusal(code, option, text + beside, allowed, hint);
    }
}
