package org.fizzhull.recipe;

import java.io.Serializable;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.quantity.check.Given;

/**
 * What an ingredient costs, in whatever money the user counts in; no currency is known or converted.
 *
 * @param money price of one pack, 0 to 1e9
 * @param pack mass of one pack, kg, 0.1 g to 10 t
 */
public record Price(double money, double pack) implements Serializable {
    /**
     * Checks price and pack.
     *
     * @param money price of one pack, 0 to 1e9
     * @param pack mass of one pack, kg, 0.1 g to 10 t
     * @throws Refusal {@code out-of-range} for anything else, NaN too
     */
    public Price {
        if (!(money >= 0 && money <= MOST_MONEY && pack >= LEAST_PACK && pack <= MOST_PACK)) {
            throw new Refusal(
                    "out-of-range",
                    "prices",
                    money + " for " + pack * 1e3 + " g",
                    "0 to 1e9 for 0.1 g to 10 t",
                    "Check the amount behind the stroke and its unit.");
        }
    }

    /** Highest price of a pack, in any money: beyond it, the amount was misread. */
    private static final double MOST_MONEY = 1e9;

    /** Smallest pack, kg: pigments are sold by the gram. */
    private static final double LEAST_PACK = 0.1e-3;

    /** Largest pack, kg. */
    private static final double MOST_PACK = 1e4;

    /** {@return the price of one kilogram, in the user's own money} */
    public double perKilogram() {
        return money / pack;
    }

    /**
     * {@return the number of whole packs to buy; one part in 1e9 of a pack is taken for rounding}
     *
     * @param mass mass needed, kg, 0 or more
     */
    public int packs(double mass) {
        Given.finite("mass", mass);
        return (int) Math.ceil(mass / pack - 1e-9);
    }

    /**
     * {@return the price of an ingredient as written: {@code 3.10 / kg}, {@code 4.50 / 500 g}, {@code 2 / 250 mL}}
     *
     * @param of the ingredient, whose density turns a volume into mass
     * @param text money, a stroke and an amount; a unit alone is one of it
     * @param measures what a cup and the spoons hold
     * @throws Refusal {@code missing-unit} without an amount, {@code out-of-range} for an empty one
     */
    static Price read(Ingredient of, String text, Measures measures) {
        String field = "prices, " + of.name();
        int slash = text.indexOf('/');
        String per = slash < 0 ? "" : text.substring(slash + 1).strip();
        if (per.isEmpty()) {
            throw new Refusal(
                    "missing-unit",
                    field,
                    text,
                    "money / mass",
                    "For example 3.10 / kg or 4.50 / 500 g, no currency sign.");
        }
        String amountText = Character.isDigit(per.charAt(0)) ? per : "1 " + per;
        Amount amount = QuantityText.parseAny(field, amountText, measures, Dimension.MASS, Dimension.VOLUME);
        double mass = amount.dimension() == Dimension.MASS
                ? amount.value()
                : amount.value() * of.scoopDensity().value();
        if (!(mass > 0)) {
            throw new Refusal(
                    "out-of-range", field, text, "0 or more for more than 0 g", "Write a price such as 3.10 / kg.");
        }
        return new Price(BareNumber.read(field, text.substring(0, slash).strip()), mass);
    }
}
