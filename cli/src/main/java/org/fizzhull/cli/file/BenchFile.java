package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import org.fizzhull.answer.tree.Version;
import org.fizzhull.evidence.Interval;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.learn.Bench;
import org.fizzhull.learn.Learned;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Refusal;

/** The bench file: what {@code learn} found, as YAML that a person can read and {@code --bench} takes. */
public final class BenchFile {
    private static final List<String> KEYS =
            List.of("made", "trials", "weighed", "powders", "scale", "hygrometer", "factors", "draws");

    private static final int DIGITS = 4;

    /** Of a score as it is written: fine enough, and read ten times as fast as decimals. */
    private static final double STEP = 0.01;

    private BenchFile() {}

    /**
     * The text of a file.
     *
     * @param made day on which it was learned
     * @param trials name of the trials sheet
     */
    public static String text(Learned learned, String made, String trials) {
        StringBuilder text = new StringBuilder();
        text.append(
                        "# What fizzhull learned from your trials; float, fizz, dry, press, batch and compare take it as --bench.\n")
                .append(
                        "# Delete it and nothing is lost but what it says: learn writes it anew from the trials sheet.\n")
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

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** Reads one; each refusal names the file and the line. */
    public static Bench read(FileAccess files, String option, String file) {
        YamlMap top = YamlMap.read(file, TextFile.read(files, option, file));
        List<Input> inputs = new ArrayList<>();
        List<List<Double>> draws = new ArrayList<>();
        int line = top.line();
        for (YamlMap.Entry entry : top.entries()) {
            if (!KEYS.contains(entry.name())) {
                throw top.refusal(
                        new Refusal(
                                "unknown-key",
                                entry.name(),
                                entry.name(),
                                String.join(", ", KEYS),
                                "Let learn write the bench file anew."),
                        entry.line());
            }
            if (entry.name().equals("factors")) {
                for (YamlMap.Entry factor : top.map(entry).entries()) {
                    try {
                        inputs.add(Bench.named(factor.name()));
                    } catch (Refusal refusal) {
                        throw top.refusal(refusal, factor.line());
                    }
                }
            } else if (entry.name().equals("draws")) {
                line = entry.line();
                draws = draws(top, entry);
            }
        }
        try {
            return new Bench(inputs, draws);
        } catch (Refusal refusal) {
            throw top.refusal(refusal, line);
        }
    }

    private static List<List<Double>> draws(YamlMap top, YamlMap.Entry entry) {
        List<List<Double>> draws = new ArrayList<>();
        for (String row : top.text(entry).split("\n")) {
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
