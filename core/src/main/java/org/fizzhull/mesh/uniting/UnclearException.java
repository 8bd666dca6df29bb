package org.fizzhull.mesh.uniting;

/** Thrown where crossings contradict each other, as rounding can make them; another perturbation may resolve it. */
final class UnclearException extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnclearException(String what) {
        super(what);
    }
}
