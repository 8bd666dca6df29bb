package org.fizzhull.cli.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fizzhull.cli.CommandRun;

/** A line that an answer says to type, typed. */
final class Typed {
    private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");

    private Typed() {}

    /** The words behind {@code fizzhull}, as a shell takes them apart. */
    static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line.replaceFirst("^fizzhull ", ""));
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1).replaceAll("\\\\(.)", "$1") : word.group(2));
        }
        return words;
    }

    /** What it answers as an object, by as many draws as all questions: what is to be typed repeats the question alone. */
    static CommandRun run(String line) {
        List<String> words = words(line);
        words.addAll(Asked.DRAWS);
        words.add("--json");
        return CommandRun.of(words.toArray(new String[0]));
    }
}
