package org.fizzhull.uncertainty;

/** Runs independent tasks, on one thread or many; the library itself starts none. */
public interface Workers {
    /** All tasks one after another on the calling thread. */
    Workers CALLER = new Workers() {
        @Override
        public void run(int count, Task task) {
            for (int i = 0; i < count; i++) {
                task.run(i);
            }
        }
    };

    /** Runs the tasks 0 to count - 1, in any order, and returns when all are done. */
    void run(int count, Task task);

    /** One numbered task, which writes only to places of its own number. */
    interface Task {
        /** Does the task. */
        void run(int number);
    }
}
