package org.fizzhull.validation.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;

/** What is wrong with the tables as such, before anything is computed. */
public final class Audit {
    private final List<String> problems = new ArrayList<>();

    private Audit() {}

    /** One sentence for each problem; empty when all is in order. */
    public static List<String> problems(List<Check> checks, List<Source> sources, List<Bindings> bindings) {
        Audit audit = new Audit();
        Map<String, Bindings> byTable = new LinkedHashMap<>();
        for (Bindings table : bindings) {
            if (byTable.put(table.table(), table) != null) {
                audit.say(table.table() + ": bound by two classes");
            }
        }
        audit.rows(checks, byTable);
        audit.sources(checks, sources);
        audit.unusedBindings(checks, bindings);
        return audit.problems;
    }

    private void rows(List<Check> checks, Map<String, Bindings> byTable) {
        Set<String> ids = new HashSet<>();
        for (Check check : checks) {
            Bindings bindings = byTable.get(check.table());
            if (!ids.add(check.id())) {
                say(check.id() + ": the id stands twice");
            }
            if (bindings == null || !bindings.ours().containsKey(check.binding())) {
                say(check.id() + ": row without binding");
            } else if (check.isLive() != bindings.others().containsKey(check.binding())) {
                say(check.id() + ": a live row needs another program, any other row a number");
            }
            if (!(check.tolerance() > 0)) {
                say(check.id() + ": a tolerance is above 0");
            }
            if (!check.isLive() && check.tolerance() > 0.2 * Math.abs(check.expected()) && check.expected() != 0) {
                say(check.id() + ": a tolerance above 20 % tests nothing");
            }
            if ((check.seen() == Seen.MEMORY) != (check.origin() == Origin.FROM_MEMORY)) {
                say(check.id() + ": what is recalled is from memory, in both columns");
            }
            if (Double.isNaN(check.disagrees()) == check.isDisagreement()) {
                say(check.id() + ": a disagreement needs both our value and a reason");
            }
        }
    }

    private void sources(List<Check> checks, List<Source> sources) {
        Set<String> known = new HashSet<>();
        for (Source source : sources) {
            if (!known.add(source.key())) {
                say(source.key() + ": the source stands twice");
            }
        }
        Set<String> unused = new HashSet<>(known);
        for (Check check : checks) {
            if (!known.contains(check.sourceKey())) {
                say(check.id() + ": unknown source " + check.sourceKey());
            }
            unused.remove(check.sourceKey());
        }
        unused.stream().sorted().forEach(key -> say(key + ": a source no row cites"));
    }

    private void unusedBindings(List<Check> checks, List<Bindings> bindings) {
        Set<String> used = new HashSet<>();
        for (Check check : checks) {
            used.add(check.table() + "/" + check.binding());
        }
        for (Bindings table : bindings) {
            for (String name : table.ours().keySet()) {
                if (!used.contains(table.table() + "/" + name)) {
                    say(table.table() + "/" + name + ": binding without row");
                }
            }
        }
    }

    private void say(String problem) {
        problems.add(problem);
    }
}
