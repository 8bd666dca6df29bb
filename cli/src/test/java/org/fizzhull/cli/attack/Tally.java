package org.fizzhull.cli.attack;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.cli.Option;
import org.fizzhull.cli.option.OptionLists;

/** How often each command and each of its options was tried, and how often a line with it was answered. */
final class Tally {
    private final Map<String, Map<String, int[]>> counts = new TreeMap<>();

    Tally() {
        for (String command : OptionLists.commands()) {
            Map<String, int[]> options = new TreeMap<>();
            options.put("", new int[2]);
            for (Option option : OptionLists.of(command)) {
                options.put("--" + option.getLongOpt(), new int[2]);
            }
            counts.put(command, options);
        }
    }

    void count(Line line, boolean answered) {
        Map<String, int[]> options = counts.get(line.command());
        if (options == null) {
            return; // a misspelt command
        }
        options.forEach((name, tried) -> {
            boolean given = name.isEmpty()
                    || line.words().stream().anyMatch(word -> word.equals(name) || word.startsWith(name + '='));
            tried[0] += given ? 1 : 0;
            tried[1] += given && answered ? 1 : 0;
        });
    }

    /** Commands, and options as {@code command --option}, of which fewer lines were tried. */
    List<String> triedLess(int times) {
        return below(times, 0);
    }

    /** Commands and options of which fewer lines were answered. */
    List<String> answeredLess(int times) {
        return below(times, 1);
    }

    private List<String> below(int times, int which) {
        return counts.entrySet().stream()
                .flatMap(command -> command.getValue().entrySet().stream()
                        .filter(option -> option.getValue()[which] < times)
                        .map(option -> (command.getKey() + ' ' + option.getKey()).strip()))
                .toList();
    }

    /** Lines of commands we have. */
    int lines() {
        return counts.values().stream()
                .mapToInt(options -> options.getOrDefault("", new int[2])[0])
                .sum();
    }

    /** A line a command: answered of tried, and the same of its options. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        counts.forEach((command, options) -> {
            text.append(command);
            options.forEach((name, tried) -> text.append(' ')
                    .append(name)
                    .append(' ')
                    .append(tried[1])
                    .append('/')
                    .append(tried[0]));
            text.append('\n');
        });
        return text.toString();
    }

    Collection<String> commands() {
        return counts.keySet();
    }
}
