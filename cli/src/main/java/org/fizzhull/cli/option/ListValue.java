package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;

/** A value that may be a list: parts between commas, a comma between two digits aside, which is a decimal one. */
final class ListValue {
    private ListValue() {}

    /** The parts in order, without the blanks around them; one empty part where nothing stands between two commas. */
    static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
            if (!decimal(text, at)) {
                parts.add(text.substring(from, at).strip());
                from = at + 1;
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    private static boolean decimal(String text, int comma) {
        return comma > 0
                && comma + 1 < text.length()
                && Character.isDigit(text.charAt(comma - 1))
                && Character.isDigit(text.charAt(comma + 1));
    }
}
