package org.fizzhull.validation.check;

import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Unit;
import org.fizzhull.validation.table.Bindings;

/** Units as typed, in another unit. */
public final class QuantityChecks extends Bindings {
    public QuantityChecks() {
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
