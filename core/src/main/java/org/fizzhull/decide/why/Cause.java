package org.fizzhull.decide.why;

/**
 * One thing that may have gone another way than the maker thinks. How often each happens is assumed (no survey is known);
 * what the symptom and the measurements say of it is computed.
 */
public enum Cause {
    /** More mix in the mould than planned: 5 to 15 % more. */
    TOO_MUCH_MIX(3),
    /** Pressed three times as hard as the word says. */
    PRESSED_TOO_HARD(2),
    /** Pressed a third as hard as the word says. */
    PRESSED_TOO_LIGHTLY(2),
    /** Out of the drying long before its time. */
    NOT_DRY_INSIDE(3),
    /** Most of the fizz was gone before the bath. */
    LOST_ITS_FIZZ(2),
    /** The clinging gas is thinner than usual, or lets go early. */
    LITTLE_CLINGING_GAS(1),
    /** The mould is smaller than it is taken for: by 1 to 3 mm across. */
    MOULD_SMALLER(1),
    /** Much water got into the pores. */
    WATER_SOAKED_IN(1),
    /** A powder is heavier than the table has it. */
    HEAVY_POWDER(1),
    /** The hollow filled when it was put in. */
    RIM_DIPPED(2),
    /** Half as much liquid again went into the mix. */
    TOO_MUCH_LIQUID(3),
    /** Half of the liquid was missing. */
    TOO_LITTLE_LIQUID(3),
    /** The room was damper than it was taken for: by 15 to 20 % relative humidity. */
    DAMP_ROOM(2),
    /** None of these: the design itself, all as planned, or something that is not computed. */
    SOMETHING_ELSE(4);

    /** One standard deviation of an excess that is even from 5 to 15 % of the weight. */
    private static final double EXCESS_SPREAD = 0.1 / Math.sqrt(12);

    /** One standard deviation of a size that is even from 1 to 3 mm too small, m. */
    private static final double SIZE_SPREAD = 2e-3 / Math.sqrt(12);

    /** Of the water left after a tenth to four tenths of the time, one standard deviation. */
    private static final double WATER_SPREAD = 0.6;

    private final double weight;

    Cause(double weight) {
        this.weight = weight;
    }

    /** How far the size of the fault itself varies, as one standard deviation of the weight of a piece; assumed. */
    public double weightSpread() {
        return this == TOO_MUCH_MIX ? EXCESS_SPREAD : 0;
    }

    /** How far the size of the fault itself varies, as one standard deviation of what lies across a piece, m; assumed. */
    public double sizeSpread() {
        return this == MOULD_SMALLER ? SIZE_SPREAD : 0;
    }

    /** How far the water that is left varies with the size of the fault, as one standard deviation of it; assumed. */
    public double waterSpread() {
        return this == NOT_DRY_INSIDE ? WATER_SPREAD : 0;
    }

    /** Prior weight, relative to the others; assumed. */
    public double weight() {
        return weight;
    }
}
