package org.fizzhull.validation;

import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Unit;

/** Units as typed, in another unit. */
final class QuantityChecks extends Bindings {
    QuantityChecks() {
        super("quantity");
        bind("unit", in -> {
            Unit unit = unit(in.word("to"));
            return unit.fromSi(QuantityText.parseExact("check", in.word("typed"), unit.dimension(), Measures.US_LEGAL));
        });
    }

    private static Unit unit(String symbol) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalArgumentException("unknown unit " + symbol);
    }
}
