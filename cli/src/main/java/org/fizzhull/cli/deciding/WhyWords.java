package org.fizzhull.cli.deciding;

import org.fizzhull.cli.floating.FateText;
import org.fizzhull.cli.text.Say;
import org.fizzhull.decide.why.Cause;
import org.fizzhull.decide.why.Check;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;

/** Causes and checks in a maker's words. */
public final class WhyWords {
    private WhyWords() {}

    /** A cause. */
    public static String of(Cause cause) {
        return switch (cause) {
            case TOO_MUCH_MIX -> "too much mix in the mould";
            case PRESSED_TOO_HARD -> "pressed harder than you think";
            case PRESSED_TOO_LIGHTLY -> "pressed less hard than you think";
            case NOT_DRY_INSIDE -> "not dry inside";
            case LOST_ITS_FIZZ -> "lost its fizz before the bath";
            case LITTLE_CLINGING_GAS -> "the gas on it is thin or lets go early";
            case MOULD_SMALLER -> "the mould is smaller than you think";
            case WATER_SOAKED_IN -> "water soaked in";
            case HEAVY_POWDER -> "a powder is heavier than the table has it";
            case RIM_DIPPED -> "the rim dipped under as it was put in";
            case TOO_MUCH_LIQUID -> "too much liquid in the mix";
            case TOO_LITTLE_LIQUID -> "too little liquid in the mix";
            case DAMP_ROOM -> "the room is damper than you think";
            case SOMETHING_ELSE -> "the plan itself, or something else";
        };
    }

    /** What to do about a cause the next time. */
    static String mend(Cause cause) {
        return switch (cause) {
            case TOO_MUCH_MIX -> "weigh the mix for every mould, and do not top it up";
            case PRESSED_TOO_HARD -> "press by a fixed way down or a known weight on the plunger";
            case PRESSED_TOO_LIGHTLY -> "press until it no longer gives, the same for every piece";
            case NOT_DRY_INSIDE -> "dry longer, and weigh one piece each day until it no longer loses";
            case LOST_ITS_FIZZ -> "work with dry powders, less liquid, and keep pieces wrapped in dry air";
            case LITTLE_CLINGING_GAS -> "do not lean on clinging gas: make the piece a little lighter";
            case MOULD_SMALLER -> "fill the mould with water, weigh that, and give the size that holds as much";
            case WATER_SOAKED_IN ->
                "do not lean on dry pores: make the piece a little lighter, or press it a word harder";
            case HEAVY_POWDER -> "weigh a level cup of each powder against the table";
            case RIM_DIPPED -> "set it down level, on still water, with a dry hand under it";
            case TOO_MUCH_LIQUID -> "weigh the liquids, and spray them on in steps";
            case TOO_LITTLE_LIQUID -> "weigh the liquids, and press a test piece before the batch";
            case DAMP_ROOM -> "put a hygrometer beside the pieces, and dry the air or wait longer";
            case SOMETHING_ELSE -> "change the plan: as planned it may do the same again";
        };
    }

    /** A check. */
    static String of(Check check) {
        return switch (check) {
            case WEIGH_A_PIECE -> "weigh a piece of the same batch";
            case MEASURE_ACROSS -> "measure a piece across";
            case TIME_THE_FIZZ -> "time how long a piece of the batch fizzes";
            case WEIGH_AFTER_TWO_DAYS ->
                "weigh a piece, leave it two days in a dry room, weigh it again: what it loses";
            case READ_A_HYGROMETER -> "read a hygrometer in the drying room";
        };
    }

    /** What a check would show, from to. */
    static String reading(Check check, Interval value) {
        double low = Math.max(0, value.low());
        return switch (check) {
            case WEIGH_A_PIECE, WEIGH_AFTER_TWO_DAYS -> Say.grams(low) + " to " + Say.grams(value.high());
            case MEASURE_ACROSS -> Say.millimetres(low) + " to " + Say.millimetres(value.high());
            case TIME_THE_FIZZ -> FateText.duration(low) + " to " + FateText.duration(value.high());
            case READ_A_HYGROMETER -> Say.percent(low) + " to " + Say.percent(Math.min(1, value.high()));
        };
    }

    /** One reading as it is typed in {@code --seen}. */
    public static String typed(Check check, double si) {
        return switch (check) {
            case WEIGH_A_PIECE -> tenths(Units.inGrams(si)) + " g";
            case MEASURE_ACROSS -> "across " + tenths(Units.inMillimetres(si)) + " mm";
            case TIME_THE_FIZZ -> "fizzed " + Say.whole(si) + " s";
            case WEIGH_AFTER_TWO_DAYS -> "lost " + tenths(Units.inGrams(Math.max(1e-4, si))) + " g";
            case READ_A_HYGROMETER -> "room " + Say.whole(100 * si) + " %";
        };
    }

    private static String tenths(double value) {
        return Decimals.text(Math.rint(10 * value) / 10, 6);
    }
}
