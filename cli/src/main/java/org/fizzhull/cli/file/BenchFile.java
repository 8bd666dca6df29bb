package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringTokenizer;
import org.fizzhull.answer.tree.Version;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Source;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.learn.Bench;
import org.fizzhull.learn.Learned;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.uncertainty.Priors;

/**
 * The bench file: what {@code learn} found and what was measured on the bench besides, as YAML that a person can read and write
 * and {@code --bench} takes. Each key may be missing.
 *
 * @param learned what trials left of the priors
 * @param scale step of the scale, kg
 * @param hygrometer one standard deviation of what the hygrometer shows, relative humidity 0 to 1
 * @param weighed pressed pieces that were weighed damp, as written
 * @param measured what was measured on pieces in the bath, each under its key
 * @param powders cups that were weighed
 */
public record BenchFile(
        Optional<Bench> learned,
        OptionalDouble scale,
        OptionalDouble hygrometer,
        List<RecipeFile.Weighed> weighed,
        List<Measured> measured,
        List<OwnPowder> powders) {
    /** Keys of what is measured in the bath: stopwatch and scale, as the options of the same kind take them. */
    public static final String FIZZ_TIMES = "fizz times";

    public static final String RISE_TIMES = "rise times";
    public static final String DUNKS = "dunks";

    /** That of a bench of which nothing is known. */
    public static final BenchFile NONE = new BenchFile(
            Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), List.of(), List.of());

    private static final Source HYGROMETER =
            new Source("hygrometer", "The spread that the bench file gives", Source.Seen.ASSUMED);

    private static final List<String> KEYS = List.of(
            "made",
            "trials",
            "weighed",
            FIZZ_TIMES,
            RISE_TIMES,
            DUNKS,
            "powders",
            "scale",
            "hygrometer",
            "factors",
            "draws");

    private static final Allowed STEPS = Allowed.above(0, Unit.GRAM);

    private static final Allowed SHARES = Allowed.aboveUpTo(0, 20, Unit.PERCENT);

    private static final int DIGITS = 4;

    /** Of a score as it is written: fine enough, and read ten times as fast as decimals. */
    private static final double STEP = 0.01;

    /** Copies the lists. */
    public BenchFile {
        weighed = List.copyOf(weighed);
        measured = List.copyOf(measured);
        powders = List.copyOf(powders);
    }

    /** The table of uncertain inputs of this bench. */
    public Factors factors() {
        Factors factors = learned.map(Bench::factors).orElseGet(Factors::standard);
        return hygrometer.isEmpty()
                ? factors
                : factors.with(new Factor(Input.ROOM_HUMIDITY, Priors.normal(0, hygrometer.getAsDouble()), HYGROMETER));
    }

    /** The same with other powders. */
    public BenchFile weighing(List<OwnPowder> others) {
        return new BenchFile(learned, scale, hygrometer, weighed, measured, others);
    }

    /**
     * The text of a file.
     *
     * @param made day on which it was learned
     * @param trials name of the trials sheet
     * @param known what was measured besides
     */
    public static String text(Learned learned, String made, String trials, BenchFile known) {
        StringBuilder text = new StringBuilder();
        text.append("# What fizzhull learned from your trials; every command that draws takes it as --bench.\n")
                .append(
                        "# learn writes factors and draws anew; the other keys are yours, and learn --bench keeps them.\n")
                .append("made: ")
                .append(quoted(made))
                .append("   # by fizzhull ")
                .append(Version.TEXT)
                .append('\n')
                .append("trials: ")
                .append(quoted(trials))
                .append("   # ")
                .append(learned.used())
                .append(" used, ")
                .append(learned.inside())
                .append(" of them inside the interval they were given afterwards\n");
        for (Learned.Left left : learned.left()) {
            text.append("# left out: ")
                    .append(left.name())
                    .append(", ")
                    .append(left.what())
                    .append('\n');
        }
        known.measured(text);
        text.append(
                        "# median, low and high are the 50, 2.5 and 97.5 % points; prior percent: 100 = the trials said nothing of it\n")
                .append("factors:\n");
        for (Bench.Parameter parameter : learned.bench().parameters()) {
            Interval after = parameter.after();
            text.append("  ")
                    .append(parameter.input().label())
                    .append(": {median: ")
                    .append(Decimals.text(after.median(), DIGITS))
                    .append(", low: ")
                    .append(Decimals.text(after.low(), DIGITS))
                    .append(", high: ")
                    .append(Decimals.text(after.high(), DIGITS))
                    .append(", prior percent: ")
                    .append(Math.round(parameter.stillPriorPercent()))
                    .append('}');
            if (!parameter.input().unit().isEmpty()) {
                text.append("   # ").append(parameter.input().unit());
            }
            text.append('\n');
        }
        text.append(
                        "# whole draws, the factors in the order above: hundredths of a standard deviation off the default prior's median.\n")
                .append("# These are what --bench uses; how the factors hang together is in them.\n")
                .append("draws: |\n");
        for (List<Double> draw : learned.bench().draws()) {
            text.append(' ');
            for (double score : draw) {
                text.append(' ').append(Math.round(score / STEP));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private void measured(StringBuilder text) {
        scale.ifPresent(step ->
                text.append("scale: ").append(Decimals.text(1e3 * step, DIGITS)).append(" g\n"));
        hygrometer.ifPresent(deviation -> text.append("hygrometer: ")
                .append(Decimals.text(1e2 * deviation, DIGITS))
                .append(" %   # one standard deviation\n"));
        if (!weighed.isEmpty()) {
            text.append("weighed:\n");
            weighed.forEach(
                    piece -> text.append("  - ").append(quoted(piece.text())).append('\n'));
        }
        for (String key : List.of(FIZZ_TIMES, RISE_TIMES, DUNKS)) {
            String head = key + ":\n";
            for (Measured piece : measured) {
                if (piece.key().equals(key)) {
                    text.append(head)
                            .append("  - ")
                            .append(quoted(piece.piece().text()))
                            .append('\n');
                    head = "";
                }
            }
        }
        if (!powders.isEmpty()) {
            text.append("powders:   # a cup of each; they count as own ingredients of every recipe\n");
            for (OwnPowder powder : powders) {
                text.append("  ").append(quoted(powder.name())).append(": {");
                String between = "";
                for (Map.Entry<String, String> said : powder.said().entrySet()) {
                    text.append(between).append(said.getKey()).append(": ").append(quoted(said.getValue()));
                    between = ", ";
                }
                text.append("}\n");
            }
        }
    }

    /**
     * One measurement in the bath.
     *
     * @param key {@link #FIZZ_TIMES}, {@link #RISE_TIMES} or {@link #DUNKS}
     * @param piece as written: what the option of that kind takes, and {@code in SHAPE} behind it for one mould alone
     */
    public record Measured(String key, RecipeFile.Weighed piece) {
        /** The refusal of what is written, with its key and its line. */
        public Refusal here(Refusal refusal) {
            return refusal.of(key).at(piece.file(), piece.line());
        }
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** Reads one; each refusal names the file and the line. */
    public static BenchFile read(FileAccess files, String option, String file) {
        YamlMap top = YamlMap.read(file, TextFile.read(files, option, file));
        List<Input> inputs = new ArrayList<>();
        List<List<Double>> draws = new ArrayList<>();
        OptionalDouble scale = OptionalDouble.empty();
        OptionalDouble hygrometer = OptionalDouble.empty();
        List<RecipeFile.Weighed> weighed = List.of();
        List<Measured> measured = new ArrayList<>();
        List<OwnPowder> powders = List.of();
        int line = top.line();
        for (YamlMap.Entry entry : top.entries()) {
            switch (entry.name()) {
                case "made", "trials" -> top.text(entry);
                case "scale" -> scale = number(top, entry, STEPS);
                case "hygrometer" -> hygrometer = number(top, entry, SHARES);
                case "weighed" -> weighed = RecipeFile.Weighed.list(top, entry, file);
                case FIZZ_TIMES, RISE_TIMES, DUNKS -> {
                    for (RecipeFile.Weighed piece : RecipeFile.Weighed.list(top, entry, file)) {
                        measured.add(new Measured(entry.name(), piece));
                    }
                }
                case "powders" -> powders = powders(top.map(entry), file);
                case "factors" -> inputs = inputs(top.map(entry));
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
            Optional<Bench> learned =
                    inputs.isEmpty() && draws.isEmpty() ? Optional.empty() : Optional.of(new Bench(inputs, draws));
            return new BenchFile(learned, scale, hygrometer, weighed, measured, powders);
        } catch (Refusal refusal) {
            throw top.refusal(refusal, line);
        }
    }

    private static OptionalDouble number(YamlMap top, YamlMap.Entry entry, Allowed allowed) {
        try {
            return OptionalDouble.of(allowed.parseExact(entry.name(), top.text(entry)));
        } catch (Refusal refusal) {
            throw top.refusal(refusal, entry.line());
        }
    }

    private static List<Input> inputs(YamlMap factors) {
        List<Input> inputs = new ArrayList<>();
        for (YamlMap.Entry factor : factors.entries()) {
            try {
                inputs.add(Bench.named(factor.name()));
            } catch (Refusal refusal) {
                throw factors.refusal(refusal, factor.line());
            }
        }
        return inputs;
    }

    private static List<OwnPowder> powders(YamlMap map, String file) {
        List<OwnPowder> powders = new ArrayList<>();
        for (YamlMap.Entry powder : map.entries()) {
            YamlMap values = map.map(powder);
            Map<String, String> said = new LinkedHashMap<>();
            values.entries().forEach(value -> said.put(value.name(), values.text(value)));
            powders.add(new OwnPowder(powder.name(), said, file, powder.line()));
        }
        return powders;
    }

    private static List<List<Double>> draws(YamlMap top, YamlMap.Entry entry) {
        List<List<Double>> draws = new ArrayList<>();
        for (String row : top.text(entry).lines().toList()) {
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
