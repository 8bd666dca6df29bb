package org.fizzhull.recipe;

import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;

/** Reads what something costs, in whatever money. */
final class Price {
    private Price() {}

    /** Own money per kilogram. */
    static double perKilogram(Ingredient of, String text, Measures measures) {
        String field = "prices, " + of.name();
        int slash = text.indexOf('/');
        String per = slash < 0 ? "" : text.substring(slash + 1).strip();
        if (per.isEmpty()) {
            throw new Refusal("missing-unit", field, text, "money / mass, for example 3.10 / kg or 4.50 / 500 g", "");
        }
        // money is a plain number: read as percent, the one unit without a scale of its own
        double money = QuantityText.parseExact(field, text.substring(0, slash).strip() + " %", Dimension.FRACTION) * 100;
        String amountText = Character.isDigit(per.charAt(0)) ? per : "1 " + per;
        Amount amount = QuantityText.parseAny(field, amountText, measures, Dimension.MASS, Dimension.VOLUME);
        double mass = amount.dimension() == Dimension.MASS
                ? amount.value()
                : amount.value() * of.scoopDensity().value();
        if (!(money >= 0 && mass > 0)) {
            throw new Refusal("out-of-range", field, text, "0 or more for more than 0 g", "");
        }
        return money / mass;
    }
}
