package org.fizzhull.cli.attack;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.fizzhull.cli.program.Program;

/**
 * Runs command lines in this process and keeps what is wrong with their answers, one example and a count for each fault.
 * The same seed and numbers are the same lines.
 *
 * <p>By hand: {@code java -cp TEST_CLASS_PATH org.fizzhull.cli.attack.Attack FOLDER SEED FIRST COUNT [SECONDS]}.
 */
final class Attack {
    private final Path folder;
    private final long seed;
    private final long patience;
    private final Map<String, List<String>> faults = new TreeMap<>();
    private final int[] statuses = new int[3];
    private final Map<String, Integer> answered = new TreeMap<>();
    final Map<String, Integer> refused = new TreeMap<>();
    private long slowest;
    private String slowestLine = "";

    /**
     * @param folder a folder of its own for the files of the lines
     * @param seed chooses the lines
     * @param patience how long a line may take before it counts as hanging, s
     */
    Attack(Path folder, long seed, long patience) {
        this.folder = folder;
        this.seed = seed;
        this.patience = patience;
    }

    /** Runs some lines and returns this. */
    Attack run(long first, long count) {
        Files files = new Files(folder);
        CommandLines lines = new CommandLines(seed, files);
        ExecutorService runner = runner();
        try {
            for (long number = first; number < first + count; number++) {
                String[] words = lines.line(number);
                long from = System.nanoTime();
                Future<Ran> future = runner.submit(() -> Ran.of(words));
                Optional<String> fault;
                try {
                    Ran ran = future.get(patience, TimeUnit.SECONDS);
                    statuses[Math.min(2, ran.status())]++;
                    if (ran.status() == 0) {
                        answered.merge(words[0], 1, Integer::sum);
                    }
                    if (ran.status() == 2) {
                        refused.merge(
                                ran.err()
                                        .strip()
                                        .replaceAll("\\d+", "#")
                                        .replaceAll("read .*?; allowed", "read ...; allowed"),
                                1,
                                Integer::sum);
                    }
                    fault = Judge.fault(words, ran.status(), ran.out(), ran.err(), files.charts());
                } catch (TimeoutException e) {
                    future.cancel(true);
                    runner.shutdownNow();
                    runner = runner();
                    fault = Optional.of("more than " + patience + " s");
                } catch (ExecutionException e) {
                    fault = Optional.of("thrown out of the program: " + e.getCause());
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
                long took = System.nanoTime() - from;
                if (took > slowest) {
                    slowest = took;
                    slowestLine = shown(number, words);
                }
                if (fault.isPresent()) {
                    List<String> met = faults.computeIfAbsent(fault.get(), key -> new ArrayList<>());
                    met.add(met.isEmpty() ? shown(number, words) : words[0]);
                }
            }
        } finally {
            runner.shutdownNow();
        }
        return this;
    }

    private static ExecutorService runner() {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "attack");
            thread.setDaemon(true);
            return thread;
        });
    }

    private String shown(long number, String[] words) {
        StringBuilder line = new StringBuilder("[seed " + seed + ", line " + number + "]");
        for (String word : words) {
            String plain = word.length() > 400 ? word.substring(0, 400) + "..." : word;
            line.append(" '").append(plain.replace("'", "'\\''")).append('\'');
        }
        return line.toString();
    }

    /** Faults with their first example each. */
    Map<String, List<String>> faults() {
        return faults;
    }

    /** Answered lines by command. */
    Map<String, Integer> answered() {
        return answered;
    }

    /** Counts, slowest line and each fault with its count and first example. */
    String report() {
        StringBuilder text = new StringBuilder();
        text.append(statuses[0])
                .append(" answered ")
                .append(answered)
                .append(", ")
                .append(statuses[2])
                .append(" refused, ")
                .append(statuses[1])
                .append(" failed inside; slowest ")
                .append(slowest / 1_000_000)
                .append(" ms: ")
                .append(slowestLine)
                .append('\n');
        faults.forEach((what, lines) -> text.append(lines.size())
                .append(" x ")
                .append(what)
                .append("\n    ")
                .append(lines.get(0))
                .append('\n'));
        return text.toString();
    }

    /** One line run. */
    private record Ran(int status, String out, String err) {
        static Ran of(String[] words) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status = new Program(
                            new PrintStream(out, true, StandardCharsets.UTF_8),
                            new PrintStream(err, true, StandardCharsets.UTF_8))
                    .run(words);
            return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        }
    }

    /** Runs lines by hand and prints the report. */
    public static void main(String[] args) {
        long patience = args.length > 4 ? Long.parseLong(args[4]) : 20;
        Attack attack = new Attack(Path.of(args[0]), Long.parseLong(args[1]), patience)
                .run(Long.parseLong(args[2]), Long.parseLong(args[3]));
        System.out.print(attack.report());
        if (args.length > 5) {
            attack.refused.forEach((what, n) -> System.out.println(n + " refused: " + what));
        }
        System.exit(0);
    }
}
