package org.fizzhull.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Options that every command takes. */
final class CommonOptions {
    static final String JSON = "--json";
    static final String QUIET = "--quiet";
    static final String EXPLAIN = "--explain";
    static final String HELP = "--help";
    static final String VERSION = "--version";
    static final String CHART = "--chart";
    static final String SEED = "--seed";
    static final String SAMPLES = "--samples";
    static final String THREADS = "--threads";
    static final String CUPS = "--cups";

    private CommonOptions() {}

    /** The spec of a command with the options that each has. */
    static CommandSpec spec(String name) {
        CommandSpec spec = CommandSpec.create().name(name);
        flag(spec, JSON, "one JSON object instead of text");
        flag(spec, QUIET, "the sentence and the caution only");
        flag(spec, EXPLAIN, "also the numbers, priors and sources behind the answer");
        flag(spec, VERSION, "the version");
        spec.addOption(OptionSpec.builder(HELP, "-h").description("this page").build());
        return spec;
    }

    /** Adds the options of a command that draws. */
    static void drawing(CommandSpec spec) {
        value(spec, SEED, "N", "seed of the draws (1)");
        value(spec, SAMPLES, "N", "number of draws (4096; 0 = central values only)");
        value(spec, THREADS, "N", "threads at most (all); the answer is the same");
    }

    static void flag(CommandSpec spec, String name, String description) {
        spec.addOption(OptionSpec.builder(name).description(description).build());
    }

    static void value(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .type(String.class)
                .arity("1")
                .paramLabel(label)
                .description(description)
                .build());
    }

    /** An option that may stand several times, each with one text. */
    static void repeated(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .type(java.util.List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .paramLabel(label)
                .description(description)
                .build());
    }
}
