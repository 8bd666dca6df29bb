package org.fizzhull.shape.listing;

import java.util.ArrayList;
import java.util.List;

/**
 * What there is to know about a kind of shape without making one: for lists, help and messages. The kinds stand in
 * {@link ShapeKinds}; a shape of one is made by {@link ShapeText#read(String)}. Immutable.
 *
 * @param name name in shape text
 * @param aliases other names that are read
 * @param sentence what it is, for people
 * @param parameters its parameters, in the order of canonical text
 */
public record ShapeKind(String name, List<String> aliases, String sentence, List<ShapeParameter> parameters) {

    /**
     * {@return the shape text with an example value for every required parameter: {@code sphere(diameter=65 mm)}}
     */
    public String example() {
        StringBuilder text = new StringBuilder(name).append('(');
        for (ShapeParameter parameter : parameters) {
            if (parameter.required()) {
                append(text, parameter, "");
            }
        }
        return text.append(')').toString();
    }

    /**
     * {@return as {@link #example}, with the parameters that may be left out in brackets: {@code sphere(diameter=65
     * mm[, seam=2 mm])}}
     */
    public String usage() {
        StringBuilder text = new StringBuilder(name).append('(');
        int open = 0;
        for (ShapeParameter parameter : parameters) {
            open += parameter.required() ? 0 : 1;
            append(text, parameter, parameter.required() ? "" : "[");
        }
        for (int i = 0; i < open; i++) {
            text.append(']');
        }
        return text.append(')').toString();
    }

    /** Adds a parameter with its example value, after a comma where it is not the first. */
    private static void append(StringBuilder text, ShapeParameter parameter, String bracket) {
        text.append(bracket);
        if (text.charAt(text.length() - 1) != '(') {
            text.append(", ");
        }
        text.append(parameter.key()).append('=').append(parameter.example());
    }

    /** The keys of its parameters, in the order of canonical text. */
    public List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (ShapeParameter parameter : parameters) {
            keys.add(parameter.key());
        }
        return keys;
    }

    /** Whether its form stands in a file. */
    public boolean readsFile() {
        return parameters.get(0).key().equals("file");
    }

    /** Whether a word, in small letters, is its name or an alias. */
    public boolean isCalled(String word) {
        return name.equals(word) || aliases.contains(word);
    }
}
