package org.fizzhull.cli.option;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.text.Answer;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.cli.text.NoticeText;
import org.fizzhull.cli.text.ShownUnits;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;

/** Options that every command takes. */
public final class CommonOptions {
    public static final String JSON = "--json";
    public static final String QUIET = "--quiet";
    public static final String EXPLAIN = "--explain";
    public static final String HELP = "--help";
    public static final String VERSION = "--version";
    public static final String CHART = "--chart";
    static final String REPORT = "--report";
    public static final String SEED = "--seed";
    public static final String SAMPLES = "--samples";
    public static final String THREADS = "--threads";
    public static final String CUPS = "--cups";
    static final String UNITS = "--units";

    private CommonOptions() {}

    /** Options that each command has. */
    public static Options spec() {
        Options spec = new Options();
        flag(spec, JSON, "one JSON object instead of text");
        flag(spec, QUIET, "the sentence and the caution only");
        flag(spec, EXPLAIN, "also the numbers, priors and sources behind the answer");
        value(spec, UNITS, "WHICH", "units of the text: as-given (default), metric, us; JSON stays as it is");
        flag(spec, VERSION, "the version");
        spec.addOption(Option.builder("h").longOpt(bare(HELP)).desc("this page").get());
        return spec;
    }

    /** Adds the options of a command that draws. */
    public static void drawing(Options spec) {
        BenchOption.add(spec);
        value(spec, SEED, "N", "seed of the draws (1)");
        value(spec, SAMPLES, "N", "number of draws (4096; 0 = central values only)");
        value(spec, THREADS, "N", "threads at most (all); the answer is the same");
        reporting(spec);
    }

    /** Adds the option of a command that answers on a page. */
    public static void reporting(Options spec) {
        value(spec, REPORT, "FILE.html", "writes a page to print: answer, picture, inputs, cautions, sources");
    }

    /** Whether an option says how to answer, not what is asked. */
    static boolean ofAnswer(String name) {
        return List.of(JSON, QUIET, EXPLAIN, HELP, VERSION, CHART, REPORT, SEED, SAMPLES, THREADS, UNITS)
                .contains(name);
    }

    /** Adds an option without a value. */
    public static void flag(Options spec, String name, String description) {
        spec.addOption(Option.builder().longOpt(bare(name)).desc(description).get());
    }

    /** Adds an option with one value, given once. */
    public static void value(Options spec, String name, String label, String description) {
        spec.addOption(Option.builder()
                .longOpt(bare(name))
                .hasArg()
                .argName(label)
                .desc(description)
                .get());
    }

    /**
     * Ends a command with its answer, as the person asked for it. With JSON on standard output, the notices go to standard
     * error, and nowhere when quiet.
     */
    public static void end(Arguments arguments, Answer answer, PrintStream out, PrintStream err) {
        end(arguments, answer, Optional.empty(), () -> "", out, err);
    }

    /** The same; the picture, an SVG document, is drawn once, where a file of its own or a page is asked for. */
    public static void end(
            Arguments arguments,
            Answer given,
            Optional<ChartFile> chart,
            Supplier<String> picture,
            PrintStream out,
            PrintStream err) {
        Answer answer = arguments
                .benchUse()
                .notice(BenchOption.of(arguments))
                .map(notice -> (Answer) new ToldAnswer(given, notice))
                .orElse(given);
        Optional<ReportFile> report = ReportFile.of(arguments);
        if (chart.isPresent() || report.isPresent()) {
            String drawn = picture.get();
            chart.ifPresent(file -> file.write(drawn));
            report.ifPresent(file -> file.write(arguments, answer.whole(), answer.behindOnPage(), drawn));
        }
        boolean quiet = arguments.has(QUIET);
        if (!arguments.has(JSON)) {
            ShownUnits units = units(arguments);
            boolean explains = arguments.has(EXPLAIN);
            out.print(units.in(quiet ? answer.brief() : explains ? answer.whole() : answer.shown()));
            if (explains) {
                out.print(units.in(answer.behind()));
            }
            return;
        }
        JsonSink.write(out, answer.body());
        if (!quiet) {
            for (Notice notice : answer.aside()) {
                err.println(NoticeText.line(notice));
            }
        }
    }

    /** The units of the text: those that were asked for, else those in which the line itself is written. */
    public static ShownUnits units(Arguments arguments) {
        Optional<String> text = arguments.text(UNITS);
        if (text.isEmpty() || text.get().equals("as-given")) {
            return ShownUnits.of(arguments.values());
        }
        return switch (text.get()) {
            case "us" -> ShownUnits.US;
            case "metric" -> ShownUnits.METRIC;
            default ->
                throw new Refusal(
                        "unknown-word", UNITS, text.get(), "us, metric or as-given", "Write one of these words.");
        };
    }

    /** The same of a line that could not be read as options: an unknown word counts as none. */
    public static ShownUnits units(List<String> typed) {
        int at = typed.indexOf(UNITS);
        String which = at >= 0 && at + 1 < typed.size() ? typed.get(at + 1) : "";
        return switch (which) {
            case "us" -> ShownUnits.US;
            case "metric" -> ShownUnits.METRIC;
            default -> ShownUnits.of(typed);
        };
    }

    /** The name without its dashes, as the argument library knows it. */
    public static String bare(String name) {
        return name.substring(2);
    }
}
