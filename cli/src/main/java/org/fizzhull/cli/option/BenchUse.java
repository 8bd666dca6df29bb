package org.fizzhull.cli.option;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.cli.file.BenchFile;
import org.fizzhull.cli.file.OwnPowder;
import org.fizzhull.cli.file.WrittenLine;
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
        for (Map.Entry<String, List<Object>> key : items(bench).entrySet()) {
            tell(key.getKey(), key.getValue(), counted, passed);
        }
        if (counted.isEmpty() && passed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Notice(
                "bench-used",
                "From the bench file: " + (counted.isEmpty() ? "nothing" : String.join(", ", counted))
                        + (passed.isEmpty() ? "." : "; not used: " + String.join(", ", passed) + ".")));
    }

    /** Adds what is said of the items of one key: how many count, and how many do not for each reason. */
    private void tell(String key, List<Object> all, List<String> counted, List<String> passed) {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        for (Object item : all) {
            String why = items.getOrDefault(item, rest);
            reasons.put(why, reasons.getOrDefault(why, 0) + 1);
        }
        for (Map.Entry<String, Integer> reason : reasons.entrySet()) {
            String why = reason.getKey();
            String many = all.size() > 1 ? reason.getValue() + " of " + all.size() : "";
            if (why.isEmpty()) {
                counted.add(key + (many.isEmpty() ? "" : " (" + many + ")"));
            } else {
                passed.add(key + " (" + many + (many.isEmpty() ? "" : ": ") + why + ")");
            }
        }
    }

    /** Items of each key that a bench file has, in the order in which they are told. */
    private static Map<String, List<Object>> items(BenchFile bench) {
        Map<String, List<Object>> items = new LinkedHashMap<>();
        if (bench.known().learned().isPresent()) {
            add(items, BenchFile.FACTORS, BenchFile.FACTORS);
        }
        if (bench.known().scale().isPresent()) {
            add(items, BenchFile.SCALE, BenchFile.SCALE);
        }
        if (bench.known().hygrometer().isPresent()) {
            add(items, BenchFile.HYGROMETER, BenchFile.HYGROMETER);
        }
        for (WrittenLine piece : bench.weighed()) {
            add(items, BenchFile.WEIGHED, piece);
        }
        for (BenchFile.Measured measured : bench.measured()) {
            add(items, measured.key(), measured.piece());
        }
        for (BenchFile.Log log : bench.logs()) {
            add(items, BenchFile.LOGS, log);
        }
        for (OwnPowder powder : bench.powders()) {
            add(items, BenchFile.POWDERS, powder);
        }
        return items;
    }

    private static void add(Map<String, List<Object>> items, String key, Object item) {
        if (!items.containsKey(key)) {
            items.put(key, new ArrayList<>());
        }
        items.get(key).add(item);
    }
}
