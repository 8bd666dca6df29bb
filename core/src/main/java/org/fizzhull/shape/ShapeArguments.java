package org.fizzhull.shape;

import java.util.List;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.NearName;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;

/** The values of a call, asked for by key and converted to SI. */
record ShapeArguments(ShapeKind kind, ShapeCall call) {
    /** Refuses keys the kind does not have and asks for those it needs. */
    ShapeArguments {
        List<String> known = kind.keys();
        for (String key : call.keys()) {
            if (!known.contains(key)) {
                String near = NearName.hint(key, known);
                throw new Refusal(
                        "unknown-key",
                        SizeCheck.field(key),
                        key + "="
                                + ShapeCall.shown(call.values().get(call.keys().indexOf(key))),
                        ShapeKinds.list(known, "and") + " of a " + kind.name(),
                        near.isEmpty() ? "Write it as " + kind.usage() + "." : near);
            }
        }
        for (ShapeParameter parameter : kind.parameters()) {
            if (parameter.required() && !call.keys().contains(parameter.key())) {
                throw new Refusal(
                        "missing-key",
                        SizeCheck.field(parameter.key()),
                        "",
                        parameter.key() + ", " + parameter.meaning(),
                        "Add " + parameter.key() + ", as in " + kind.example() + ".");
            }
        }
    }

    boolean has(String key) {
        return call.keys().contains(key);
    }

    String word(String key) {
        return call.values().get(call.keys().indexOf(key));
    }

    double length(String key) {
        return QuantityText.parseExact(SizeCheck.field(key), word(key), Dimension.LENGTH);
    }

    double length(String key, double standard) {
        return has(key) ? length(key) : standard;
    }

    double mass(String key) {
        return QuantityText.parseExact(SizeCheck.field(key), word(key), Dimension.MASS);
    }

    int count(String key) {
        String text = word(key);
        boolean whole = !text.isEmpty() && text.length() < 9;
        for (int i = 0; i < text.length(); i++) {
            whole &= text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        if (!whole) {
            throw new Refusal(
                    "not-a-number",
                    SizeCheck.field(key),
                    ShapeCall.shown(text),
                    "a whole number without a unit",
                    "Write " + key + "=5, for example.");
        }
        return Integer.parseInt(text);
    }
}
