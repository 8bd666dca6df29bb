package org.fizzhull.fizz;

import java.util.EnumMap;
import java.util.Map;
import org.fizzhull.fizz.gas.Yield;
import org.fizzhull.quantity.Refusal;

/**
 * What of a piece reacts in the bath, in moles: {@code Reagents.none().withBicarbonate(1.19).withAcid(Acid.CITRIC, 0.26)}.
 * Taken by {@link BathChemistry} and {@link Yield}. Immutable.
 *
 * @param bicarbonate sodium and potassium bicarbonate, mol
 * @param carbonate sodium and potassium carbonate, mol
 * @param magnesium magnesium of Epsom salt, mol: it frees no gas but binds citrate
 * @param acids mol of each acid; an acid that is not named is not there
 */
public record Reagents(double bicarbonate, double carbonate, double magnesium, Map<Acid, Double> acids) {
    /** Difference of acid and what it could react with, over the larger, up to which neither runs out first. */
    private static final double BALANCED_WITHIN = 0.01;

    /**
     * Checks the amounts and copies the map.
     *
     * @param bicarbonate sodium and potassium bicarbonate, mol, 0 or more
     * @param carbonate sodium and potassium carbonate, mol, 0 or more
     * @param magnesium magnesium of Epsom salt, mol, 0 or more
     * @param acids mol of each acid, 0 or more; an acid that is not named is not there
     * @throws Refusal {@code out-of-range} for a negative or infinite amount, or NaN
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
     * {@return the same reagents with another amount of bicarbonate}
     *
     * @param moles bicarbonate in all, mol
     */
    public Reagents withBicarbonate(double moles) {
        return new Reagents(moles, carbonate, magnesium, acids);
    }

    /**
     * {@return the same reagents with another amount of carbonate}
     *
     * @param moles carbonate in all, mol
     */
    public Reagents withCarbonate(double moles) {
        return new Reagents(bicarbonate, moles, magnesium, acids);
    }

    /**
     * {@return the same reagents with another amount of magnesium}
     *
     * @param moles magnesium in all, mol
     */
    public Reagents withMagnesium(double moles) {
        return new Reagents(bicarbonate, carbonate, moles, acids);
    }

    /**
     * {@return the same reagents with another amount of one acid}
     *
     * @param acid which acid
     * @param moles of that acid in all, mol
     */
    public Reagents withAcid(Acid acid, double moles) {
        Map<Acid, Double> changed = new EnumMap<>(Acid.class);
        changed.putAll(acids);
        changed.put(acid, moles);
        return new Reagents(bicarbonate, carbonate, magnesium, changed);
    }

    /**
     * {@return the amount of an acid, mol; 0 where there is none}
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

    /** {@return the carbon of bicarbonate and carbonate, mol} */
    public double carbon() {
        return bicarbonate + carbonate;
    }

    private static void check(String field, double moles) {
        if (!(moles >= 0 && moles < Double.POSITIVE_INFINITY)) {
            throw new Refusal("out-of-range", field, moles + " mol", "0 mol or more", "An amount is never negative.");
        }
    }

    /**
     * {@return what they give} Each carbonate takes one proton to become bicarbonate before any gas is free, so carbon
     * dioxide is min(bicarbonate + carbonate, acid groups - carbonate).
     */
    public Yield theoreticalYield() {
        double groups = acidGroups();
        // carbonate that becomes bicarbonate, then bicarbonate that becomes gas
        double turned = Math.min(groups, carbonate());
        double protons = groups - turned;
        double available = bicarbonate() + turned;
        double gas = Math.min(protons, available);
        double needed = bicarbonate() + 2 * carbonate();
        return new Yield(limiting(groups, needed), gas, gas, available - gas, carbonate() - turned, protons - gas);
    }

    /** What runs out first, of acid groups and the groups they could react with, mol. */
    private static Yield.Limiting limiting(double groups, double needed) {
        if (Math.abs(groups - needed) <= BALANCED_WITHIN * Math.max(groups, needed)) {
            return Yield.Limiting.BALANCED;
        }
        return groups < needed ? Yield.Limiting.ACID : Yield.Limiting.BICARBONATE;
    }
}
