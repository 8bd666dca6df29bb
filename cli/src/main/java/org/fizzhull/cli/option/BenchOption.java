package org.fizzhull.cli.option;

import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.forecast.question.Factors;

/** The option that brings what {@code learn} found. */
public final class BenchOption {
    public static final String BENCH = "--bench";

    private BenchOption() {}

    static void add(Options spec) {
        CommonOptions.value(
                spec,
                BENCH,
                "FILE.yaml",
                "what learn found in your trials, in place of the default priors, and your scale, hygrometer, weighed pieces and cups");
    }

    /** The bench file of a line, read once; that of an unknown bench where none was named. */
    public static BenchFile of(Arguments arguments) {
        return arguments.knows(BENCH) ? arguments.bench(BENCH) : BenchFile.NONE;
    }

    /** The table of uncertain inputs: the standard one, or that of the bench. */
    public static Factors factors(Arguments arguments) {
        return of(arguments).factors();
    }
}
