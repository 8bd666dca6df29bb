package org.fizzhull.cli.command;

import org.fizzhull.quantity.Refusal;

/** The library names what it refuses in its own words; the person gave an option, and is told of that. */
final class OptionNames {
    /** Words of the library and the options that say them. */
    private static final String[][] NAMES = {
        {"fill", MakingOptions.FILL},
        {"press", MakingOptions.PRESS},
        {"change", MakingOptions.CHANGE},
        {"mass", "--mass"},
        {"mix size", "--mix-size"},
        {"piece", "--shape"},
        {"pieces", DryingOptions.PIECES},
        {"samples", CommonOptions.SAMPLES},
        {"bath salt", "--bath-salt"},
        {"measured fizz", MeasuredOptions.FIZZ},
        {"measured rise", MeasuredOptions.RISE},
        {"measured rise", MeasuredOptions.FIZZ},
        {"weighed", MeasuredOptions.WEIGHED},
    };

    private OptionNames() {}

    /** The same refusal under the name of the option, where one was given; what a file says keeps its own. */
    static Refusal of(Arguments arguments, Refusal refusal) {
        if (refusal.file() != null) {
            return refusal;
        }
        if (refusal.field().equals("measurement")) {
            return MeasuredOptions.contradicted(arguments, refusal);
        }
        for (String[] name : NAMES) {
            if (refusal.field().equals(name[0]) && arguments.has(name[1])) {
                return refusal.of(name[1]);
            }
        }
        return refusal;
    }
}
