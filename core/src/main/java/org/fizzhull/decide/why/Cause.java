package org.fizzhull.decide.why;

/**
 * One thing that may have gone another way than the maker thinks. How often each happens is assumed (no survey is known);
 * what the symptom and the measurements say of it is computed.
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
    /** The clinging gas is thinner than usual, or lets go early. */
    LITTLE_CLINGING_GAS(
            1,
            "the gas on it is thin or lets go early",
            "do not lean on clinging gas: make the piece a little lighter"),
    /** The mould is smaller than it is taken for: by 1 to 3 mm across. */
    MOULD_SMALLER(
            1,
            "the mould is smaller than you think",
            "fill the mould with water, weigh that, and give the size that holds as much"),
    /** Much water got into the pores. */
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

    /** One standard deviation of how much more mix than the usual excess, of the weight (assumed). */
    private static final double EXCESS_SPREAD = 0.03;

    private final double weight;
    private final String words;
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

    /**
     * {@return how far the size of the fault itself varies, as one standard deviation of the weight of a piece;
     * assumed}
     */
    public double weightSpread() {
        return this == TOO_MUCH_MIX ? EXCESS_SPREAD : 0;
    }

    /** {@return prior weight, relative to the others; assumed} */
    public double weight() {
        return weight;
    }
}
