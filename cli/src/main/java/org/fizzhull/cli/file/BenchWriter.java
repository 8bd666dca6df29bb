package org.fizzhull.cli.file;

import java.util.List;
import java.util.Map;
import org.fizzhull.answer.body.Version;
import org.fizzhull.evidence.Interval;
import org.fizzhull.learn.Learned;
import org.fizzhull.learn.LearnedDraws;
import org.fizzhull.learn.TrialFit;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Units;
import org.fizzhull.cli.text.TrialWords;

/** Writes a bench file: what was learned, commented, and the maker's own keys as {@link BenchFile} reads them. Stateless. */
public final class BenchWriter {
    private static final int DIGITS = 4;

    private BenchWriter() {}

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
        trials(learned, text);
        measured(known, text);
        text.append(
                        "# median, low and high are the 50, 2.5 and 97.5 % points; prior percent: 100 = the trials said nothing of it\n")
                .append("factors:\n");
        for (LearnedDraws.Parameter parameter : learned.draws().parameters()) {
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
        for (List<Double> draw : learned.draws().draws()) {
            text.append(' ');
            for (double score : draw) {
                text.append(' ').append(Math.round(score / BenchFile.STEP));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** A comment for each trial: where it lies in what the finished bench expects. */
    private static void trials(Learned learned, StringBuilder text) {
        text.append("# each trial: chance of its result, and how many standard deviations each value lies off what is expected now\n");
        for (TrialFit fit : learned.fits()) {
            text.append("#   ")
                    .append(fit.name())
                    .append(", ")
                    .append(fit.shape().text());
            fit.mass().ifPresent(mass -> text.append(", ")
                    .append(Decimals.text(Units.inGrams(mass), DIGITS))
                    .append(" g"));
            text.append(fit.inside() ? ": inside; " : ": OUTSIDE; ").append(TrialWords.of(fit)).append('\n');
        }
        for (Learned.Left left : learned.left()) {
            text.append("#   ")
                    .append(left.name())
                    .append(": LEFT OUT; ")
                    .append(left.what())
                    .append(' ')
                    .append(Decimals.text(left.off(), 2))
                    .append(" off what the others allow\n");
        }
    }

    private static void measured(BenchFile known, StringBuilder text) {
        known.known()
                .scale()
                .ifPresent(scale -> text.append("scale: ")
                        .append(Decimals.text(1e3 * scale.step(), DIGITS))
                        .append(" g\n"));
        known.known()
                .hygrometer()
                .ifPresent(deviation -> text.append("hygrometer: ")
                        .append(Decimals.text(1e2 * deviation, DIGITS))
                        .append(" %   # one standard deviation\n"));
        if (!known.weighed().isEmpty()) {
            text.append("weighed:\n");
            known.weighed()
                    .forEach(piece ->
                            text.append("  - ").append(quoted(piece.text())).append('\n'));
        }
        for (String key : BenchFile.MEASURED) {
            String head = key + ":\n";
            for (BenchFile.Measured piece : known.measured()) {
                if (piece.key().equals(key)) {
                    text.append(head)
                            .append("  - ")
                            .append(quoted(piece.piece().text()))
                            .append('\n');
                    head = "";
                }
            }
        }
        if (!known.logs().isEmpty()) {
            text.append(BenchFile.LOGS).append(":\n");
            known.logs()
                    .forEach(log -> text.append("  - ").append(map(log.said())).append('\n'));
        }
        if (!known.powders().isEmpty()) {
            text.append("powders:   # a cup of each; they count as own ingredients of every recipe\n");
            for (OwnPowder powder : known.powders()) {
                text.append("  ")
                        .append(quoted(powder.name()))
                        .append(": ")
                        .append(map(powder.said()))
                        .append('\n');
            }
        }
    }

    /** {@code {fill: "146 g", air: "21 C, 55 %"}}. */
    private static String map(Map<String, String> said) {
        StringBuilder text = new StringBuilder("{");
        said.forEach((key, value) -> text.append(text.length() > 1 ? ", " : "")
                .append(key)
                .append(": ")
                .append(quoted(value)));
        return text.append('}').toString();
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
