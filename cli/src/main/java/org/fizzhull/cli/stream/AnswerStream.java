package org.fizzhull.cli.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import org.fizzhull.answer.body.AnswerWriter;
import org.fizzhull.answer.body.RefusalBody;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.quantity.Refusal;

/**
 * Answers a stream of requests, one a line, in their order: {@code {"id": 7, "result": {...}}} or
 * {@code {"id": 7, "error": {...}}}.
 *
 * <p>The calling thread reads, some threads answer, one writes. At most four requests for each answering thread are on
 * their way at any time; where the answers are taken slowly, reading waits. Each answer is flushed at once, so that a
 * program may send a question and wait for its answer. A line that cannot be read, or whose question fails, has an error as
 * its answer and stops nothing. Where nobody takes the answers any longer, reading ends with the next line.
 */
public final class AnswerStream {
    private static final int WAITING_PER_THREAD = 4;

    /** Behind the last answer. */
    private static final FutureTask<byte[]> END = new FutureTask<>(() -> new byte[0]);

    private final Answerer answerer;
    private final int threads;

    /**
     * @param answerer answers the requests that can be read
     * @param threads how many are answered at a time
     */
    public AnswerStream(Answerer answerer, int threads) {
        this.answerer = answerer;
        this.threads = threads;
    }

    /** Answers every line of the input; ends with it. Neither stream is closed. */
    public void run(InputStream in, PrintStream out) {
        BlockingQueue<Future<byte[]>> turn = new ArrayBlockingQueue<>(WAITING_PER_THREAD * threads);
        ExecutorService answering = Executors.newFixedThreadPool(threads);
        Thread writing = new Thread(() -> write(turn, out), "answers");
        writing.start();
        try {
            RequestLines lines = new RequestLines(in, Request.LONGEST);
            for (Optional<RequestLines.Line> line = lines.next();
                    line.isPresent() && !out.checkError();
                    line = lines.next()) {
                RequestLines.Line read = line.get();
                FutureTask<byte[]> task = new FutureTask<>(() -> answer(read));
                turn.put(task); // first its turn, which waits where there is no room, then the work
                answering.execute(task);
            }
            turn.put(END);
            writing.join();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            writing.interrupt();
            Thread.currentThread().interrupt();
        } finally {
            answering.shutdownNow();
        }
    }

    /** An answer always, so that every line has one. */
    private byte[] answer(RequestLines.Line line) {
        try {
            return answer(Request.of(line));
        } catch (RuntimeException | Error failure) {
            Refusal refusal = new Refusal(
                    "internal-failure",
                    "line",
                    failure.toString(),
                    "",
                    "As far as is known the input is not at fault: please report the line with this message.");
            return answer(new Request("null", "", List.of(), Optional.of(refusal)));
        }
    }

    private byte[] answer(Request request) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(4096);
        try (JsonSink json = JsonSink.line(out)) {
            json.startObject();
            json.raw("id", request.id());
            try {
                if (request.refusal().isPresent()) {
                    throw request.refusal().get();
                }
                json.raw("result", onOneLine(answerer.answer(request)));
            } catch (Refusal refusal) {
                new RefusalBody(request.command(), refusal).keys(new AnswerWriter(json));
            }
            json.endObject();
        }
        return out.toByteArray();
    }

    /** Without its line ends and the blanks behind them: in a JSON text these stand between tokens only. */
    private static String onOneLine(byte[] answer) {
        byte[] line = new byte[answer.length];
        int length = 0;
        boolean margin = false;
        for (byte b : answer) {
            boolean lineEnd = b == '\n' || b == '\r';
            margin = lineEnd || (margin && b == ' ');
            if (!margin) {
                line[length++] = b;
            }
        }
        return new String(line, 0, length, StandardCharsets.UTF_8);
    }

    private static void write(BlockingQueue<Future<byte[]>> turn, PrintStream out) {
        try {
            for (Future<byte[]> next = turn.take(); next != END; next = turn.take()) {
                out.writeBytes(next.get());
                out.flush();
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException(e); // the answerer refuses, it does not fail
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
