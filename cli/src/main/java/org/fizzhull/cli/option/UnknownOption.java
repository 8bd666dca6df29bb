package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.NearName;

/** What to say of an option that the command does not have. */
public final class UnknownOption {
    /** Options of the plan that this version does not have. */
    private static final String LATER = " --coated ";

    private UnknownOption() {}

    public static Refusal refusal(String command, Options spec, String word, Function<String, List<String>> takers) {
        String name = word.indexOf('=') > 0 ? word.substring(0, word.indexOf('=')) : word;
        String allowed = "an option of fizzhull " + command;
        if (LATER.contains(' ' + name + ' ')) {
            return new Refusal("not-yet", name, word, allowed, "This version does not have " + name + " yet.");
        }
        if (name.equals(LoadOptions.ON_TOP) || name.equals(LoadOptions.INSIDE)) {
            String hint = command.equals("shapes")
                    ? "A shape is told of as it is: float, fizz and dry take " + name + "."
                    : name.equals(LoadOptions.ON_TOP)
                            ? "What lies on top is no part of the mix: float, fizz, dry and batch take it."
                            : "Here the mix alone counts: press --inside tells how much of it goes round the thing.";
            return new Refusal("unknown-option", name, word, allowed, hint);
        }
        if (name.equals(QuestionOptions.SHAPE)) {
            String example = "fizzhull " + command + " \"sphere(diameter=65 mm)\".";
            return new Refusal("unknown-option", name, word, allowed, "Write the shape without --shape: " + example);
        }
        if (name.length() < word.length() && spec.hasOption(name)) {
            return new Refusal("unexpected-value", name, word, name + " alone", "Leave out what follows " + name + ".");
        }
        return new Refusal("unknown-option", name, word, allowed, hint(command, spec, name, takers));
    }

    /** The option meant by another word for it, the nearest name, the commands that do take it, or the help page. */
    private static String hint(String command, Options spec, String name, Function<String, List<String>> takers) {
        String bare = name.startsWith("--") ? name.substring(2) : name;
        String meant = other(bare);
        if (!meant.isEmpty() && spec.hasLongOption(meant)) {
            return "Did you mean --" + meant + "?";
        }
        List<String> names = new ArrayList<>();
        for (Option option : spec.getOptions()) {
            names.add(option.getLongOpt());
        }
        String best = NearName.of(bare, names);
        if (!best.isEmpty()) {
            return "Did you mean --" + best + "?";
        }
        List<String> others = takers.apply(bare);
        return others.isEmpty()
                ? helpHint(command)
                : "--" + bare + " belongs to " + String.join(", ", others) + ", not to " + command + ".";
    }

    /** The option for a word that people use for it. */
    private static String other(String word) {
        return switch (word) {
            case "weight", "weights", "heavy" -> "mass";
            case "mould", "mold", "form", "piece" -> "shape";
            case "size", "diameter" -> "shape";
            case "water", "tub" -> "bath";
            case "humidity", "climate" -> "air";
            case "count", "number" -> "pieces";
            case "picture", "plot", "image", "svg", "png" -> "chart";
            case "draws", "n" -> "samples";
            case "pressure", "force" -> "press";
            case "verbose", "details" -> "explain";
            default -> "";
        };
    }

    /** A word that belongs to no option of a command that takes none. */
    static Refusal word(String command, Options spec, String word) {
        boolean shape = word.indexOf('(') > 0 && spec.hasLongOption("shape");
        String hint = shape ? "Write --shape before it." : helpHint(command);
        return new Refusal("unexpected-word", "command line", word, "options that start with --", hint);
    }

    public static String helpHint(String command) {
        return "Type fizzhull " + command + " --help for its options.";
    }
}
