package org.fizzhull.cli.attack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.cli.Option;
import org.fizzhull.cli.option.OptionLists;

/**
 * Command lines by the option lists of the commands themselves: what a command needs, some of what it takes, and in part
 * of the lines a spoilt value, a spoilt word or one too many.
 */
final class CommandLines {
    /** What a command cannot do without, in groups of which one is taken. */
    private static final Map<String, List<List<String>>> NEEDED = Map.of(
            "float",
                    List.of(List.of("shape"), List.of("mass", "density", "recipe fill", "recipe press", "recipe mass")),
            "press", List.of(List.of("recipe"), List.of("shape press", "shape fill", "", "shape")),
            "dry", List.of(List.of("recipe"), List.of("shape"), List.of("air"), List.of("fill", "press")),
            "fizz", List.of(List.of("recipe"), List.of("shape"), List.of("mass", "fill", "press", "density")),
            "batch", List.of(List.of("recipe"), List.of("shape"), List.of("pieces"), List.of("fill", "press")),
            "compare", List.of(List.of("shape", "moulds", "shape shape"), List.of("recipe press", "density")),
            "why", List.of(List.of("saw"), List.of("shape"), List.of("mass", "recipe fill", "recipe press")),
            "learn", List.of(List.of("trials"), List.of("out")));

    private static final Set<String> NO_PIECE = Set.of("shapes", "ingredients", "start", "stream");

    private static final List<List<String>> USUAL =
            List.of(List.of("shape"), List.of("mass", "recipe fill", "recipe press"));
    /** What an option does not go without. */
    private static final Map<String, List<String>> WITH = Map.of(
            "change", List.of("recipe"),
            "room", List.of("pieces", "recipe"),
            "pieces", List.of("room", "recipe"),
            "wrap", List.of("wrap-after", "recipe"),
            "wrap-after", List.of("recipe"),
            "stored-air", List.of("stored", "recipe"),
            "stored", List.of("recipe"),
            "sell-by", List.of("start"),
            "dry-for", List.of("recipe"),
            "cups", List.of("recipe"));

    /** Of each row one is enough for most lines. */
    private static final List<List<String>> ONE_OF = List.of(
            List.of("mass", "density"),
            List.of("fill", "press"),
            List.of("mass", "fill", "press"),
            List.of("bath", "baths"),
            List.of("no-fizz", "measured-fizz", "measured-rise"));

    /** What a workshop measures, which some lines give together. */
    private static final List<String> MEASURED = List.of(
            "bench",
            "log",
            "weighed",
            "measured-fizz",
            "measured-rise",
            "measured-lift",
            "measured-result",
            "scale",
            "air");

    private static final Set<String> SELDOM = Set.of("help", "version");
    private static final Set<String> WRITTEN = Set.of("chart", "report", "out");

    private final long seed;
    private final Workspace files;
    private final Values values;

    CommandLines(long seed, Workspace files) {
        this.seed = seed;
        this.files = files;
        this.values = new Values(files);
    }

    /** The line of that number; its files are written, those of the line before are gone. */
    Line line(long number) {
        files.clear();
        Dice dice = new Dice(seed, number);
        String command = dice.of(OptionLists.commands());
        List<String> words = words(dice, command);
        if (!command.equals("stream")) {
            return new Line(words, new byte[0]);
        }
        List<String> requests = new ArrayList<>();
        List<String> others = OptionLists.commands().stream()
                .filter(name -> !Set.of("stream", "start", "learn").contains(name))
                .toList();
        for (int i = dice.below(4); i >= 0; i--) {
            requests.add(Requests.of(words(dice, dice.of(others)), i));
        }
        return new Line(words, Requests.input(dice, requests));
    }

    private List<String> words(Dice dice, String command) {
        List<Option> options = OptionLists.of(command);
        Map<String, List<String>> chosen = new LinkedHashMap<>();
        for (List<String> group : NEEDED.getOrDefault(command, NO_PIECE.contains(command) ? List.of() : USUAL)) {
            if (dice.once(40)) {
                continue;
            }
            for (String name : dice.of(group).split(" ", -1)) {
                choose(dice, command, name, chosen);
            }
        }
        for (int i = dice.below(dice.once(3) ? 8 : 4); i > 0; i--) {
            String name = dice.of(options).getLongOpt();
            if (!crowded(name, chosen) || dice.once(20)) {
                choose(dice, command, name, chosen);
                for (String other : dice.once(20) ? List.<String>of() : WITH.getOrDefault(name, List.of())) {
                    choose(dice, command, other, chosen);
                }
            }
        }
        for (int i = dice.once(8) ? 2 + dice.below(5) : 0; i > 0; i--) {
            choose(dice, command, dice.of(MEASURED), chosen);
        }
        if (dice.once(2)) {
            choose(dice, command, "json", chosen);
        }
        boolean draws = options.stream().anyMatch(option -> "samples".equals(option.getLongOpt()));
        if (draws) {
            chosen.putIfAbsent("samples", List.of("128"));
        }
        spoil(dice, chosen);
        return typed(dice, command, chosen);
    }

