package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.learn.Bench;
import org.fizzhull.learn.Learned;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/**
 * The bench file: what {@code learn} found and what was measured on the bench besides, as YAML that a person can read and write
 * and {@code --bench} takes. Each key may be missing.
 *
 * @param known what trials taught, the scale and the hygrometer; moulds and powders stand below as written
 * @param weighed pressed pieces that were weighed damp, as written
 * @param measured what was measured on pieces in the bath and on moulds, each under its key
 * @param logs drying logs, as written
 * @param powders cups that were weighed
 */
public record BenchFile(
        Bench known, List<WrittenLine> weighed, List<Measured> measured, List<Log> logs, List<OwnPowder> powders) {
    /** Keys of what is measured in the bath: stopwatch, scale and eye, as the options of the same kind take them. */
    public static final String FIZZ_TIMES = "fizz times";

    public static final String RISE_TIMES = "rise times";
    public static final String DUNKS = "dunks";
    public static final String RESULTS = "results";

    /** Key of moulds that were filled with water and weighed. */
    public static final String MOULD_WATER = "mould water";

    /** Key of what was learned, in two parts of the file. */
    public static final String FACTORS = "factors";

    public static final String SCALE = "scale";
    public static final String HYGROMETER = "hygrometer";
    public static final String WEIGHED = "weighed";
    public static final String LOGS = "drying logs";
    public static final String POWDERS = "powders";

    static final List<String> MEASURED = List.of(FIZZ_TIMES, RISE_TIMES, DUNKS, RESULTS, MOULD_WATER);

    /** That of a bench of which nothing is known. */
    public static final BenchFile NONE = new BenchFile(Bench.none(), List.of(), List.of(), List.of(), List.of());

    private static final List<String> KEYS = List.of(
            "made",
            "trials",
            WEIGHED,
            FIZZ_TIMES,
            RISE_TIMES,
            DUNKS,
            RESULTS,
            LOGS,
            MOULD_WATER,
            POWDERS,
            SCALE,
            HYGROMETER,
            FACTORS,
            "draws");

    private static final Allowed STEPS = Allowed.above(0, Unit.GRAM);

    private static final Allowed SHARES = Allowed.aboveUpTo(0, 20, Unit.PERCENT);

    /** Of a score as it is written: fine enough, and read ten times as fast as decimals. */
    static final double STEP = 0.01;

    /** Copies the lists. */
    public BenchFile {
        weighed = List.copyOf(weighed);
        measured = List.copyOf(measured);
        logs = List.copyOf(logs);
        powders = List.copyOf(powders);
    }

    /** The same with other powders. */
    public BenchFile weighing(List<OwnPowder> others) {
        return new BenchFile(known, weighed, measured, logs, others);
    }

    /**
     * One measurement.
     *
     * @param key {@link #FIZZ_TIMES}, {@link #RISE_TIMES}, {@link #DUNKS}, {@link #RESULTS} or {@link #MOULD_WATER}
     * @param piece as written: what the option of that kind takes, and {@code in SHAPE} behind it for one mould alone
     */
    public record Measured(String key, WrittenLine piece) {
        /** The refusal of what is written, with its key and its line. */
        public Refusal here(Refusal refusal) {
            return piece.refused(refusal, key);
        }
    }

    /**
     * A drying log: a table of weighings with how those pieces were made and dried, by the names of the options of {@code dry}.
     *
     * @param said value of each name, as written
     * @param file the bench file
     * @param line in that file
     */
    public record Log(Map<String, String> said, String file, int line) {
        /** Copies the map, order kept. */
        public Log {
            said = new LinkedHashMap<>(said);
        }
    }

    /** Reads one; each refusal names the file and the line. */
    public static BenchFile read(FileAccess files, String option, String file) {
        YamlMap top = YamlMap.read(file, TextFile.read(files, option, file));
        List<Input> inputs = new ArrayList<>();
        List<List<Double>> draws = new ArrayList<>();
        Bench known = Bench.none();
        List<WrittenLine> weighed = List.of();
        List<Log> logs = new ArrayList<>();
        List<Measured> measured = new ArrayList<>();
        List<OwnPowder> powders = List.of();
        int line = top.line();
        for (YamlMap.Entry entry : top.entries()) {
            switch (entry.name()) {
                case "made", "trials" -> top.text(entry);
                case SCALE -> known = known.weighingOn(number(top, entry, STEPS));
                case HYGROMETER -> known = known.reading(number(top, entry, SHARES));
                case WEIGHED -> weighed = WrittenLine.list(top, entry, file);
                case FIZZ_TIMES, RISE_TIMES, DUNKS, RESULTS, MOULD_WATER -> {
                    for (WrittenLine piece : WrittenLine.list(top, entry, file)) {
                        measured.add(new Measured(entry.name(), piece));
                    }
                }
                case LOGS -> {
                    for (YamlMap.Entry log : top.list(entry)) {
                        logs.add(new Log(said(top.map(log)), file, log.line()));
                    }
                }
                case POWDERS -> powders = powders(top.map(entry), file);
                case FACTORS -> inputs = inputs(top.map(entry));
                case "draws" -> {
                    line = entry.line();
                    draws = draws(top, entry);
                }
                default ->
                    throw top.refusal(
                            new Refusal(
                                    "unknown-key",
                                    entry.name(),
                                    entry.name(),
                                    String.join(", ", KEYS),
                                    "Write it as one of these, or let learn write the bench file anew."),
                            entry.line());
            }
        }
        try {
            boolean taught = !inputs.isEmpty() || !draws.isEmpty();
            Bench bench = taught ? known.with(new Learned.Draws(inputs, draws)) : known;
            return new BenchFile(bench, weighed, measured, logs, powders);
        } catch (Refusal refusal) {
            throw top.refusal(refusal, line);
        }
    }

    private static double number(YamlMap top, YamlMap.Entry entry, Allowed allowed) {
        try {
            return allowed.parseExact(entry.name(), top.text(entry));
        } catch (Refusal refusal) {
            throw top.refusal(refusal, entry.line());
        }
    }

    private static List<Input> inputs(YamlMap factors) {
        List<Input> inputs = new ArrayList<>();
        for (YamlMap.Entry factor : factors.entries()) {
            try {
                inputs.add(Learned.Draws.named(factor.name()));
            } catch (Refusal refusal) {
                throw factors.refusal(refusal, factor.line());
            }
        }
        return inputs;
    }

    private static List<OwnPowder> powders(YamlMap map, String file) {
        List<OwnPowder> powders = new ArrayList<>();
        for (YamlMap.Entry powder : map.entries()) {
            powders.add(new OwnPowder(powder.name(), said(map.map(powder)), file, powder.line()));
        }
        return powders;
    }

    /** Names and values as written, in order. */
    private static Map<String, String> said(YamlMap map) {
        Map<String, String> said = new LinkedHashMap<>();
        map.entries().forEach(value -> said.put(value.name(), map.text(value)));
        return said;
    }

    private static List<List<Double>> draws(YamlMap top, YamlMap.Entry entry) {
        List<List<Double>> draws = new ArrayList<>();
        String rows = top.text(entry);
        for (String row : rows.isEmpty() ? new String[0] : rows.split("\n")) {
            List<Double> draw = new ArrayList<>();
            StringTokenizer numbers = new StringTokenizer(row);
            while (numbers.hasMoreTokens()) {
                String text = numbers.nextToken();
                try {
                    draw.add(STEP * Integer.parseInt(text));
                } catch (NumberFormatException e) {
                    throw top.refusal(
                            new Refusal(
                                    "not-a-number",
                                    "draws",
                                    text,
                                    "whole numbers",
                                    "Let learn write the bench file anew."),
                            entry.line() + draws.size() + 1);
                }
            }
            draws.add(draw);
        }
        return draws;
    }
}
