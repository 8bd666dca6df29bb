package org.fizzhull.cli.attack;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** What editors, spreadsheets and copying do to a text file: another encoding, other line ends, lines twice, other signs. */
final class FileHabits {
    private static final int LONG = 100_000;

    private FileHabits() {}

    /** The bytes of a text with one such habit. */
    static byte[] bytes(Dice dice, byte[] whole) {
        String text = new String(whole, StandardCharsets.UTF_8);
        return switch (dice.below(9)) {
            case 0 -> encoded("\ufeff" + text, StandardCharsets.UTF_8);
            case 1 -> encoded(text.replace("\n", "\r\n"), StandardCharsets.UTF_8);
            case 2 -> encoded("\ufeff" + text.replace("\n", dice.of("\n", "\r\n")), StandardCharsets.UTF_16LE);
            case 3 -> encoded(text, dice.of(StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE));
            case 4 -> encoded(text + "ä°½\n", StandardCharsets.ISO_8859_1);
            case 5 -> encoded(text.replace('\n', '\r'), StandardCharsets.UTF_8);
            case 6 -> Arrays.copyOf(whole, whole.length + dice.of(1, 7, 4096));
            case 7 -> encoded(signs(dice, text), StandardCharsets.UTF_8);
            default -> encoded(lines(dice, text), StandardCharsets.UTF_8);
        };
    }

    private static byte[] encoded(String text, Charset charset) {
        return text.getBytes(charset);
    }

    /** Other signs between the cells, for the decimal point, for blanks. */
    private static String signs(Dice dice, String text) {
        return switch (dice.below(7)) {
            case 0 -> text.replace(",", ";").replace(".", ",");
            case 1 -> text.replace(",", "\t");
            case 2 -> text.replace("  ", "\t");
            case 3 -> text.replaceAll("(\\d)\\.(\\d)", "$1,$2");
            case 4 -> text.replace(' ', '\u00a0');
            case 5 -> text.replace('"', dice.of('\'', '\u201c'));
            default -> text.replaceAll("(?m)$", dice.of(",", ";", " ", "  # note"));
        };
    }

    /** Lines twice, left out, in another order, without end; cells left out. */
    private static String lines(Dice dice, String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = dice.below(lines.size());
        switch (dice.below(9)) {
            case 0 -> lines.add(at, lines.get(at));
            case 1 -> lines.add(0, lines.get(0));
            case 2 -> lines.remove(at);
            case 3 -> Collections.reverse(lines);
            case 4 ->
                lines.set(at, lines.get(at) + dice.of(" ", "x", "9", ",", "\"").repeat(LONG));
            case 5 -> lines.add(at, dice.of("# a note", "---", "...", "&a [*a]", "%YAML 9.9", "? x", "", "-"));
            case 6 -> lines.addAll(List.copyOf(lines));
            case 7 -> lines.replaceAll(line -> line.substring(0, Math.max(0, line.lastIndexOf(','))));
            default -> lines.replaceAll(line -> line + "\n");
        }
        return String.join("\n", lines);
    }
}
