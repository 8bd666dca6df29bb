package org.fizzhull.cli.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.forecast.model.DryLog;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * A drying log: a table of the columns {@code piece, when, weight_g}, with commas or semicolons. A time is a date and
 * hour, {@code 2026-08-14 18:30}, or counts from pressing, {@code 36 h}.
 */
public final class WeightsFile {
    private static final String[] COLUMNS = {"piece", "when", "weight_g"};
    private static final int MOST = 100;

    /** Ten years, s. */
    private static final double LONGEST = 3650 * 86400.0;

    private static final Allowed TIME = Allowed.between(0, 3650, Unit.DAY);

    /** Standard uncertainty of one weighing by a scale of whole grams and by one of tenths, kg [assumed]. */
    private static final double COARSE_SCALE = 0.5e-3;

    private static final double FINE_SCALE = 0.1e-3;

    private final String file;
    private final Optional<LocalDateTime> pressed;
    private final int[] place = {-1, -1, -1};
    private int columns;
    private final Map<String, List<double[]>> pieces = new LinkedHashMap<>();
    private final Map<String, LocalDateTime> first = new LinkedHashMap<>();

    private WeightsFile(String file, Optional<LocalDateTime> pressed) {
        this.file = file;
        this.pressed = pressed;
    }

    /**
     * Reads a log; each refusal names the file, the line and the cell.
     *
     * @param pressed when the pieces were pressed; without it a log of dates counts from each piece's first weighing
     */
    public static DryLog read(FileAccess files, String option, String file, Optional<LocalDateTime> pressed) {
        return new DryLog(new WeightsFile(file, pressed).parse(TextFile.read(files, option, file)));
    }

    private List<DryLog.Series> parse(String text) {
        int end = text.indexOf('\n');
        String head = end < 0 ? text : text.substring(0, end);
        char separator = head.indexOf(';') >= 0 ? ';' : ',';
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(text)) {
            boolean header = true;
            for (CsvRecord row : reader) {
                if (header) {
                    header(row);
                    header = false;
                } else {
                    row(row);
                }
            }
            if (header) {
                throw refusal("empty", "log", "nothing", "a first line: piece, when, weight_g", "", 1);
            }
        } catch (CsvParseException e) {
            throw refusal("unreadable", "log", "a broken line", "a table", "Check the quotes.", 0);
        } catch (IOException e) {
            throw refusal("cannot-read", "log", file, "a file that can be read", "", 0);
        }
        return checked();
    }

    private void header(CsvRecord row) {
        int line = line(row);
        columns = row.getFieldCount();
        for (int i = 0; i < row.getFieldCount(); i++) {
            String name = row.getField(i).strip().toLowerCase(Locale.ROOT);
            for (int k = 0; k < COLUMNS.length; k++) {
                if (COLUMNS[k].equals(name)) {
                    if (place[k] >= 0) {
                        throw refusal("repeated", name, "twice", "each column once", "", line);
                    }
                    place[k] = i;
                }
            }
        }
        for (int k = 1; k < COLUMNS.length; k++) {
            if (place[k] < 0) {
                throw refusal(
                        "missing",
                        COLUMNS[k],
                        String.join(", ", row.getFields()),
                        "a first line: piece, when, weight_g",
                        "The column names the unit: weights in grams.",
                        line);
            }
        }
    }

    private void row(CsvRecord row) {
        int line = line(row);
        if (row.getFieldCount() > columns) {
            throw refusal(
                    "too-many",
                    "row",
                    String.join(", ", row.getFields()),
                    columns + " cells",
                    "Write a decimal point, not a comma: 141.5.",
                    line);
        }
        String piece = place[0] < 0 ? "" : cell(row, 0);
        double seconds = when(piece, cell(row, 1), line);
        double grams = grams(cell(row, 2), line);
        List<double[]> list = pieces.computeIfAbsent(piece, name -> new ArrayList<>());
        if (!list.isEmpty() && !(seconds > list.get(list.size() - 1)[0])) {
            throw refusal(
                    "out-of-order",
                    "when",
                    cell(row, 1),
                    "a time after the weighing before",
                    "Sort the rows of each piece by time.",
                    line);
        }
        list.add(new double[] {seconds, grams / 1e3});
    }

    private double when(String piece, String text, int line) {
        if (text.length() < 5 || text.charAt(4) != '-') {
            try {
                return TIME.parseExact("when", text);
            } catch (Refusal refusal) {
                throw refusal.at(file, line);
            }
        }
        LocalDateTime date = Dates.read(text)
                .orElseThrow(() -> refusal(
                        "unreadable-date",
                        "when",
                        text,
                        "such as 2026-08-14 18:30, or 36 h",
                        "Year, month, day, then the hour.",
                        line));
        LocalDateTime from = pressed.orElseGet(() -> first.computeIfAbsent(piece, name -> date));
        double seconds = (double) Duration.between(from, date).toSeconds();
        if (!(seconds >= 0 && seconds <= LONGEST)) {
            throw refusal(
                    "out-of-range",
                    "when",
                    text,
                    "a time within ten years after pressing, " + from.toString().replace('T', ' '),
                    "Check --start.",
                    line);
        }
        return seconds;
    }

    private double grams(String text, int line) {
        String allowed = "a weight in grams above 0, such as 141.5";
        String hint = text.indexOf(',') >= 0
                ? "Write a decimal point: in the spreadsheet choose English numbers, or replace the commas, and save again."
                : "";
        try {
            double grams = Double.parseDouble(text);
            if (grams > 0 && grams < 1e5) {
                return grams;
            }
        } catch (NumberFormatException e) {
            throw refusal("not-a-number", "weight_g", text, allowed, hint, line);
        }
        throw refusal("out-of-range", "weight_g", text, allowed, "", line);
    }

    private List<DryLog.Series> checked() {
        List<DryLog.Series> all = new ArrayList<>();
        for (Map.Entry<String, List<double[]>> piece : pieces.entrySet()) {
            int count = piece.getValue().size();
            if (count < 2 || count > MOST) {
                throw refusal(
                        "out-of-range",
                        "log",
                        count + " weighing" + (count == 1 ? "" : "s") + " of piece " + piece.getKey(),
                        "2 to " + MOST + " of each piece",
                        "Weigh the same piece again tomorrow.",
                        0);
            }
            List<Double> times = new ArrayList<>();
            List<Double> weights = new ArrayList<>();
            boolean whole = true;
            for (double[] row : piece.getValue()) {
                times.add(row[0]);
                weights.add(row[1]);
                whole &= Math.abs(1e3 * row[1] - Math.rint(1e3 * row[1])) < 1e-6;
            }
            all.add(new DryLog.Series(piece.getKey(), times, weights, whole ? COARSE_SCALE : FINE_SCALE));
        }
        if (all.isEmpty()) {
            throw refusal("empty", "log", "no weighings", "2 or more of one piece", "", 1);
        }
        return all;
    }

    private String cell(CsvRecord row, int column) {
        if (place[column] >= row.getFieldCount()) {
            throw refusal("missing", COLUMNS[column], "", "a value in every row", "Fill the cell.", line(row));
        }
        return row.getField(place[column]).strip();
    }

    private static int line(CsvRecord row) {
        return (int) row.getStartingLineNumber();
    }

    private Refusal refusal(String code, String field, String read, String allowed, String hint, int line) {
        return new Refusal(code, field, read, allowed, hint).at(file, line);
    }
}
