package org.fizzhull.cli.answer;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The tables of keys of cli/docs/contract.md: those headed {@code | key | value | meaning |}. A heading that begins with the
 * name of a schema in backticks makes its tables those of that schema; all others are shared.
 */
final class ContractPage {
    /** Section of the keys of several answers. */
    static final String SHARED = "";

    private static final String HEADER = "| key | value | meaning |";
    private static final Pattern HEADING = Pattern.compile("#+ (?:`([a-z]+)[ `])?.*");
    private static final Pattern KEY = Pattern.compile("`([^`]+)`");

    /** One row of a table. */
    record Row(String value, String meaning) {
        /** The row as the schema describes the key. */
        String description() {
            return (value + ": " + meaning).replace("`", "");
        }
    }

    private final Map<String, Map<String, Row>> sections = new TreeMap<>();

    private ContractPage() {}

    static ContractPage of(String text) {
        ContractPage page = new ContractPage();
        String section = SHARED;
        boolean table = false;
        for (String line : text.lines().toList()) {
            Matcher heading = HEADING.matcher(line);
            if (heading.matches()) {
                section = heading.group(1) == null ? SHARED : heading.group(1);
            }
            table = line.equals(HEADER) || (table && line.startsWith("|"));
            if (table && !line.equals(HEADER) && !line.startsWith("|--")) {
                page.row(section, line);
            }
        }
        return page;
    }

    private void row(String section, String line) {
        String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
        if (cells.length != 3) {
            throw new IllegalArgumentException("a row of three cells, without further bars: " + line);
        }
        Matcher keys = KEY.matcher(cells[0]);
        while (keys.find()) {
            Row before = sections.computeIfAbsent(section, name -> new LinkedHashMap<>())
                    .put(keys.group(1), new Row(cells[1], cells[2]));
            if (before != null) {
                throw new IllegalArgumentException("twice under " + section + ": " + keys.group(1));
            }
        }
    }

    /** Rows of a section by key; empty where the page has no such section. */
    Map<String, Row> section(String name) {
        return sections.getOrDefault(name, Map.of());
    }

    /** The names of all sections that have a table of keys. */
    Iterable<String> names() {
        return sections.keySet();
    }

    /**
     * The key under which a place is described among the shared ones: itself, or the part of it that begins at a shared
     * object; empty where it is not. So {@code rows[].notices[].code} is found under {@code notices[].code}.
     */
    Optional<String> shared(String place) {
        Map<String, Row> shared = section(SHARED);
        if (shared.containsKey(place)) {
            return Optional.of(place);
        }
        for (int dot = place.indexOf('.'); dot >= 0; dot = place.indexOf('.', dot + 1)) {
            String part = place.substring(dot + 1);
            if (part.contains(".") && shared.containsKey(part)) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }
}
