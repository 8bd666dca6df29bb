package org.fizzhull.cli.file;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.forecast.result.DryLog;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.check.BareNumber;

/**
 * A drying log: a table of the columns {@code piece, when, weight_g} and, for people, {@code note}, with commas or semicolons. A time is a date and
 * hour, {@code 2026-08-14 18:30}, or counts from pressing, {@code 36 h}.
 */
public final class WeightsFile {
    private static final List<String> COLUMNS = List.of("piece", "when", "weight_g", "note");
    private static final String HEADER = "a first line: piece, when, weight_g";
    private static final int MOST = 100;

    /** Ten years, s. */
    private static final double LONGEST = 3650 * 86400.0;

    private static final Allowed TIME = Allowed.between(0, 3650, Unit.DAY);

    /** Standard uncertainty of one weighing by a scale of whole grams and by one of tenths, kg [assumed]. */
    private static final double COARSE_SCALE = 0.5e-3;

    private static final double FINE_SCALE = 0.1e-3;

    private final String file;
    private final Optional<LocalDateTime> pressed;
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
        CsvTable table = CsvTable.of(text, file, "log");
        for (String column : List.of("when", "weight_g")) {
            table.needs(column, HEADER, "The column names the unit: weights in grams.");
        }
        table.only(COLUMNS, HEADER, "Leave this column out.");
        table.rows("weighings", HEADER + "; then a weighing in each line").forEach(this::take);
        return checked();
    }

    private void take(CsvTable.Row row) {
        String piece = row.cell("piece");
        double seconds = when(piece, row);
        double grams = grams(row);
        List<double[]> list = pieces.computeIfAbsent(piece, name -> new ArrayList<>());
        if (!list.isEmpty() && !(seconds > list.get(list.size() - 1)[0])) {
            throw row.refusal(
                    "out-of-order",
                    "when",
                    row.cell("when"),
                    "a time after the weighing before",
                    "Sort the rows of each piece by time.");
        }
        list.add(new double[] {seconds, grams / 1e3});
    }

    private double when(String piece, CsvTable.Row row) {
        String text = row.needed("when");
        if (text.length() < 5 || text.charAt(4) != '-') {
            try {
                return TIME.parseExact("when", text);
            } catch (Refusal refusal) {
                throw row.placed(refusal);
            }
        }
        LocalDateTime date = Dates.read(text)
                .orElseThrow(() -> row.refusal(
                        "unreadable-date",
                        "when",
                        text,
                        "such as 2026-08-14 18:30, or 36 h",
                        "Year, month, day, then the hour."));
        LocalDateTime from = pressed.orElseGet(() -> first.computeIfAbsent(piece, name -> date));
        double seconds = (double) Duration.between(from, date).toSeconds();
        if (!(seconds >= 0 && seconds <= LONGEST)) {
            throw row.refusal(
                    "out-of-range",
                    "when",
                    text,
                    "a time within ten years after pressing, " + from.toString().replace('T', ' '),
                    "Check --start.");
        }
        return seconds;
    }

    private static double grams(CsvTable.Row row) {
        String text = row.needed("weight_g");
        String allowed = "a weight in grams above 0, such as 141.5";
        String hint = text.indexOf(',') >= 0
                ? "Write a decimal point: in the spreadsheet choose English numbers, or replace the commas, and save again."
                : "";
        double grams =
                BareNumber.of(text).orElseThrow(() -> row.refusal("not-a-number", "weight_g", text, allowed, hint));
        if (grams > 0 && grams < 1e5) {
            return grams;
        }
        throw row.refusal("out-of-range", "weight_g", text, allowed, "Weigh it again.");
    }

    private List<DryLog.Series> checked() {
        List<DryLog.Series> all = new ArrayList<>();
        for (Map.Entry<String, List<double[]>> piece : pieces.entrySet()) {
            int count = piece.getValue().size();
            if (count < 2 || count > MOST) {
                throw new Refusal(
                                "out-of-range",
                                "log",
                                count + " weighing" + (count == 1 ? "" : "s") + " of piece " + piece.getKey(),
                                "2 to " + MOST + " of each piece",
                                "Weigh the same piece again tomorrow.")
                        .at(file, 0);
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
        return all;
    }
}
