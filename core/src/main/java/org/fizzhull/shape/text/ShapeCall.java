package org.fizzhull.shape.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeParameter;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.text.PrintableText;

/**
 * Shape text taken apart:
 * <pre>
 *  text  = name "(" [ item { "," item } ] ")"
 *  item  = key "=" value
 *  value = '"' anything but a double quote '"'  |  anything but , ( ) and "
 * </pre>
 *
 * <p>Names and keys are read without regard to capitals and blanks around them; values are not yet looked at. What does
 * not fit the form is refused with the correction that the mistake suggests: a parenthesis left out, a colon for the
 * equals sign, a value without its key. A comma inside a number stays in its value, whose reader refuses it. Codes: missing-value, not-a-shape, extra-text, unbalanced,
 * missing-key, repeated-key.
 *
 * @param name name of the kind, in small letters
 * @param keys keys in the order written, in small letters, each once; may still grow while the text is read
 * @param values the values of the keys, without their quotes
 */
record ShapeCall(String name, List<String> keys, List<String> values) {
    /** Characters of an input that a message repeats. */
    private static final int LONGEST_SHOWN = 60;
    /** What is allowed, as messages word it. */
    private static final String FORM = "name(key=value, ...), for example sphere(diameter=65 mm)";

    /** Takes a text apart. */
    static ShapeCall read(String text) {
        // name up to the parenthesis, or the first word where there is none
        String all = text.trim();
        int open = all.indexOf('(');
        String name =
                (open < 0 ? firstWord(all) : all.substring(0, open)).trim().toLowerCase(Locale.ROOT);
        if (all.isEmpty()) {
            throw new Refusal("missing-value", "shape", "", FORM, "Name a shape.");
        }
        if (open < 0) {
            if (name.chars().anyMatch(Character::isLetter) && ShapeText.known(name) == null) {
                throw ShapeText.unknown(name);
            }
            throw refused("not-a-shape", all, "Put its sizes in parentheses: " + ShapeText.exampleOf(name) + ".");
        }
        ShapeCall call = new ShapeCall(name, new ArrayList<>(), new ArrayList<>());
        int end = call.items(all, open + 1);
        if (end < all.length()) {
            String more = shown(all.substring(end).trim());
            throw refused("extra-text", all, "Nothing may follow the closing parenthesis; " + more + " does.");
        }
        return call;
    }

    /** What was read, on one line and of bounded length. */
    static String shown(String text) {
        return PrintableText.of(text, LONGEST_SHOWN);
    }

    /** Reads items up to the closing parenthesis and returns the index after it. */
    private int items(String all, int from) {
        int start = from;
        // commas and parentheses between double quotes belong to a value
        boolean quoted = false;
        for (int i = from; i < all.length(); i++) {
            char c = all.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && c == '(') {
                throw refused("unbalanced", all, "A second ( stands inside; names that hold one go in double quotes.");
            } else if (!quoted && (c == ')' || (c == ',' && !QuantityText.commaInNumber(all, i)))) {
                // an item ends here; a call without any item is allowed
                boolean last = c == ')';
                String item = all.substring(start, i).trim();
                if (!(last && item.isEmpty() && keys.isEmpty())) {
                    item(all, item);
                }
                if (last) {
                    return i + 1;
                }
                start = i + 1;
            }
        }
        throw quoted
                ? refused("unbalanced", all, "A double quote is opened and not closed.")
                : refused(
                        "unbalanced",
                        all,
                        "Close the parenthesis" + (reads(all + ")") ? ": " + all + ")." : " at the end."));
    }

    /** Reads one item between commas, {@code key=value}. */
    private void item(String all, String item) {
        if (item.isEmpty()) {
            throw refused("not-a-shape", all, "Between two commas, or a comma and a parenthesis, nothing is written.");
        }
        int equals = item.indexOf('=');
        if (equals < 0) {
            throw refused("missing-key", all, withoutKey(item));
        }
        String key = item.substring(0, equals).trim().toLowerCase(Locale.ROOT);
        if (keys.contains(key)) {
            throw new Refusal(
                    "repeated-key", SizeCheck.field(key), shown(all), "each parameter once", "Leave one out.");
        }
        keys.add(key);
        values.add(unquoted(item.substring(equals + 1).trim()));
    }

    /** The correction for an item without an equals sign. */
    private String withoutKey(String item) {
        // a colon for the equals sign
        int colon = item.indexOf(':');
        if (colon > 0) {
            return "Write "
                    + shown(item.substring(0, colon).trim() + "="
                            + item.substring(colon + 1).trim()) + ".";
        }
        return "Say what " + shown(item) + " measures: " + named(item) + ".";
    }

    /** The kind with this item as the value of its one size, where it has one; else an example of the kind. */
    private String named(String item) {
        ShapeKind kind = ShapeText.known(name);
        ShapeParameter only = null;
        int needed = 0;
        for (ShapeParameter parameter : kind == null ? List.<ShapeParameter>of() : kind.parameters()) {
            needed += parameter.required() ? 1 : 0;
            only = parameter.required() ? parameter : only;
        }
        if (only != null && needed == 1 && digit(item.charAt(0))) {
            String whole = name + "(" + only.key() + "=" + item + ")";
            if (reads(whole)) {
                return whole;
            }
        }
        return ShapeText.exampleOf(name);
    }

    /** Whether a text that is to be proposed is a shape, and a message shows all of it. */
    private static boolean reads(String proposal) {
        if (proposal.length() > LONGEST_SHOWN) {
            return false;
        }
        try {
            ShapeText.read(proposal);
            return true;
        } catch (Refusal refusal) {
            return false;
        }
    }

    /** The letters a text begins with. */
    private static String firstWord(String text) {
        int end = 0;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return text.substring(0, end);
    }

    /** Whether a character is one of 0 to 9. */
    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A value without the double quotes around it. */
    private static String unquoted(String value) {
        boolean quoted = value.length() > 1 && value.charAt(0) == '"' && value.charAt(value.length() - 1) == '"';
        return quoted ? value.substring(1, value.length() - 1) : value;
    }

    /** A refusal of the whole text. */
    private static Refusal refused(String code, String all, String hint) {
        return new Refusal(code, "shape", shown(all), FORM, hint);
    }
}
