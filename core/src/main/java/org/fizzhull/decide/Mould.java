package org.fizzhull.decide;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;

/**
 * A mould as it stands in a catalogue, the user's own or {@link #catalogue()}. What pressing needs of a mould is {@code
 * pressing.Mould}. Immutable.
 *
 * @param name what its owner calls it
 * @param shape form of the piece, that is, the inside of the mould
 * @param cavities pieces that one mould makes at a time, 1 or more
 * @param price price of the mould in the owner's money, 0 or more; empty where it is not known
 * @param material what it is made of; empty where it is not known
 * @param note for the reader; may be empty
 */
public record Mould(String name, Shape shape, int cavities, OptionalDouble price, String material, String note) {
    /** File beside this class: name, shape, cavities, price, material, note. */
    private static final String RESOURCE = "moulds.tsv";
    /** Cells of a row. */
    private static final int COLUMNS = 6;
    /** As for a pack of an ingredient. */
    private static final double MOST_MONEY = 1e9;

    /**
     * Refuses a mould without a name, without a cavity, or with a price that is none.
     *
     * @param name what its owner calls it
     * @param shape form of the piece, that is, the inside of the mould
     * @param cavities pieces that one mould makes at a time, 1 or more
     * @param price price of the mould in the owner's money, 0 or more; empty where it is not known
     * @param material what it is made of; empty where it is not known
     * @param note for the reader; may be empty
     * @throws Refusal {@code missing} for no name, {@code out-of-range} for no cavity or a negative price
     */
    public Mould {
        Given.all("name, shape, price, material, note", name, shape, price, material, note);
        if (name.isBlank()) {
            throw new Refusal("missing", "name", "", "a name", "Say how you call this mould.");
        }
        if (cavities < 1) {
            throw new Refusal(
                    "out-of-range",
                    "cavities",
                    Integer.toString(cavities),
                    "1 or more",
                    "Count the pieces that the mould makes at a time.");
        }
        if (price.isPresent() && !(price.getAsDouble() >= 0 && price.getAsDouble() <= MOST_MONEY)) {
            throw new Refusal(
                    "out-of-range",
                    "price",
                    price.getAsDouble() + "",
                    "0 to 1e9",
                    "Leave out the price where it is not known.");
        }
    }

    /**
     * {@return a mould of which only the shape is known; its name is the shape text}
     *
     * @param shape form of the piece, that is, the inside of the mould
     */
    public static Mould of(Shape shape) {
        return new Mould(shape.text(), shape, 1, OptionalDouble.empty(), "", "");
    }

    /** {@return whether its owner gave it a name of its own} */
    public boolean named() {
        return !name.equals(shape.text());
    }

    /**
     * {@return the catalogue in the jar, smallest first within each kind: sizes that moulds for pressed pieces commonly have
     * (common practice, no source)} No brands and no prices. The true inside of a mould differs from its nominal size; water
     * tells. Read anew each time, so the caller keeps the list.
     *
     * @throws IllegalStateException for a fault in the file, which is part of the library
     */
    public static List<Mould> catalogue() {
        List<Mould> moulds = new ArrayList<>();
        try (InputStream in = Mould.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + RESOURCE);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            reader.readLine(); // what the file is
            reader.readLine(); // names of the columns
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                moulds.add(row(line.split("\t", -1)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return moulds;
    }

    /** A row of the file, its shape as {@link ShapeText} reads it; no cavities is one, no price is not known. */
    private static Mould row(String[] cells) {
        if (cells.length != COLUMNS) {
            throw new IllegalStateException(RESOURCE + ": " + String.join(" | ", cells));
        }
        int cavities = cells[2].isEmpty() ? 1 : Integer.parseInt(cells[2]);
        OptionalDouble price =
                cells[3].isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cells[3]));
        return new Mould(cells[0], ShapeText.read(cells[1]), cavities, price, cells[4], cells[5]);
    }
}
