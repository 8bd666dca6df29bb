package org.fizzhull.validation.table;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.fizzhull.quantity.Units;

/** The inputs of a row, and which of them a computation has asked for: an input nobody reads would be a false claim. */
public final class Inputs {
    private final String text;
    private final Map<String, String> values = new LinkedHashMap<>();
    private final Set<String> unread = new LinkedHashSet<>();

    Inputs(String text) {
        this.text = text;
        for (String part : text.split(";", -1)) {
            int equals = part.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException("an input is name=value, not \"" + part + "\"");
            }
            if (values.put(
                            part.substring(0, equals).strip(),
                            part.substring(equals + 1).strip())
                    != null) {
                throw new IllegalArgumentException("an input stands twice in \"" + text + "\"");
            }
        }
        unread.addAll(values.keySet());
    }

    public String word(String name) {
        String value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no input " + name + " in \"" + text + "\"");
        }
        unread.remove(name);
        return value;
    }

    public double number(String name) {
        return Double.parseDouble(word(name));
    }

    /** An input in millimetres, in metres. */
    public double millimetres(String name) {
        return Units.millimetres(number(name));
    }

    /** An input in C, in kelvin. */
    public double celsius(String name) {
        return Units.celsius(number(name));
    }

    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** Names that no computation has asked for. */
    Set<String> unread() {
        return Set.copyOf(unread);
    }

    @Override
    public String toString() {
        return text;
    }
}
