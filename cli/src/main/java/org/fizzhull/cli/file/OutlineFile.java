package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.BareNumber;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.revolved.ProfilePoints;
import org.fizzhull.shape.revolved.RevolvedShape;

/**
 * The outline of a round body as CSV: a header such as {@code r_mm,z_mm}, then a point a line, r the distance from the
 * axis and z the height. The columns may change places; numbers have a decimal point.
 */
public final class OutlineFile {
    private static final String HEADER = "a header with r and z and their unit: r_mm,z_mm";

    private final String file;
    private int radius = -1;
    private int height = -1;
    private final Unit[] units = new Unit[2];

    private OutlineFile(String file) {
        this.file = file;
    }

    public static Shape read(FileAccess files, String file) throws IOException {
        String text = TextFile.read(files, "shape: file", file);
        OutlineFile outline = new OutlineFile(file);
        List<double[]> points = new ArrayList<>();
        boolean header = true;
        // the reader takes CR, LF and CRLF as line ends
        try (CsvReader<CsvRecord> rows = CsvReader.builder()
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)) {
            for (CsvRecord row : rows) {
                if (header) {
                    outline.header(row);
                    header = false;
                } else {
                    points.add(outline.point(row));
                }
            }
        } catch (CsvParseException e) {
            throw new Refusal("not-csv", "file", "text that is no CSV", HEADER, "Save the table as CSV, UTF-8.");
        }
        if (header) {
            throw new Refusal(
                    "no-header", "header", "", HEADER, "The file is empty: write that header, then a point a line.");
        }
        double[] r = new double[points.size()];
        double[] z = new double[points.size()];
        for (int i = 0; i < r.length; i++) {
            r[i] = points.get(i)[outline.radius];
            z[i] = points.get(i)[outline.height];
        }
        return RevolvedShape.of(file, ProfilePoints.profile(r, z));
    }

    private void header(CsvRecord row) {
        String read = String.join(",", row.getFields());
        if (row.getFieldCount() != 2) {
            String hint = read.indexOf(';') >= 0 || read.indexOf('\t') >= 0
                    ? "Separate the columns with a comma."
                    : "Give two columns and no other.";
            throw refused("no-header", "header", read, HEADER, hint, row);
        }
        for (int column = 0; column < 2; column++) {
            String name = row.getField(column).trim();
            int dash = name.lastIndexOf('_');
            String stem = (dash < 0 ? name : name.substring(0, dash)).toLowerCase(Locale.ROOT);
            if (stem.equals("r")) {
                radius = column;
            } else if (stem.equals("z")) {
                height = column;
            } else {
                throw refused(
                        "no-header", "header", read, HEADER, "r is the distance from the axis, z the height.", row);
            }
            units[column] = unit(dash < 0 ? "" : name.substring(dash + 1), name, row);
        }
        if (radius < 0 || height < 0) {
            throw refused("no-header", "header", read, HEADER, "One column is r, the other z.", row);
        }
    }

    private Unit unit(String word, String name, CsvRecord row) {
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == Dimension.LENGTH && unit.names().contains(word)) {
                return unit;
            }
        }
        String code = word.isEmpty() ? "missing-unit" : "unknown-unit";
        throw refused(code, "header", name, HEADER, "Write the unit behind the name, such as r_mm.", row);
    }

    private double[] point(CsvRecord row) {
        if (row.getFieldCount() != 2) {
            throw refused(
                    "not-a-point",
                    "point",
                    String.join(",", row.getFields()),
                    "two numbers",
                    "The decimal sign is a point, the comma parts the columns.",
                    row);
        }
        double[] point = new double[2];
        for (int column = 0; column < 2; column++) {
            point[column] = units[column].toSi(number(row.getField(column).trim(), row));
        }
        return point;
    }

    private double number(String text, CsvRecord row) {
        return BareNumber.of(text)
                .orElseThrow(() -> refused(
                        "not-a-number",
                        "point",
                        text,
                        "a number with a decimal point",
                        "Its unit is in the header.",
                        row));
    }

    private Refusal refused(String code, String field, String read, String allowed, String hint, CsvRecord row) {
        return new Refusal(code, field, read, allowed, hint).at(file, (int) row.getStartingLineNumber());
    }
}
