package org.fizzhull.cli.option;

import java.util.Optional;
import org.apache.commons.cli.Options;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.forecast.question.Factors;

/** The option that brings what {@code learn} found. */
public final class BenchOption {
    static final String BENCH = "--bench";

    private BenchOption() {}

    static void add(Options spec) {
        CommonOptions.value(
                spec, BENCH, "FILE.yaml", "what learn found in your trials, in place of the default priors");
    }

    /** The table of uncertain inputs: the standard one, or that of the bench. */
    public static Factors factors(Arguments arguments) {
        Optional<String> file = arguments.text(BENCH);
        return file.isPresent()
                ? BenchFile.read(arguments.files(), BENCH, file.get()).factors()
                : Factors.standard();
    }
}
