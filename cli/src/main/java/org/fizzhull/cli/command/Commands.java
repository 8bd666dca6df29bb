package org.fizzhull.cli.command;

import java.util.List;
import org.fizzhull.quantity.NearName;
import org.fizzhull.quantity.Refusal;

/** The commands by name. Only the named one is built, so that a short command starts fast. */
final class Commands {
    /** Names, in the order of the help. */
    static final String[] NAMES = {
        "float",
        "press",
        "dry",
        "fizz",
        "compare",
        "advise",
        "why",
        "batch",
        "learn",
        "shapes",
        "ingredients",
        "start",
        "stream"
    };

    /** Commands of the plan that this version does not have. */
    private static final String LATER = " ";

    private Commands() {}

    static Command named(String name) {
        return switch (name) {
            case "float" -> new FloatCommand();
            case "press" -> new PressCommand();
            case "dry" -> new DryCommand();
            case "fizz" -> new FizzCommand();
            case "advise" -> new AdviseCommand();
            case "why" -> new WhyCommand();
            case "compare" -> new CompareCommand();
            case "batch" -> new BatchCommand();
            case "learn" -> new LearnCommand();
            case "ingredients" -> new IngredientsCommand();
            case "shapes" -> new ShapesCommand();
            case "start" -> new StartCommand();
            case "stream" -> new StreamCommand();
            default -> throw unknown(name);
        };
    }

    private static Refusal unknown(String name) {
        String all = String.join(", ", NAMES);
        return LATER.contains(' ' + name + ' ')
                ? new Refusal("not-yet", "command", name, all, "This version does not have " + name + " yet.")
                : new Refusal("unknown-command", "command", name, all, hint(name));
    }

    private static String hint(String name) {
        String near = NearName.hint(name, List.of(NAMES));
        return (near.isEmpty() ? "" : near + " ") + "Type fizzhull --help for what each answers.";
    }
}
