package org.fizzhull.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.fizzhull.quantity.EditDistance;
import org.fizzhull.quantity.Refusal;

/** What to say of an option that the command does not have. */
final class UnknownOption {
    /** Options of the plan that this version does not have. */
    private static final String LATER = " --coated --bench --report ";

    /** Names that differ in more letters than this are not offered. */
    private static final int NEAR = 3;

    private UnknownOption() {}

    static Refusal refusal(String command, Options spec, String word) {
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
        List<String> names = new ArrayList<>();
        for (Option option : spec.getOptions()) {
            names.add("--" + option.getLongOpt());
        }
        String best = nearest(name, names);
        String hint = best.isEmpty() ? helpHint(command) : "Did you mean " + best + "?";
        return new Refusal("unknown-option", name, word, allowed, hint);
    }

    /** A word that belongs to no option of a command that takes none. */
    static Refusal word(String command, Options spec, String word) {
        boolean shape = word.indexOf('(') > 0 && spec.hasLongOption("shape");
        String hint = shape ? "Write --shape before it." : helpHint(command);
        return new Refusal("unexpected-word", "command line", word, "options that start with --", hint);
    }

    /** The name that differs least, empty where none is near. */
    static String nearest(String read, List<String> names) {
        String best = "";
        int least = Math.min(NEAR + 1, read.length());
        for (String name : names) {
            int distance = EditDistance.levenshtein(read, name);
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        return best;
    }

    static String helpHint(String command) {
        return "Type fizzhull " + command + " --help for its options.";
    }
}
