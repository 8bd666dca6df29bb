package org.fizzhull.fizz;

import java.util.EnumMap;
import java.util.Map;
import org.fizzhull.quantity.Refusal;

/**
 * What of a piece reacts, in moles: {@code Reagents.none().withBicarbonate(1.19).withAcid(Acid.CITRIC, 0.26)}.
 *
 * @param bicarbonate of sodium or potassium, mol
 * @param carbonate of sodium or potassium, mol
 * @param magnesium of Epsom salt, mol: it frees no gas but binds citrate
 * @param acids mol of each acid; an acid that is not named is not there
 */
public record Reagents(double bicarbonate, double carbonate, double magnesium, Map<Acid, Double> acids) {
    /**
     * Refuses a negative or unknown amount; copies the map.
     *
     * @param bicarbonate of sodium or potassium, mol
     * @param carbonate of sodium or potassium, mol
     * @param magnesium of Epsom salt, mol: it frees no gas but binds citrate
     * @param acids mol of each acid; an acid that is not named is not there
     */
    public Reagents {
        check("bicarbonate", bicarbonate);
        check("carbonate", carbonate);
        check("magnesium", magnesium);
        acids.forEach((acid, moles) -> check(acid.words(), moles));
        acids = Map.copyOf(acids);
    }

    /** {@return reagents of a mix that holds nothing that reacts} */
    public static Reagents none() {
        return new Reagents(0, 0, 0, Map.of());
    }

    /**
     * {@return this reagents with this much bicarbonate in all, mol}
     *
     * @param moles amount, mol
     */
    public Reagents withBicarbonate(double moles) {
        return new Reagents(moles, carbonate, magnesium, acids);
    }

    /**
     * {@return this reagents with this much carbonate in all, mol}
     *
     * @param moles amount, mol
     */
    public Reagents withCarbonate(double moles) {
        return new Reagents(bicarbonate, moles, magnesium, acids);
    }

    /**
     * {@return this reagents with this much magnesium in all, mol}
     *
     * @param moles amount, mol
     */
    public Reagents withMagnesium(double moles) {
        return new Reagents(bicarbonate, carbonate, moles, acids);
    }

    /**
     * {@return this reagents with this much of an acid in all, mol}
     *
     * @param acid which acid
     * @param moles amount, mol
     */
    public Reagents withAcid(Acid acid, double moles) {
        Map<Acid, Double> changed = new EnumMap<>(Acid.class);
        changed.putAll(acids);
        changed.put(acid, moles);
        return new Reagents(bicarbonate, carbonate, magnesium, changed);
    }

    /**
     * {@return the amount of an acid, mol}
     *
     * @param acid which acid
     */
    public double acid(Acid acid) {
        return acids.getOrDefault(acid, 0.0);
    }

    /** {@return all acid groups that can free carbon dioxide, mol} */
    public double acidGroups() {
        double sum = 0;
        for (Acid acid : Acid.values()) {
            sum += acid.groups() * acid(acid);
        }
        return sum;
    }

    /** {@return all carbon, mol} */
    public double carbon() {
        return bicarbonate + carbonate;
    }

    private static void check(String field, double moles) {
        if (!(moles >= 0 && moles < Double.POSITIVE_INFINITY)) {
            throw new Refusal("out-of-range", field, moles + " mol", "0 mol or more", "An amount is never negative.");
        }
    }
}
