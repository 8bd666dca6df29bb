package org.fizzhull.cli.file;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A powder of one's own bag, as a recipe's {@code own ingredients} describe one: {@code loose cup: 118 g}, {@code like:
 * kaolin}.
 *
 * @param name of the ingredient
 * @param said values by key, as written
 * @param file where
 * @param line in that file
 */
public record OwnPowder(String name, Map<String, String> said, String file, int line) {
    /** Copies the map, order kept. */
    public OwnPowder {
        said = new LinkedHashMap<>(said);
    }

    /** Where each value stands, by its key. */
    Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        said.keySet().forEach(key -> places.put(key, file + ", line " + line));
        return places;
    }
}
