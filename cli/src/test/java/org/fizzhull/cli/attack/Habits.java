package org.fizzhull.cli.attack;

import java.util.List;

/** Slips of people rather than chance: another unit, a comma, a date, two values, the wrong sign, letters of another script. */
final class Habits {
    private static final List<String> UNITS = List.of(
            "mm", "cm", "m", "in", "g", "kg", "mg", "oz", "lb", "mL", "L", "cup", "s", "min", "h", "d", "C", "F", "K",
            "%", "kPa", "g/cm3", "kg/m3", "");

    private Habits() {}

    /** A text with one slip. */
    static String text(Dice dice, String text) {
        String unit = dice.of(UNITS);
        return switch (dice.below(22)) {
            case 0 -> text.replaceFirst("[A-Za-z%/0-9]+$", unit);
            case 1 -> text.replaceFirst("(?<=\\d) ?[A-Za-z%]+", " " + unit);
            case 2 -> text.replace('.', ',');
            case 3 -> text.replaceFirst("\\d", "-$0");
            case 4 -> text.replaceFirst("\\d+(\\.\\d+)?", dice.of("0", "-0", "-0.0", "0.000", "+0"));
            case 5 ->
                text.replaceFirst("\\d+(\\.\\d+)?", dice.of("4.9e-324", "1e-310", "1.8e308", "1e400", "9".repeat(40)));
            case 6 ->
                text.replaceFirst("\\d+(\\.\\d+)?", dice.of("NaN", "nan", "inf", "-Infinity", "null", "None", "."));
            case 7 ->
                text.replaceFirst("\\d+(\\.\\d+)?", dice.of("1/0", "1/2/3", "1 1/2", "2 1/0", "3-4", "~65", "ca. 65"));
            case 8 -> text + dice.of(" +- 0 g", " +- -2 g", " +- 200 %", " to 1 g", " to", " +-", " ± 2", " - 5 g");
            case 9 -> text.replace(" ", dice.of("\u00a0", "\u2009", "\t", "  ", "\u3000"));
            case 10 -> "“" + text + "”";
            case 11 -> text.replaceFirst("\\d", "\u0663");
            case 12 -> text.replaceFirst("\\d", "\uff16");
            case 13 -> "\u202e" + text + "\u202c";
            case 14 -> text.toUpperCase(java.util.Locale.ROOT);
            case 15 -> text + ", " + text;
            case 16 -> dice.of("tomorrow", "14.08.2026", "08/14/2026", "2026-02-30", "2026-W33", "18:30", "now", "?");
            case 17 -> text.replaceFirst("\\d+(\\.\\d+)?", Values.number(dice.spread(1e-12, 1e12)));
            case 18 -> text.replace("mm", "мм").replace("g", "г");
            case 19 -> text.replaceFirst("[,(].*", "");
            case 20 -> "";
            default -> text + " ".repeat(dice.of(1, 300)) + dice.of(".", ";", "!", "x", "%");
        };
    }
}
