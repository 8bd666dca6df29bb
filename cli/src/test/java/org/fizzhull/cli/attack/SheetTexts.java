package org.fizzhull.cli.attack;

import java.util.List;
import java.util.Locale;

/** Texts of tables: outline, weighings, catalogue, trials; powders; and of the bench file that {@code learn} writes. */
final class SheetTexts {
    private SheetTexts() {}

    static String outline(Dice dice) {
        StringBuilder text = new StringBuilder(dice.of("r_mm,z_mm\n", "r_mm,z_mm\n", "z_cm,r_cm\n", "r_in,z_in\n"));
        int n = dice.of(3, 5, 9, 30, 200);
        double size = dice.once(5) ? dice.spread(0.01, 2000) : dice.between(20, 60);
        boolean hollow = dice.once(3);
        text.append("0,0\n");
        for (int i = 1; i < n; i++) {
            double a = Math.PI * i / n;
            double r = size * (Math.sin(a) + dice.between(0, 0.05));
            text.append(Values.number(r))
                    .append(',')
                    .append(Values.number(size * (1 - Math.cos(a))))
                    .append('\n');
        }
        if (hollow) {
            text.append(Values.number(size / 2))
                    .append(',')
                    .append(Values.number(size * 2))
                    .append("\n0,")
                    .append(Values.number(size * dice.between(0.01, 1.9)))
                    .append('\n');
        } else {
            text.append("0,").append(Values.number(size * 2)).append('\n');
        }
        return text.toString();
    }

    static String log(Dice dice) {
        StringBuilder text =
                new StringBuilder(dice.of("piece,when,weight_g\n", "when;weight_g\n", "weight_g,when,piece,note\n"));
        String head = text.toString();
        String separator = head.contains(";") ? ";" : ",";
        boolean dates = dice.once(3);
        double grams = dice.once(4) ? dice.spread(0.01, 1e5) : dice.between(100, 200);
        double hours = 0;
        for (int i = dice.of(2, 3, 5, 30, 99); i > 0; i--) {
            hours += dice.once(10) ? dice.spread(1e-9, 1e4) : dice.spread(1, 40);
            grams *= dice.once(6) ? dice.between(0.9, 1.1) : dice.between(0.97, 1);
            String when = dates
                    ? String.format(Locale.ROOT, "2026-08-%02d %02d:30", 14 + (int) (hours / 24) % 17, (int) hours % 24)
                    : Values.number(hours) + " h";
            String weight = Values.number(grams);
            text.append(
                    switch (head.charAt(0)) {
                        case 'p' -> "A" + separator + when + separator + weight;
                        case 'w' ->
                            head.startsWith("when")
                                    ? when + separator + weight
                                    : weight + separator + when + separator + "A" + separator + "x";
                        default -> weight;
                    });
            text.append('\n');
        }
        return text.toString();
    }

    static String catalogue(Dice dice) {
        StringBuilder text = new StringBuilder(
                dice.of("name,shape\n", "name;shape;cavities;price;material;note\n", "shape,name,price\n"));
        String separator = text.indexOf(";") >= 0 ? ";" : ",";
        boolean first = text.indexOf("name") == 0;
        for (int i = dice.of(1, 1, 2, 3); i > 0; i--) {
            String shape = '"' + Shapes.plain(dice) + '"';
            text.append(first ? "mould " + i : shape).append(separator).append(first ? shape : "mould " + i);
            if (separator.equals(";")) {
                text.append(';').append(dice.of("", "4", "10000", "0", "-1", "1.5", "banana"));
                text.append(';').append(dice.of("", "12.50", "0", "1e300", "NaN", "-3", "5 euro"));
                text.append(";tin;").append(dice.of("", "a note", "<b>&", "\u202e"));
            } else if (!first) {
                text.append(',').append(dice.of("", "3.10", "0"));
            }
            text.append(dice.of("\n", "\n", "\r\n", "\n\n"));
        }
        return text.toString();
    }

