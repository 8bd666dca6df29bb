package org.fizzhull.cli.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.listing.ShapeParameter;
import org.fizzhull.shape.text.ShapeText;

/** Shape text of every kind over its whole range: usual sizes, ends of the range, and now and then beyond them. */
final class Shapes {
    private Shapes() {}

    /** Text that may or may not be a shape. */
    static String any(Dice dice, Workspace files) {
        if (dice.once(6)) {
            return dice.of(
                    "mesh(file=\"" + files.mesh(dice) + "\", unit=" + dice.of("mm", "mm", "mm", "cm", "in", "m", "ft")
                            + ")",
                    "revolved(file=\"" + files.outline(dice) + "\")");
        }
        if (dice.once(12)) {
            return "cube(side=" + length(dice) + ")";
        }
        return text(dice, dice.of(ShapeKinds.all()));
    }

    /** Text that the library takes for a shape, drawn again until it does. */
    static String good(Dice dice, Workspace files) {
        for (int i = 0; i < 40; i++) {
            String text = any(dice, files);
            try {
                if (text.contains("file=")) {
                    return text;
                }
                ShapeText.read(text);
                return text;
            } catch (IllegalArgumentException refused) {
                // the next one is tried
            }
        }
        return "sphere(diameter=65 mm)";
    }

    /** A shape that stands in no file. */
    static String plain(Dice dice) {
        return text(dice, dice.of(ShapeKinds.all()));
    }

    /** Volume of a shape in cm3, a guess where the text is no shape or its form stands in a file. */
    static double volume(String text) {
        try {
            return 1e6 * ShapeText.read(text).volume();
        } catch (RuntimeException noShape) {
            return 144;
        }
    }

    private static String text(Dice dice, ShapeKind kind) {
        List<String> items = new ArrayList<>();
        double size = dice.once(4) ? dice.spread(5, 1000) : dice.between(30, 110);
        for (ShapeParameter parameter : kind.parameters()) {
            if (parameter.required() || dice.once(2)) {
                items.add(parameter.key() + "=" + value(dice, parameter, size));
            }
        }
        return kind.name() + "(" + String.join(", ", items) + ")";
    }

    private static String value(Dice dice, ShapeParameter parameter, double size) {
        return switch (parameter.takes()) {
            case LENGTH -> {
                double share = parameter.required() ? dice.between(0.15, 1.1) : dice.between(0, 0.5);
                double mm =
                        parameter.key().matches("diameter|length|width") ? size * dice.between(0.8, 1) : size * share;
                yield dice.once(12) ? length(dice) : number(mm) + " mm";
            }
            case MASS -> number(dice.once(8) ? dice.spread(1e-3, 1e5) : dice.spread(5, 400)) + " g";
            case COUNT -> dice.of("5", "3", "4", "6", "8", "12", "2", "1000");
            default -> dice.of("sphere", "dome", "puck", "heart", "shell", "figure");
        };
    }

    static String length(Dice dice) {
        double mm = dice.spread(0.1, 2000);
        return dice.of(
                number(mm) + " mm",
                number(mm / 10) + " cm",
                number(mm / 25.4) + " in",
                "5 mm",
                "1 m",
                "4.99 mm",
                "0.001 mm");
    }

    static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.3f" : "%.1f", value);
    }
}
