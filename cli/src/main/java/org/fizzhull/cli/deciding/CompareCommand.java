package org.fizzhull.cli.deciding;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.BenchOption;
import org.fizzhull.cli.option.ChartFile;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DrawOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.decide.compare.Comparer;
import org.fizzhull.decide.compare.Comparison;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.uncertainty.Workers;

/** {@code compare}: which of these moulds, or of these recipes, for me? */
public final class CompareCommand implements Command {
    /** A longer table draws less unless told otherwise, and says how far it is. */
    private static final int LONG_TABLE = 12;

    private static final int LONG_SAMPLES = 1024;

    /** Progress is told so many times at most. */
    private static final int TOLD = 10;

    @Override
    public String purpose() {
        return "which of these moulds, or of these recipes, is for me?";
    }

    @Override
    public String[] examples() {
        String lemon = "fizzhull compare --recipe cli/src/doc/recipes/lemon.yaml --press firm ";
        return new String[] {
            lemon + "--shape \"sphere(diameter=65 mm)\" --shape \"dome(diameter=80 mm)\" --air 21 C, 50 %",
            lemon + "--moulds built-in --sort fizz --chart moulds.svg",
            lemon + "--moulds cli/src/doc/moulds.csv --baths homes",
            lemon + "--recipe cli/src/doc/recipes/sea-foam.yaml --shape \"sphere(diameter=65 mm)\" --json",
        };
    }

    @Override
    public Options spec() {
        Options spec = CommonOptions.spec();
        CompareOptions.add(spec);
        CommonOptions.drawing(spec);
        CommonOptions.value(spec, CommonOptions.CHART, "FILE", "writes the picture, a line for each row, .svg or .png");
        return spec;
    }

    @Override
    public List<String> repeatable() {
        return List.of(QuestionOptions.SHAPE, MakingOptions.RECIPE);
    }

    @Override
    public void run(Arguments arguments, PrintStream out, PrintStream err) {
        Optional<ChartFile> chart = ChartFile.of(arguments);
        Comparison.SortBy sort = CompareOptions.sort(arguments);
        List<Comparison.NamedBath> panel = CompareOptions.panel(arguments);
        Sampling asked = DrawOptions.sampling(arguments);
        List<Comparison.Candidate> candidates = CompareOptions.candidates(arguments);
        boolean fewer = candidates.size() > LONG_TABLE && !arguments.has(CommonOptions.SAMPLES);
        Sampling sampling = fewer ? new Sampling(asked.seed(), LONG_SAMPLES) : asked;
        List<Notice> told = new ArrayList<>();
        Comparer comparer = Comparer.standard()
                .with(BenchOption.factors(arguments))
                .with(CompareMeasured.read(arguments, candidates, told))
                .with(sampling)
                .with(DrawOptions.workers(arguments, sampling));
        Comparison comparison = comparer.compare(candidates, panel, sort, progress(arguments, err));
        chart.ifPresent(file -> file.write(ComparePicture.of(comparison)));
        CommonOptions.end(
                arguments,
                new CompareText(comparison, fewer, told, CommonOptions.units(arguments)),
                Optional.empty(),
                () -> ComparePicture.onPage(comparison),
                out,
                err);
    }

    /** How far a long table is, on standard error; nothing where it was asked to be quiet. */
    private static Workers.Progress progress(Arguments arguments, PrintStream err) {
        boolean quiet = arguments.has(CommonOptions.QUIET);
        return (done, all) -> {
            int step = (all + TOLD - 1) / TOLD;
            if (!quiet && all > LONG_TABLE && done > 0 && done < all && done % step == 0) {
                err.println("fizzhull: " + done + " of " + all + " rows");
                err.flush();
            }
            return true;
        };
    }
}
