package org.fizzhull.cli.program;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.cli.deciding.AdviseCommand;
import org.fizzhull.cli.deciding.CompareCommand;
import org.fizzhull.cli.deciding.WhyCommand;
import org.fizzhull.cli.drying.DryCommand;
import org.fizzhull.cli.fizzing.FizzCommand;
import org.fizzhull.cli.floating.FloatCommand;
import org.fizzhull.cli.learning.LearnCommand;
import org.fizzhull.cli.making.BatchCommand;
import org.fizzhull.cli.making.IngredientsCommand;
import org.fizzhull.cli.making.PressCommand;
import org.fizzhull.cli.option.Command;
import org.fizzhull.cli.shapes.ShapesCommand;
import org.fizzhull.cli.start.StartCommand;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.NearName;

/** The commands by name. Only the named one is built, so that a short command starts fast. */
public final class Commands {
    /** Names, in the order of the help. */
    public static final List<String> NAMES = List.of(
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
            "stream");

    /** Letters of a word that tells one question from another. */
    private static final int SAYS_ENOUGH = 4;

    private Commands() {}

    public static Command named(String name) {
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

    /** Names of the commands that take an option, given without its dashes. */
    static List<String> taking(String option) {
        List<String> taking = new ArrayList<>();
        for (String name : NAMES) {
            if (named(name).spec().hasLongOption(option)) {
                taking.add(name);
            }
        }
        return taking;
    }

    private static Refusal unknown(String name) {
        String all = String.join(", ", NAMES);
        return new Refusal("unknown-command", "command", name, all, hint(name));
    }

    /** The nearest name, or the command whose question has the word in it. */
    private static String hint(String name) {
        String near = NearName.hint(name, NAMES);
        if (near.isEmpty() && name.length() >= SAYS_ENOUGH) {
            List<String> asked = NAMES.stream()
                    .filter(other ->
                            List.of(named(other).purpose().split("\\W+")).contains(name))
                    .toList();
            near = asked.isEmpty() ? "" : "Did you mean " + NearName.list(asked, "or") + "?";
        }
        return (near.isEmpty() ? "" : near + " ") + "Type fizzhull --help for what each answers.";
    }
}
