package org.fizzhull.cli.option;

import java.util.concurrent.atomic.AtomicInteger;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/** Plain threads that take one numbered task after another; the first failure is thrown on the calling thread. */
final class Threads implements Workers {
    private final int most;

    /** At most so many threads, the calling one included. */
    Threads(int most) {
        this.most = most;
    }

    @Override
    public void run(int count, Task task) {
        Work work = new Work(count, task);
        Thread[] helpers = new Thread[Math.max(0, Math.min(most, count) - 1)];
        for (int i = 0; i < helpers.length; i++) {
            helpers[i] = new Thread(work, "draws-" + i);
            helpers[i].start();
        }
        work.run();
        join(helpers);
        Throwable thrown = work.failure();
        if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
            throw e;
        }
    }

    /** The tasks that are left, taken by each thread in turn. */
    private static final class Work implements Runnable {
        private final AtomicInteger next = new AtomicInteger();
        private final int count;
        private final Task task;
        private @Nullable Throwable failure;

        Work(int count, Task task) {
            this.count = count;
            this.task = task;
        }

        @Override
        public void run() {
            try {
                for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                    task.run(i);
                }
            } catch (Throwable t) { // whatever it is, the caller must see it
                fail(t);
            }
        }

        private synchronized void fail(Throwable thrown) {
            failure = failure == null ? thrown : failure;
            next.set(count);
        }

        synchronized @Nullable Throwable failure() {
            return failure;
        }
    }

    private static void join(Thread[] helpers) {
        boolean interrupted = false;
        for (Thread helper : helpers) {
            while (helper.isAlive()) {
                try {
                    helper.join();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
