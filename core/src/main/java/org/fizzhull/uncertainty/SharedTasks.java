package org.fizzhull.uncertainty;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Numbered tasks that several threads take one after another. The calling thread takes tasks until none is left and
 * then waits for those that others have begun; a helper that comes too late finds nothing to do. So nothing is waited
 * for that has no thread.
 */
final class SharedTasks {
    private final int count;
    private final Workers.Task task;
    private final AtomicInteger next = new AtomicInteger();

    /** Threads inside {@link #work}, and one for the caller until it waits. */
    private final AtomicInteger inside = new AtomicInteger(1);

    private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
    private final CompletableFuture<Boolean> everyoneLeft = new CompletableFuture<>();

    SharedTasks(int count, Workers.Task task) {
        this.count = count;
        this.task = task;
    }

    /** Runs them all on the calling thread and on an executor, on at most so many threads. */
    void run(Executor executor, int most) {
        try {
            for (int helper = 1; helper < Math.min(most, count); helper++) {
                executor.execute(this::help);
            }
        } catch (RejectedExecutionException full) {
            // the calling thread does what nobody else will
        }
        work();
        leave();
        // also where this thread was interrupted: a task that runs on would write into a result already given
        everyoneLeft.join();
        Throwable thrown = failure.get();
        if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
            throw e;
        }
    }

    private void help() {
        if (enter()) {
            work();
            leave();
        }
    }

    /** Whether there is still somebody inside: after the last one has left nobody comes in. */
    private boolean enter() {
        return inside.getAndUpdate(there -> there > 0 ? there + 1 : 0) > 0;
    }

    private void leave() {
        if (inside.decrementAndGet() == 0) {
            everyoneLeft.complete(true);
        }
    }

    private void work() {
        try {
            for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                task.run(i);
            }
        } catch (Throwable thrown) { // whatever it is, the caller must see it
            next.set(count);
            failure.compareAndSet(null, thrown);
        }
    }
}
