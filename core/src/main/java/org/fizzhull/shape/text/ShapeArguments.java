package org.fizzhull.shape.text;

import java.util.List;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeParameter;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.text.NearName;

/**
 * The values of a call, asked for by key and converted to SI: what {@link ShapeText} makes a shape from. Keys are
 * checked when it is made, values when they are asked for; the limits of a size are those of the shape's own
 * constructor.
 *
 * @param kind kind of shape, whose parameters are the keys allowed
 * @param call keys and values as they were written
 */
record ShapeArguments(ShapeKind kind, ShapeCall call) {
    /**
     * Refuses keys the kind does not have, and calls without those it needs.
     *
     * @throws Refusal {@code unknown-key} or {@code missing-key}
     */
    ShapeArguments {
        // keys that the kind does not have
        List<String> known = kind.keys();
        for (String key : call.keys()) {
            if (!known.contains(key)) {
                String near = NearName.hint(key, known);
                throw new Refusal(
                        "unknown-key",
                        SizeCheck.field(key),
                        key + "="
                                + ShapeCall.shown(call.values().get(call.keys().indexOf(key))),
                        NearName.list(known, "and") + " of a " + kind.name(),
                        near.isEmpty() ? "Write it as " + kind.usage() + "." : near);
            }
        }
        // keys that it needs
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

    /** Whether a key was written. */
    boolean has(String key) {
        return call.keys().contains(key);
    }

    /** The value of a key that was written, as it stands. */
    String word(String key) {
        return call.values().get(call.keys().indexOf(key));
    }

    /** The length of a key that was written, m. */
    double length(String key) {
        return QuantityText.parseExact(SizeCheck.field(key), word(key), Dimension.LENGTH);
    }

    /** The length of a key, m, or a standard where it was left out. */
    double length(String key, double standard) {
        return has(key) ? length(key) : standard;
    }

    /** The mass of a key that was written, kg. */
    double mass(String key) {
        return QuantityText.parseExact(SizeCheck.field(key), word(key), Dimension.MASS);
    }

    /** The whole number of a key that was written, 0 or more and of at most eight digits. */
    int count(String key) {
        // digits alone, and few enough for an int
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
