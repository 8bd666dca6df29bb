package org.fizzhull.decide.why;

/**
 * One thing that may have gone another way than the maker thinks. How often each happens ({@link #weight}) is assumed, since no
 * survey is known; what the symptom and the measurements say of it is computed by {@link Diagnoser}. Size of each fault: see the
 * constants here and {@code Faults}.
 */
public enum Cause {
    /** More mix in the mould than planned: 5 to 15 % more. */
    TOO_MUCH_MIX(3, "too much mix in the mould", "weigh the mix for every mould, and do not top it up"),
    /** Pressed three times as hard as the word says. */
    PRESSED_TOO_HARD(2, "pressed harder than you think", "press by a fixed way down or a known weight on the plunger"),
    /** Pressed a third as hard as the word says. */
    PRESSED_TOO_LIGHTLY(
            2, "pressed less hard than you think", "press until it no longer gives, the same for every piece"),
    /** Out of the drying long before its time. */
    NOT_DRY_INSIDE(3, "not dry inside", "dry longer, and weigh one piece each day until it no longer loses"),
    /** Most of the fizz was gone before the bath. */
    LOST_ITS_FIZZ(
            2,
            "lost its fizz before the bath",
            "work with dry powders, less liquid, and keep pieces wrapped in dry air"),
    /** The clinging gas is half as thick as usual: bubbles of half the size. */
    LITTLE_CLINGING_GAS(
            1,
            "the gas on it is thin or lets go early",
            "do not lean on clinging gas: make the piece a little lighter"),
    /** The mould is smaller than it is taken for, across by {@link #SMALLER} with {@link #sizeSpread}. */
    MOULD_SMALLER(
            1,
            "the mould is smaller than you think",
            "fill the mould with water, weigh that, and give the size that holds as much"),
    /** Much water got into the pores: a wet skin four times as deep as usual. */
    WATER_SOAKED_IN(
            1,
            "water soaked in",
            "do not lean on dry pores: make the piece a little lighter, or press it a word harder"),
    /** A powder is heavier than the table has it. */
    HEAVY_POWDER(1, "a powder is heavier than the table has it", "weigh a level cup of each powder against the table"),
    /** The hollow filled when it was put in. */
    RIM_DIPPED(
            2, "the rim dipped under as it was put in", "set it down level, on still water, with a dry hand under it"),
    /** Half as much liquid again went into the mix. */
    TOO_MUCH_LIQUID(3, "too much liquid in the mix", "weigh the liquids, and spray them on in steps"),
    /** Half of the liquid was missing. */
    TOO_LITTLE_LIQUID(3, "too little liquid in the mix", "weigh the liquids, and press a test piece before the batch"),
    /** The room was damper than it was taken for: by 15 to 20 % relative humidity. */
    DAMP_ROOM(
            2,
            "the room is damper than you think",
            "put a hygrometer beside the pieces, and dry the air or wait longer"),
    /** None of these: the design itself, all as planned, or something that is not computed. */
    SOMETHING_ELSE(4, "the plan itself, or something else", "change the plan: as planned it may do the same again");

    /** By how much the mould is smaller across, m: the middle of 1 to 3 mm. */
    static final double SMALLER = 2e-3;

    /** One standard deviation of an excess that is even from 5 to 15 % of the weight. */
    private static final double EXCESS_SPREAD = 0.1 / Math.sqrt(12);

    /** One standard deviation of a size that is evenly spread from 1 to 3 mm too small, m. */
    private static final double SIZE_SPREAD = 2e-3 / Math.sqrt(12);

    /** Relative standard deviation of the water that is left after a tenth to four tenths of the drying time. */
    private static final double WATER_SPREAD = 0.6;

    /** Prior weight, relative to the others. */
    private final double weight;
    /** The cause for people, and the value of the key {@code cause}. */
    private final String words;
    /** What to do the next time, without its full stop. */
    private final String mend;

    Cause(double weight, String words, String mend) {
        this.weight = weight;
        this.words = words;
        this.mend = mend;
    }

    /** {@return the cause for people} */
    public String words() {
        return words;
    }

    /** {@return what to do about it the next time, without its full stop} */
    public String mend() {
        return mend;
    }

    /** {@return the relative standard deviation that the size of the fault puts on the weight of a piece; assumed, 0 for most} */
    public double weightSpread() {
        return this == TOO_MUCH_MIX ? EXCESS_SPREAD : 0;
    }

    /** {@return the standard deviation that the size of the fault puts on what lies across a piece, m; assumed, 0 for most} */
    public double sizeSpread() {
        return this == MOULD_SMALLER ? SIZE_SPREAD : 0;
    }

    /** {@return the relative standard deviation that the size of the fault puts on the water left in a piece; assumed, 0 for most} */
    public double waterSpread() {
        return this == NOT_DRY_INSIDE ? WATER_SPREAD : 0;
    }

    /** {@return the prior weight, relative to the others; assumed} */
    public double weight() {
        return weight;
    }
}
