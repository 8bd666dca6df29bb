package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.evidence.Notice;

/**
 * What a command took of its bench file and what it passed over, item by item, so that nothing of it is left out in silence. An item
 * is a line of a list, or the key itself where it has one value. Filled while the command reads its options; serves one run on one
 * thread.
 */
public final class BenchUse {
    /** Why each item was passed over, empty for one that counts. */
    private final Map<Object, String> items = new HashMap<>();

    /** Why an item that nobody looked at does not count. */
    private String rest = "this question does not ask for it";

    /** An item that counts, in this or another part of the answer. */
    public void counts(Object item) {
        items.put(item, "");
    }

    /** An item that does not, and why; one that counts elsewhere stays so. */
    public void passed(Object item, String why) {
        items.putIfAbsent(item, why);
    }

    /** Why all items that nobody looks at do not count. */
    public void rest(String why) {
        rest = why;
    }

    /** What is to be said of a bench file; nothing where none was given. */
    @SuppressWarnings("ReferenceEquality") // to link the equality of a record costs a short command 10 ms
    Optional<Notice> notice(BenchFile bench) {
        if (bench == BenchFile.NONE) {
            return Optional.empty();
        }
        List<String> counted = new ArrayList<>();
        List<String> passed = new ArrayList<>();
        items(bench).forEach((key, all) -> {
            Map<String, Integer> reasons = new LinkedHashMap<>();
            all.forEach(item -> reasons.merge(items.getOrDefault(item, rest), 1, Integer::sum));
            reasons.forEach((why, count) -> {
                String many = all.size() > 1 ? count + " of " + all.size() : "";
                if (why.isEmpty()) {
                    counted.add(key + (many.isEmpty() ? "" : " (" + many + ")"));
                } else {
                    passed.add(key + " (" + many + (many.isEmpty() ? "" : ": ") + why + ")");
                }
            });
        });
        if (counted.isEmpty() && passed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Notice(
                "bench-used",
                "From the bench file: " + (counted.isEmpty() ? "nothing" : String.join(", ", counted))
                        + (passed.isEmpty() ? "." : "; not used: " + String.join(", ", passed) + ".")));
    }

    /** Items of each key that a bench file has, in the order in which they are told. */
    private static Map<String, List<Object>> items(BenchFile bench) {
        Map<String, List<Object>> items = new LinkedHashMap<>();
        bench.known().learned().ifPresent(learned -> add(items, BenchFile.FACTORS, BenchFile.FACTORS));
        bench.known().scale().ifPresent(scale -> add(items, BenchFile.SCALE, BenchFile.SCALE));
        bench.known().hygrometer().ifPresent(spread -> add(items, BenchFile.HYGROMETER, BenchFile.HYGROMETER));
        bench.weighed().forEach(piece -> add(items, BenchFile.WEIGHED, piece));
        bench.measured().forEach(measured -> add(items, measured.key(), measured.piece()));
        bench.logs().forEach(log -> add(items, BenchFile.LOGS, log));
        bench.powders().forEach(powder -> add(items, BenchFile.POWDERS, powder));
        return items;
    }

    private static void add(Map<String, List<Object>> items, String key, Object item) {
        items.computeIfAbsent(key, name -> new ArrayList<>()).add(item);
    }
}
