package org.fizzhull.cli.agreement;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;

/**
 * Asks questions by chance of all commands and holds the answers against the {@link Rules}.
 *
 * <p>By hand: {@code java -cp TEST_CLASS_PATH org.fizzhull.cli.agreement.Walk FOLDER SEED FIRST COUNT}.
 */
final class Walk {
    private final Path folder;
    private final Questions questions;
    private final Map<String, List<String>> breaches = new TreeMap<>();
    private final Map<String, Integer> answered = new TreeMap<>();
    private final Map<String, Integer> refused = new TreeMap<>();

    Walk(Path folder, long seed) {
        this.folder = folder;
        this.questions = new Questions(folder, seed);
    }

    /** Asks some questions and returns this. */
    Walk run(long first, long count) {
        for (long number = first; number < first + count; number++) {
            Replies replies = Replies.of(questions.at(number), folder);
            replies.all().forEach((door, reply) -> {
                (reply.answered() ? answered : refused).merge(door, 1, Integer::sum);
                if (!reply.answered() && (reply.status() != 2 || reply.said().startsWith("only"))) {
                    found("what is answered or refused is so in every form", replies, door, reply.said());
                }
            });
            for (Rule rule : Rules.ALL) {
                rule.check().accept(replies, what -> found(rule.says(), replies, what, ""));
            }
        }
        return this;
    }

    /** Asks the questions of two seeds or ranges at a time; each walk has a folder of its own. */
    static Walk together(Walk one, long first, Walk other, long second, long count) {
        CompletableFuture<Walk> beside = CompletableFuture.supplyAsync(() -> other.run(second, count));
        one.run(first, count);
        return one.and(beside.join());
    }

    /** Adds what another walk found. */
    private Walk and(Walk other) {
        other.breaches.forEach((rule, cases) ->
                breaches.computeIfAbsent(rule, key -> new ArrayList<>()).addAll(cases));
        other.answered.forEach((command, count) -> answered.merge(command, count, Integer::sum));
        other.refused.forEach((command, count) -> refused.merge(command, count, Integer::sum));
        return this;
    }

    private void found(String rule, Replies replies, String what, String said) {
        Asked asked = replies.asked();
        List<String> words = new ArrayList<>(List.of(asked.shape()));
        words.addAll(asked.making());
        words.addAll(asked.load());
        words.addAll(asked.drying());
        words.addAll(asked.bath());
        breaches.computeIfAbsent(rule, key -> new ArrayList<>())
                .add(what + ' ' + said + " [question " + asked.number() + ": " + String.join(" ", words) + ']');
    }

    /** Breaches by rule. */
    Map<String, List<String>> breaches() {
        return breaches;
    }

    /** Answers by command, and by the further ways to ask {@code float}. */
    Map<String, Integer> answered() {
        return answered;
    }

    /** Refusals by the same. */
    Map<String, Integer> refused() {
        return refused;
    }

    /** Counts, and of each rule that was broken how often and the first cases. */
    String report(int examples) {
        StringBuilder text = new StringBuilder("answered " + answered + ", refused " + refused + ", " + Rules.ALL.size()
                + " rules, broken " + breaches.size() + '\n');
        breaches.forEach((rule, cases) -> {
            text.append(cases.size()).append(" x ").append(rule).append('\n');
            cases.stream()
                    .limit(examples)
                    .forEach(one -> text.append("    ").append(one).append('\n'));
        });
        return text.toString();
    }

    /** Runs questions by hand and prints the report. */
    public static void main(String[] args) {
        Walk walk = new Walk(Path.of(args[0]), Long.parseLong(args[1]));
        System.out.print(walk.run(Long.parseLong(args[2]), Long.parseLong(args[3]))
                .report(args.length > 4 ? Integer.parseInt(args[4]) : 3));
    }
}
