package org.fizzhull.cli.agreement;

import java.util.ArrayList;
import java.util.List;

/**
 * One question, as the options that every command shares.
 *
 * @param number of the question
 * @param shape text of the shape
 * @param mix what is mixed
 * @param making fill, press or weight: an option and its value
 * @param load what the piece carries, options
 * @param drying options of drying; empty where it goes into the bath damp
 * @param bath options of the bath
 * @param pieces of the batch
 */
record Asked(
        long number,
        String shape,
        Mix mix,
        List<String> making,
        List<String> load,
        List<String> drying,
        List<String> bath,
        int pieces) {

    /**
     * A recipe.
     *
     * @param file where it lies
     * @param acid whether there is acid in it
     * @param priced whether it has prices
     */
    record Mix(String file, boolean acid, boolean priced) {}

    /** What is seen of the pieces, in turn. */
    private static final List<String> SAW = List.of(
            "sank",
            "sank-later",
            "puffed",
            "sank",
            "rose-late",
            "crumbled",
            "never-dried",
            "sank",
            "soft",
            "weak-fizz",
            "tipped",
            "cracked");

    /** Advice costs some ten forecasts: one question in so many is asked of it. */
    private static final int ADVISED = 10;

    /** Causes cost as much as thirteen: one question in so many. */
    private static final int EXPLAINED = 4;

    static final List<String> DRAWS = List.of("--samples", "256");

    /** A weighed piece has left its mould. */
    boolean weighed() {
        return making.get(0).equals("--mass");
    }

    /** Whether its pieces differ by a stated spread. */
    boolean spread() {
        return making.get(1).contains("+-");
    }

    boolean dried() {
        return !drying.isEmpty();
    }

    /** Whether the bath is the one that commands without bath options take. */
    boolean usualBath() {
        return bath.isEmpty();
    }

    /**
     * What is typed for a command; still, central and ounces are {@code float} in still water, without draws and in other
     * units; empty where the command does not answer this question.
     */
    List<String> words(String command) {
        List<String> words = new ArrayList<>(List.of(command, "--shape", shape, "--recipe", mix.file()));
        words.addAll(making);
        switch (command) {
            case "still", "central", "ounces" -> {
                words.set(0, "float");
                words.addAll(load);
                words.addAll(drying);
                words.addAll(bath);
                words.addAll(
                        command.equals("still")
                                ? List.of("--no-fizz")
                                : command.equals("central") ? List.of("--samples", "0") : List.of("--units", "us"));
                if (command.equals("central")) {
                    return words;
                }
            }
            case "float", "fizz" -> {
                words.addAll(load);
                words.addAll(drying);
                words.addAll(bath);
            }
            case "compare" -> {
                if (weighed()) {
                    return List.of();
                }
                words.addAll(load);
                words.addAll(drying);
                words.addAll(bath);
            }
            case "dry" -> {
                if (weighed() || !dried()) {
                    return List.of();
                }
                words.addAll(load);
                words.addAll(drying);
            }
            case "press" -> {
                if (weighed() || load.contains("--on-top")) {
                    return List.of();
                }
                words.addAll(load);
                words.addAll(drying);
            }
            case "batch" -> {
                if (weighed()) {
                    return List.of();
                }
                words.addAll(load);
                words.addAll(drying);
                // the whole sheet, which the page to pin up shows
                words.addAll(List.of("--pieces", Integer.toString(pieces), "--explain"));
            }
            case "why" -> {
                if (number % EXPLAINED != 0) {
                    return List.of();
                }
                words.addAll(List.of("--saw", SAW.get((int) (number / EXPLAINED % SAW.size()))));
                if (number / EXPLAINED % 3 == 1 && !making.get(0).equals("--press")) {
                    words.addAll(List.of("--seen", Math.round(1.02 * Told.grams(making.get(1))) + " g"));
                }
                words.addAll(load);
                words.addAll(drying);
                words.addAll(bath);
            }
            case "advise" -> {
                if (number % ADVISED != 0) {
                    return List.of();
                }
                words.addAll(load);
                words.addAll(drying);
                words.addAll(bath);
            }
            case "shapes" -> {
                return List.of("shapes", shape);
            }
            default -> throw new IllegalArgumentException(command);
        }
        words.addAll(DRAWS);
        return words;
    }
}
