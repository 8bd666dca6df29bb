package org.fizzhull.shape.listing;

import static java.util.stream.Collectors.joining;

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
        return name + '(' + required() + ')';
    }

    /**
     * {@return as {@link #example}, followed by the parameters that may be left out, in brackets: {@code
     * sphere(diameter=65 mm[, seam=2 mm])}}
     */
    public String usage() {
        List<ShapeParameter> open =
                parameters.stream().filter(parameter -> !parameter.required()).toList();
        String nested =
                open.stream().map(parameter -> "[, " + parameter.withExample()).collect(joining());
        return name + '(' + required() + nested + "]".repeat(open.size()) + ')';
    }

    /** The required parameters with their example values. */
    private String required() {
        return parameters.stream()
                .filter(ShapeParameter::required)
                .map(ShapeParameter::withExample)
                .collect(joining(", "));
    }

    /** The keys of its parameters, in the order of canonical text. */
    public List<String> keys() {
        return parameters.stream().map(ShapeParameter::key).toList();
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
