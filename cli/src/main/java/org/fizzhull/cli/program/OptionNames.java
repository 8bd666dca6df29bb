package org.fizzhull.cli.program;

import org.fizzhull.cli.deciding.CompareOptions;
import org.fizzhull.cli.making.BatchCommand;
import org.fizzhull.cli.option.Arguments;
import org.fizzhull.cli.option.CommonOptions;
import org.fizzhull.cli.option.DryingOptions;
import org.fizzhull.cli.option.MakingOptions;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.QuestionOptions;
import org.fizzhull.quantity.Refusal;

/** The library names what it refuses in its own words; the person gave an option, and is told of that. */
final class OptionNames {
    /** Words of the library and the options that say them. */
    private static final String[][] NAMES = {
        {"fill", MakingOptions.FILL},
        {"fill", QuestionOptions.DENSITY},
        {"press", MakingOptions.PRESS},
        {"press", MakingOptions.FILL},
        {"change", MakingOptions.CHANGE},
        {"mass", QuestionOptions.MASS},
        {"mass", QuestionOptions.DENSITY},
        {"mass", MakingOptions.FILL},
        {"hand", MakingOptions.FILL},
        {"hand", QuestionOptions.MASS},
        {"dry mix in a volume of piece", MakingOptions.FILL},
        {"dry mix in a volume of piece", MakingOptions.PRESS},
        {"free water per dry mix", MakingOptions.RECIPE},
        {"air temperature", DryingOptions.AIR},
        {"measured", QuestionOptions.MEASURED},
        {"measured lift", MeasuredOptions.LIFT},
        {"mix size", BatchCommand.MIX_SIZE},
        {"piece", QuestionOptions.SHAPE},
        {"pieces", DryingOptions.PIECES},
        {"samples", CommonOptions.SAMPLES},
        {"bath salt", QuestionOptions.BATH_SALT},
        {"scale", QuestionOptions.SCALE},
        {"sort", CompareOptions.SORT},
        {"measured fizz", MeasuredOptions.FIZZ},
        {"measured rise", MeasuredOptions.RISE},
        {"measured rise", MeasuredOptions.FIZZ},
        {"weighed", MeasuredOptions.WEIGHED},
        {"measurement", MeasuredOptions.RISE},
        {"measurement", MeasuredOptions.FIZZ},
        {"measurement", MeasuredOptions.LIFT},
        {"measurement", MeasuredOptions.WEIGHED},
    };

    private OptionNames() {}

    /** The same refusal under the name of the option, where one was given; what a file says keeps its own. */
    static Refusal of(Arguments arguments, Refusal refusal) {
        if (refusal.file() != null) {
            return refusal;
        }
        for (String[] name : NAMES) {
            if (refusal.field().equals(name[0]) && arguments.has(name[1])) {
                return under(name[1], arguments, refusal);
            }
        }
        return refusal;
    }

    /** What the library computed with, or found, stands behind the person's own words. */
    private static Refusal under(String option, Arguments arguments, Refusal refusal) {
        String link = switch (refusal.field()) {
            case "mass", "press", "hand", "dry mix in a volume of piece", "free water per dry mix" -> ", that is ";
            case "measurement" -> ", which ";
            default -> "";
        };
        if (link.isEmpty() || arguments.text(option).orElse("").equals(refusal.read())) {
            return refusal.of(option);
        }
        String read = arguments.text(option).orElse("") + link + refusal.read();
        return new Refusal(refusal.code(), option, read, refusal.allowed(), refusal.hint());
    }
}
