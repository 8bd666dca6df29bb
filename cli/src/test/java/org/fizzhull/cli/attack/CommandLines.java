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
            "shapes", List.of(),
            "ingredients", List.of());

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
    private static final List<List<String>> ONE_OF =
            List.of(List.of("mass", "density"), List.of("fill", "press"), List.of("mass", "fill", "press"));

    private static final Set<String> NEVER = Set.of("help", "version");

    private final long seed;
    private final Files files;
    private final Values values;

    CommandLines(long seed, Files files) {
        this.seed = seed;
        this.files = files;
        this.values = new Values(files);
    }

    /** The line of that number; its files are written, those of the line before are gone. */
    String[] line(long number) {
        files.clear();
        Dice dice = new Dice(seed, number);
        String command = dice.of(OptionLists.commands());
        List<Option> options = OptionLists.of(command);
        Map<String, String> chosen = new LinkedHashMap<>();
        for (List<String> group : NEEDED.getOrDefault(command, USUAL)) {
            if (dice.once(40)) {
                continue;
            }
            for (String name : dice.of(group).split(" ", -1)) {
                choose(dice, options, name, chosen);
            }
        }
        for (int i = dice.below(dice.once(3) ? 8 : 4); i > 0; i--) {
            String name = dice.of(options).getLongOpt();
            if (!crowded(name, chosen) || dice.once(20)) {
                choose(dice, options, name, chosen);
                for (String other : dice.once(20) ? List.<String>of() : WITH.getOrDefault(name, List.of())) {
                    choose(dice, options, other, chosen);
                }
            }
        }
        if (dice.once(2)) {
            choose(dice, options, "json", chosen);
        }
        boolean draws = options.stream().anyMatch(option -> "samples".equals(option.getLongOpt()));
        if (draws) {
            chosen.putIfAbsent("samples", "128");
        }
        spoil(dice, chosen);
        return words(dice, command, chosen);
    }

    private static boolean crowded(String name, Map<String, String> chosen) {
        return ONE_OF.stream()
                .anyMatch(row -> row.contains(name) && row.stream().anyMatch(chosen::containsKey));
    }

    private void choose(Dice dice, List<Option> options, String name, Map<String, String> chosen) {
        for (Option option : options) {
            if (name.equals(option.getLongOpt()) && !NEVER.contains(name) && !chosen.containsKey(name)) {
                String value = option.hasArg() ? values.of(dice, name) : "";
                chosen.put(name, value);
                if (name.equals("shape")) {
                    values.around(Shapes.volume(value));
                }
            }
        }
    }

    private static void spoil(Dice dice, Map<String, String> chosen) {
        if (chosen.isEmpty() || !dice.once(4)) {
            return;
        }
        for (int i = dice.below(2); i >= 0; i--) {
            String name = dice.of(new ArrayList<>(chosen.keySet()));
            boolean file = chosen.getOrDefault(name, "").indexOf('/') >= 0 && !name.equals("shape");
            if (file && !dice.once(6)) {
                continue;
            }
            String value = Mutation.text(dice, chosen.getOrDefault(name, ""));
            chosen.put(name, name.equals("samples") ? fewer(value) : name.equals("chart") ? inside(value) : value);
        }
    }

    /** A mutated count may be a right one that takes long. */
    private static String fewer(String samples) {
        return samples.strip().matches("\\d{4,}") ? "12a" : samples;
    }

    /** A mutated name of a picture must not leave its folder. */
    private static String inside(String chart) {
        return chart.contains("chart0") || chart.contains("chart1") ? chart : "chart.gif";
    }

    private String[] words(Dice dice, String command, Map<String, String> chosen) {
        List<String> words = new ArrayList<>();
        words.add(dice.once(200) ? Mutation.text(dice, command) : command);
        if (OptionLists.takesFreeWords(command) && !dice.once(4)) {
            String free = command.equals("shapes")
                    ? Shapes.any(dice, files)
                    : dice.of("kaolin", "salt", "corn flour", "acid", "sls", "oil", "citric acid", "a");
            words.add(dice.once(4) ? Mutation.text(dice, free) : free);
        }
        chosen.forEach((name, value) -> {
            words.add("--" + name);
            if (!value.isEmpty()) {
                words.add(value);
            }
        });
        if (dice.once(80)) {
            words.add(1 + dice.below(words.size()), Mutation.odd(dice));
        }
        if (dice.once(100)) {
            words.add("--" + dice.of("coarse", "log", "why", "masss", "mass=5 g", "json=1", "-", ""));
        }
        return words.toArray(new String[0]);
    }
}