    /** Trials near the border of floating; a recipe is named where one is given. */
    static String trials(Dice dice, String recipe) {
        boolean wide = dice.once(2);
        StringBuilder text = new StringBuilder(
                wide
                        ? "name,mould,bath_g,bath_C,result,rose_after_s,fizz_s,lift_g,lift_after_s,recipe,fill_g,press\n"
                        : "mould,bath_g,result\n");
        for (int i = dice.of(1, 2, 3, 6); i > 0; i--) {
            String shape = dice.once(3) ? Shapes.plain(dice) : "sphere(diameter=65 mm)";
            double grams = Shapes.volume(shape) * (dice.once(8) ? dice.spread(1e-3, 1e3) : dice.between(0.8, 1.2));
            String result = dice.of("floated", "floated", "rose", "sank", dice.of("flew", "", "FLOATED"));
            String mass = dice.once(20) ? dice.of("-1", "NaN", "1e300", "138 g", "138,5") : Values.number(grams);
            if (!wide) {
                text.append('"')
                        .append(shape)
                        .append("\",")
                        .append(mass)
                        .append(',')
                        .append(result)
                        .append('\n');
                continue;
            }
            boolean fill = !recipe.isEmpty() && dice.once(3);
            text.append("trial ").append(i).append(",\"").append(shape).append("\",");
            text.append(fill ? "" : mass).append(',').append(dice.of("38", "", "30", "59.9", "100"));
            text.append(',').append(result).append(',').append(result.equals("rose") ? dice.of("62", "", "1e9") : "");
            text.append(',').append(dice.of("", "", "215", "0", "1e6"));
            String lift = dice.once(4) ? Values.number(grams * dice.between(0.9, 1.2)) : "";
            text.append(',').append(lift).append(',').append(lift.isEmpty() ? "" : dice.of("4", "60", "-1"));
            text.append(',')
                    .append(fill ? recipe : "")
                    .append(',')
                    .append(fill ? mass : "")
                    .append(',');
            text.append(fill ? "" : dice.of("", "", "firm")).append('\n');
        }
        return text.toString();
    }

    /** Cups of powders. */
    static String powders(Dice dice) {
        StringBuilder text =
                new StringBuilder(dice.of("name,loose_cup_g\n", "name;loose_cup_g;tapped_cup_g;cup_mL;like\n"));
        boolean wide = text.indexOf(";") >= 0;
        for (int i = dice.of(1, 2, 4); i > 0; i--) {
            double loose = dice.once(5) ? dice.spread(1e-3, 1e5) : dice.between(60, 240);
            text.append(dice.of("oat flour ", "nettle powder ", "kaolin")).append(i);
            text.append(wide ? ';' : ',').append(Values.number(loose));
            if (wide) {
                text.append(';').append(dice.of("", Values.number(loose * dice.between(0.8, 1.6))));
                text.append(';').append(dice.of("", "", "240", "0", "-3", "1e300"));
                text.append(';').append(dice.of("", "corn starch", "kaolin", "no such powder"));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** A bench file as {@code learn} writes it: whole draws of some factors, and what was measured besides. */
    static String bench(Dice dice) {
        List<String> known = List.of("gas layer", "bubble size", "press", "recession", "scale", "no such factor");
        int width = dice.of(1, 2, 3);
        StringBuilder text = new StringBuilder("made: \"2026-08-14\"\ntrials: \"t.csv\"\nfactors:\n");
        for (int i = 0; i < width; i++) {
            text.append("  ")
                    .append(dice.once(20) ? dice.of(known) : known.get(i))
                    .append(": {median: 1, low: 0.8, high: 1.2, prior percent: 40}\n");
        }
        text.append("draws: |\n");
        for (int i = dice.of(49, 64, 64, 256); i > 0; i--) {
            text.append(' ');
            for (int k = 0; k < width; k++) {
                text.append(' ');
                if (dice.once(4000)) {
                    text.append(dice.of("NaN", "1e300", "-4000", "0.5", "9".repeat(12)));
                } else {
                    text.append(Math.round(100 * dice.between(-2, 2)));
                }
            }
            text.append('\n');
        }
        if (dice.once(3)) {
            text.append("scale: ").append(dice.of("0.1 g", "1 g", "5 g", "0 g")).append('\n');
        }
        if (dice.once(3)) {
            text.append("hygrometer: ")
                    .append(dice.of("3 %", "0.1 %", "30 %", "100 %"))
                    .append('\n');
        }
        if (dice.once(4)) {
            text.append("weighed:\n  - \"")
                    .append(Values.number(dice.between(100, 180)))
                    .append(" g at firm in sphere(diameter=65 mm)\"\n");
        }
        if (dice.once(4)) {
            text.append("powders:\n  \"oat flour\": {like: \"corn starch\", cup: \"240 mL\", loose cup: \"")
                    .append(Values.number(dice.between(60, 240)))
                    .append(" g\"}\n");
        }
        return text.toString();
    }
}
