package org.fizzhull.recipe;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.evidence.Source;

/**
 * Reads the table in the jar.
 *
 * <p>Decision: plain lines of columns between tabs, one line a value, with its unit, spread and source key; no quoting,
 * no escapes, so that splitting at the tab is all there is. Tried on paper: CSV wants a library, and core has none (the
 * command line has one, at 20 ms of start); one wide line an ingredient has no room for a spread and a source beside
 * each of its values; generated Java cannot be read by a maker. The user's own tables come in as {@link Ingredient}
 * values.
 */
final class TableReader {
    private TableReader() {}

    /**
     * {@return the table of the four files beside this class: sources, values, ingredients, what is refused}
     *
     * @throws IllegalStateException for a fault in the files, which are part of the library
     */
    static IngredientTable read() {
        // key, how it was met, citation
        Map<String, Source> sources = new LinkedHashMap<>();
        for (String[] row : rows("sources.tsv", 3)) {
            sources.put(row[0], new Source(row[0], row[2], seen(row[1])));
        }
        // ingredient, property, value, standard deviation, unit, source key
        Map<String, Map<Property, Property.Datum>> values = new LinkedHashMap<>();
        for (String[] row : rows("values.tsv", 6)) {
            Property property = Property.named(row[1]);
            Source source = sources.get(row[5]);
            if (property == null || source == null || !property.unit().equals(row[4])) {
                throw new IllegalStateException("values.tsv: " + String.join(" | ", row));
            }
            double si = property.toSi();
            Property.Datum datum =
                    new Property.Datum(Double.parseDouble(row[2]) * si, Double.parseDouble(row[3]) * si, source);
            values.computeIfAbsent(row[0], name -> new EnumMap<>(Property.class))
                    .put(property, datum);
        }
        // name, role, substance, other names, caution, allergen, remark, what is assumed of the short name
        List<Ingredient> ingredients = new ArrayList<>();
        Map<String, String> assumptions = new LinkedHashMap<>();
        for (String[] row : rows("ingredients.tsv", 8)) {
            Map<Property, Property.Datum> known = values.get(row[0]);
            if (known == null) {
                throw new IllegalStateException("ingredients.tsv: no values for " + row[0]);
            }
            Substance substance = row[2].isEmpty() ? Substance.UNSPECIFIED : Substance.valueOf(row[2]);
            ingredients.add(new Ingredient(
                    row[0], names(row[3]), Role.valueOf(row[1]), substance, known, row[4], row[5], row[6]));
            if (!row[7].isEmpty()) {
                assumptions.put(row[0], row[7]);
            }
        }
        // name, other names, reason
        Map<String, Lookup.Forbidden> forbidden = new LinkedHashMap<>();
        for (String[] row : rows("refused.tsv", 3)) {
            Lookup.Forbidden no = new Lookup.Forbidden(row[0], row[2]);
            forbidden.put(row[0], no);
            for (String name : names(row[1])) {
                forbidden.put(name, no);
            }
        }
        return IngredientTable.of(ingredients, forbidden, assumptions);
    }

    /** How a source was met, from the word in the file. */
    private static Source.Seen seen(String word) {
        for (Source.Seen s : Source.Seen.values()) {
            if (s.words().equals(word) || (s == Source.Seen.MEMORY && word.equals("memory"))) {
                return s;
            }
        }
        throw new IllegalStateException("sources.tsv: " + word);
    }

    /** Names in one cell, with "; " between them. */
    private static List<String> names(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split("; ", -1));
    }

    /** The rows of a file as cells; lines that begin with # are comments. Refuses a row of another number of cells. */
    private static List<String[]> rows(String resource, int columns) {
        List<String[]> rows = new ArrayList<>();
        try (InputStream in = TableReader.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + resource);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("#")) {
                    continue;
                }
                String[] cells = line.split("\t", -1);
                if (cells.length != columns) {
                    throw new IllegalStateException(cells.length + " cells, not " + columns + ": " + line);
                }
                rows.add(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
