package org.fizzhull.cli.learning;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.BenchWriter;
import org.fizzhull.cli.file.OutputFile;
import org.fizzhull.cli.file.PowdersFile;
import org.fizzhull.cli.file.TrialsFile;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.OpenedFiles;
import org.fizzhull.learn.Learned;
import org.fizzhull.learn.Learner;
import org.fizzhull.quantity.Refusal;

/** {@code learn}: what do my own trials say of my bench? */
public final class LearnCommand implements Command {
    private static final String TRIALS = "--trials";
    private static final String OUT = "--out";
    private static final String DATE = "--date";
    private static final String POWDERS = "--powders";

    @Override
    public String purpose() {
        return "what do my own trials say of my scale, press and bubbles? The answer becomes a file that every command takes";
    }

    @Override
    public String[] examples() {
        return new String[] {
            "fizzhull learn --trials trials.csv --out bench.yaml",
            "fizzhull float --shape \"sphere(diameter=65 mm)\" --mass 142 g --bench bench.yaml",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CommonOptions.value(
                spec,
                TRIALS,
                "FILE.csv",
                "your trials, a piece a row: mould, bath_g (or fill_g and recipe), result (floated, rose or sank) and, where"
                        + " known, bath_C, rose_after_s, fizz_s, lift_g with lift_after_s (the reading while held under:"
                        + " fizzhull float --help), recipe, fill_g and press. The floor gets slippery; wipe it");
        CommonOptions.value(spec, OUT, "FILE.yaml", "where the bench file goes; written whole or not at all");
        CommonOptions.value(
                spec,
                POWDERS,
                "FILE.csv",
                "your powders, a cup of each weighed without the cup: name, loose_cup_g and, where known, tapped_cup_g,"
                        + " cup_mL, like. They count as own ingredients of every recipe");
        CommonOptions.value(
                spec, BenchOption.BENCH, "FILE.yaml", "an earlier bench file, whose keys of your own go on");
        CommonOptions.value(spec, DATE, "DAY", "the day written into it, such as 2026-08-14 (today)");
        CommonOptions.value(spec, CommonOptions.SEED, "N", "seed of the draws (1)");
        CommonOptions.reporting(spec);
        CommonOptions.value(spec, CommonOptions.CUPS, "WHICH", "cups of the recipes: us, metric, us-customary");
        return spec;
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        String sheet = arguments.required(
                TRIALS, "a trials sheet, such as trials.csv", "Write a row for each piece you weighed and let go.");
        String target = arguments.required(OUT, "a file to write, such as bench.yaml", "It holds what was learned.");
        OutputFile bench = OutputFile.of(arguments.files(), OUT, target, "a file to write, such as bench.yaml");
        String made = date(arguments.text(DATE));
        BenchFile known = BenchOption.of(arguments);
        known.powders().forEach(arguments.benchUse()::counts);
        arguments.benchUse().rest("kept in the new file");
        beside(arguments, known, target);
        Optional<String> cups = arguments.text(POWDERS);
        if (cups.isPresent()) {
            known = known.weighing(
                    PowdersFile.read(arguments.files(), POWDERS, cups.get(), MakingOptions.cups(arguments)));
        }
        TrialsFile trials = TrialsFile.read(
                arguments.files(),
                TRIALS,
                sheet,
                new OpenedFiles(arguments.files()),
                MakingOptions.cups(arguments),
                known.powders());
        long seed = arguments.whole(CommonOptions.SEED, 1, Long.MIN_VALUE, Long.MAX_VALUE);
        Learned learned;
        try {
            learned = Learner.learn(trials.trials(), seed);
        } catch (Refusal refusal) {
            throw refusal.at(sheet, 0);
        }
        bench.write(BenchWriter.text(learned, made, sheet, known).getBytes(StandardCharsets.UTF_8));
        CommonOptions.end(arguments, new LearnText(learned, trials, target, seed), out, err);
    }

    /** Drying logs are named from their bench file: a new one has to stand where they still are found. */
    private static void beside(Arguments arguments, BenchFile known, String target) {
        if (known.logs().isEmpty()) {
            return;
        }
        String old = known.logs().get(0).file();
        Path from =
                arguments.files().path(BenchOption.BENCH, old).toAbsolutePath().normalize();
        Path to = arguments.files().path(OUT, target).toAbsolutePath().normalize();
        if (!Objects.equals(from.getParent(), to.getParent())) {
            throw new Refusal(
                    "conflict",
                    OUT,
                    target,
                    "a file in the folder of " + old,
                    "The drying logs of that file are named from there: write the new one beside it.");
        }
    }

    private static String date(Optional<String> text) {
        if (text.isEmpty()) {
            return LocalDate.now(ZoneId.systemDefault()).toString();
        }
        try {
            return LocalDate.parse(text.get()).toString();
        } catch (DateTimeParseException e) {
            throw new Refusal("unreadable-date", DATE, text.get(), "a day such as 2026-08-14", "Year, month, day.");
        }
    }
}
