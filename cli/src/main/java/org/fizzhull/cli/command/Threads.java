package org.fizzhull.cli.command;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.fizzhull.uncertainty.Workers;

/** Plain threads that take one numbered task after another; the first failure is thrown on the calling thread. */
final class Threads implements Workers {
    private final int most;

    /** At most so many threads, the calling one included. */
    Threads(int most) {
        this.most = most;
    }

    @Override
    public void run(int count, Task task) {
        AtomicInteger next = new AtomicInteger();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Runnable work = new Runnable() {
            @Override
            public void run() {
                try {
                    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                        task.run(i);
                    }
                } catch (Throwable t) { // whatever it is, the caller must see it
                    failure.compareAndSet(null, t);
                    next.set(count);
                }
            }
        };
        Thread[] helpers = new Thread[Math.max(0, Math.min(most, count) - 1)];
        for (int i = 0; i < helpers.length; i++) {
            helpers[i] = new Thread(work, "draws-" + i);
            helpers[i].start();
        }
        work.run();
        join(helpers);
        Throwable thrown = failure.get();
        if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
            throw e;
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
