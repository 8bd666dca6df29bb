package org.fizzhull.cli.attack;

import java.util.List;
import java.util.stream.Collectors;
import org.fizzhull.recipe.IngredientTable;

/** Texts of recipe files with all keys, in amounts of every kind and size. */
final class RecipeTexts {
    private static final List<String> POWDERS = names(false);
    private static final List<String> LIQUIDS = names(true);

    private static final String[] WEIGHED = {
        "146 g at firm",
        "146 g at firm, 151 g at hard in dome(diameter=80 mm)",
        "146 g at 12 kg",
        "1 g at light",
        "146 g",
        "146 g in mesh(file=\"no.stl\", unit=mm)",
        "1e6 g at firm"
    };

    private static final String[] OWN = {
        "like: kaolin",
        "like: kaolin, loose cup: 95 g",
        "like: citric acid",
        "like: sea dust",
        "like: water",
        "like: nothing known, loose cup: 95 g",
        "loose cup: 95 g",
        "true density: 1.4 g/cm3",
        "loose density: 0.4 g/cm3, true density: 0.3 g/cm3",
        "cup: 90 g",
        "like: kaolin, like: corn starch",
        "like: [kaolin]",
        "liquid density: 0.9 g/cm3"
    };

    private RecipeTexts() {}

    private static List<String> names(boolean wet) {
        return IngredientTable.standard().all().stream()
                .filter(ingredient -> ingredient.role().mayBeWet() == wet)
                .map(ingredient -> ingredient.name())
                .collect(Collectors.toList());
    }

    static String of(Dice dice) {
        StringBuilder text = new StringBuilder();
        if (dice.once(2)) {
            text.append("recipe: ")
                    .append(dice.of("Lighthouse lemon", "\"a & <b>\"", "ä°½", "x"))
                    .append('\n');
        }
        double size = dice.once(6) ? dice.spread(1e-3, 1e5) : dice.spread(50, 900);
        text.append("dry:\n");
        if (!dice.once(12)) {
            line(text, "sodium bicarbonate", dice, size);
        }
        if (!dice.once(8)) {
            line(text, dice.of("citric acid anhydrous", "citric acid", "tartaric acid", "malic acid"), dice, size / 2);
        }
        for (int i = dice.below(5); i > 0; i--) {
            String name = dice.of(POWDERS);
            if (text.indexOf(name) < 0) {
                line(text, name, dice, size / 6);
            }
        }
        if (!dice.once(6)) {
            text.append("wet:\n");
            line(
                    text,
                    dice.of("water", "witch hazel", "sweet almond oil", "sunflower oil", "cocoa butter"),
                    dice,
                    size / 40);
            if (dice.once(2)) {
                line(
                        text,
                        dice.once(3)
                                ? dice.of(LIQUIDS)
                                : dice.of(
                                        "lemon fragrance",
                                        "lavender oil",
                                        "polysorbate 80",
                                        "glycerin",
                                        "isopropyl alcohol"),
                        dice,
                        size / 60);
            }
        }
        if (dice.once(6)) {
            text.append("total: ").append(Values.number(dice.spread(1, 5000))).append(" g\n");
        }
        if (dice.once(6)) {
            text.append("acid last: ").append(dice.of("true", "false", "yes")).append('\n');
        }
        if (dice.once(10)) {
            text.append("weighed: [").append(dice.of(WEIGHED)).append("]\n");
        }
        if (dice.once(12)) {
            text.append("prices:\n  sodium bicarbonate: ")
                    .append(dice.of("3.10 / kg", "1 / 1e-9 g", "0.01 / kg", "1e9 / g"))
                    .append('\n');
        }
        if (dice.once(12)) {
            text.append("limits:\n  sodium bicarbonate: ")
                    .append(dice.of("1 %", "0.5 %", "50 %", "0.0001 %"))
                    .append('\n');
        }
        if (dice.once(8)) {
            text.append("own ingredients:\n");
            for (int i = dice.of(1, 1, 2, 3, 36, 40); i > 0; i--) {
                text.append("  oat flour ")
                        .append(i)
                        .append(": {true density: ")
                        .append(dice.of("1.42 g/cm3", "1.42 g/cm3", "1.2 g/cm3", "2.9 g/cm3", "0.9 g/cm3"))
                        .append(", loose density: ")
                        .append(dice.of("0.48 g/cm3", "0.48 g/cm3", "0.05 g/cm3", "0.8 g/cm3"))
                        .append("}\n");
            }
            if (dice.once(3)) {
                text.append("  sea dust: {").append(dice.of(OWN)).append("}\n");
                text.insert(text.indexOf("dry:\n") + 5, "  sea dust: 5 g\n");
            }
            text.insert(text.indexOf("dry:\n") + 5, "  oat flour 1: " + Values.number(size / 10) + " g\n");
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String name, Dice dice, double grams) {
        double amount = dice.once(10) ? dice.spread(1e-6, 1e6) : grams * dice.between(0.2, 2);
        text.append("  ").append(name).append(": ");
        switch (dice.below(8)) {
            case 0 ->
                text.append(Values.number(amount))
                        .append(" to ")
                        .append(Values.number(amount * 1.2))
                        .append(" g");
            case 1 ->
                text.append(Values.number(amount))
                        .append(" g +- ")
                        .append(Values.number(amount / 20))
                        .append(" g");
            case 2 -> text.append(Values.number(amount / 28.35)).append(" oz");
            case 3 -> text.append(Values.number(amount)).append(" mL");
            case 4 -> text.append(Values.number(amount / 100)).append(" cup");
            default -> text.append(Values.number(amount)).append(" g");
        }
        text.append('\n');
    }
}
