package org.fizzhull.cli.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * A list of {@code name: value} lines of a YAML (or JSON) file that still knows where each stands. Scalars stay the text
 * that was written: no type is guessed. Anchors and aliases, lines more than {@value CheckedEvents#DEEPEST} levels deep and characters
 * that cannot be seen are refused by name, before anything is built from them.
 */
final class YamlMap {
    /** Most characters that a message repeats of a line. */
    private static final int REPEATED = 80;

    private final String file;
    private final int line;
    private final List<Entry> entries;

    private YamlMap(String file, int line, List<Entry> entries) {
        this.file = file;
        this.line = line;
        this.entries = entries;
    }

    /** One line. */
    record Entry(String name, Node value, int line) {}

    /** The top of a file. */
    static YamlMap read(String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setUseMarks(true)
                .setSchema(new FailsafeSchema())
                .build();
        Node top;
        try {
            CheckedEvents events = new CheckedEvents(file, settings, text);
            top = new Composer(settings, events).getSingleNode().orElse(null);
        } catch (MarkedYamlEngineException e) {
            int line = place(e, text);
            int without = withoutColon(text, line);
            if (without > 0) {
                throw new Refusal(
                                "unreadable",
                                file,
                                lineOf(text, without),
                                "a name, a colon and a value, such as   water: 4 g",
                                "There is no colon behind the name in this line.")
                        .at(file, without);
            }
            throw new Refusal(
                            "unreadable",
                            file,
                            line > 0 ? lineOf(text, line) : "",
                            "lines such as   water: 4 g",
                            "YAML says: " + e.getProblem() + ". Indent with spaces, never tabs; after a colon stands a"
                                    + " space; a name or value with a colon in it goes in quotes.")
                    .at(file, line);
        } catch (YamlEngineException e) {
            throw new Refusal(
                            "unreadable",
                            file,
                            "characters that are not text",
                            "a text file",
                            "Save it again as plain UTF-8 text.")
                    .at(file, 0);
        }
        if (top == null) {
            throw new Refusal(
                            "empty",
                            file,
                            "nothing",
                            "a recipe with dry: and its powders",
                            "Write dry: and below it lines such as   sodium bicarbonate: 300 g")
                    .at(file, 1);
        }
        return of(file, file, top, lineOf(top));
    }

    /** The same file without a line. */
    YamlMap without() {
        return new YamlMap(file, line, List.of());
    }

    /** The entries, in the order written. */
    List<Entry> entries() {
        return entries;
    }

    int line() {
        return line;
    }

    /** The mapping below an entry. */
    YamlMap map(Entry entry) {
        return of(file, entry.name(), entry.value(), entry.line());
    }

    /** The text behind an entry. */
    String text(Entry entry) {
        if (!(entry.value() instanceof ScalarNode scalar)) {
            throw refusal(
                    new Refusal(
                            "not-a-value",
                            entry.name(),
                            "a list",
                            "one value on the line, such as 300 g",
                            "Check the indentation of the lines below it."),
                    entry.line());
        }
        return scalar.getValue().strip();
    }

    /** The texts of a list, {@code [a, b]} or lines with dashes; one text for a single value. */
    List<Entry> list(Entry entry) {
        if (!(entry.value() instanceof SequenceNode sequence)) {
            return List.of(entry);
        }
        List<Entry> all = new ArrayList<>();
        for (Node node : sequence.getValue()) {
            all.add(new Entry(entry.name(), node, lineOf(node)));
        }
        return all;
    }

    /** A refusal with the place. */
    Refusal refusal(Refusal why, int atLine) {
        return why.at(file, atLine);
    }

    private static YamlMap of(String file, String field, Node node, int line) {
        if (node instanceof ScalarNode scalar && scalar.getValue().isEmpty()) {
            return new YamlMap(file, line, List.of());
        }
        if (!(node instanceof MappingNode mapping)) {
            throw new Refusal(
                            "not-a-list-of-lines",
                            field,
                            node instanceof ScalarNode scalar ? scalar.getValue() : "a list with dashes",
                            "lines of a name, a colon and a value, such as   water: 4 g",
                            "Put each on its own line, without a dash in front, with a space behind the colon.")
                    .at(file, lineOf(node));
        }
        List<Entry> entries = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (NodeTuple tuple : mapping.getValue()) {
            int at = lineOf(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                throw new Refusal(
                                "unreadable",
                                field,
                                "a list in place of a name",
                                "a name and a colon",
                                "Write one name, without brackets.")
                        .at(file, at);
            }
            String name = key.getValue().strip();
            if (name.equals("<<")) {
                throw new Refusal("unreadable", field, "<<", "a name and a colon", "Write the lines out.").at(file, at);
            }
            if (!names.add(name)) {
                throw new Refusal("repeated", name, "twice", "each name once", "Join the two lines.").at(file, at);
            }
            entries.add(new Entry(name, tuple.getValueNode(), at));
        }
        return new YamlMap(file, line, entries);
    }

    /** Where it went wrong; for what was never closed, where it was opened. */
    private static int place(MarkedYamlEngineException e, String text) {
        int written = text.stripTrailing().split("\n", -1).length;
        int at = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
        return at > written ? e.getContextMark().map(mark -> mark.getLine() + 1).orElse(written) : at;
    }

    /**
     * The line that lacks its colon, at the place of a mistake or just above it, where YAML has read on into the next line;
     * 0 where every line there has one.
     */
    private static int withoutColon(String text, int place) {
        String[] lines = text.split("\n", -1);
        for (int at = Math.min(place, lines.length); at >= 1; at--) {
            String line = lines[at - 1].strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            if (line.indexOf(':') < 0 && Character.isLetter(line.charAt(0))) {
                return at;
            }
            if (at < place) {
                return 0;
            }
        }
        return 0;
    }

    private static int lineOf(Node node) {
        Optional<Mark> start = node.getStartMark();
        return start.isPresent() ? start.get().getLine() + 1 : 0;
    }

    private static String lineOf(String text, int line) {
        String[] lines = text.split("\n", -1);
        return line <= lines.length ? PrintableText.of(lines[line - 1].strip(), REPEATED) : "the end of the file";
    }
}
