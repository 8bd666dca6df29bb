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
import org.fizzhull.shape.text.ShapeText;

/**
 * The catalogue in the jar: sizes that moulds for pressed pieces commonly have (common practice, no source). No brands
 * and no prices. The true inside of a mould differs from its nominal size; water tells.
 *
 * <p>Taken where a comparison asks for built-in moulds and where advice looks for a mould of another kind. Rows are text
 * between tabs: name, shape as {@link ShapeText} reads it, cavities, price, material, note.
 */
public final class GenericMoulds {
    /** File beside this class: name, shape, cavities, price, material, note. */
    private static final String RESOURCE = "moulds.tsv";
    /** Cells of a row. */
    private static final int COLUMNS = 6;

    private GenericMoulds() {}

    /**
     * {@return all of them, smallest first within each kind} Read anew each time, so the caller keeps the list.
     *
     * @throws IllegalStateException for a fault in the file, which is part of the library
     */
    public static List<Mould> all() {
        List<Mould> moulds = new ArrayList<>();
        try (InputStream in = GenericMoulds.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + RESOURCE);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            reader.readLine(); // what the file is
            reader.readLine(); // names of the columns
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                moulds.add(mould(line.split("\t", -1)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return moulds;
    }

    /** A row of the file; no cavities is one, no price is not known. */
    private static Mould mould(String[] cells) {
        if (cells.length != COLUMNS) {
            throw new IllegalStateException(RESOURCE + ": " + String.join(" | ", cells));
        }
        int cavities = cells[2].isEmpty() ? 1 : Integer.parseInt(cells[2]);
        OptionalDouble price =
                cells[3].isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cells[3]));
        return new Mould(cells[0], ShapeText.read(cells[1]), cavities, price, cells[4], cells[5]);
    }
}