    private static boolean crowded(String name, Map<String, List<String>> chosen) {
        return ONE_OF.stream()
                .anyMatch(row -> row.contains(name) && row.stream().anyMatch(chosen::containsKey));
    }

    private void choose(Dice dice, String command, String name, Map<String, List<String>> chosen) {
        for (Option option : OptionLists.of(command)) {
            boolean again = chosen.containsKey(name)
                    && !(OptionLists.mayRepeat(command, name) && dice.once(2))
                    && !dice.once(50);
            if (!name.equals(option.getLongOpt()) || again || (SELDOM.contains(name) && !dice.once(20))) {
                continue;
            }
            String value = option.hasArg() ? values.of(dice, name) : "";
            List<String> all = new ArrayList<>(chosen.getOrDefault(name, List.of()));
            all.add(value);
            chosen.put(name, all);
            if (name.equals("shape")) {
                values.around(Shapes.volume(value));
            }
        }
    }

    private void spoil(Dice dice, Map<String, List<String>> chosen) {
        if (chosen.isEmpty() || !dice.once(4)) {
            return;
        }
        for (int i = dice.below(2); i >= 0; i--) {
            String name = dice.of(new ArrayList<>(chosen.keySet()));
            List<String> all = new ArrayList<>(chosen.getOrDefault(name, List.of("")));
            int which = dice.below(all.size());
            String before = all.get(which);
            boolean file = before.indexOf('/') >= 0 && !name.equals("shape");
            if (file && !dice.once(6)) {
                continue;
            }
            String value = dice.once(2) ? Habits.text(dice, before) : Mutation.text(dice, before);
            all.set(which, name.equals("samples") ? fewer(value) : value);
            chosen.put(name, all);
        }
    }

    /** A mutated count may be a right one that takes long. */
    private static String fewer(String samples) {
        return samples.strip().matches("\\d{4,}") ? "12a" : samples;
    }

    private List<String> typed(Dice dice, String command, Map<String, List<String>> chosen) {
        List<String> words = new ArrayList<>();
        words.add(dice.once(200) ? Mutation.text(dice, command) : command);
        if (OptionLists.takesFreeWords(command) && !dice.once(command.equals("start") ? 20 : 4)) {
            String free = values.free(dice, command);
            words.add(dice.once(4) ? Mutation.text(dice, free) : free);
        }
        chosen.forEach((name, all) -> all.forEach(value -> {
            if (!value.isEmpty() && dice.once(12)) {
                words.add("--" + name + '=' + value);
                return;
            }
            words.add("--" + name);
            if (!value.isEmpty() || dice.once(30)) {
                words.add(value);
            }
        }));
        if (dice.once(80)) {
            words.add(1 + dice.below(words.size()), Mutation.odd(dice));
        }
        if (dice.once(60)) {
            words.add(dice.of(
                    "--coarse", "--masss", "--mass=5 g", "--json=1", "---", "--", "-mass", "-m", "–mass", "--Shape"));
        }
        return inFolder(words);
    }

    /** Nothing is written outside the folder, however the line was spoilt. */
    private List<String> inFolder(List<String> words) {
        List<String> kept = new ArrayList<>(words);
        boolean starts = "start".equals(kept.get(0));
        for (int i = 1; i < kept.size(); i++) {
            String word = kept.get(i);
            String before = kept.get(i - 1);
            int equals = word.indexOf('=');
            if (equals > 0 && writes(word.substring(0, equals))) {
                kept.set(i, word.substring(0, equals + 1) + files.inside(word.substring(equals + 1)));
            } else if (writes(before) || (starts && (word.equals("-") || !word.startsWith("-")))) {
                kept.set(i, files.inside(word));
            }
        }
        return kept;
    }

    /** Options may be shortened. */
    private static boolean writes(String word) {
        String name = word.replaceFirst("^-+", "");
        return word.startsWith("-") && WRITTEN.stream().anyMatch(option -> !name.isEmpty() && option.startsWith(name));
    }
}
