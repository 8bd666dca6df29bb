package org.fizzhull.cli.attack;

import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
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
 * <p>By hand: {@code java -cp TEST_CLASS_PATH org.fizzhull.cli.attack.Attack FOLDER SEED FIRST COUNT [SECONDS [refusals]]}.
 */
final class Attack {
    private static final int SLOW_LINES = 6;

    /** A line that waits and computes nothing is given so many times as long by the clock. */
    private static final int WAITING = 15;

    private final Path folder;
    private final long seed;
    private final long patience;
    private final Map<String, List<String>> faults = new TreeMap<>();
    private final Map<String, Integer> refused = new TreeMap<>();
    private final Tally tally = new Tally();
    private final int[] statuses = new int[3];
    private final List<Slow> slowest = new ArrayList<>();

    /** A line and how long this process computed meanwhile, ms. */
    private record Slow(long took, String line) {}

    /**
     * @param folder a folder of its own for the files of the lines
     * @param seed chooses the lines
     * @param patience how long a line may compute before it counts as hanging, s of the processor, so that what else the
     *     machine does counts for nothing
     */
    Attack(Path folder, long seed, long patience) {
        this.folder = folder;
        this.seed = seed;
        this.patience = patience;
    }

    /** Runs some lines and returns this. */
    Attack run(long first, long count) {
        Workspace files = new Workspace(folder);
        CommandLines lines = new CommandLines(seed, files);
        ExecutorService runner = runner();
        try {
            for (long number = first; number < first + count; number++) {
                Line line = lines.line(number);
                long from = computed();
                Future<Ran> future = runner.submit(() -> Ran.of(line));
                Optional<String> fault;
                try {
                    Ran ran = awaited(future, from);
                    count(line, ran);
                    fault = Judge.fault(line, ran.status(), ran.out(), ran.err(), files.drawn());
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
                String shown = "[seed " + seed + ", line " + number + "]" + line.shown();
                slowest.add(new Slow((computed() - from) / 1_000_000, shown));
                slowest.sort(Comparator.comparingLong(Slow::took).reversed());
                slowest.subList(Math.min(SLOW_LINES, slowest.size()), slowest.size())
                        .clear();
                fault.ifPresent(what -> {
                    List<String> met = faults.computeIfAbsent(what, key -> new ArrayList<>());
                    met.add(met.isEmpty() ? shown : line.command());
                });
            }
        } finally {
            runner.shutdownNow();
            files.clear();
        }
        return this;
    }

    private Ran awaited(Future<Ran> future, long from)
            throws TimeoutException, ExecutionException, InterruptedException {
        for (long seconds = 0; seconds < WAITING * patience; seconds++) {
            try {
                return future.get(1, TimeUnit.SECONDS);
            } catch (TimeoutException e) {
                if (computed() - from > patience * 1_000_000_000) {
                    throw e;
                }
            }
        }
        throw new TimeoutException();
    }

    /** How long this process has computed, in all its threads, ns. */
    private static long computed() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private void count(Line line, Ran ran) {
        statuses[Math.min(2, ran.status())]++;
        tally.count(line, ran.status() == 0);
        if (ran.status() == 2) {
            String kind =
                    ran.err().strip().replaceAll("\\d+", "#").replaceAll("(?s)read .*?; allowed", "read ...; allowed");
            refused.merge(kind, 1, Integer::sum);
        }
    }

    private static ExecutorService runner() {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "attack");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Faults with their first example each. */
    Map<String, List<String>> faults() {
        return faults;
    }

    /** What was tried and answered. */
    Tally tally() {
        return tally;
    }

    /** Counts, slowest lines and each fault with its count and first example. */
    String report() {
        StringBuilder text = new StringBuilder();
        text.append("%d lines answered, %d refused, %d failed inside\n"
                        .formatted(statuses[0], statuses[2], statuses[1]))
                .append(tally);
        slowest.forEach(slow ->
                text.append(slow.took()).append(" ms: ").append(slow.line()).append('\n'));
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
        static Ran of(Line line) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status = new Program(
                            new ByteArrayInputStream(line.in()),
                            new PrintStream(out, true, StandardCharsets.UTF_8),
                            new PrintStream(err, true, StandardCharsets.UTF_8))
                    .run(line.words().toArray(new String[0]));
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
