package org.fizzhull.cli.attack;

import java.nio.charset.StandardCharsets;

/** Spoils a text or the bytes of a file: letters changed, left out, doubled, put in; parts cut, repeated and exchanged. */
final class Mutation {
    /** What people and programs put where a number, a unit or a name belongs. */
    private static final String[] ODD = {
        "",
        " ",
        "-",
        "--",
        "-1",
        "0",
        "-0",
        "1e300",
        "1e-300",
        "4.9e-324",
        "1e999",
        "NaN",
        "Infinity",
        "null",
        "banana",
        "1,5",
        "1 000",
        "1_000",
        "½",
        "0x10",
        "%",
        "%s",
        "\\",
        "\"",
        "'",
        "`",
        "$(id)",
        ";",
        "|",
        "<b>&amp;",
        "\t",
        "\n",
        "\r\n",
        "\u0000",
        "\u001b[31m",
        "\u202e",
        "\u2066",
        "\ufeff",
        "\ud83d\udec1",
        "\ud800",
        "ä",
        "°",
        "٣",
        "to",
        "+-",
        "±",
        "..",
        "../..",
        "/dev/null",
        "/dev/zero",
        "(",
        ")",
        "((",
        "{",
        "[",
        "]",
        ":",
        ",",
        "=",
        "g",
        "mm",
        "99999999999999999999",
        "2147483648",
        "kg",
        "to 5 g",
        "+- 1000 g",
        "1e-9",
        "3 d",
        "C",
        "F"
    };

    private Mutation() {}

    /** A text spoilt once to three times. */
    static String text(Dice dice, String text) {
        String spoilt = text;
        for (int i = dice.below(3); i >= 0; i--) {
            spoilt = once(dice, spoilt);
        }
        return spoilt;
    }

    static String odd(Dice dice) {
        return dice.of(ODD);
    }

    private static String once(Dice dice, String text) {
        int at = text.isEmpty() ? 0 : dice.below(text.length() + 1);
        int to = Math.min(text.length(), at + 1 + dice.below(6));
        String head = text.substring(0, at);
        String tail = text.substring(at);
        return switch (dice.below(10)) {
            case 0 -> odd(dice);
            case 1 -> head + odd(dice) + tail;
            case 2 -> head + text.substring(to);
            case 3 -> head + text.substring(at, to).repeat(1 + dice.below(4)) + tail;
            case 4 -> head + (char) (32 + dice.below(95)) + (tail.isEmpty() ? "" : tail.substring(1));
            case 5 -> number(dice, text);
            case 6 -> text + ", " + odd(dice);
            case 7 -> dice.once(20) ? text.repeat(1 + 4000 / (text.length() + 1)) : text + text;
            case 8 -> tail + head;
            default -> new StringBuilder(text).reverse().toString();
        };
    }

    /** Another number in place of one that stands in the text. */
    private static String number(Dice dice, String text) {
        String other = dice.of(
                "0",
                "-3",
                "1e-9",
                "1e9",
                "1e300",
                "4.9e-324",
                "0.5",
                "1000000",
                "1e308",
                "100",
                "99.9999999999",
                "1e-320");
        String[] parts = text.split("(?<=\\D)(?=\\d)|(?<=\\d)(?=\\D)", -1);
        StringBuilder out = new StringBuilder();
        boolean done = false;
        for (String part : parts) {
            boolean digits = !part.isEmpty() && Character.isDigit(part.charAt(0));
            boolean swap = digits && !done && dice.once(2);
            out.append(swap ? other : part);
            done |= swap;
        }
        return out.toString();
    }

    /** Bytes of a file spoilt: cut, changed here and there, or as a text. */
    static byte[] bytes(Dice dice, byte[] whole) {
        if (whole.length == 0) {
            return whole;
        }
        switch (dice.below(4)) {
            case 0 -> {
                return java.util.Arrays.copyOf(whole, dice.below(whole.length));
            }
            case 1 -> {
                byte[] changed = whole.clone();
                for (int i = 1 + dice.below(8); i > 0; i--) {
                    changed[dice.below(changed.length)] = (byte) dice.below(256);
                }
                return changed;
            }
            default -> {
                String text = new String(whole, StandardCharsets.ISO_8859_1);
                return text(dice, text).getBytes(StandardCharsets.UTF_8);
            }
        }
    }
}
