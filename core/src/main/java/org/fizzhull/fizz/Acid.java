package org.fizzhull.fizz;

/**
 * The dry acids of a mix, with what the chemistry of a bath needs of each: molar mass, acid groups that free carbon
 * dioxide, dissociation constants.
 */
public enum Acid {
    /** Citric acid; a mole of the monohydrate brings a mole of water too. */
    CITRIC("citric acid", MolarMass.CITRIC_ACID, 3, 0, Goldberg2002.CITRIC),
    /** Tartaric acid. */
    TARTARIC("tartaric acid", MolarMass.TARTARIC_ACID, 2, 0, Goldberg2002.TARTARIC),
    /** Malic acid. */
    MALIC("malic acid", MolarMass.MALIC_ACID, 2, 0, EdenBates1959.MALIC),
    /** Cream of tartar: tartaric acid with one proton replaced by potassium. */
    POTASSIUM_BITARTRATE("cream of tartar", MolarMass.POTASSIUM_BITARTRATE, 1, 1, Goldberg2002.TARTARIC),
    /** Ascorbic acid; its second proton never frees carbon dioxide. */
    ASCORBIC("ascorbic acid", MolarMass.ASCORBIC_ACID, 1, 0, RoomTemperatureAcid.ASCORBIC),
    /** Lactic acid. */
    LACTIC("lactic acid", MolarMass.LACTIC_ACID, 1, 0, RoomTemperatureAcid.LACTIC),
    /** Fumaric acid. */
    FUMARIC("fumaric acid", MolarMass.FUMARIC_ACID, 2, 0, RoomTemperatureAcid.FUMARIC);

    /** Its name in messages. */
    private final String words;
    /** Without crystal water, kg/mol. */
    private final double molarMass;
    /** Acid groups that can free carbon dioxide, mol per mol. */
    private final int groups;
    /** Acid groups already replaced by an alkali metal, mol per mol. */
    private final int replaced;

    private final AcidConstants constants;

    Acid(String words, double molarMass, int groups, int replaced, AcidConstants constants) {
        this.words = words;
        this.molarMass = molarMass;
        this.groups = groups;
        this.replaced = replaced;
        this.constants = constants;
    }

    /** {@return its name in messages} */
    public String words() {
        return words;
    }

    /** {@return the molar mass, kg/mol, without crystal water} */
    public double molarMass() {
        return molarMass;
    }

    /** {@return the acid groups that can free carbon dioxide, mol per mol} */
    public int groups() {
        return groups;
    }

    /** {@return the acid groups already replaced by an alkali metal, mol per mol} */
    public int replaced() {
        return replaced;
    }

    /** {@return its dissociation constants} */
    public AcidConstants constants() {
        return constants;
    }
}
